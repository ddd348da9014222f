import type { Conversation, Earlier, EarlierAsked } from '../../../domain/understanding/conversation.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { orderStates } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { orderIdOf } from '../records/order-id.ts'
import { conversationFrom, orderFrom } from '../records/records.ts'

/** An order that was signed, with the revision that was signed last, for which team and when it was wanted. */
export type EarlierOrder = {
  readonly orderId: string
  readonly revision: number
  readonly team: string
  readonly needBy: string
}

const words = (team: string): string =>
  team
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/^(?:the|los|las|el|la) /, '')
    .trim()

/** Looking through the books must not hold up a turn. */
const mostLookedAt = 300
const mostShown = 3

const newestFirst = (a: EarlierOrder, b: EarlierOrder): number => (a.needBy < b.needBy ? 1 : -1)

/** The revision of an order that was signed last; null where none was, or the order was cancelled. */
const lastSigned = async (shop: ShopStore, orderId: string): Promise<EarlierOrder | null> => {
  const last = (await shop.orders.revisions(orderId)).findLast((one) => one.signed !== null && one.document !== null)
  if (last === undefined) return null
  const { team, needBy } = orderFrom(last.document)
  return { orderId, revision: last.revision, team, needBy }
}

const isOf =
  (team: string | null) =>
  (order: EarlierOrder): boolean =>
    team === null || words(order.team) === words(team)

const signedOf = async (shop: ShopStore, orderIds: readonly string[]): Promise<readonly EarlierOrder[]> => {
  const found: EarlierOrder[] = []
  for (const orderId of orderIds) {
    const signed = await lastSigned(shop, orderId)
    if (signed !== null) found.push(signed)
  }
  return found.sort(newestFirst)
}

/** The newest signed orders of a team, newest first. For the shop's eyes: a customer who names a team may be anybody. */
export const earlierOrders = async (
  shop: ShopStore,
  { team, but }: { readonly team: string; readonly but: string },
): Promise<readonly EarlierOrder[]> => {
  const all = await shop.orders.list(orderStates.filter((state) => !['asked', 'quoted', 'cancelled'].includes(state)))
  const ids = all.slice(-mostLookedAt).map(({ orderId }) => orderId)
  const signed = await signedOf(
    shop,
    ids.filter((id) => id !== but),
  )
  return signed.filter(isOf(team)).slice(0, mostShown)
}

const pageAddress = /\/c\/([\w-]{16,200})/g

/** An address opens a conversation, so it goes no further than the message it stands in. */
export const withoutAddresses = (text: string): string => text.replace(/\S*\/c\/[\w-]{16,200}\S*/g, '').trim()

/** Conversations that whoever talks here may read anyway: held with the same person, or opened by an address they pasted. */
const ownTalks = async (desk: Desk, shop: ShopStore, { id, text }: { readonly id: string; readonly text: string }) => {
  const talk = await shop.talks.of(id)
  const held = talk === null ? [] : (await shop.talks.ofPerson(talk.person)).map(({ conversation }) => conversation)
  const opened: string[] = []
  for (const [, token = ''] of text.matchAll(pageAddress)) {
    const holder = await shop.keys.read('customer', desk.ids.hash(token), desk.clock.real())
    if (holder !== null) opened.push(holder)
  }
  return [...new Set([...opened, ...held])].filter((one) => one !== id)
}

/** The newest signed order that this customer may see again; null when there is none, however well they know the team's name. */
export const ownEarlierOrder = async (
  desk: Desk,
  shop: ShopStore,
  { id, asks }: { readonly id: string; readonly asks: EarlierAsked },
): Promise<EarlierOrder | null> => {
  const talks = await ownTalks(desk, shop, { id, text: asks.text })
  const signed = await signedOf(shop, talks.slice(0, mostLookedAt).map(orderIdOf))
  return signed.find(isOf(asks.team)) ?? null
}

/** The draft is what was signed as long as nothing was said, shown or left open about the order since. */
const isAsSigned = ({ signed, shown, sent, open, asked }: Conversation): boolean =>
  signed !== null &&
  shown?.revision === signed.revision &&
  (sent === null || sent.revision === signed.revision) &&
  open.length === 0 &&
  (asked === null || ['complaint', 'cancel'].includes(asked.code))

/** What was said of an earlier order, to be taken over; null where it was forgotten, or changed after it was signed. */
export const earlierOf = async (
  shop: ShopStore,
  { orderId, revision }: Pick<EarlierOrder, 'orderId' | 'revision'>,
  asks: EarlierAsked,
): Promise<Earlier | null> => {
  const conversationId = (await shop.orders.read(orderId))?.conversationId ?? null
  const stored = conversationId === null ? null : await shop.conversations.read(conversationId)
  if (stored === null) return null
  const conversation = conversationFrom(stored.state)
  if (!isAsSigned(conversation) || conversation.signed?.revision !== revision) return null
  const { text, single, without } = asks
  return { from: { order: orderId, revision }, draft: conversation.draft, text: withoutAddresses(text), single, without }
}
