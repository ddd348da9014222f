import { readGarmentItem } from '../../../domain/stock/item.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredTicket } from '../../../ports/work-records.ts'
import type { StockUse } from '../../stock-uses.ts'
import type { Desk } from '../desk.ts'
import { quoteFrom } from '../records/records.ts'
import { byItem, takeStock } from './keep-stock.ts'

/** At which step of the work an item leaves the shelf for good. */
export type UsedAt = 'cut' | 'brush' | 'press'

/** What a ticket's revision takes from the shelf, line by line, as its quote kept it. */
export const usesOf = async (shop: ShopStore, { orderId, revision }: StoredTicket): Promise<readonly StockUse[]> => {
  const document = await shop.orders.revision(orderId, revision)
  const stored = document === null ? null : await shop.quotes.read({ orderId, revision, hash: document.hash })
  return stored === null || stored === undefined ? [] : quoteFrom(stored).stock
}

/** Vinyl and sheets go at the cutter, stones and tape at the brush, garments at the press. */
export const usedAt = (desk: Desk, item: string): UsedAt => {
  if (readGarmentItem(item) !== null) return 'press'
  const { stones, auxiliaries } = desk.workshop.shop
  const tape = auxiliaries.some(({ id, kind }) => id === item && kind === 'tape')
  return tape || stones.some(({ id }) => id === item) ? 'brush' : 'cut'
}

type Taking = { readonly ticket: StoredTicket; readonly by: string }

/** Some lines went through a step: what they take there is used. */
export const useAt = async (
  desk: Desk,
  shop: ShopStore,
  taking: Taking & { readonly step: UsedAt; readonly lines: readonly number[] },
): Promise<void> => {
  const { ticket, by, step, lines } = taking
  const uses = (await usesOf(shop, ticket)).filter((use) => lines.includes(use.line) && usedAt(desk, use.item) === step)
  const wanted = new Map((await shop.stock.wantedBy(ticket.orderId)).map((need) => [need.item, need.amount]))
  const still = byItem(uses).map(({ item, amount }) => ({ item, amount: Math.min(amount, wanted.get(item) ?? 0) }))
  await takeStock(shop, { orderId: ticket.orderId, uses: still }, { at: desk.clock.now(), by, why: step })
}

/** The work is checked: what it still wanted is used, spare stones go back into their bin. */
export const useRest = async (desk: Desk, shop: ShopStore, { ticket, by }: Taking): Promise<void> => {
  const { orderId } = ticket
  const hand = { at: desk.clock.now(), by, why: 'checked' }
  const isSpare = ({ line, item }: StockUse): boolean => line === 0 && usedAt(desk, item) === 'brush'
  const spare = new Map(byItem((await usesOf(shop, ticket)).filter(isSpare)).map(({ item, amount }) => [item, amount]))
  const wanted = await shop.stock.wantedBy(orderId)
  const uses = wanted.map(({ item, amount }) => ({ item, amount: Math.max(0, amount - (spare.get(item) ?? 0)) }))
  await takeStock(shop, { orderId, uses }, hand)
  await shop.stock.want(orderId, [])
  await takeStock(shop, { orderId, uses: [] }, hand)
}
