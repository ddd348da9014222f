import { stoneSizes, type VinylClass } from '../domain/material/material.ts'
import type { ResolvedOrder } from '../domain/order/resolve.ts'
import type { PriceFacts } from '../domain/price/price.ts'
import type { Counted } from './count.ts'
import type { LaidApplication } from './lay-out.ts'

type Work = PriceFacts['work'][number]

const classesOf = (resolved: ResolvedOrder, decoration: string): readonly VinylClass[] =>
  (resolved.layers.get(decoration) ?? []).flatMap(({ layer }) => (layer.kind === 'vinyl' ? [layer.class] : []))

const kindOf = ({ application }: LaidApplication): Work['kind'] => {
  const { kind } = application.decoration.content
  return kind === 'number' || kind === 'name' ? kind : 'text'
}

const workOf = (resolved: ResolvedOrder, applications: readonly LaidApplication[]): readonly Work[] => {
  const counted = new Map<string, Work>()
  for (const laid of applications) {
    const classes = classesOf(resolved, laid.application.decoration.id)
    const kind = kindOf(laid)
    const key = JSON.stringify([kind, classes])
    const quantity = (counted.get(key)?.quantity ?? 0) + laid.application.quantity
    counted.set(key, { kind, classes, quantity })
  }
  return [...counted.values()]
}

const garmentsOf = (resolved: ResolvedOrder): PriceFacts['garments'] =>
  resolved.garments.map((garment) => ({
    garment: garment.order.from === 'customer' ? null : (garment.record?.id ?? null),
    quantity: resolved.order.roster.filter((row) => row.garment === garment.id).reduce((sum, row) => sum + row.quantity, 0),
  }))

const stonesOf = (count: Counted): PriceFacts['stones'] =>
  stoneSizes
    .map((size) => ({
      size,
      pieces: count.stones.filter(({ material }) => material.size === size).reduce((sum, { line }) => sum + line.pieces, 0),
    }))
    .filter((line) => line.pieces > 0)

/** What an order is charged for; templates already on the shelf (by their keys) cost nothing. */
export const priceFacts = (
  resolved: ResolvedOrder,
  applications: readonly LaidApplication[],
  means: { readonly count: Counted; readonly shelf: ReadonlySet<string>; readonly daysUntilNeeded: number },
): PriceFacts => {
  const cut = means.count.templates.filter((template) => !means.shelf.has(template.key))
  const names = cut.filter((template) => template.text.length > 1)
  return {
    garments: garmentsOf(resolved),
    work: workOf(resolved, applications),
    stones: stonesOf(means.count),
    templates: cut.length - names.length,
    nameTemplates: names.length,
    daysUntilNeeded: means.daysUntilNeeded,
  }
}
