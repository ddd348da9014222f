import { toEdges } from './nearness.ts'
import { cyclic, item, type Point } from './point.ts'
import { common, type Polygon, type Region, regionBox, united } from './region.ts'

export const mirrorPoint = (axis: number, { x, y }: Point): Point => ({ x: 2 * axis - x, y })

/** The mirror image, with its edges turned so that outer edges stay anticlockwise. */
const mirrorRegion = (axis: number, region: Region): Region =>
  region.map((polygon) => polygon.map((point) => mirrorPoint(axis, point)).reverse())

/** The upright axis through the middle of the region's box, on a whole micrometre. */
export const axisOf = (region: Region): number => {
  const { left, right } = regionBox(region)
  return Math.round((left + right) / 2)
}

/** Whether no edge point lies farther than `most` from the mirror image's edge (the Hausdorff distance). */
export const isMirrored = (region: Region, axis: number, most: number): boolean => {
  const image = mirrorRegion(axis, region)
  return region.every((polygon) =>
    polygon.every((point, index) => {
      const next = cyclic(polygon, index + 1)
      const middle = { x: (point.x + next.x) / 2, y: (point.y + next.y) / 2 }
      return toEdges(point, image) <= most && toEdges(middle, image) <= most
    }),
  )
}

/** The region and its mirror image together: rows around it keep their room from either. */
export const mirroredOutside = (region: Region, axis: number): Region => united([...region, ...mirrorRegion(axis, region)])

/** What the region and its mirror image share: stones inside it keep their room from the edge of either. */
export const mirroredInside = (region: Region, axis: number): Region => common(region, mirrorRegion(axis, region))

const crossing = (axis: number, from: Point, to: Point): Point => ({
  x: axis,
  y: from.x === to.x ? from.y : from.y + ((axis - from.x) / (to.x - from.x)) * (to.y - from.y),
})

/** The stretch of a polygon left of the axis, ends on the axis; undefined when it does not cross exactly twice. */
export const leftHalf = (polygon: Polygon, axis: number): readonly Point[] | undefined => {
  const isLeft = polygon.map(({ x }) => x < axis)
  const entries = isLeft.flatMap((left, index) => (left && !cyclic(isLeft, index - 1) ? [index] : []))
  const [entry] = entries
  if (entries.length !== 1 || entry === undefined) return undefined
  const half: Point[] = [crossing(axis, cyclic(polygon, entry - 1), item(polygon, entry))]
  let index = entry
  while (cyclic(isLeft, index)) {
    half.push(cyclic(polygon, index))
    index += 1
  }
  half.push(crossing(axis, cyclic(polygon, index - 1), cyclic(polygon, index)))
  return half
}

/** The closed polygon made of a left half and its mirror image. */
export const closeHalf = (half: readonly Point[], axis: number): Polygon => [
  ...half,
  ...half
    .slice(1, -1)
    .map((point) => mirrorPoint(axis, point))
    .reverse(),
]
