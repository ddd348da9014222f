import { garmentItem } from '../../../domain/stock/item.ts'
import { pilesOf, type StockChange } from '../../../domain/stock/ledger.ts'
import type { Stock } from '../../../domain/stock/stock.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { ShelfTemplate, StockMove } from '../../../ports/stock-records.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Workshop } from '../../work-out.ts'
import { heldBy } from './keep-stock.ts'

/** The shelf as one order sees it: what others hold stands in nobody's name. */
export type Shelf = {
  readonly orderId: string
  readonly ledger: readonly StockChange[]
  readonly templates: readonly ShelfTemplate[]
}

export const readShelf = async (shop: ShopStore, orderId: string): Promise<Shelf> => {
  const [ledger, templates] = await Promise.all([shop.stock.ledger({ holders: [orderId] }), shop.stock.templates()])
  return { orderId, ledger, templates }
}

/** The workshop with what lies on the shelf for this order: what is free, and what is reserved to its own name. */
export const withStock = (workshop: Workshop, { orderId, ledger, templates }: Shelf): Workshop => {
  const { stock } = workshop.shop
  const piles = pilesOf(ledger)
  const own = heldBy(ledger, orderId)
  const there = (item: string): number => Math.max(0, piles.get(item)?.free ?? 0) + (own.get(item) ?? 0)
  const present: Stock = {
    ...stock,
    stones: stock.stones.map((entry) => ({ ...entry, pieces: there(entry.material) })),
    vinyl: stock.vinyl.map((entry) => ({ ...entry, lengthMicrometres: there(entry.material) })),
    garments: stock.garments.map((entry) => ({ ...entry, quantity: there(garmentItem(entry)) })),
    auxiliaries: stock.auxiliaries.map((entry) => ({ ...entry, amount: there(entry.item) })),
    templates: [...templates],
  }
  return { ...workshop, shop: { ...workshop.shop, stock: present } }
}

/** The first moves of a shop: what its folder says lies on the shelf; `lotOf` names the lot that a material's record is of. */
export const seedMoves = (stock: Stock, lotOf: (item: string) => string, at: Minutes): readonly StockMove[] =>
  [
    ...stock.stones.map(({ material, pieces }) => ({ item: material, amount: pieces })),
    ...stock.vinyl.map(({ material, lengthMicrometres }) => ({ item: material, amount: lengthMicrometres })),
    ...stock.garments.map((entry) => ({ item: garmentItem(entry), amount: entry.quantity })),
    ...stock.auxiliaries.map(({ item, amount }) => ({ item, amount })),
  ].map((move) => ({ ...move, lot: lotOf(move.item), kind: 'seed', orderId: null, at }))
