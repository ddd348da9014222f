import { type Corner, cornersOf } from '../geometry/corners.ts'
import { closeHalf, leftHalf } from '../geometry/mirror.ts'
import { distance, item, type Point } from '../geometry/point.ts'
import { type Polygon, regionBox } from '../geometry/region.ts'
import { onRing, pointOn, type Ring, ringOf } from '../geometry/ring.ts'
import { type Anchor, anchorsFor, chooseSteps, type Step } from './anchors.ts'
import { chooseHalf } from './half.ts'
import { longestSection, stonesOf } from './section.ts'

/** A stone still tied to its row: `along` the ring it stands on; a fixed one marks a corner. */
export type RowStone = { readonly along: number; readonly point: Point; readonly fixed: boolean }

/** A corner of a row and how sharply the row turns there, in radians. */
export type CornerPlace = { readonly at: Point; readonly turn: number }

export type RingStones = {
  readonly ring: Ring
  readonly corners: readonly CornerPlace[]
  /** Mirrored rings list only stones left of the axis or on it. */
  readonly stones: readonly RowStone[]
}

export const placesOf = (ring: Ring, corners: readonly Corner[]): readonly CornerPlace[] =>
  corners.map(({ along, turn }) => ({ at: pointOn(ring, along), turn: Math.abs(turn) }))

const topmost = (polygon: Polygon): number => {
  let best = 0
  for (const [index, point] of polygon.entries()) {
    const top = item(polygon, best)
    if (point.y > top.y || (point.y === top.y && point.x < top.x)) best = index
  }
  return best
}

const fromSteps = (ring: Ring, steps: readonly Step[], anchors: readonly Anchor[]): readonly RowStone[] => {
  const fixed = new Set(anchors.filter(({ serves }) => serves.length > 0).map(({ along }) => onRing(ring, along)))
  return steps.flatMap(({ from, to, section }) =>
    stonesOf(ring, from, to, section)
      .slice(0, -1)
      .map((along) => ({ along: onRing(ring, along), point: pointOn(ring, along), fixed: fixed.has(onRing(ring, along)) })),
  )
}

const smoothRing = (ring: Ring, pitch: number): readonly RowStone[] => {
  const section = longestSection(ring, 0, ring.length, pitch)
  if (section === undefined) return []
  const anchor = { along: 0, serves: [], cost: 0 }
  return fromSteps(ring, [{ from: 0, to: ring.length, section }], [anchor])
}

/** The anchor to begin with: the sharpest corner that no other crowds. */
const firstAnchor = (ring: Ring, anchors: readonly Anchor[], sharpness: (anchor: Anchor) => number, pitch: number): Anchor => {
  const crowded = (anchor: Anchor): boolean =>
    anchors.some((other) => other !== anchor && distance(pointOn(ring, other.along), pointOn(ring, anchor.along)) < pitch)
  return anchors.reduce((best, anchor) => {
    const better =
      (crowded(best) && !crowded(anchor)) || (crowded(best) === crowded(anchor) && sharpness(anchor) > sharpness(best) + 1e-6)
    return better ? anchor : best
  })
}

/** Stones along one closed row, none nearer along the row than the pitch, a stone on every corner that has room. */
export const ringStones = (polygon: Polygon, pitch: number): RingStones => {
  const ring = ringOf(polygon, topmost(polygon))
  const corners = cornersOf(ring, pitch / 6)
  const points = placesOf(ring, corners)
  if (corners.length === 0) return { ring, corners: points, stones: smoothRing(ring, pitch) }
  const anchors = anchorsFor(ring, corners, pitch)
  const start = firstAnchor(
    ring,
    anchors,
    ({ serves }) => serves.reduce((sum, index) => sum + Math.abs(item(corners, index).turn), 0),
    pitch,
  )
  const turned = anchors
    .filter((anchor) => anchor !== start)
    .map((anchor) => ({ ...anchor, along: anchor.along < start.along ? anchor.along + ring.length : anchor.along }))
    .sort((a, b) => a.along - b.along)
  const end = { ...start, along: start.along + ring.length }
  const steps = chooseSteps({ ring, pitch, corners, anchors: turned, start, end })
  return { ring, corners: points, stones: steps.length === 0 ? smoothRing(ring, pitch) : fromSteps(ring, steps, anchors) }
}

/** Anchors within rounding of the axis stand on it. */
const onAxis = (ring: Ring, anchor: Anchor, pitch: number): Anchor => {
  const near = pitch / 40
  if (anchor.along < near || anchor.along > ring.length - near) return { ...anchor, along: 0 }
  return Math.abs(anchor.along - ring.length / 2) < near ? { ...anchor, along: ring.length / 2 } : anchor
}

/** The same for a row that is its own mirror image; undefined when the row does not cross the axis exactly twice. */
export const mirroredRingStones = (polygon: Polygon, pitch: number, axis: number): RingStones | undefined => {
  const half = leftHalf(polygon, axis)
  if (half === undefined) return undefined
  const ring = ringOf(closeHalf(half, axis))
  const corners = cornersOf(ring, pitch / 6)
  const anchors = anchorsFor(ring, corners, pitch)
    .map((anchor) => onAxis(ring, anchor, pitch))
    .sort((a, b) => a.along - b.along)
  const steps = chooseHalf({ ring, pitch, corners, anchors })
  const ways = steps.length === 0 ? smoothRing(ring, pitch) : fromSteps(ring, steps, anchors)
  const seen = new Set<string>()
  const stones = ways.flatMap((stone): RowStone[] => {
    const x = Math.abs(stone.point.x - axis) < 3 ? axis : Math.round(stone.point.x)
    const point = { x, y: Math.round(stone.point.y) }
    const key = `${x} ${point.y}`
    if (x > axis || seen.has(key)) return []
    seen.add(key)
    return [{ ...stone, point }]
  })
  return { ring, corners: placesOf(ring, corners), stones }
}

/** Whether the row is too short to be told from a lone stone: under four pitches. */
export const isStub = (polygon: Polygon, pitch: number): boolean => {
  const { left, right, top, bottom } = regionBox([polygon])
  return 2 * (right - left + top - bottom) < 4 * pitch || ringOf(polygon).length < 4 * pitch
}
