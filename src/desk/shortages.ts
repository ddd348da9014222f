import { packsFor } from '../domain/stock/packs.ts'
import type { Stock } from '../domain/stock/stock.ts'
import type { Counted } from './count.ts'
import type { VinylCut } from './cut.ts'

/** What the shelf does not cover: pieces of stones or µm of roll, what to order in whole packs, and the days it takes. */
export type Shortage = {
  readonly material: string
  readonly kind: 'stones' | 'vinyl'
  readonly missing: number
  readonly packs: readonly number[]
  readonly days: number
}

const sum = (amounts: readonly number[]): number => amounts.reduce((total, amount) => total + amount, 0)

const stoneShortages = (counted: Counted, stock: Stock): readonly Shortage[] =>
  counted.stones.flatMap(({ material, line }) => {
    const shelf = sum(stock.stones.filter((entry) => entry.material === material.id).map((entry) => entry.pieces))
    const missing = line.pieces + line.spare - shelf
    if (missing <= 0) return []
    const packs = packsFor(Math.ceil(missing / 144), stock.supply.stonePackGross)
    return [{ material: material.id, kind: 'stones', missing, packs, days: stock.supply.stoneDays }]
  })

const vinylShortages = (cuts: readonly VinylCut[], stock: Stock): readonly Shortage[] =>
  cuts.flatMap(({ material, sheet }) => {
    const shelf = sum(stock.vinyl.filter((entry) => entry.material === material.id).map((entry) => entry.lengthMicrometres))
    const missing = sheet.usedLength - shelf
    if (missing <= 0) return []
    const rolls = Math.ceil(missing / material.rollLengthMicrometres)
    return [{ material: material.id, kind: 'vinyl', missing, packs: [rolls], days: stock.supply.vinylDays }]
  })

/** What must be ordered before the work can be done. */
export const shortages = (counted: Counted, cuts: readonly VinylCut[], stock: Stock): readonly Shortage[] => [
  ...stoneShortages(counted, stock),
  ...vinylShortages(cuts, stock),
]
