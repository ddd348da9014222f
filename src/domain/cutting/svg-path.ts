import type { Contour, Segment } from '../geometry/contour.ts'
import type { Point } from '../geometry/point.ts'

/** Turns a place on a sheet (µm, y up) into the two figures of a drawing (mm, y down). */
export type Pen = (point: Point) => string

/** A pen for a drawing whose top edge lies at `top` and left edge at `left`. */
export const penFrom = (left: number, top: number): Pen => {
  const figure = (value: number): string => String(Math.round(value) / 1000 + 0)
  return ({ x, y }) => `${figure(x - left)} ${figure(top - y)}`
}

const step = (pen: Pen, segment: Segment): string => {
  if (segment.kind === 'line') return `L${pen(segment.to)}`
  if (segment.kind === 'quadratic') return `Q${pen(segment.control)} ${pen(segment.to)}`
  return `C${pen(segment.first)} ${pen(segment.second)} ${pen(segment.to)}`
}

/** One closed path as SVG path data; curves stay curves. */
export const pathData = (contour: Contour, pen: Pen): string =>
  `M${pen(contour.start)}${contour.segments.map((segment) => step(pen, segment)).join('')}Z`
