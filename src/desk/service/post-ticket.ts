import { deskWords } from '../../../templates/desk/words.ts'
import { ok, type Problem, type Result } from '../../domain/result/result.ts'
import type { OrderStep } from '../../ports/queue.ts'
import type { ShopStore } from '../../ports/store.ts'
import type { StoredTicket } from '../../ports/work-records.ts'
import { type Desk, shopChannel } from './desk.ts'
import { carryOver } from './floor/carry-over.ts'
import { readLife } from './floor/read-life.ts'
import { isDone, isDropped } from './moot.ts'
import { textMessage } from './say-message.ts'
import { endProgress } from './show-progress.ts'
import { putTicketMessage } from './ticket-message.ts'
import { ticketIdOf, ticketName } from './ticket-names.ts'

/** A replaced ticket's message says so and loses its actions. */
const replaceEarlier = async (desk: Desk, shop: ShopStore, newer: StoredTicket): Promise<Result<null, Problem>> => {
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  for (const ticket of await shop.tickets.ofOrder(newer.orderId)) {
    if (ticket.revision >= newer.revision || ticket.state === 'replaced') continue
    const carried = await carryOver(shop, { from: ticket, to: newer, at: desk.clock.now() })
    if (!carried.ok) return carried
    const changed = await shop.tickets.change(
      { id: ticket.ticketId, version: ticket.version },
      { state: 'replaced', replacedBy: newer.revision },
    )
    if (!changed.ok) return changed
    const body = textMessage(`${ticketName(ticket.number)}: ${deskWords[language].replaced(newer.revision)}`, language)
    await shop.messages.say({ channel: shopChannel('bench'), nonce: ticket.ticketId, by: 'bot', body })
  }
  return ok(null)
}

const post = async (desk: Desk, shop: ShopStore, step: OrderStep<'post'>): Promise<Result<null, Problem>> => {
  const { orderId, revision } = step
  if (await isDone(shop, step)) return ok(null)
  if (await isDropped(shop, step)) {
    await shop.steps.done(step)
    return ok(null)
  }
  const ticket = await shop.tickets.read(ticketIdOf(orderId, revision))
  if (ticket === null) throw new Error(`there is no ticket of ${orderId}, revision ${revision} to post`)
  const replaced = await replaceEarlier(desk, shop, ticket)
  if (!replaced.ok) return replaced
  const order = await shop.orders.read(orderId)
  if (order !== null && order.state === 'ticketed' && order.revision === revision) {
    const moved = await shop.orders.change({ id: orderId, version: order.version }, { state: 'on-bench' })
    if (!moved.ok) return moved
  }
  const life = await readLife(desk, shop, ticket.ticketId)
  if (life !== null && (await putTicketMessage(desk, shop, life)) === 'posted') {
    await shop.events.add({
      code: 'posted',
      orderId,
      ticketId: ticket.ticketId,
      by: 'desk',
      at: desk.clock.now(),
      facts: { revision },
    })
  }
  if (order?.conversationId !== null && order?.conversationId !== undefined)
    await endProgress(shop, order.conversationId, { orderId, revision, ticket: ticketName(ticket.number) })
  await shop.steps.done(step)
  return ok(null)
}

/** The post step: the ticket's message in the bench channel, once for good; earlier revisions are marked as replaced. */
export const postTicket = async (desk: Desk, step: OrderStep<'post'>): Promise<void> => {
  const posted = await desk.store.together(desk.shopId, (shop) => post(desk, shop, step))
  if (!posted.ok)
    throw new Error(`the ticket of ${step.orderId} could not be posted: ${posted.problems.map((one) => one.code).join(', ')}`)
}
