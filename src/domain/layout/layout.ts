import type { Face } from '../face/face.ts'
import type { Contour } from '../geometry/contour.ts'
import type { Box, Point } from '../geometry/point.ts'
import type { Micrometres } from '../units/units.ts'
import type { LayoutProblem } from './problems.ts'

/** How stones are laid on or around letters. `outline` runs outside the vinyl, the other styles inside the letter. */
export type StoneStyle =
  | { readonly style: 'outline'; readonly rows: number; readonly contours: 'both' | 'outer' }
  | { readonly style: 'rows'; readonly rows: number }
  | { readonly style: 'solid' }
  | { readonly style: 'single-line' }

/** The pitch is hole + web. A row's centre line keeps edgeGap + hole/2 from the vinyl's edge. */
export type StoneSetting = {
  readonly size: string
  readonly hole: Micrometres
  readonly web: Micrometres
  readonly edgeGap: Micrometres
}

/** The rise of an arc is how far its middle stands above its ends; of a slope, how far its right end stands above its left. */
export type TextLine = { readonly kind: 'straight' } | { readonly kind: 'arc' | 'slope'; readonly rise: Micrometres }

export type TextRequest = {
  readonly face: Face
  readonly text: string
  /** Of the flat digit for numbers, of the flat capital for everything else. */
  readonly height: Micrometres
  readonly line?: TextLine
  /** Added between neighbours; may be negative. */
  readonly tracking?: Micrometres
  /** Neighbours' edges are tracked at least this far apart, as far as the width allows. */
  readonly leastGap?: Micrometres
  readonly fitWidth?: Micrometres
  /** Letters may be made smaller down to this height; without it they are not. */
  readonly leastHeight?: Micrometres
  /** Faces to name when this one lacks characters. */
  readonly offered?: readonly Face[]
}

/** Contours are relative to `at`; letters with one `form` have the same contours. */
export type Letter = {
  readonly text: string
  readonly form: string
  readonly at: Point
  readonly contours: readonly Contour[]
  readonly box: Box
}

export type TextFit = {
  readonly height: Micrometres
  readonly tracking: Micrometres
  readonly condensedPercent: number
}

/** Micrometres; x to the right from the left end of the baseline, y up. `box` is the ink's, in the same axes. */
export type TextShape = {
  readonly text: string
  readonly face: string
  readonly fingerprint: string
  readonly letters: readonly Letter[]
  readonly box: Box
  readonly width: Micrometres
  readonly height: Micrometres
  /** The stroke of the face's zero at this height; every letter of a face is filled by it. */
  readonly pen: Micrometres
  readonly fit: TextFit
  readonly notes: readonly LayoutProblem[]
}

/** What of a text is vinyl: the letters, the letters widened all round, or their block shadow. */
export type VinylForm =
  | 'face'
  | { readonly surround: Micrometres }
  | { readonly shadow: readonly [dx: Micrometres, dy: Micrometres] }

export type VinylShape = { readonly contours: readonly Contour[]; readonly box: Box }

export type Stone = readonly [x: Micrometres, y: Micrometres]

export type Evidence = {
  /** Between the centres of the two nearest stones; null with fewer than two. */
  readonly leastDistance: Micrometres | null
  /** The largest distance from a row's centre line to its nearest stone, in pitches. */
  readonly coverage: number
  /** Stones as a share of the most that could stand in the filled area; null where nothing is filled. */
  readonly fill: number | null
  readonly corners: number
  readonly cornersHit: number
  readonly rowsDropped: number
  readonly stonesMoved: number
  readonly mirrored: boolean
  readonly flags: readonly LayoutProblem[]
}

/** What the cache keeps of a piece; stones are relative to the piece's `at`. */
export type PieceStones = {
  readonly stones: readonly Stone[]
  readonly box: Box
  readonly evidence: Evidence
}

export type StonePiece = PieceStones & {
  readonly text: string
  readonly key: string
  readonly at: Stone
  readonly count: number
}

export type StoneLayout = {
  readonly setting: StoneSetting
  readonly style: StoneStyle
  readonly pieces: readonly StonePiece[]
  readonly count: number
  readonly flags: readonly LayoutProblem[]
}

/** Kept by the caller; a Map will do. Values are plain data and may be stored as JSON. */
export type LayoutCache = {
  get(key: string): PieceStones | undefined
  set(key: string, piece: PieceStones): unknown
}
