import type { Contour } from '../geometry/contour.ts'

/** One drawn glyph of a shaped text, in font units: `characters` is what it stands for, `x` and `y` where its origin lies. */
export type ShapedGlyph = {
  readonly characters: string
  /** Names the glyph within its face. */
  readonly glyph: string
  readonly x: number
  readonly y: number
  readonly advance: number
  readonly contours: readonly Contour[]
}

export type FaceKind = 'numeral' | 'script'

/** A typeface over its bytes: several files (latin, latin-ext) read as one. All lengths are font units, y up. */
export type Face = {
  readonly id: string
  readonly kind: FaceKind
  /** The SHA-256 sums of its files: what a layout's cache key rests on. */
  readonly fingerprint: string
  readonly unitsPerEm: number
  /** Height of the flat digits (1, 4, 7: no overshoot). */
  readonly flatDigit: number
  /** Height of the flat capitals. */
  readonly flatCapital: number
  readonly coverage: ReadonlySet<number>
  readonly has: (character: string) => boolean
  readonly outline: (character: string) => readonly Contour[]
  readonly advance: (character: string) => number
  /** Glyphs in reading order with kerning; characters the face lacks are left out (ask `lacking` first). */
  readonly shape: (text: string) => readonly ShapedGlyph[]
}
