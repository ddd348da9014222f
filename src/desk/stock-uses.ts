import type { Auxiliary } from '../domain/material/material.ts'
import type { ResolvedOrder } from '../domain/order/resolve.ts'
import { garmentItem } from '../domain/stock/item.ts'
import type { Counted } from './count.ts'
import type { Cuts, VinylCut } from './cut.ts'
import type { LaidApplication, LaidOut } from './lay-out.ts'

/** What one roster line takes from the shelf; line 0 is what the lines share: spare stones, the rest of a cut, sheets. */
export type StockUse = { readonly line: number; readonly item: string; readonly amount: number }

type Used = {
  readonly resolved: ResolvedOrder
  readonly laid: LaidOut
  readonly counted: Counted
  readonly cuts: Cuts
}

/** Tape overlaps the motif so far on every side (common practice: 20 mm). */
const tapeOverlapMicrometres = 20_000

const stoneUses = (applications: readonly LaidApplication[], counted: Counted): readonly StockUse[] => {
  const lines = applications.flatMap(({ application, drawing }) =>
    (drawing?.stones ?? []).map(({ layer, layout }) => ({
      line: application.line,
      item: layer.material.id,
      amount: layout.count * application.quantity,
    })),
  )
  return [...lines, ...counted.stones.map(({ material, line }) => ({ line: 0, item: material.id, amount: line.spare }))]
}

/** A cut's length is shared by its pieces; what does not divide belongs to nobody. */
const cutUses = ({ material, sheet, applications }: VinylCut): readonly StockUse[] => {
  const pieces = applications.reduce((sum, { application }) => sum + application.quantity, 0)
  const each = pieces === 0 ? 0 : Math.floor(sheet.usedLength / pieces)
  const lines = applications.map(({ application }) => ({
    line: application.line,
    item: material.id,
    amount: each * application.quantity,
  }))
  return [...lines, { line: 0, item: material.id, amount: sheet.usedLength - each * pieces }]
}

const garmentUses = ({ order, garments }: ResolvedOrder): readonly StockUse[] =>
  order.roster.flatMap((row) => {
    const garment = garments.find((one) => one.order.id === row.garment)
    if (garment === undefined || garment.order.from !== 'shop' || garment.record === null || row.size === 'later') return []
    const item = garmentItem({ garment: garment.record.id, colour: garment.order.colour, fit: row.fit, size: row.size })
    return [{ line: row.line, item, amount: row.quantity }]
  })

const tapeUses = (applications: readonly LaidApplication[], tape: Auxiliary | undefined): readonly StockUse[] =>
  tape === undefined
    ? []
    : applications.flatMap(({ application, drawing }) => {
        if (drawing === null || drawing.stones.length === 0) return []
        const { box } = drawing.shape
        const each = Math.ceil(box.top - box.bottom) + 2 * tapeOverlapMicrometres
        return [{ line: application.line, item: tape.id, amount: Math.abs(each) * application.quantity }]
      })

const added = (uses: readonly StockUse[]): readonly StockUse[] => {
  const sums = new Map<string, StockUse>()
  for (const use of uses) {
    const key = `${use.line} ${use.item}`
    sums.set(key, { ...use, amount: (sums.get(key)?.amount ?? 0) + use.amount })
  }
  return [...sums.values()].filter(({ amount }) => amount > 0)
}

/** What an order takes from the shelf, line by line: stones in pieces, vinyl and tape in µm of roll, garments and sheets by piece. */
export const stockUses = ({ resolved, laid, counted, cuts }: Used, auxiliaries: readonly Auxiliary[]): readonly StockUse[] => {
  const { applications } = laid
  const tape = auxiliaries.find(({ kind }) => kind === 'tape')
  const flock = auxiliaries.find(({ kind }) => kind === 'flock-sheet')
  const sheets = flock === undefined ? [] : [{ line: 0, item: flock.id, amount: cuts.templates.length }]
  return added([
    ...stoneUses(applications, counted),
    ...cuts.vinyl.flatMap(cutUses),
    ...garmentUses(resolved),
    ...tapeUses(applications, tape),
    ...sheets,
  ])
}
