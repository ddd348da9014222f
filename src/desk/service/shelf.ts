import type { Stock } from '../../domain/stock/stock.ts'
import type { Minutes } from '../../domain/units/units.ts'
import type { StockMove } from '../../ports/work-records.ts'
import type { Workshop } from '../work-out.ts'

/** The workshop with what lies on the shelf by the shop's moves, reservations taken off. */
export const withStock = (workshop: Workshop, sums: ReadonlyMap<string, number>): Workshop => {
  const { stock } = workshop.shop
  const free = (item: string): number => Math.max(0, sums.get(item) ?? 0)
  const present: Stock = {
    ...stock,
    stones: stock.stones.map((entry) => ({ ...entry, pieces: free(entry.material) })),
    vinyl: stock.vinyl.map((entry) => ({ ...entry, lengthMicrometres: free(entry.material) })),
  }
  return { ...workshop, shop: { ...workshop.shop, stock: present } }
}

/** The first moves of a shop: what its folder says lies on the shelf. */
export const seedMoves = (stock: Stock, at: Minutes): readonly StockMove[] =>
  [
    ...stock.stones.map(({ material, pieces }) => ({ item: material, amount: pieces })),
    ...stock.vinyl.map(({ material, lengthMicrometres }) => ({ item: material, amount: lengthMicrometres })),
  ].map((move) => ({ ...move, kind: 'seed', orderId: null, at }))
