import type { Contour } from '../geometry/contour.ts'
import type { Face, FaceKind, ShapedGlyph } from './face.ts'

export type DrawnGlyph = { readonly advance: number; readonly contours: readonly Contour[] }

/** A face as plain data: what a limited worker hands over, so that nobody else has to open the file. Font units. */
export type DrawnFace = {
  readonly id: string
  readonly kind: FaceKind
  readonly fingerprint: string
  readonly unitsPerEm: number
  readonly flatDigit: number
  readonly flatCapital: number
  readonly glyphs: Readonly<Record<string, DrawnGlyph>>
  /** What is added between two characters, where it is not 0. */
  readonly kerning: Readonly<Record<string, number>>
}

/** Latin letters with marks, digits and the punctuation of names. */
const isWanted = (code: number): boolean =>
  (code >= 0x20 && code <= 0x24f) || (code >= 0x1e00 && code <= 0x1eff) || (code >= 0x2010 && code <= 0x2027)

const KERNED = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.-’'"]

const kerningOf = (face: Face): Readonly<Record<string, number>> => {
  const kerned = KERNED.filter((character) => face.has(character))
  const pairs: [string, number][] = []
  for (const left of kerned) {
    for (const right of kerned) {
      const [first, second] = face.shape(left + right)
      if (first === undefined || second === undefined || second.characters !== right) continue
      const added = second.x - face.advance(left)
      if (added !== 0) pairs.push([left + right, added])
    }
  }
  return Object.fromEntries(pairs)
}

/** Everything of an opened face that names and numbers need, as plain data; joining forms of scripts are left behind. */
export const drawFace = (face: Face): DrawnFace => {
  const characters = [...face.coverage].filter(isWanted).map((code) => String.fromCodePoint(code))
  const glyphs = characters.map((character): [string, DrawnGlyph] => [
    character,
    { advance: face.advance(character), contours: face.outline(character) },
  ])
  const { id, kind, fingerprint, unitsPerEm, flatDigit, flatCapital } = face
  return {
    id,
    kind,
    fingerprint,
    unitsPerEm,
    flatDigit,
    flatCapital,
    glyphs: Object.fromEntries(glyphs),
    kerning: kerningOf(face),
  }
}

/** A face over plain data. */
export const faceFrom = (drawn: DrawnFace): Face => {
  const { glyphs, kerning, ...rest } = drawn
  const glyph = (character: string): DrawnGlyph | undefined => (Object.hasOwn(glyphs, character) ? glyphs[character] : undefined)
  const shape = (text: string): readonly ShapedGlyph[] => {
    let pen = 0
    let before = ''
    return [...text].flatMap((character): ShapedGlyph[] => {
      const found = glyph(character)
      if (found === undefined) return []
      const x = pen + (Object.hasOwn(kerning, before + character) ? (kerning[before + character] ?? 0) : 0)
      pen = x + found.advance
      before = character
      return [{ characters: character, glyph: character, x, y: 0, advance: found.advance, contours: found.contours }]
    })
  }
  return {
    ...rest,
    coverage: new Set(Object.keys(glyphs).map((character) => character.codePointAt(0) ?? 0)),
    has: (character) => glyph(character) !== undefined,
    outline: (character) => glyph(character)?.contours ?? [],
    advance: (character) => glyph(character)?.advance ?? 0,
    shape,
  }
}
