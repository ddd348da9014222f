import type { Grid } from '../geometry/grid.ts'
import { mirrorPoint } from '../geometry/mirror.ts'
import type { Point } from '../geometry/point.ts'
import type { Ring } from '../geometry/ring.ts'

/** A stone on a row of a piece; `ring` numbers the row's ring within the piece. */
export type Placed = {
  readonly point: Point
  readonly row: number
  readonly ring: number
  readonly along: number
  readonly fixed: boolean
}

export type Rows = {
  readonly pitch: number
  /** Whether there is only cloth between rows that face each other, so that one stone may stand half way. */
  readonly facing: boolean
  /** With an axis every stone left of it has a twin right of it. */
  readonly axis: number | undefined
  readonly rings: readonly Ring[]
  /** Corners that are to keep a stone within half a pitch. */
  readonly corners: readonly Point[]
}

export const whole = ({ x, y }: Point): Point => ({ x: Math.round(x), y: Math.round(y) })

export type Table = { readonly rows: Rows; readonly grid: Grid; readonly stones: Map<number, Placed>; next: number }

export const twinOf = ({ axis }: Rows, point: Point): Point | undefined =>
  axis === undefined || point.x >= axis ? undefined : mirrorPoint(axis, point)

export const put = (table: Table, id: number, stone: Placed): void => {
  table.stones.set(id, stone)
  table.grid.add(id, stone.point)
  const twin = twinOf(table.rows, stone.point)
  if (twin !== undefined) table.grid.add(id, twin)
}

export const take = (table: Table, id: number): void => {
  table.stones.delete(id)
  table.grid.remove(id)
}

export const crowdsItself = ({ pitch, axis }: Rows, { x }: Point): boolean =>
  axis !== undefined && x < axis && 2 * (axis - x) < pitch

/** Whether a stone of this id could stand here: whole micrometres, a pitch from every other and from its own twin. */
export const isFree = (table: Table, point: Point, id: number): boolean => {
  const { pitch, axis } = table.rows
  if (axis !== undefined && point.x > axis) return false
  return !crowdsItself(table.rows, point) && table.grid.room(point, id) >= pitch
}
