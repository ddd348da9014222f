import { deskWords } from '../../../../templates/desk/words.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { OrderStep } from '../../../ports/queue.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredTicket } from '../../../ports/work-records.ts'
import { type Desk, shopChannel } from '../desk.ts'
import { carryOver } from '../floor/carry-over.ts'
import { garmentText } from '../floor/garment-text.ts'
import { readLife } from '../floor/read-life.ts'
import { putWith, readAround } from '../floor/ticket-message.ts'
import { isDropped } from '../records/moot.ts'
import { ticketFrom } from '../records/records.ts'
import type { TicketLife } from '../records/ticket-life.ts'
import { ticketIdOf, ticketName } from '../records/ticket-names.ts'
import { tellOwner, wordsFor } from '../say/say-floor.ts'
import { textMessage } from '../say/say-message.ts'
import { endProgress } from '../say/show-progress.ts'

type Replacing = { readonly newer: StoredTicket; readonly tickets: readonly StoredTicket[] }

/** A replaced ticket's message says so and loses its actions. */
const replaceEarlier = async (desk: Desk, shop: ShopStore, { newer, tickets }: Replacing): Promise<Result<null, Problem>> => {
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  for (const ticket of tickets) {
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
  const [about, tickets] = await Promise.all([shop.steps.about(step), shop.tickets.ofOrder(orderId)])
  if (about.isDone) return ok(null)
  if (isDropped(about)) {
    await shop.steps.done(step)
    return ok(null)
  }
  const { order, language } = about
  const ticket = tickets.find(({ ticketId }) => ticketId === ticketIdOf(orderId, revision))
  if (ticket === undefined) throw new Error(`there is no ticket of ${orderId}, revision ${revision} to post`)
  const replaced = await replaceEarlier(desk, shop, { newer: ticket, tickets })
  if (!replaced.ok) return replaced
  if (order !== null && order.state === 'ticketed' && order.revision === revision) {
    const moved = await shop.orders.change({ id: orderId, version: order.version }, { state: 'on-bench' })
    if (!moved.ok) return moved
  }
  const [life, around] = await Promise.all([readLife(desk, shop, ticket.ticketId), readAround(desk, shop, ticket)])
  if (life !== null) await tellOfStrings(desk, shop, life)
  if (life !== null && (await putWith(desk, shop, { life, around })) === 'posted') {
    await shop.events.add({
      code: 'posted',
      orderId,
      ticketId: ticket.ticketId,
      by: 'desk',
      at: desk.clock.now(),
      facts: { revision },
    })
  }
  if (order !== null && order.conversationId !== null && language !== null) {
    const ended = { orderId, revision, ticket: ticketName(ticket.number) }
    await endProgress(shop, { id: order.conversationId, language }, ended)
  }
  await shop.steps.done(step)
  return ok(null)
}

/** Strings on what children wear are the owner's to look at: they hear of it when its ticket comes to the bench. */
const tellOfStrings = async (desk: Desk, shop: ShopStore, { ticket, gates }: TicketLife): Promise<void> => {
  const shut = gates.filter(({ gate, is }) => gate.code === 'strings' && is !== 'open')
  if (shut.length === 0) return
  const { facts } = ticketFrom(ticket.body)
  const garments = shut.map(({ gate }) => garmentText(facts, gate.garment ?? '')).join(', ')
  const text = wordsFor(desk).ownerNote.strings(ticketName(ticket.number), garments)
  await tellOwner(desk, shop, { nonce: `strings-${ticket.ticketId}`, text })
}

/** The post step: the ticket's message in the bench channel, once for good; earlier revisions are marked as replaced. */
export const postTicket = async (desk: Desk, step: OrderStep<'post'>): Promise<void> => {
  const posted = await desk.store.together(desk.shopId, (shop) => post(desk, shop, step))
  if (!posted.ok)
    throw new Error(`the ticket of ${step.orderId} could not be posted: ${posted.problems.map((one) => one.code).join(', ')}`)
}
