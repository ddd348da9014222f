import type { Face, ShapedGlyph } from '../face/face.ts'
import { contoursBox } from '../geometry/contour.ts'
import { type Box, isEmptyBox } from '../geometry/point.ts'
import { ok, type Result, refuse } from '../result/result.ts'
import { type Micrometres, micrometres } from '../units/units.ts'
import type { TextFit, TextRequest } from './layout.ts'
import type { LayoutProblem } from './problems.ts'

/** How far block letters may be drawn together, as a share of their height, before they are condensed. Common practice. */
const TIGHTEST = 0.02
/** Letters narrower than this look squeezed from the stands. Common practice. */
const LEAST_CONDENSED = 85
/** Numbers are condensed in steps of so many percent, so that the numbers of a roster share their templates. */
const NUMBER_STEP = 5

export type Glyphs = {
  readonly glyphs: readonly ShapedGlyph[]
  readonly boxes: readonly Box[]
  /** Extra room before each glyph, in micrometres at the asked height. */
  readonly extra: readonly number[]
}

export const measureGlyphs = (glyphs: readonly ShapedGlyph[]): Glyphs => ({
  glyphs,
  boxes: glyphs.map(({ contours }) => contoursBox(contours)),
  extra: glyphs.map(() => 0),
})

export type Spread = { readonly scale: number; readonly condensed: number; readonly tracking: number }

/** Where each glyph's origin lies on a straight line, in micrometres. */
export const originsOf = ({ glyphs, extra }: Glyphs, { scale, condensed, tracking }: Spread): readonly number[] => {
  let shift = 0
  return glyphs.map((glyph, index) => {
    shift += (extra[index] ?? 0) + (index > 0 ? tracking : 0)
    return glyph.x * scale * condensed + shift
  })
}

export const inkWidth = (glyphs: Glyphs, spread: Spread): number => {
  const origins = originsOf(glyphs, spread)
  let [left, right] = [Infinity, -Infinity]
  for (const [index, box] of glyphs.boxes.entries()) {
    if (isEmptyBox(box)) continue
    const origin = origins[index] ?? 0
    left = Math.min(left, origin + box.left * spread.scale * spread.condensed)
    right = Math.max(right, origin + box.right * spread.scale * spread.condensed)
  }
  return right > left ? right - left : 0
}

const isNumber = (text: string): boolean => /^\d+$/.test(text)

/** The whole percent to condense to, at most the share that fits. */
const percentOf = (text: string, share: number): number => {
  const step = isNumber(text) ? NUMBER_STEP : 1
  return Math.floor((share * 100) / step) * step
}

export const flatHeight = (face: Face, text: string): number => (isNumber(text) ? face.flatDigit : face.flatCapital)

const withoutExtra = (glyphs: Glyphs): Glyphs => ({ ...glyphs, extra: glyphs.extra.map(() => 0) })

type Fitted = { readonly glyphs: Glyphs; readonly spread: Spread; readonly fit: TextFit }

const fitted = (glyphs: Glyphs, spread: Spread, height: number): Fitted => ({
  glyphs,
  spread,
  fit: {
    height: micrometres(height),
    tracking: micrometres(spread.tracking),
    condensedPercent: Math.round(spread.condensed * 100),
  },
})

const tooWide = (request: TextRequest, width: number, most: number, least: number): Result<Fitted, LayoutProblem> =>
  refuse({
    code: 'text-too-wide',
    at: '',
    severity: 'stop',
    facts: {
      text: request.text,
      widthMicrometres: Math.round(width),
      mostMicrometres: most,
      leastHeightMicrometres: least,
    },
  })

/**
 * Letters brought to the asked width: as they are, closer together, condensed to 85 % (numbers by 5 % at a time), then smaller down to the least
 * height; `text-too-wide` when even that is not enough. Script letters that join are never tracked.
 */
export const fitText = (request: TextRequest, glyphs: Glyphs): Result<Fitted, LayoutProblem> => {
  const { face, height } = request
  const scale = height / flatHeight(face, request.text)
  const asked = { scale, condensed: 1, tracking: request.tracking ?? 0 }
  const most: Micrometres | undefined = request.fitWidth
  if (most === undefined || inkWidth(glyphs, asked) <= most) return ok(fitted(glyphs, asked, height))
  const plain = withoutExtra(glyphs)
  const width = inkWidth(plain, asked)
  if (width <= most) return ok(fitted(plain, asked, height))
  const gaps = Math.max(1, plain.glyphs.length - 1)
  const tightest = face.kind === 'script' ? Math.min(0, asked.tracking) : Math.min(asked.tracking, -TIGHTEST * height)
  const tracking = Math.max(tightest, asked.tracking - (width - most) / gaps)
  const tracked = { ...asked, tracking: Math.floor(tracking) }
  if (inkWidth(plain, tracked) <= most) return ok(fitted(plain, tracked, height))
  const fixed = Math.floor(tightest) * gaps
  const condensed = (most - fixed) / (inkWidth(plain, { ...asked, tracking: 0 }) || 1)
  const percent = percentOf(request.text, condensed)
  if (percent >= LEAST_CONDENSED) {
    return ok(fitted(plain, { scale, condensed: percent / 100, tracking: Math.floor(tightest) }, height))
  }
  const squeezed = { scale, condensed: LEAST_CONDENSED / 100, tracking: tightest }
  const smallest = inkWidth(plain, squeezed)
  const smaller = Math.floor((height * most) / smallest)
  const least = request.leastHeight ?? height
  if (smaller < least) return tooWide(request, (smallest * least) / height, most, least)
  const share = smaller / height
  return ok(fitted(plain, { ...squeezed, scale: scale * share, tracking: Math.floor(tightest * share) }, smaller))
}
