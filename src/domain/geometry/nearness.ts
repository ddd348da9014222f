import { boxGap, boxOf, cyclic, type Point } from './point.ts'
import { common, type Polygon, type Region, regionBox } from './region.ts'

/** From a point to the stretch between two points. */
const toStretch = (point: Point, from: Point, to: Point): number => {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const long = dx * dx + dy * dy
  const share = long === 0 ? 0 : Math.max(0, Math.min(1, ((point.x - from.x) * dx + (point.y - from.y) * dy) / long))
  const [ex, ey] = [point.x - from.x - share * dx, point.y - from.y - share * dy]
  return Math.sqrt(ex * ex + ey * ey)
}

/** From a point to the nearest edge of the region. */
export const toEdges = (point: Point, region: Region): number => {
  let least = Infinity
  for (const polygon of region) {
    let previous = cyclic(polygon, -1)
    for (const next of polygon) {
      const apart = toStretch(point, previous, next)
      if (apart < least) least = apart
      previous = next
    }
  }
  return least
}

const verticesTo = (polygon: Polygon, other: Polygon, most: number): number => {
  let least = most
  const box = boxOf(other)
  for (const point of polygon) {
    if (boxGap(box, { left: point.x, right: point.x, top: point.y, bottom: point.y }) >= least) continue
    let previous = cyclic(other, -1)
    for (const next of other) {
      const clear =
        Math.min(previous.x, next.x) - point.x >= least ||
        point.x - Math.max(previous.x, next.x) >= least ||
        Math.min(previous.y, next.y) - point.y >= least ||
        point.y - Math.max(previous.y, next.y) >= least
      if (!clear) least = Math.min(least, toStretch(point, previous, next))
      previous = next
    }
  }
  return least
}

/** The room between two regions, 0 when they overlap; room wider than `most` is given as `most`. */
export const regionGap = (one: Region, two: Region, most: number): number => {
  let least = most
  for (const polygon of one) {
    const box = boxOf(polygon)
    for (const other of two) {
      if (boxGap(box, boxOf(other)) >= least) continue
      least = Math.min(least, verticesTo(polygon, other, least), verticesTo(other, polygon, least))
    }
  }
  return least > 0 && boxGap(regionBox(one), regionBox(two)) === 0 && common(one, two).length > 0 ? 0 : least
}
