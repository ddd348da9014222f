import type { PathCommand } from 'fontkit'
import type { Contour, Segment } from '../geometry/contour.ts'
import { flatten } from '../geometry/contour.ts'
import { cyclic, item, type Point } from '../geometry/point.ts'
import { isInside, signedArea } from '../geometry/region.ts'

const pointAt = (command: PathCommand, index: number): Point => ({
  x: item(command.args, index),
  y: item(command.args, index + 1),
})

const segmentOf = (command: PathCommand): Segment | undefined => {
  if (command.command === 'lineTo') return { kind: 'line', to: pointAt(command, 0) }
  if (command.command === 'quadraticCurveTo') return { kind: 'quadratic', control: pointAt(command, 0), to: pointAt(command, 2) }
  if (command.command === 'bezierCurveTo')
    return { kind: 'cubic', first: pointAt(command, 0), second: pointAt(command, 2), to: pointAt(command, 4) }
  return undefined
}

/**
 * A TrueType contour whose first and last points both lie off the curve starts with a quadratic that bulges: its control
 * point is the start itself. Without it the curve is right.
 */
const isBulge = (segment: Segment, start: Point): boolean =>
  segment.kind === 'quadratic' && segment.control.x === start.x && segment.control.y === start.y

/** Closed curves in font units from the drawing commands of a glyph. */
export const contoursFrom = (commands: readonly PathCommand[]): readonly Contour[] => {
  const contours: { start: Point; segments: Segment[] }[] = []
  for (const command of commands) {
    if (command.command === 'moveTo') contours.push({ start: pointAt(command, 0), segments: [] })
    const contour = contours.at(-1)
    const segment = segmentOf(command)
    if (contour === undefined || segment === undefined) continue
    if (contour.segments.length === 0 && isBulge(segment, contour.start)) continue
    contour.segments.push(segment)
  }
  return contours.filter(({ segments }) => segments.length > 1)
}

/** A zero drawn with a dot or bar in its counter loses it: an island of stones there reads as an 8 from the stands. */
export const withoutIslands = (contours: readonly Contour[]): readonly Contour[] => {
  const polygons = contours.map((contour) => flatten(contour, 1))
  return contours.filter((_, index) => {
    const polygon = item(polygons, index)
    const probe = cyclic(polygon, 0)
    const around = polygons.filter((other, place) => place !== index && isInside([other], probe))
    const largest = Math.max(0, ...around.map((other) => Math.abs(signedArea(other))))
    return around.length < 2 || largest === 0
  })
}
