import KDBush from 'kdbush'
import type { StoneLayout, TextShape, VinylShape } from '../../../src/domain/layout/layout.ts'
import { vinylShape } from '../../../src/domain/layout/vinyl-shape.ts'

export type Place = readonly [x: number, y: number]

/** Every stone of a layout in the text's own axes. */
export const allStones = (layout: StoneLayout): readonly Place[] =>
  layout.pieces.flatMap(({ at, stones }) => stones.map(([x, y]): Place => [x + at[0], y + at[1]]))

/** Pairs nearer than the pitch, by kdbush. */
export const crowdedPairs = (stones: readonly Place[], pitch: number): number => {
  const index = new KDBush(Math.max(1, stones.length))
  for (const [x, y] of stones) index.add(x, y)
  if (stones.length === 0) index.add(0, 0)
  index.finish()
  let pairs = 0
  for (const [place, [x, y]] of stones.entries()) {
    for (const other of index.within(x, y, pitch)) {
      const found = stones[other]
      if (other <= place || found === undefined) continue
      if ((found[0] - x) ** 2 + (found[1] - y) ** 2 < pitch ** 2) pairs += 1
    }
  }
  return pairs
}

/** The distance of the two nearest stones, by looking at every pair. */
export const slowLeastDistance = (stones: readonly Place[]): number => {
  let least = Infinity
  for (const [index, [x, y]] of stones.entries())
    for (const [ox, oy] of stones.slice(index + 1)) least = Math.min(least, Math.hypot(ox - x, oy - y))
  return least
}

const bezier = (points: readonly { x: number; y: number }[], t: number): { x: number; y: number } => {
  if (points.length === 1) return points[0] ?? { x: 0, y: 0 }
  return bezier(
    points.slice(1).map((point, index) => {
      const before = points[index] ?? point
      return { x: before.x + (point.x - before.x) * t, y: before.y + (point.y - before.y) * t }
    }),
    t,
  )
}

/** The vinyl's edges as dense points, by De Casteljau. */
export const edgePoints = (vinyl: VinylShape, steps = 24): readonly Place[] =>
  vinyl.contours.flatMap((contour) => {
    let from = contour.start
    const points: Place[] = []
    const segments = [...contour.segments, { kind: 'line' as const, to: contour.start }]
    for (const segment of segments) {
      const controls =
        segment.kind === 'line'
          ? [from, segment.to]
          : segment.kind === 'quadratic'
            ? [from, segment.control, segment.to]
            : [from, segment.first, segment.second, segment.to]
      const long = Math.hypot(segment.to.x - from.x, segment.to.y - from.y)
      const count = Math.max(steps, Math.ceil(long / 300))
      for (let step = 0; step < count; step += 1) {
        const { x, y } = bezier(controls, step / count)
        points.push([x, y])
      }
      from = segment.to
    }
    return points
  })

/** Stones that come nearer to the vinyl's edge than they may, by the distance to dense points of the edge. */
export const stonesNearVinyl = (shape: TextShape, layout: StoneLayout, least: number): number => {
  const edge = edgePoints(vinylShape(shape, 'face'))
  const index = new KDBush(edge.length)
  for (const [x, y] of edge) index.add(x, y)
  index.finish()
  return allStones(layout).filter(([x, y]) =>
    index.within(x, y, least).some((found) => {
      const [ex = 0, ey = 0] = edge[found] ?? []
      return (ex - x) ** 2 + (ey - y) ** 2 < least ** 2
    }),
  ).length
}
