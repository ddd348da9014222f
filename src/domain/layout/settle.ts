import { createGrid } from '../geometry/grid.ts'
import { item, type Point } from '../geometry/point.ts'
import { insideTest, type Region, regionBox } from '../geometry/region.ts'
import { onRing, pointOn, type Ring } from '../geometry/ring.ts'
import { guardCorners, shareCorners } from './share-corners.ts'
import { crowdsItself, isFree, type Placed, put, type Rows, type Table, take, whole } from './table.ts'

export type Settled = { readonly stones: readonly Placed[]; readonly moved: number; readonly removed: number }

const crowdOf = (table: Table, id: number): readonly number[] => {
  const stone = table.stones.get(id)
  if (stone === undefined) return []
  return [...new Set(table.grid.near(stone.point, table.rows.pitch))].filter((other) => other !== id)
}

/** Takes stones away until no two are nearer than the pitch: the most crowded first, corners and inner rows last. */
const thin = (table: Table, guards: ReadonlyMap<number, unknown>): void => {
  const crowds = new Map<number, Set<number>>()
  for (const [id, stone] of table.stones) {
    if (crowdsItself(table.rows, stone.point)) take(table, id)
  }
  for (const id of table.stones.keys()) {
    const crowd = crowdOf(table, id)
    if (crowd.length > 0) crowds.set(id, new Set(crowd))
  }
  while (crowds.size > 0) {
    let [worst, badness] = [-1, -Infinity]
    for (const [id, crowd] of crowds) {
      const stone = table.stones.get(id)
      const score = crowd.size * 8 + (stone?.row ?? 0) - (guards.has(id) ? 1000 : 0) - (stone?.fixed ? 12 : 0)
      if (score > badness) [worst, badness] = [id, score]
    }
    for (const other of crowds.get(worst) ?? []) {
      const crowd = crowds.get(other)
      crowd?.delete(worst)
      if (crowd?.size === 0) crowds.delete(other)
    }
    crowds.delete(worst)
    take(table, worst)
  }
}

const inOrder = (table: Table, ring: number): readonly (readonly [number, Placed])[] =>
  [...table.stones].filter(([, stone]) => stone.ring === ring).sort(([, a], [, b]) => a.along - b.along)

/** The free place on a stretch of row nearest to its middle. */
const freePlace = (table: Table, ring: Ring, from: number, to: number): { along: number; point: Point } | undefined => {
  const { pitch } = table.rows
  const middle = (from + to) / 2
  for (let out = 0; out <= (to - from) / 2; out += pitch / 12) {
    for (const along of [middle - out, middle + out]) {
      const point = whole(pointOn(ring, along))
      if (isFree(table, point, -1)) return { along: onRing(ring, along), point }
    }
  }
  return undefined
}

/** Puts stones into gaps of a row that have room for one; returns how many. */
const refill = (table: Table, ring: number): number => {
  const line = item(table.rows.rings, ring)
  const stones = inOrder(table, ring)
  let added = 0
  for (const [index, [, stone]] of stones.entries()) {
    const next = stones[index + 1]?.[1].along ?? (stones[0]?.[1].along ?? 0) + line.length
    if (next - stone.along < 1.98 * table.rows.pitch) continue
    const place = freePlace(table, line, stone.along, next)
    if (place === undefined) continue
    put(table, table.next, { ...stone, ...place, fixed: false })
    table.next += 1
    added += 1
  }
  return added
}

/** Moves loose stones toward the middle between their neighbours where that makes the larger gap smaller. */
const relax = (table: Table, ring: number, moved: Set<number>): void => {
  const line = item(table.rows.rings, ring)
  const stones = inOrder(table, ring)
  const count = stones.length
  if (count < 3) return
  for (const [index, [id, stone]] of stones.entries()) {
    if (stone.fixed) continue
    const before = item(stones, (index + count - 1) % count)[0]
    const after = item(stones, (index + 1) % count)[0]
    const [a, b] = [table.stones.get(before), table.stones.get(after)]
    if (a === undefined || b === undefined) continue
    const back = onRing(line, stone.along - a.along)
    const on = onRing(line, b.along - stone.along)
    if (Math.abs(on - back) < table.rows.pitch * 0.15 || Math.max(back, on) < 1.4 * table.rows.pitch) continue
    for (const share of [0.5, 0.25, 0.1]) {
      const along = stone.along + (on - back) * share
      const point = whole(pointOn(line, along))
      if (!isFree(table, point, id)) continue
      take(table, id)
      put(table, id, { ...stone, along: onRing(line, along), point })
      moved.add(id)
      break
    }
  }
}

/** Puts stones wherever the area still has room for one, from the bottom up. */
const fillHoles = (table: Table, area: Region): void => {
  const { pitch, axis } = table.rows
  const { left, right, bottom, top } = regionBox(area)
  const isWithin = insideTest(area)
  const step = pitch / 10
  const most = axis ?? right
  for (let y = bottom; y <= top; y += step) {
    for (let x = left; x <= most + 0.5; ) {
      const point = whole({ x: axis !== undefined && x > axis - step / 2 ? axis : x, y })
      const room = table.grid.room(point, -1)
      if (room < pitch || !isFree(table, point, -1) || !isWithin(point)) {
        x += Math.max(step, pitch - room)
        continue
      }
      put(table, table.next, { point, row: 0, ring: -1, along: 0, fixed: false })
      table.next += 1
      x += pitch
    }
  }
}

/**
 * Brings rows to rest: stones nearer than the pitch to another are taken away, gaps are refilled, loose stones evened out.
 * Stones come back on whole micrometres; with an axis only those left of it or on it. What is left of `area` is filled last.
 */
export const settle = (stones: readonly Placed[], rows: Rows, area: Region = []): Settled => {
  const table: Table = { rows, grid: createGrid(rows.pitch * 1.01), stones: new Map(), next: stones.length }
  for (const [id, stone] of stones.entries()) put(table, id, { ...stone, point: whole(stone.point) })
  const guards = guardCorners(table)
  if (rows.facing) shareCorners(table, guards)
  thin(table, guards)
  const removed = stones.length - table.stones.size
  const moved = new Set<number>()
  if (removed > 0) {
    for (let round = 0; round < 4; round += 1) {
      for (const ring of rows.rings.keys()) relax(table, ring, moved)
      const added = [...rows.rings.keys()].reduce((sum, ring) => sum + refill(table, ring), 0)
      if (added === 0) break
    }
  }
  if (area.length > 0) fillHoles(table, area)
  return { stones: [...table.stones.values()], moved: moved.size, removed }
}
