import { deskWords } from '../../../../templates/desk/words.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Conversation } from '../../../domain/understanding/conversation.ts'
import type { Member } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredOrder } from '../../../ports/work-records.ts'
import { conversationChannel, type Desk } from '../desk.ts'
import { ticketName } from '../records/ticket-names.ts'
import { deskWordsFor, tellCustomer, tellOwner, wordsFor } from '../say/say-floor.ts'
import { textMessage } from '../say/say-message.ts'
import { endOrder } from './end-order.ts'

export type Cancelling = { readonly conversation: Conversation; readonly orderId: string; readonly saidId: string }

/** How many lines of the roster are cut, pressed or bagged already. */
const begunLines = async (shop: ShopStore, orderId: string): Promise<{ readonly begun: number; readonly lines: number }> => {
  const rows = await shop.orders.rows(orderId)
  return { begun: rows.filter((row) => row.state !== 'not-cut').length, lines: rows.length }
}

/** The owner hears that work has begun on what a customer wants cancelled, and may end it by one press, asked twice. */
const askOwner = async (
  desk: Desk,
  shop: ShopStore,
  { order, saidId }: { readonly order: StoredOrder; readonly saidId: string },
): Promise<void> => {
  const words = deskWordsFor(desk)
  const ticket = (await shop.tickets.ofOrder(order.orderId)).at(-1)
  const { begun, lines } = await begunLines(shop, order.orderId)
  const name = ticket === undefined ? order.orderId : ticketName(ticket.number)
  await tellOwner(desk, shop, {
    nonce: `cancel-begun-${saidId}`,
    text: words.ownerNote.cancelBegun(name, begun, lines),
    actions: [{ id: `o:${order.orderId}:cancel:${order.revision}`, label: words.cancelOrder, weight: 'grave' }],
  })
}

/** While nothing is cut the customer may cancel alone; after that the owner decides. */
export const cancelOrder = async (
  desk: Desk,
  shop: ShopStore,
  { conversation, orderId, saidId }: Cancelling,
): Promise<Result<null, Problem>> => {
  const words = deskWords[conversation.language]
  const channel = conversationChannel(conversation.id)
  const answer = (text: string) =>
    shop.messages.say({ channel, nonce: `cancel-${saidId}`, by: 'bot', body: textMessage(text, conversation.language) })
  const order = await shop.orders.read(orderId)
  if (order === null) return ok(null)
  if (order.state === 'collected') {
    await answer(words.handedOver)
    return ok(null)
  }
  if (order.state === 'cancelled') {
    await answer(words.cancelled)
    return ok(null)
  }
  if ((await begunLines(shop, orderId)).begun > 0) {
    await askOwner(desk, shop, { order, saidId })
    await answer(words.tooLate)
    return ok(null)
  }
  const ended = await endOrder(desk, shop, { order, at: desk.clock.now(), by: 'customer', why: 'cancelled' })
  if (ended.ok) await answer(words.cancelled)
  return ended
}

export type OwnerCancels = { readonly orderId: string; readonly revision: string; readonly by: Member }

/** The owner ends an order on which work has begun. Answers with a word for the owner, null when it was done. */
export const cancelBegun = async (
  desk: Desk,
  shop: ShopStore,
  { orderId, revision, by }: OwnerCancels,
): Promise<Result<string | null, Problem>> => {
  if (by.role !== 'owner') return ok(wordsFor(desk).ownerOnly)
  const order = await shop.orders.read(orderId)
  if (order === null) return ok(deskWordsFor(desk).noTicket)
  if (order.state === 'cancelled' || order.state === 'collected' || String(order.revision) !== revision)
    return ok(deskWordsFor(desk).notOpen)
  const ended = await endOrder(desk, shop, { order, at: desk.clock.now(), by: by.id, why: 'cancelled' })
  if (!ended.ok) return ended
  await tellCustomer(shop, order, {
    nonce: `cancelled-${orderId}`,
    text: (language) => deskWords[language].cancelledByShop,
  })
  return ok(null)
}
