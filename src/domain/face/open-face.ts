import { create, type Font, type Glyph } from 'fontkit'
import type { Contour } from '../geometry/contour.ts'
import { contoursBox } from '../geometry/contour.ts'
import { item } from '../geometry/point.ts'
import { ok, type Result, refuse } from '../result/result.ts'
import type { Face, ShapedGlyph } from './face.ts'
import { contoursFrom, withoutIslands } from './glyph-contours.ts'
import type { PackagedFace } from './listing.ts'
import type { FaceProblem } from './problems.ts'

type Part = { readonly font: Font; readonly glyphs: Map<string, readonly Contour[]> }

const readFont = (bytes: Uint8Array): Font => {
  const font = create(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength))
  if ('fonts' in font) throw new TypeError('a collection of several fonts')
  return font
}

const isZero = (glyph: Glyph): boolean => glyph.codePoints.length === 1 && glyph.codePoints[0] === 0x30

const glyphContours = (part: Part, glyph: Glyph): readonly Contour[] => {
  const key = isZero(glyph) ? 'zero' : String(glyph.id)
  const known = part.glyphs.get(key)
  if (known !== undefined) return known
  const drawn = contoursFrom(glyph.path.commands)
  const contours = isZero(glyph) ? withoutIslands(drawn) : drawn
  part.glyphs.set(key, contours)
  return contours
}

type Run = { readonly part: number; text: string }

const splitRuns = (parts: readonly Part[], text: string): readonly Run[] => {
  const runs: Run[] = []
  for (const character of text) {
    const part = parts.findIndex(({ font }) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0))
    const last = runs.at(-1)
    if (last !== undefined && (last.part === part || part < 0)) last.text += part < 0 ? '' : character
    else if (part >= 0) runs.push({ part, text: character })
  }
  return runs
}

const shapeText = (parts: readonly Part[], text: string): readonly ShapedGlyph[] => {
  const shaped: ShapedGlyph[] = []
  let pen = 0
  for (const run of splitRuns(parts, text)) {
    const part = item(parts, run.part)
    const laid = part.font.layout(run.text)
    for (const [index, glyph] of laid.glyphs.entries()) {
      const position = item(laid.positions, index)
      shaped.push({
        characters: String.fromCodePoint(...glyph.codePoints),
        glyph: `${run.part}.${glyph.id}${isZero(glyph) ? 'z' : ''}`,
        x: pen + position.xOffset,
        y: position.yOffset,
        advance: position.xAdvance,
        contours: glyphContours(part, glyph),
      })
      pen += position.xAdvance
    }
  }
  return shaped
}

const median = (values: readonly number[]): number =>
  values.length === 0
    ? 0
    : item(
        [...values].sort((a, b) => a - b),
        Math.floor((values.length - 1) / 2),
      )

const topOf = (contours: readonly Contour[]): number => (contours.length === 0 ? 0 : contoursBox(contours).top)

const faceOver = (listing: Pick<PackagedFace, 'id' | 'kind' | 'files'>, parts: readonly Part[]): Face => {
  const coverage = new Set(parts.flatMap(({ font }) => font.characterSet))
  const owner = (character: string): Part | undefined =>
    parts.find(({ font }) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0))
  const outline = (character: string): readonly Contour[] => {
    const part = owner(character)
    return part === undefined ? [] : glyphContours(part, part.font.glyphForCodePoint(character.codePointAt(0) ?? 0))
  }
  const flatCapital = median([...'HIE'].map((letter) => topOf(outline(letter))))
  return {
    id: listing.id,
    kind: listing.kind,
    fingerprint: listing.files.map(({ sha256 }) => sha256).join('+'),
    unitsPerEm: item(parts, 0).font.unitsPerEm,
    flatDigit: median([...'147'].map((digit) => topOf(outline(digit)))),
    flatCapital: item(parts, 0).font.capHeight || flatCapital,
    coverage,
    has: (character) => coverage.has(character.codePointAt(0) ?? -1),
    outline,
    advance: (character) => owner(character)?.font.glyphForCodePoint(character.codePointAt(0) ?? 0).advanceWidth ?? 0,
    shape: (text) => shapeText(parts, text),
  }
}

const openParts = (files: readonly Uint8Array[]): readonly Part[] => {
  const parts = files.map((bytes): Part => ({ font: readFont(bytes), glyphs: new Map() }))
  const units = new Set(parts.map(({ font }) => font.unitsPerEm))
  if (units.size !== 1) throw new TypeError('no file, or files of different units')
  return parts
}

/**
 * Opens the files of one face (TTF, OTF, WOFF) as one; `face-unreadable` when one is not a font or their units differ. The
 * library tells a broken file by throwing; it is caught here and nowhere else.
 */
export const openFace = (
  listing: Pick<PackagedFace, 'id' | 'kind' | 'files'>,
  files: readonly Uint8Array[],
): Result<Face, FaceProblem> => {
  try {
    return ok(faceOver(listing, openParts(files)))
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause)
    return refuse({ code: 'face-unreadable', at: '', severity: 'stop', facts: { face: listing.id, reason } })
  }
}
