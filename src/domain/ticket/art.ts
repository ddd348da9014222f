import type { Contour, Segment } from '../geometry/contour.ts'
import type { Box, Point } from '../geometry/point.ts'
import type { StoneLayout } from '../layout/layout.ts'

/** A colour as people read it and as a screen shows it. */
export type ColourShown = { readonly id: string; readonly name: string; readonly hex: string }

/** One layer as it is seen: a vinyl shape as an SVG path, or stones as circles. Whole µm, x right, y DOWN. */
export type Ink =
  | { readonly kind: 'vinyl'; readonly colour: ColourShown; readonly path: string }
  | {
      readonly kind: 'stones'
      readonly colour: ColourShown
      readonly diameterMicrometres: number
      readonly at: readonly (readonly [x: number, y: number])[]
    }

/** A drawn decoration, bottom layer first, in the axes of an SVG: whole µm, x right, y DOWN; paths fill by the non-zero rule. */
export type Art = {
  readonly box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number }
  readonly inks: readonly Ink[]
}

const flip = ({ x, y }: Point): string => `${Math.round(x)} ${Math.round(-y) + 0}`

const segmentPath = (segment: Segment): string => {
  switch (segment.kind) {
    case 'line':
      return `L${flip(segment.to)}`
    case 'quadratic':
      return `Q${flip(segment.control)} ${flip(segment.to)}`
    case 'cubic':
      return `C${flip(segment.first)} ${flip(segment.second)} ${flip(segment.to)}`
  }
}

/** The SVG path of contours drawn with y up; whole µm, y down. */
export const pathOf = (contours: readonly Contour[]): string =>
  contours.map((contour) => `M${flip(contour.start)}${contour.segments.map(segmentPath).join('')}Z`).join('')

/** The middles of all stones of a layout in µm, y down. */
export const stonesOf = (layout: StoneLayout): readonly (readonly [x: number, y: number])[] =>
  layout.pieces.flatMap((piece) =>
    piece.stones.map(([x, y]): readonly [number, number] => [piece.at[0] + x, -(piece.at[1] + y) + 0]),
  )

/** A box of the layout's axes (y up) in the axes of an art (y down). */
export const artBox = (box: Box): Art['box'] => ({
  left: Math.floor(box.left),
  top: Math.floor(-box.top),
  right: Math.ceil(box.right),
  bottom: Math.ceil(-box.bottom),
})
