import { centreLines, type Line } from '../geometry/centre-line.ts'
import { type Polygon, regionBox } from '../geometry/region.ts'
import type { Ring } from '../geometry/ring.ts'
import { SHARED } from './evidence.ts'
import { lineStones } from './line-stones.ts'
import { type CornerPlace, isStub, mirroredRingStones, type RingStones, ringStones } from './ring-stones.ts'
import { type Row, separate } from './rows.ts'
import type { Placed } from './table.ts'

/** The pitch to lay out with, the least two stones may come to, and the axis of a piece that is laid out on one half and mirrored. */
export type Ways = { readonly pitch: number; readonly least: number; readonly axis: number | undefined }

/** Rows as they were laid, before stones that crowd each other are thinned out. */
export type Drawn = {
  readonly rings: Ring[]
  readonly corners: CornerPlace[]
  readonly placed: Placed[]
  /** Rows of which a ring was too short to be laid, by number. */
  readonly dropped: number[]
}

export const emptyDrawing = (): Drawn => ({ rings: [], corners: [], placed: [], dropped: [] })

const layRing = (polygon: Polygon, { pitch, axis }: Ways): RingStones | 'twin' | 'askew' => {
  if (axis === undefined) return ringStones(polygon, pitch)
  const { left, right } = regionBox([polygon])
  if (left > axis) return 'twin'
  if (right < axis) return ringStones(polygon, pitch)
  return mirroredRingStones(polygon, pitch, axis) ?? 'askew'
}

/** Adds one line of stones down the middle of each stroke of a narrow region. */
export const drawLines = (drawn: Drawn, lines: readonly Line[], ways: Ways, row: number): void => {
  const { axis, pitch } = ways
  for (const drawnLine of lines) {
    const { points, closed } = drawnLine
    const upright = axis !== undefined && points.every(({ x }) => Math.abs(x - axis) < pitch / 2)
    const line = upright ? points.map(({ y }) => ({ x: axis, y })) : points
    const laid = closed ? ringStones(line, pitch) : lineStones(line, pitch)
    const kept = axis === undefined ? laid.stones : laid.stones.filter(({ point }) => point.x <= axis)
    if (kept.length === 0) continue
    const ring = drawn.rings.length
    drawn.rings.push(laid.ring)
    drawn.placed.push(...kept.map((stone) => ({ ...stone, fixed: false, row, ring })))
  }
}

/** Lays all rows of a piece; false when a row of a mirrored piece does not mirror. */
export const drawRows = (drawn: Drawn, rows: readonly Row[], ways: Ways): boolean => {
  for (const [row, { rings, channels }] of rows.entries()) {
    for (const polygon of rings) {
      if (isStub(polygon, ways.pitch)) {
        drawn.dropped.push(row)
        continue
      }
      const laid = layRing(polygon, ways)
      if (laid === 'askew') return false
      if (laid === 'twin') continue
      drawn.placed.push(...laid.stones.map((stone) => ({ ...stone, row, ring: drawn.rings.length })))
      drawn.rings.push(laid.ring)
      drawn.corners.push(...laid.corners)
    }
    for (const channel of separate(channels)) {
      const lines = centreLines(channel, ways.pitch / 8, ways.pitch)
      drawLines(drawn, lines, ways, row + SHARED)
    }
  }
  return true
}
