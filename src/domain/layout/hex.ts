import type { Point } from '../geometry/point.ts'
import { perimeter, type Region, regionArea } from '../geometry/region.ts'
import { joinFills } from './join-fills.ts'
import { type Lattice, latticePlaces, latticesOver } from './lattice.ts'

/** A single lattice looks best: one that holds so much of the most that could stand is left alone. */
const GOOD = 0.9

/** Once more round the lattices finds places that the first round made free. */
const ROUNDS = 2

/**
 * A hexagonal fill of a region of stone centres: the fullest lattice, or where that leaves much room, several joined along
 * seams. With an axis the fill is its own mirror image and only its left half, axis included, is returned.
 */
export const hexFill = (region: Region, pitch: number, axis?: number): readonly Point[] => {
  const lattices = latticesOver(region, pitch, axis)
  const [fullest] = lattices
  if (fullest === undefined) return []
  const places = (lattice: Lattice): readonly Point[] =>
    latticePlaces(region, pitch, lattice).filter(({ x }) => axis === undefined || x <= axis + 0.5)
  if (fullest.count >= GOOD * mostStones(region, pitch)) return places(fullest)
  const fills = lattices.map(places)
  let joined = places(fullest)
  for (let round = 0; round < ROUNDS; round += 1) for (const fill of fills) joined = joinFills(joined, fill, pitch)
  return joined
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
