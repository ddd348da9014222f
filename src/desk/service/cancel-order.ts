import { deskWords } from '../../../templates/desk/words.ts'
import { ok, type Problem, type Result } from '../../domain/result/result.ts'
import type { Conversation } from '../../domain/understanding/conversation.ts'
import type { ShopStore } from '../../ports/store.ts'
import { conversationChannel, type Desk } from './desk.ts'
import { shopPlanFrom } from './records.ts'
import { textMessage } from './say-message.ts'
import { letStockGo } from './stock/keep-stock.ts'

export type Cancelling = { readonly conversation: Conversation; readonly orderId: string; readonly saidId: string }

/** Nothing of the order is cut, pressed or bagged yet. */
const isUntouched = async (shop: ShopStore, orderId: string): Promise<boolean> =>
  (await shop.orders.rows(orderId)).every((row) => row.state === 'not-cut')

/** Gives the place in the plan and the reserved stock back; while nothing is cut the customer may cancel alone. */
export const cancelOrder = async (
  desk: Desk,
  shop: ShopStore,
  { conversation, orderId, saidId }: Cancelling,
): Promise<Result<null, Problem>> => {
  const words = deskWords[conversation.language]
  const channel = conversationChannel(conversation.id)
  const answer = (text: string) =>
    shop.messages.put({ channel, nonce: `cancel-${saidId}`, by: 'bot', body: textMessage(text, conversation.language) })
  const order = await shop.orders.read(orderId)
  if (order === null) return ok(null)
  if (!(await isUntouched(shop, orderId))) {
    await answer(words.tooLate)
    return ok(null)
  }
  const at = desk.clock.now()
  await shop.plan.alone()
  const read = await shop.plan.read()
  const plan = shopPlanFrom(read.body)
  const without = <T extends { readonly id: string }>(places: readonly T[]) => places.filter((place) => place.id !== orderId)
  const written = await shop.plan.write(read.version, {
    ...plan,
    sold: without(plan.sold),
    held: without(plan.held),
    slots: plan.slots.filter((slot) => slot.order !== orderId),
  })
  if (!written.ok) return written
  await letStockGo(shop, orderId, { at, by: 'customer', why: 'cancelled' })
  const changed = await shop.orders.change({ id: orderId, version: order.version }, { state: 'cancelled' })
  if (!changed.ok) return changed
  await shop.events.add({ code: 'cancelled', orderId, ticketId: null, by: 'customer', at, facts: {} })
  await answer(words.cancelled)
  return ok(null)
}
