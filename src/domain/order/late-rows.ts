import type { Decoration, Order, Row } from './order.ts'

/** How far a roster line has come in the work. */
export type RowProgress = 'not-cut' | 'cut' | 'pressed' | 'bagged'

/**
 * A line that was changed after its work had begun. `piece`: its vinyl is cut and must be cut again; `garment`: it is pressed and needs a
 * new garment; `made`: it was taken off the list and stands made.
 */
export type LateRow = { readonly was: Row; readonly now: Row | null; readonly needs: 'piece' | 'garment' | 'made' }

const sameMarks = (a: Row, b: Row): boolean => a.garment === b.garment && a.number === b.number && a.name === b.name

/** The line of the later order that is the same player's: by marks, by number or name, then by its place. */
const laterRow = (was: Row, after: Order): Row | null => {
  const { roster } = after
  const named = roster.find((row) => sameMarks(was, row))
  if (named !== undefined) return named
  const placed = roster.find((row) => row.line === was.line && row.garment === was.garment)
  const known =
    placed !== undefined &&
    ((was.number !== undefined && placed.number === was.number) || (was.name !== undefined && placed.name === was.name))
  return known ? placed : null
}

const worn = (order: Order, row: Row): readonly Decoration[] =>
  order.decorations.filter(({ id, on }) => on.includes(row.garment) && !(row.without ?? []).includes(id))

/** What is cut for a row, apart from its size. */
const piecesOf = (order: Order, row: Row): string =>
  JSON.stringify([row.number ?? null, row.name ?? null, row.extras ?? [], worn(order, row)])

const growsWithSize = (order: Order, row: Row): boolean => worn(order, row).some(({ height }) => 'by' in height)

const garmentOf = (order: Order, row: Row): string =>
  JSON.stringify([order.garments.find(({ id }) => id === row.garment), row.fit, row.size])

const needs = (
  before: Order,
  after: Order,
  { was, now }: { readonly was: Row; readonly now: Row },
): 'piece' | 'garment' | null => {
  if (piecesOf(before, was) !== piecesOf(after, now)) return 'piece'
  if (garmentOf(before, was) === garmentOf(after, now)) return null
  return growsWithSize(after, now) ? 'piece' : 'garment'
}

/** The lines of a signed order that a later one changes although they are cut or pressed; what is not begun is free to change. */
export const lateRows = (before: Order, after: Order, progressOf: (line: number) => RowProgress): readonly LateRow[] =>
  before.roster.flatMap((was): readonly LateRow[] => {
    const progress = progressOf(was.line)
    if (progress === 'not-cut') return []
    const now = laterRow(was, after)
    if (now === null) return [{ was, now, needs: 'made' }]
    const need = needs(before, after, { was, now })
    if (need === null) return []
    if (progress === 'cut') return need === 'piece' ? [{ was, now, needs: 'piece' }] : []
    return [{ was, now, needs: 'garment' }]
  })
