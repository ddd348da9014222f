import { cornersOf } from '../geometry/corners.ts'
import { item, type Point } from '../geometry/point.ts'
import { pointOn, thereAndBack } from '../geometry/ring.ts'
import { anchorsFor, chooseSteps } from './anchors.ts'
import { placesOf, type RingStones } from './ring-stones.ts'
import { stonesOf } from './section.ts'

/** Stones along an open line: one at each end, equal chords between, corners kept where they have room. */
export const lineStones = (line: readonly Point[], pitch: number): RingStones => {
  const ring = thereAndBack(line)
  if (ring.length < pitch) {
    const point = item(line, Math.floor(line.length / 2))
    return { ring, corners: [], stones: [{ along: 0, point, fixed: true }] }
  }
  const half = ring.length / 2
  const corners = cornersOf(ring, pitch / 6).filter(({ along }) => along > pitch / 2 && along < half - pitch / 2)
  const anchors = anchorsFor(ring, corners, pitch).filter(({ along }) => along > 0 && along < half)
  const [start, end] = [
    { along: 0, serves: [], cost: 0 },
    { along: half, serves: [], cost: 0 },
  ]
  const steps = chooseSteps({ ring, pitch, corners, anchors, start, end })
  const fixed = new Set(anchors.map(({ along }) => along))
  const ways = steps.flatMap(({ from, to, section }) => stonesOf(ring, from, to, section).slice(0, -1))
  const all = steps.length === 0 ? [half / 2] : [...ways, half]
  return {
    ring,
    corners: placesOf(ring, corners),
    stones: all.map((along, index) => ({
      along,
      point: pointOn(ring, along),
      fixed: fixed.has(along) || along === item(all, 0) || index === all.length - 1,
    })),
  }
}
