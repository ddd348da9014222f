import { createGrid } from '../geometry/grid.ts'
import { distance, type Point } from '../geometry/point.ts'
import { pointOn, type Ring } from '../geometry/ring.ts'
import type { CornerPlace } from './ring-stones.ts'

/** Of corners nearer to each other than the pitch only the sharpest can have its own stone; the others do not count. */
export const principalCorners = (corners: readonly CornerPlace[], pitch: number): readonly Point[] => {
  const order = corners.map((_, index) => index).sort((a, b) => (corners[b]?.turn ?? 0) - (corners[a]?.turn ?? 0) || a - b)
  const kept: Point[] = []
  for (const index of order) {
    const at = corners[index]?.at
    if (at !== undefined && kept.every((other) => distance(other, at) >= pitch)) kept.push(at)
  }
  return kept
}

/** Distance between the two nearest points; Infinity for fewer than two or when none are within two pitches. */
export const leastDistance = (points: readonly Point[], pitch: number): number => {
  const grid = createGrid(pitch * 2)
  for (const [id, point] of points.entries()) grid.add(id, point)
  return points.reduce((least, point, id) => Math.min(least, grid.room(point, id)), Infinity)
}

/** The largest distance, in pitches, from a place on the rings to its nearest stone. */
export const coverageOf = (rings: readonly Ring[], points: readonly Point[], pitch: number): number => {
  const grid = createGrid(pitch * 4)
  for (const [id, point] of points.entries()) grid.add(id, point)
  let worst = 0
  for (const ring of rings) {
    const samples = Math.max(1, Math.ceil(ring.length / (pitch / 6)))
    for (let sample = 0; sample < samples; sample += 1) {
      const room = grid.room(pointOn(ring, (sample / samples) * ring.length), -1)
      worst = Math.max(worst, Math.min(room, 4 * pitch))
    }
  }
  return worst / pitch
}

export const cornersHit = (corners: readonly Point[], points: readonly Point[], pitch: number): number =>
  corners.filter((corner) => points.some((point) => distance(corner, point) <= pitch / 2)).length
