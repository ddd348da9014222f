import { type Box, boxOf, item, type Point } from './point.ts'

export type Segment =
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'quadratic'; readonly control: Point; readonly to: Point }
  | { readonly kind: 'cubic'; readonly first: Point; readonly second: Point; readonly to: Point }

/** One closed curve; the last segment ends where the first begins, or a straight line closes it. */
export type Contour = { readonly start: Point; readonly segments: readonly Segment[] }

/** An affine change: x' = a·x + c·y + e, y' = b·x + d·y + f. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number]

export const moved = (by: Point): Affine => [1, 0, 0, 1, by.x, by.y]

export const applied = ([a, b, c, d, e, f]: Affine, { x, y }: Point): Point => ({ x: a * x + c * y + e, y: b * x + d * y + f })

const changeSegment = (change: Affine, segment: Segment): Segment => {
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', to: applied(change, segment.to) }
    case 'quadratic':
      return { kind: 'quadratic', control: applied(change, segment.control), to: applied(change, segment.to) }
    case 'cubic':
      return {
        kind: 'cubic',
        first: applied(change, segment.first),
        second: applied(change, segment.second),
        to: applied(change, segment.to),
      }
  }
}

/** The same curves after an affine change; quadratics stay quadratics. */
export const changeContours = (contours: readonly Contour[], change: Affine): readonly Contour[] =>
  contours.map((contour) => ({
    start: applied(change, contour.start),
    segments: contour.segments.map((segment) => changeSegment(change, segment)),
  }))

const flattenQuadratic = (from: Point, segment: Segment & { kind: 'quadratic' }, tolerance: number, into: Point[]): void => {
  const { control, to } = segment
  const bend = Math.hypot(from.x - 2 * control.x + to.x, from.y - 2 * control.y + to.y)
  const steps = Math.max(1, Math.ceil(Math.sqrt(bend / (4 * tolerance))))
  for (let step = 1; step < steps; step += 1) {
    const t = step / steps
    const u = 1 - t
    into.push({
      x: u * u * from.x + 2 * u * t * control.x + t * t * to.x,
      y: u * u * from.y + 2 * u * t * control.y + t * t * to.y,
    })
  }
  into.push(to)
}

const flattenCubic = (from: Point, segment: Segment & { kind: 'cubic' }, tolerance: number, into: Point[]): void => {
  const { first, second, to } = segment
  const bend = Math.max(
    Math.hypot(from.x - 2 * first.x + second.x, from.y - 2 * first.y + second.y),
    Math.hypot(first.x - 2 * second.x + to.x, first.y - 2 * second.y + to.y),
  )
  const steps = Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * tolerance))))
  for (let step = 1; step < steps; step += 1) {
    const t = step / steps
    const u = 1 - t
    const [w0, w1, w2, w3] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t]
    into.push({
      x: w0 * from.x + w1 * first.x + w2 * second.x + w3 * to.x,
      y: w0 * from.y + w1 * first.y + w2 * second.y + w3 * to.y,
    })
  }
  into.push(to)
}

/** A closed polygon that stays within `tolerance` micrometres of the curve; the first point is not repeated at the end. */
export const flatten = (contour: Contour, tolerance: number): readonly Point[] => {
  const points: Point[] = [contour.start]
  for (const segment of contour.segments) {
    const from = item(points, points.length - 1)
    if (segment.kind === 'line') points.push(segment.to)
    if (segment.kind === 'quadratic') flattenQuadratic(from, segment, tolerance, points)
    if (segment.kind === 'cubic') flattenCubic(from, segment, tolerance, points)
  }
  const last = item(points, points.length - 1)
  if (points.length > 1 && last.x === contour.start.x && last.y === contour.start.y) points.pop()
  return points
}

const FINE = 20

/** The box of the ink itself, not of the control points, to a fiftieth of a millimetre. */
export const contoursBox = (contours: readonly Contour[]): Box => boxOf(contours.flatMap((contour) => flatten(contour, FINE)))

export const fromPolygon = (polygon: readonly Point[]): Contour => ({
  start: item(polygon, 0),
  segments: polygon.slice(1).map((to) => ({ kind: 'line', to })),
})
