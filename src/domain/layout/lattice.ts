import { cyclic, item, type Point } from '../geometry/point.ts'
import { type Region, regionBox } from '../geometry/region.ts'

/**
 * A hexagonal lattice: level rows turned by so many radians, the first `up` above the bottom of the turned region, places a
 * whole number of pitches from `across` on even rows and half a pitch off on odd ones.
 */
export type Lattice = { readonly turn: number; readonly up: number; readonly across: number; readonly count: number }

/** From row to row, in pitches. */
const ROW = Math.sqrt(3) / 2

const PHASES = 16

const turned = (points: readonly Point[], turn: number): readonly Point[] => {
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)]
  return points.map(({ x, y }) => ({ x: cosine * x - sine * y, y: sine * x + cosine * y }))
}

const turnedRegion = (region: Region, turn: number): Region => region.map((polygon) => turned(polygon, turn))

/** Stretches of a level line inside the region, as pairs of ends in order. */
const crossings = (region: Region, y: number): readonly number[] => {
  const found: number[] = []
  for (const polygon of region) {
    let from = cyclic(polygon, -1)
    for (const to of polygon) {
      if (from.y > y !== to.y > y) found.push(from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x))
      from = to
    }
  }
  return found.sort((a, b) => a - b)
}

type Rows = readonly { readonly y: number; readonly ends: readonly number[]; readonly odd: boolean }[]

const rowsFrom = (region: Region, pitch: number, up: number): Rows => {
  const { bottom, top } = regionBox(region)
  const rows: { y: number; ends: readonly number[]; odd: boolean }[] = []
  for (let row = 0, y = bottom + up; y <= top; row += 1, y += pitch * ROW)
    rows.push({ y, ends: crossings(region, y), odd: row % 2 === 1 })
  return rows
}

/** Calls back with the first and last place of each stretch of each row. */
const alongRows = (rows: Rows, pitch: number, across: number, take: (first: number, last: number, y: number) => void): void => {
  for (const { y, ends, odd } of rows) {
    const base = across + (odd ? pitch / 2 : 0)
    for (let index = 0; index + 1 < ends.length; index += 2) {
      const first = base + Math.ceil((item(ends, index) - base) / pitch) * pitch
      const last = base + Math.floor((item(ends, index + 1) - base) / pitch) * pitch
      if (last >= first) take(first, last, y)
    }
  }
}

const countOn = (rows: Rows, pitch: number, across: number): number => {
  let count = 0
  alongRows(rows, pitch, across, (first, last) => {
    count += Math.round((last - first) / pitch) + 1
  })
  return count
}

/** The places of a lattice that lie in the region. */
export const latticePlaces = (region: Region, pitch: number, { turn, up, across }: Lattice): readonly Point[] => {
  const points: Point[] = []
  alongRows(rowsFrom(turnedRegion(region, -turn), pitch, up), pitch, across, (first, last, y) => {
    for (let x = first; x <= last + pitch / 2; x += pitch) points.push({ x, y })
  })
  return turned(points, turn)
}

const spread = (from: number, length: number): readonly number[] =>
  Array.from({ length: PHASES }, (_, phase) => from + (phase / PHASES) * length)

/** Lattices of one direction: rows at sixteen heights and centred, places at sixteen phases and centred; the fullest of each height. */
const latticesAt = (region: Region, pitch: number, turn: number): readonly Lattice[] => {
  const level = turnedRegion(region, -turn)
  const { left, right, bottom, top } = regionBox(level)
  const step = pitch * ROW
  const half = ((top - bottom) / 2) % step
  const middle = (left + right) / 2
  return [...spread(0, step), half, (half + step / 2) % step].map((up) => {
    const rows = rowsFrom(level, pitch, up)
    return [...spread(left, pitch), middle, middle + pitch / 2]
      .map((across) => ({ turn, up, across, count: countOn(rows, pitch, across) }))
      .reduce((best, one) => (one.count > best.count ? one : best))
  })
}

/** Lattices that are their own mirror image: a place or a gap on the axis, or a whole row. */
const mirroredLattices = (region: Region, pitch: number, axis: number): readonly Lattice[] => {
  const { left, bottom, top } = regionBox(region)
  const [step, quarter] = [pitch * ROW, -Math.PI / 2]
  const level = spread(0, step).flatMap((up) => {
    const rows = rowsFrom(region, pitch, up)
    return [axis, axis + pitch / 2].map((across) => ({ turn: 0, up, across, count: countOn(rows, pitch, across) }))
  })
  const up = (axis - left) % step
  const rows = rowsFrom(turnedRegion(region, -quarter), pitch, up)
  const upright = spread(-top, pitch).map((across) => ({ turn: quarter, up, across, count: countOn(rows, pitch, across) }))
  return top > bottom ? [...level, ...upright] : level
}

/** Directions of the long straight edges, the longest first, as turns of less than 30°: those of level edges come first. */
const directions = (region: Region, pitch: number): readonly number[] => {
  const lengths = new Map<number, number>([[0, Infinity]])
  for (const polygon of region) {
    for (const [index, from] of polygon.entries()) {
      const to = cyclic(polygon, index + 1)
      const long = Math.hypot(to.x - from.x, to.y - from.y)
      const degrees = Math.round((Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI)
      const key = ((degrees % 30) + 30) % 30
      if (long > 2 * pitch) lengths.set(key, (lengths.get(key) ?? 0) + long)
    }
  }
  return [...lengths].sort(([, a], [, b]) => b - a).map(([degrees]) => (degrees * Math.PI) / 180)
}

/** So many directions are tried, each along the edge and across it. */
const DIRECTIONS = 3

/** Lattices worth trying over a region, the fullest first; with an axis only those that are their own mirror image. */
export const latticesOver = (region: Region, pitch: number, axis?: number): readonly Lattice[] => {
  if (region.length === 0) return []
  const found =
    axis === undefined
      ? directions(region, pitch)
          .slice(0, DIRECTIONS)
          .flatMap((turn) => [...latticesAt(region, pitch, turn), ...latticesAt(region, pitch, turn + Math.PI / 6)])
      : mirroredLattices(region, pitch, axis)
  return [...found].sort((a, b) => b.count - a.count)
}
