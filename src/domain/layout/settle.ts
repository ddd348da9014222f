import { createGrid, type Grid } from '../geometry/grid.ts'
import { mirrorPoint } from '../geometry/mirror.ts'
import { distance, item, type Point } from '../geometry/point.ts'
import { isInside, type Region, regionBox } from '../geometry/region.ts'
import { onRing, pointOn, type Ring } from '../geometry/ring.ts'

/** A stone on a row of a piece; `ring` numbers the row's ring within the piece. */
export type Placed = {
  readonly point: Point
  readonly row: number
  readonly ring: number
  readonly along: number
  readonly fixed: boolean
}

export type Rows = {
  readonly pitch: number
  /** With an axis every stone left of it has a twin right of it. */
  readonly axis: number | undefined
  readonly rings: readonly Ring[]
}

export type Settled = { readonly stones: readonly Placed[]; readonly moved: number; readonly removed: number }

type Table = { readonly rows: Rows; readonly grid: Grid; readonly stones: Map<number, Placed>; next: number }

const twinOf = ({ axis }: Rows, point: Point): Point | undefined =>
  axis === undefined || point.x >= axis ? undefined : mirrorPoint(axis, point)

const put = (table: Table, id: number, stone: Placed): void => {
  table.stones.set(id, stone)
  table.grid.add(id, stone.point)
  const twin = twinOf(table.rows, stone.point)
  if (twin !== undefined) table.grid.add(id, twin)
}

const take = (table: Table, id: number): void => {
  table.stones.delete(id)
  table.grid.remove(id)
}

const crowdsItself = ({ pitch, axis }: Rows, { x }: Point): boolean => axis !== undefined && x < axis && 2 * (axis - x) < pitch

/** Whether a stone of this id could stand here: whole micrometres, a pitch from every other and from its own twin. */
const isFree = (table: Table, point: Point, id: number): boolean => {
  const { pitch, axis } = table.rows
  if (axis !== undefined && point.x > axis) return false
  return !crowdsItself(table.rows, point) && table.grid.room(point, id) >= pitch
}

const crowdOf = (table: Table, id: number): readonly number[] => {
  const stone = table.stones.get(id)
  if (stone === undefined) return []
  return [...new Set(table.grid.near(stone.point, table.rows.pitch))].filter((other) => other !== id)
}

/** Takes stones away until no two are nearer than the pitch: the most crowded first, corners and inner rows last. */
const thin = (table: Table): void => {
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
      const score = crowd.size * 8 + (stone?.row ?? 0) - (stone?.fixed ? 12 : 0)
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

const whole = ({ x, y }: Point): Point => ({ x: Math.round(x), y: Math.round(y) })

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
  const step = pitch / 10
  const most = axis ?? right
  for (let y = bottom; y <= top; y += step) {
    for (let x = left; x <= most + 0.5; x += step) {
      const point = whole({ x: axis !== undefined && x > axis - step / 2 ? axis : x, y })
      if (!isFree(table, point, -1) || !isInside(area, point)) continue
      put(table, table.next, { point, row: 0, ring: -1, along: 0, fixed: false })
      table.next += 1
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
  thin(table)
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
