import { allot, consume, countTo, release, writeOff } from '../../../domain/stock/allot.ts'
import { freeLots, heldLots, type Need, type StockChange, total } from '../../../domain/stock/ledger.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'

/** Who moves stock, when and why. */
export type Hand = { readonly at: Minutes; readonly by: string; readonly why: string }
type Amount = { readonly item: string; readonly amount: number }
type Shelf = Amount & { readonly lot: string }

const write = (shop: ShopStore, changes: readonly StockChange[], hand: Hand): Promise<void> =>
  shop.stock.move(changes.map((change) => ({ ...change, ...hand })))

/** The ledger of what these needs are for, and of who has them. */
const ledgerOf = (shop: ShopStore, needs: readonly Need[]): Promise<readonly StockChange[]> =>
  needs.length === 0
    ? Promise.resolve([])
    : shop.stock.ledger({ items: itemsOf(needs), holders: needs.map(({ orderId }) => orderId) })

/** Whatever became free of these items goes to whoever lacks it, the earliest promise first. */
const settle = async (shop: ShopStore, items: readonly string[], hand: Hand): Promise<void> => {
  const needs = await shop.stock.lacking(items)
  await write(shop, allot(await ledgerOf(shop, needs), needs), hand)
}

const itemsOf = (rows: readonly { readonly item: string }[]): readonly string[] => [...new Set(rows.map(({ item }) => item))]

/** What uses of several lines come to, by item. */
export const byItem = (uses: readonly Amount[]): readonly Amount[] => {
  const sums = new Map<string, number>()
  for (const { item, amount } of uses) sums.set(item, (sums.get(item) ?? 0) + amount)
  return [...sums].map(([item, amount]) => ({ item, amount }))
}

type Own = Awaited<ReturnType<ShopStore['stock']['ofOrder']>>
type Kept = { readonly orderId: string; readonly keep: ReadonlyMap<string, number>; readonly moves: Own }

/** Answers the items of which something of the order's own moves was let go. */
const releaseAbove = async (shop: ShopStore, { orderId, keep, moves }: Kept, hand: Hand): Promise<readonly string[]> => {
  const own = moves.map((move) => ({ ...move, lot: move.lot ?? '' }))
  const changes = itemsOf(own).flatMap((item) => release(own, { orderId, item }, keep.get(item) ?? 0))
  await write(shop, changes, hand)
  return itemsOf(changes)
}

export type Wanted = { readonly orderId: string; readonly due: number; readonly uses: readonly Amount[] }

/**
 * An order wants exactly this from now on: what it holds beyond is let go, what is free is reserved, the rest is short. Everything
 * here runs inside a transaction that holds the shop's plan, so that stock has one hand at a time.
 */
export const wantStock = async (shop: ShopStore, { orderId, due, uses }: Wanted, hand: Hand): Promise<void> => {
  await shop.plan.alone()
  const wanted = byItem(uses)
  await shop.stock.want(
    orderId,
    wanted.map((need) => ({ ...need, due })),
  )
  const keep = new Map(wanted.map(({ item, amount }) => [item, amount]))
  const needs = wanted.filter(({ amount }) => amount > 0).map((need) => ({ ...need, orderId, due }))
  const [moves, ledger] = await Promise.all([shop.stock.ofOrder(orderId), ledgerOf(shop, needs)])
  const freed = await releaseAbove(shop, { orderId, keep, moves }, hand)
  // Nobody lacks what lies free: where nothing was let go, only this order can be given anything.
  await (freed.length === 0 ? write(shop, allot(ledger, needs), hand) : settle(shop, [...keep.keys(), ...freed], hand))
}

/** An order wants nothing any more. */
export const letStockGo = (shop: ShopStore, orderId: string, hand: Hand): Promise<void> =>
  wantStock(shop, { orderId, due: 0, uses: [] }, hand)

type Books = { readonly ledger: readonly StockChange[]; readonly needs: readonly Need[] }

/** The books that a use is written by; who else holds of its items, and until when, is read only when some of it must be lent. */
const booksFor = async (shop: ShopStore, { orderId, uses }: Omit<Wanted, 'due'>): Promise<Books> => {
  const own = await shop.stock.ledger({ items: itemsOf(uses), holders: [orderId] })
  const isThere = ({ item, amount }: Amount): boolean =>
    total(heldLots(own, { orderId, item })) + total(freeLots(own, item)) >= amount
  return uses.every(isThere) ? { ledger: own, needs: [] } : { ledger: await shop.stock.ledger(), needs: await shop.stock.needs() }
}

/** An order used so much: it wants that much less, and it is gone from the shelf. */
export const takeStock = async (shop: ShopStore, used: Omit<Wanted, 'due'>, hand: Hand): Promise<void> => {
  await shop.plan.alone()
  const { orderId } = used
  const taken = byItem(used.uses).filter(({ amount }) => amount > 0)
  const amounts = new Map(taken.map(({ item, amount }) => [item, amount]))
  const before = await shop.stock.wantedBy(orderId)
  const rest = before.map((need) => ({ ...need, amount: need.amount - (amounts.get(need.item) ?? 0) }))
  const { ledger, needs } = await booksFor(shop, { orderId, uses: taken })
  await write(
    shop,
    taken.flatMap(({ item, amount }) => consume(ledger, needs, { orderId, item, amount })),
    hand,
  )
  await shop.stock.want(
    orderId,
    rest.map(({ item, amount, due }) => ({ item, amount, due })),
  )
  const keep = new Map(rest.map(({ item, amount }) => [item, Math.max(0, amount)]))
  const freed = await releaseAbove(shop, { orderId, keep, moves: await shop.stock.ofOrder(orderId) }, hand)
  await settle(shop, [...new Set([...amounts.keys(), ...keep.keys(), ...freed])], hand)
}

/** An order wants more than before, for garments that are made again. */
export const wantMore = async (shop: ShopStore, more: Wanted, hand: Hand): Promise<void> => {
  await shop.plan.alone()
  const uses = [...(await shop.stock.wantedBy(more.orderId)), ...more.uses]
  await wantStock(shop, { ...more, uses }, hand)
}

/** A delivery, lot by lot. */
export const receiveStock = async (shop: ShopStore, { item, lot, amount }: Shelf, hand: Hand): Promise<void> => {
  await shop.plan.alone()
  await write(shop, [{ item, lot, amount, kind: 'arrive', orderId: null }], hand)
  await settle(shop, [item], hand)
}

/** Somebody counted a lot: the books follow the hand. */
export const countStock = async (shop: ShopStore, counted: Shelf, hand: Hand): Promise<void> => {
  await shop.plan.alone()
  await write(shop, countTo(await shop.stock.ledger(), await shop.stock.needs(), counted), hand)
  await settle(shop, [counted.item], hand)
}

export const writeStockOff = async (shop: ShopStore, gone: Shelf, hand: Hand): Promise<void> => {
  await shop.plan.alone()
  await write(shop, writeOff(await shop.stock.ledger(), await shop.stock.needs(), gone), hand)
  await settle(shop, [gone.item], hand)
}

/** What an order has reserved now, by item. */
export const heldBy = (ledger: readonly StockChange[], orderId: string): ReadonlyMap<string, number> => {
  const items = [...new Set(ledger.filter((move) => move.orderId === orderId).map(({ item }) => item))]
  return new Map(items.map((item) => [item, total(heldLots(ledger, { orderId, item }))]))
}
