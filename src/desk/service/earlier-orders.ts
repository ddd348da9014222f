import type { ShopStore } from '../../ports/store.ts'
import { orderStates, type StoredOrder } from '../../ports/work-records.ts'
import { orderFrom } from './records.ts'

/** An order that was signed for a team, with the revision that was signed last. */
export type EarlierOrder = { readonly orderId: string; readonly revision: number; readonly needBy: string }

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

const signedFor = async (shop: ShopStore, { orderId }: StoredOrder, team: string): Promise<readonly EarlierOrder[]> => {
  const last = (await shop.orders.revisions(orderId)).findLast((one) => one.signed !== null && one.document !== null)
  if (last === undefined) return []
  const order = orderFrom(last.document)
  return words(order.team) === words(team) ? [{ orderId, revision: last.revision, needBy: order.needBy }] : []
}

/** The newest signed orders of a team, newest first. For the shop's eyes: a customer who names a team may be anybody. */
export const earlierOrders = async (
  shop: ShopStore,
  { team, but }: { readonly team: string; readonly but: string },
): Promise<readonly EarlierOrder[]> => {
  const all = await shop.orders.list(orderStates.filter((state) => !['asked', 'quoted', 'cancelled'].includes(state)))
  const found: EarlierOrder[] = []
  for (const order of all.slice(-mostLookedAt)) {
    if (order.orderId !== but) found.push(...(await signedFor(shop, order, team)))
  }
  return found.sort((a, b) => (a.needBy < b.needBy ? 1 : -1)).slice(0, mostShown)
}
