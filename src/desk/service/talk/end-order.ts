import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredOrder, StoredTicket } from '../../../ports/work-records.ts'
import { type Desk, shopChannel } from '../desk.ts'
import { shopPlanFrom } from '../records/records.ts'
import { holderOf } from '../records/ticket-life.ts'
import { ticketName } from '../records/ticket-names.ts'
import { deskWordsFor, shopLanguage } from '../say/say-floor.ts'
import { textMessage } from '../say/say-message.ts'
import { type Hand, letStockGo } from '../stock/keep-stock.ts'

const leavePlan = async (shop: ShopStore, orderId: string): Promise<Result<unknown, Problem>> => {
  await shop.plan.alone()
  const read = await shop.plan.read()
  const plan = shopPlanFrom(read.body)
  const without = <T extends { readonly id: string }>(places: readonly T[]) => places.filter((place) => place.id !== orderId)
  return shop.plan.write(read.version, {
    ...plan,
    sold: without(plan.sold),
    held: without(plan.held),
    slots: plan.slots.filter((slot) => slot.order !== orderId),
  })
}

/** The ticket at the bench loses its actions and says why; whoever holds it is called back by a message of its own. */
const callBack = async (desk: Desk, shop: ShopStore, ticket: StoredTicket): Promise<Result<null, Problem>> => {
  const changed = await shop.tickets.change({ id: ticket.ticketId, version: ticket.version }, { state: 'cancelled' })
  if (!changed.ok) return changed
  const words = deskWordsFor(desk)
  const channel = shopChannel('bench')
  const name = ticketName(ticket.number)
  const put = (nonce: string, text: string) =>
    shop.messages.say({ channel, nonce, by: 'bot', body: textMessage(text, shopLanguage(desk)) })
  if ((await shop.messages.of(ticket.ticketId)) !== null) await put(ticket.ticketId, `${name}: ${words.ticketCancelled}`)
  const holder = holderOf(await shop.tickets.findings(ticket.ticketId))
  if (holder !== null) await put(`cancelled-${ticket.ticketId}`, words.calledBack(name, holder.by))
  await shop.tell('channel', channel)
  return ok(null)
}

/** Who ends an order, on whose wish, and when. */
export type Ending = Hand & { readonly order: StoredOrder }

/**
 * Ends an order inside a transaction: its place in the plan and what it reserved are free again, its tickets are called back from
 * the bench, and it stands as cancelled. Stock that was used stays used.
 */
export const endOrder = async (desk: Desk, shop: ShopStore, { order, ...hand }: Ending): Promise<Result<null, Problem>> => {
  const { orderId } = order
  const left = await leavePlan(shop, orderId)
  if (!left.ok) return left
  await letStockGo(shop, orderId, hand)
  for (const ticket of await shop.tickets.ofOrder(orderId)) {
    if (ticket.state === 'replaced' || ticket.state === 'cancelled') continue
    const called = await callBack(desk, shop, ticket)
    if (!called.ok) return called
  }
  const changed = await shop.orders.change({ id: orderId, version: order.version }, { state: 'cancelled' })
  if (!changed.ok) return changed
  await shop.events.add({ code: 'cancelled', orderId, ticketId: null, by: hand.by, at: hand.at, facts: {} })
  return ok(null)
}
