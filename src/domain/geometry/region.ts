import { Clipper, ClipType, EndType, FillRule, JoinType, type Path64 } from 'clipper2-ts'
import { type Box, boxOf, cyclic, type Point } from './point.ts'

/** Whole micrometres, not closed by a repeated point; outer edges run anticlockwise, holes clockwise. */
export type Polygon = readonly Point[]

/** Polygons that do not cross: outer edges and holes. */
export type Region = readonly Polygon[]

const whole = ({ x, y }: Point): Point => ({ x: Math.round(x), y: Math.round(y) })

const toPaths = (polygons: Region): Path64[] => polygons.map((polygon) => polygon.map(whole))

/** Everything that any of the polygons winds round, as one region; overlaps and doubled edges are gone. */
export const united = (polygons: Region): Region => Clipper.union(toPaths(polygons), FillRule.NonZero)

export const without = (region: Region, cut: Region): Region =>
  Clipper.difference(toPaths(region), toPaths(cut), FillRule.NonZero)

export const common = (region: Region, other: Region): Region =>
  Clipper.booleanOp(ClipType.Intersection, toPaths(region), toPaths(other), FillRule.NonZero)

/** The region widened (or narrowed) all round; corners stay sharp up to a miter of 2. */
export const offset = (region: Region, by: number): Region =>
  Clipper.inflatePaths(toPaths(region), by, JoinType.Miter, EndType.Polygon, 2)

/** The region widened with round corners: every point within `by` of it. */
export const offsetRound = (region: Region, by: number): Region =>
  Clipper.inflatePaths(toPaths(region), by, JoinType.Round, EndType.Polygon, 2, 10)

/** Positive for an outer edge, negative for a hole (the shoelace formula). */
export const signedArea = (polygon: Polygon): number => {
  let twice = 0
  for (const [index, { x, y }] of polygon.entries()) {
    const next = cyclic(polygon, index + 1)
    twice += x * next.y - next.x * y
  }
  return twice / 2
}

export const regionArea = (region: Region): number => region.reduce((sum, polygon) => sum + signedArea(polygon), 0)

export const perimeter = (polygon: Polygon): number =>
  polygon.reduce((sum, { x, y }, index) => {
    const next = cyclic(polygon, index + 1)
    return sum + Math.hypot(next.x - x, next.y - y)
  }, 0)

export const regionBox = (region: Region): Box => boxOf(region.flat())

/** Only the outer edges: every counter closed. */
export const outerEdges = (region: Region): Region => united(region.filter((polygon) => signedArea(polygon) > 0))

/** Even-odd by ray casting; points on the edge may fall either way. */
export const isInside = (region: Region, { x, y }: Point): boolean => {
  let inside = false
  for (const polygon of region) {
    let previous = cyclic(polygon, -1)
    for (const point of polygon) {
      if (point.y > y !== previous.y > y) {
        const crossing = point.x + ((y - point.y) / (previous.y - point.y)) * (previous.x - point.x)
        if (x < crossing) inside = !inside
      }
      previous = point
    }
  }
  return inside
}

export const shiftRegion = (region: Region, by: Point): Region =>
  region.map((polygon) => polygon.map(({ x, y }) => ({ x: x + by.x, y: y + by.y })))
