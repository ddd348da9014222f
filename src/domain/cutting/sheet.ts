import type { Contour } from '../geometry/contour.ts'
import type { Box, Point } from '../geometry/point.ts'
import type { Micrometres } from '../units/units.ts'

export type Reads = 'backwards' | 'right'

/** Something drawn for the person at the bench, not cut: a line of text or a tick. */
export type Mark =
  | { readonly kind: 'text'; readonly at: Point; readonly height: number; readonly text: string }
  | { readonly kind: 'tick'; readonly from: Point; readonly to: Point }

export type Hole = { readonly at: Point; readonly radius: number }

/** One piece on a sheet, already mirrored or turned; the frame is its weeding box or the template's own edge. */
export type SheetPart = {
  readonly key: string
  readonly tag: string
  readonly turned: boolean
  readonly contours: readonly Contour[]
  readonly holes: readonly Hole[]
  readonly frame: Box
  readonly marks: readonly Mark[]
}

/** One file for the cutter: micrometres, x to the right, y up, the lower left corner of the material at 0, 0. */
export type Sheet = {
  readonly id: string
  readonly width: Micrometres
  readonly length: Micrometres
  readonly reads: Reads
  readonly parts: readonly SheetPart[]
  readonly marks: readonly Mark[]
}

/** What is printed on sheets; the caller brings the language. */
export type SheetWords = {
  readonly backwards: string
  readonly right: string
  readonly top: string
  readonly kerf: (micrometres: number) => string
  readonly blade: (micrometres: number) => string
}
