import { type Contour, flatten } from '../geometry/contour.ts'
import { perimeter, regionArea, united } from '../geometry/region.ts'
import { type Micrometres, micrometres } from '../units/units.ts'
import type { TextShape } from './layout.ts'

const TOLERANCE = 20

/**
 * The stroke that a shape of this area and edge would have if it were drawn with one even pen: an open stroke of length L and
 * width w has area L·w and edge 2·L + 2·w, a closed one area L·w and edge 2·L.
 */
const evenPen = (area: number, edge: number, isOpen: boolean): number => {
  if (!isOpen) return (2 * area) / edge
  const half = edge / 2
  return (half - Math.sqrt(Math.max(0, half * half - 4 * area))) / 2
}

const strokeOfLetter = (contours: readonly Contour[]): number | null => {
  const region = united(contours.map((contour) => flatten(contour, TOLERANCE)))
  const edge = region.reduce((sum, polygon) => sum + perimeter(polygon), 0)
  if (edge === 0) return null
  return evenPen(regionArea(region), edge, region.length === 1)
}

/** The mean stroke of the thinnest letter of a text in µm, from area and edge of its outline; null for a text without ink. */
export const strokeOf = (shape: TextShape): Micrometres | null => {
  const strokes = shape.letters.flatMap(({ contours }) => strokeOfLetter(contours) ?? [])
  return strokes.length === 0 ? null : micrometres(Math.min(...strokes))
}
