import { cyclic, item, type Point } from './point.ts'
import { onRing, type Ring } from './ring.ts'

/** A place where a ring turns: `along` the ring, `turn` in radians (positive to the left). */
export type Corner = { readonly along: number; readonly turn: number }

/** Turns of less than this are bends. */
const SHARP = (20 * Math.PI) / 180

const turnAt = (before: Point, point: Point, after: Point): number => {
  const [ax, ay] = [point.x - before.x, point.y - before.y]
  const [bx, by] = [after.x - point.x, after.y - point.y]
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by)
}

/** Turning within half a window to both sides of each vertex. */
const gathered = (ring: Ring, turns: readonly number[], window: number): readonly number[] => {
  const count = turns.length
  return turns.map((_, index) => {
    const here = item(ring.way, index)
    let sum = item(turns, index)
    for (let back = index - 1; back > index - count; back -= 1) {
      const along = item(ring.way, ((back % count) + count) % count) - (back < 0 ? ring.length : 0)
      if (here - along > window / 2) break
      sum += cyclic(turns, back)
    }
    for (let on = index + 1; on < index + count; on += 1) {
      const along = item(ring.way, on % count) + (on >= count ? ring.length : 0)
      if (along - here > window / 2) break
      sum += cyclic(turns, on)
    }
    return sum
  })
}

type Sharp = { readonly along: number; readonly own: number; readonly sum: number }

const joinSharp = (ring: Ring, sharp: readonly Sharp[], window: number): readonly Corner[] => {
  const groups: Sharp[][] = []
  for (const vertex of sharp) {
    const group = groups.at(-1)
    const last = group?.at(-1)
    const near = last !== undefined && vertex.along - last.along <= window && Math.sign(vertex.sum) === Math.sign(last.sum)
    if (group !== undefined && near) group.push(vertex)
    else groups.push([vertex])
  }
  const [first, last] = [groups[0], groups.at(-1)]
  const [head, tail] = [first?.[0], last?.at(-1)]
  if (groups.length > 1 && first && last && head && tail) {
    const closes = head.along + ring.length - tail.along <= window && Math.sign(head.sum) === Math.sign(tail.sum)
    if (closes) {
      groups.shift()
      last.push(...first.map((vertex) => ({ ...vertex, along: vertex.along + ring.length })))
    }
  }
  return groups.map((group) => {
    const weight = group.reduce((sum, { own }) => sum + Math.abs(own), 0)
    const along = group.reduce((sum, vertex) => sum + vertex.along * Math.abs(vertex.own), 0) / weight
    const turn = group.reduce((most, { sum }) => (Math.abs(sum) > Math.abs(most) ? sum : most), 0)
    return { along: onRing(ring, along), turn }
  })
}

/** The corners of a ring, in order along it: more than 20° of turning within the window, one corner per cluster. */
export const cornersOf = (ring: Ring, window: number): readonly Corner[] => {
  const turns = ring.points.map((point, index) => turnAt(cyclic(ring.points, index - 1), point, cyclic(ring.points, index + 1)))
  const sums = gathered(ring, turns, window)
  const sharp = sums.flatMap((sum, index): Sharp[] => {
    const own = item(turns, index)
    if (Math.abs(sum) < SHARP || Math.abs(own) < 1e-6) return []
    return [{ along: item(ring.way, index), own, sum }]
  })
  return [...joinSharp(ring, sharp, window)].sort((a, b) => a.along - b.along)
}
