import { Clipper, ClipType, EndType, FillRule, JoinType, type Path64 } from 'clipper2-ts'
import { type Box, boxOf, cyclic, item, type Point } from './point.ts'

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

type Edge = { readonly from: Point; readonly to: Point }

const edgesOf = (region: Region): readonly Edge[] =>
  region.flatMap((polygon) => polygon.map((to, index) => ({ from: cyclic(polygon, index - 1), to })))

const crossesRay = ({ from, to }: Edge, { x, y }: Point): boolean =>
  to.y > y !== from.y > y && x < to.x + ((y - to.y) / (from.y - to.y)) * (from.x - to.x)

/** Even-odd by ray casting, for many places: edges are sorted into bands once. Points on the edge may fall either way. */
export const insideTest = (region: Region): ((place: Point) => boolean) => {
  const { bottom, top } = regionBox(region)
  const edges = edgesOf(region)
  const count = Math.max(1, Math.min(4_096, edges.length))
  const height = (top - bottom) / count || 1
  const bands: Edge[][] = Array.from({ length: count }, () => [])
  const bandAt = (y: number): number => Math.max(0, Math.min(count - 1, Math.floor((y - bottom) / height)))
  for (const edge of edges) {
    const last = bandAt(Math.max(edge.from.y, edge.to.y))
    for (let band = bandAt(Math.min(edge.from.y, edge.to.y)); band <= last; band += 1) bands[band]?.push(edge)
  }
  return (place) => {
    if (!(place.y >= bottom && place.y <= top)) return false
    let inside = false
    for (const edge of item(bands, bandAt(place.y))) if (crossesRay(edge, place)) inside = !inside
    return inside
  }
}

/** Even-odd by ray casting, for one place. */
export const isInside = (region: Region, place: Point): boolean =>
  edgesOf(region).reduce((inside, edge) => (crossesRay(edge, place) ? !inside : inside), false)

export const shiftRegion = (region: Region, by: Point): Region =>
  region.map((polygon) => polygon.map(({ x, y }) => ({ x: x + by.x, y: y + by.y })))
