import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'

const rowsIn = (draft: Draft): number => Object.keys(draft.rows).length

/** Where the count that was said was the list's, a player taken off or put on changes it with the list; it is nobody's question. */
export const recount = (before: Draft, after: Draft): readonly Patch[] => {
  const [was, now] = [rowsIn(before), rowsIn(after)]
  if (was === 0 || now === 0 || was === now) return []
  const garments = Object.entries(after.garments).filter(([id, wish]) => wish.count === was && before.garments[id]?.count === was)
  return [
    ...(before.count === was && after.count === was ? [{ path: ['count'], value: now }] : []),
    ...garments.map(([id]): Patch => ({ path: ['garments', id, 'count'], value: now })),
  ]
}

/** "Scrap the hoodies": what was counted of a garment goes with it. */
export const goneWith = (before: Draft, after: Draft): readonly Patch[] =>
  Object.entries(after.tally).flatMap(([key, { garment }]): readonly Patch[] => {
    const isGone = garment !== undefined && before.garments[garment] !== undefined && after.garments[garment] === undefined
    return isGone && before.tally[key] !== undefined ? [{ path: ['tally', key], value: null }] : []
  })
