import { cyclic, item, type Point } from '../geometry/point.ts'
import { perimeter, type Region, regionArea, regionBox } from '../geometry/region.ts'

/** Half the height of a triangle of the lattice, doubled: the distance from row to row. */
const ROW = Math.sqrt(3) / 2

const PHASES = 16

type Lattice = { readonly across: number; readonly up: number }

/** Stretches of a level line inside the region, as pairs of ends in order. */
const crossings = (region: Region, y: number): readonly number[] => {
  const found: number[] = []
  for (const polygon of region) {
    for (const [index, from] of polygon.entries()) {
      const to = cyclic(polygon, index + 1)
      if (from.y > y === to.y > y) continue
      found.push(from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x))
    }
  }
  return found.sort((a, b) => a - b)
}

type Rows = readonly { readonly y: number; readonly ends: readonly number[]; readonly odd: boolean }[]

const rowsFrom = (region: Region, pitch: number, up: number): Rows => {
  const { bottom, top } = regionBox(region)
  const step = pitch * ROW
  const rows: { y: number; ends: readonly number[]; odd: boolean }[] = []
  for (let row = 0; ; row += 1) {
    const y = bottom + up * step + row * step
    if (y > top) return rows
    rows.push({ y, ends: crossings(region, y), odd: row % 2 === 1 })
  }
}

/** Lattice places with a whole number of pitches from `origin` on even rows, half a pitch off on odd ones. */
const onRows = (rows: Rows, pitch: number, origin: number, take: (x: number, y: number) => void): void => {
  for (const { y, ends, odd } of rows) {
    const base = origin + (odd ? pitch / 2 : 0)
    for (let index = 0; index + 1 < ends.length; index += 2) {
      const [from, to] = [item(ends, index), item(ends, index + 1)]
      for (let x = base + Math.ceil((from - base) / pitch) * pitch; x <= to; x += pitch) take(x, y)
    }
  }
}

/** How many places `onRows` would take. */
const countOnRows = (rows: Rows, pitch: number, origin: number): number => {
  let count = 0
  for (const { ends, odd } of rows) {
    const base = origin + (odd ? pitch / 2 : 0)
    for (let index = 0; index + 1 < ends.length; index += 2) {
      const [from, to] = [item(ends, index), item(ends, index + 1)]
      count += Math.max(0, Math.floor((to - base) / pitch) - Math.ceil((from - base) / pitch) + 1)
    }
  }
  return count
}

/** Turns the plane by a quarter, so that a lattice turned by 30° (or 90°, the same) has level rows. */
const quarter = (region: Region): Region => region.map((polygon) => polygon.map(({ x, y }) => ({ x: y, y: -x })))

type Found = { readonly count: number; readonly turned: boolean; readonly lattice: Lattice }

const tryPhases = (region: Region, pitch: number, origins: readonly number[], turned: boolean): Found => {
  let best: Found = { count: -1, turned, lattice: { across: 0, up: 0 } }
  for (const up of upPhases(region, pitch)) {
    const rows = rowsFrom(region, pitch, up)
    for (const across of origins) {
      const count = countOnRows(rows, pitch, across)
      if (count > best.count) best = { count, turned, lattice: { across, up } }
    }
  }
  return best
}

/** Phases of the rows above the bottom edge: evenly spread, and the two that set a row or a gap on the middle. */
const upPhases = (region: Region, pitch: number): readonly number[] => {
  const { bottom, top } = regionBox(region)
  const middle = ((top - bottom) / 2 / (pitch * ROW)) % 1
  return [...Array.from({ length: PHASES }, (_, phase) => phase / PHASES), middle, (middle + 0.5) % 1]
}

const evenly = (from: number, to: number, pitch: number): readonly number[] => [
  ...Array.from({ length: PHASES }, (_, phase) => from + (phase / PHASES) * pitch),
  (from + to) / 2,
  (from + to + pitch) / 2,
]

/**
 * The fullest hexagonal lattice over a region of stone centres: 16 × 16 phases, and those that sit in its middle, in two rotations. With an axis only lattices
 * that are their own mirror image are tried.
 */
export const hexFill = (region: Region, pitch: number, axis?: number): readonly Point[] => {
  if (region.length === 0) return []
  const turnedRegion = quarter(region)
  const { left, right } = regionBox(region)
  const flat = tryPhases(region, pitch, axis === undefined ? evenly(left, right, pitch) : [axis, axis + pitch / 2], false)
  const points: Point[] = []
  if (axis !== undefined) {
    onRows(rowsFrom(region, pitch, flat.lattice.up), pitch, flat.lattice.across, (x, y) => points.push({ x, y }))
    return points
  }
  const turnedBox = regionBox(turnedRegion)
  const upright = tryPhases(turnedRegion, pitch, evenly(turnedBox.left, turnedBox.right, pitch), true)
  const { lattice } = upright.count > flat.count ? upright : flat
  if (upright.count > flat.count)
    onRows(rowsFrom(turnedRegion, pitch, lattice.up), pitch, lattice.across, (x, y) => points.push({ x: -y, y: x }))
  else onRows(rowsFrom(region, pitch, lattice.up), pitch, lattice.across, (x, y) => points.push({ x, y }))
  return points
}

/**
 * No more stones than this can stand with their centres in the region: (2/√3)·A/p² + P/(2p) + χ.
 * Oler 1961, Folkman and Graham 1969 (from memory).
 */
export const mostStones = (region: Region, pitch: number): number => {
  const around = region.reduce((sum, polygon) => sum + perimeter(polygon), 0)
  const euler = region.reduce((sum, polygon) => sum + (regionArea([polygon]) > 0 ? 1 : -1), 0)
  return (2 / Math.sqrt(3)) * (regionArea(region) / (pitch * pitch)) + around / (2 * pitch) + euler
}
