import { lacking, type Need, type StockChange } from './ledger.ts'
import { packsFor } from './packs.ts'

/** How an item is bought: units (pieces, µm) in the smallest pack, packs on offer in that unit, and the days they take. */
export type Supply = { readonly unit: number; readonly packs: readonly number[]; readonly days: number }

/** Ordered and not here yet. */
export type Coming = { readonly item: string; readonly amount: number; readonly due: number }

/** What must be bought: for whom, in whole packs, and the last minute to order so that it is here when work begins. */
export type Errand = {
  readonly item: string
  readonly missing: number
  readonly packs: readonly number[]
  readonly amount: number
  readonly orders: readonly string[]
  readonly orderBy: number
}

export type ShoppingFacts = {
  readonly moves: readonly StockChange[]
  readonly needs: readonly Need[]
  readonly coming: readonly Coming[]
  readonly supply: (item: string) => Supply
  /** When work on an order first needs the item, epoch minutes. */
  readonly neededAt: (need: Need) => number
}

const dayMinutes = 1_440

const errandOf = (facts: ShoppingFacts, item: string): Errand | null => {
  const short = facts.needs.filter((need) => need.item === item && lacking(facts.moves, need) > 0)
  const lacks = short.reduce((sum, need) => sum + lacking(facts.moves, need), 0)
  const coming = facts.coming.filter((one) => one.item === item).reduce((sum, one) => sum + one.amount, 0)
  const missing = lacks - coming
  if (missing <= 0) return null
  const supply = facts.supply(item)
  const packs = packsFor(Math.ceil(missing / supply.unit), supply.packs)
  const amount = packs.reduce((sum, pack) => sum + pack * supply.unit, 0)
  const orderBy = Math.min(...short.map(facts.neededAt)) - supply.days * dayMinutes
  return { item, missing, packs, amount, orders: [...new Set(short.map(({ orderId }) => orderId))], orderBy }
}

/** The shopping list, what must be ordered first on top; what is on its way already is not bought twice. */
export const shoppingList = (facts: ShoppingFacts): readonly Errand[] =>
  [...new Set(facts.needs.map(({ item }) => item))]
    .flatMap((item) => errandOf(facts, item) ?? [])
    .toSorted((a, b) => a.orderBy - b.orderBy || a.item.localeCompare(b.item))
