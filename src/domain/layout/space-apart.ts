import type { ShapedGlyph } from '../face/face.ts'
import { changeContours, flatten, moved } from '../geometry/contour.ts'
import { regionGap } from '../geometry/nearness.ts'
import { item } from '../geometry/point.ts'
import type { Region } from '../geometry/region.ts'
import { flatHeight, type Glyphs } from './fit.ts'
import type { TextRequest } from './layout.ts'

/** Micrometres. */
const FLATNESS = 10

const polygonsOf = (glyph: ShapedGlyph, shift: number, flatness: number): Region =>
  changeContours(glyph.contours, moved({ x: shift, y: 0 })).map((contour) => flatten(contour, flatness))

type Spacing = { readonly least: number; readonly flatness: number }

/** How much farther right the second glyph must stand, in font units; each step moves it by the room still missing. */
const missingRoom = (left: ShapedGlyph, right: ShapedGlyph, { least, flatness }: Spacing): number => {
  let shift = 0
  for (let round = 0; round < 30; round += 1) {
    const gap = regionGap(polygonsOf(left, left.x, flatness), polygonsOf(right, right.x + shift, flatness), least)
    if (gap >= least - 0.01) return shift
    shift += Math.max(1, least - gap)
  }
  return shift
}

/** Room before each glyph so that neighbours' edges stand at least the asked gap apart. */
export const spaceApart = (request: TextRequest, glyphs: Glyphs): Glyphs => {
  const { leastGap, face, height, text } = request
  if (leastGap === undefined || leastGap <= 0) return glyphs
  const scale = height / flatHeight(face, text)
  const extra = glyphs.glyphs.map((glyph, index) => {
    if (index === 0) return 0
    const tracked = leastGap - (request.tracking ?? 0)
    return Math.ceil(
      missingRoom(item(glyphs.glyphs, index - 1), glyph, { least: tracked / scale, flatness: FLATNESS / scale }) * scale,
    )
  })
  return { ...glyphs, extra }
}
