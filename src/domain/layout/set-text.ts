import type { Face } from '../face/face.ts'
import { lacking } from '../face/lacking.ts'
import type { FaceProblem } from '../face/problems.ts'
import { applied, changeContours, contoursBox, flatten } from '../geometry/contour.ts'
import { isEmptyBox, item, joinBoxes, shiftBox } from '../geometry/point.ts'
import { perimeter, regionArea, united } from '../geometry/region.ts'
import { ok, type Result } from '../result/result.ts'
import { type Micrometres, micrometres } from '../units/units.ts'
import { bendLetter, mostRise } from './bend.ts'
import { fitText, type Glyphs, inkWidth, measureGlyphs, originsOf, type Spread } from './fit.ts'
import type { Letter, TextFit, TextRequest, TextShape } from './layout.ts'
import type { LayoutProblem } from './problems.ts'
import { spaceApart } from './space-apart.ts'

const LONGEST = 60
const SMALLEST: Micrometres = micrometres(3_000)
const TALLEST: Micrometres = micrometres(1_200_000)

/** Hebrew, Arabic, Syriac, Thaana, N'Ko and the Arabic presentation forms. */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff]/u

const refuseText = (request: TextRequest): readonly (LayoutProblem | FaceProblem)[] => {
  const { text, height, face } = request
  const problems: (LayoutProblem | FaceProblem)[] = []
  const characters = [...text].length
  if (text.trim() === '') problems.push({ code: 'text-empty', at: '', severity: 'stop', facts: { text } })
  if (characters > LONGEST)
    problems.push({ code: 'text-too-long', at: '', severity: 'stop', facts: { characters, most: LONGEST } })
  if (RIGHT_TO_LEFT.test(text)) problems.push({ code: 'text-right-to-left', at: '', severity: 'stop', facts: { text } })
  if (!(height >= SMALLEST && height <= TALLEST))
    problems.push({
      code: 'height-impossible',
      at: '',
      severity: 'stop',
      facts: { heightMicrometres: height, leastMicrometres: SMALLEST, mostMicrometres: TALLEST },
    })
  if (characters <= LONGEST) problems.push(...lacking(face, text, request.offered ?? []))
  return problems
}

type Place = { readonly request: TextRequest; readonly glyphs: Glyphs; readonly spread: Spread; readonly width: number }

const placeLetters = ({ request, glyphs, spread, width }: Place): readonly Letter[] => {
  const origins = originsOf(glyphs, spread)
  const line = request.line ?? { kind: 'straight' }
  const across = spread.scale * spread.condensed
  const start = Math.min(
    ...glyphs.boxes.map((box, index) => (isEmptyBox(box) ? Infinity : item(origins, index) + box.left * across)),
  )
  return glyphs.glyphs.flatMap((glyph, index): Letter[] => {
    const box = item(glyphs.boxes, index)
    if (isEmptyBox(box)) return []
    const origin = item(origins, index) - start
    const centre = origin + ((box.left + box.right) / 2) * across
    const { turn, change } = bendLetter(line, centre, origin, width)
    const at = applied(change, { x: 0, y: glyph.y * spread.scale })
    const whole = { x: Math.round(at.x), y: Math.round(at.y) }
    const [a, b, c, d] = change
    const contours = changeContours(glyph.contours, [a * across, b * across, c * spread.scale, d * spread.scale, 0, 0])
    return [
      {
        text: glyph.characters,
        form: [glyph.glyph, spread.scale.toFixed(6), spread.condensed.toFixed(2), turn].join('/'),
        at: whole,
        contours,
        box: contoursBox(contours),
      },
    ]
  })
}

const fitNotes = (request: TextRequest, fit: TextFit): readonly LayoutProblem[] => {
  const notes: LayoutProblem[] = []
  if (fit.condensedPercent < 100)
    notes.push({
      code: 'letters-condensed',
      at: '',
      severity: 'note',
      facts: { text: request.text, percent: fit.condensedPercent },
    })
  if (fit.height < request.height)
    notes.push({
      code: 'letters-smaller',
      at: '',
      severity: 'note',
      facts: { text: request.text, heightMicrometres: fit.height, askedMicrometres: request.height },
    })
  return notes
}

/** A zero is one closed stroke: twice its area by its edges. */
const penOf = ({ outline, unitsPerEm }: Face, { scale }: Spread): Micrometres => {
  const zero = united(outline('0').map((contour) => flatten(contour, unitsPerEm / 1000)))
  const edges = zero.reduce((sum, polygon) => sum + perimeter(polygon), 0)
  return micrometres(edges === 0 ? 0 : ((2 * regionArea(zero)) / edges) * scale)
}

const bentTooFar = (request: TextRequest, width: number): readonly LayoutProblem[] => {
  const { line, text } = request
  if (line === undefined || line.kind === 'straight') return []
  const most = Math.floor(line.kind === 'arc' ? mostRise(width) : width)
  if (Math.abs(line.rise) <= most) return []
  return [
    {
      code: 'line-too-bent',
      at: '',
      severity: 'stop',
      facts: { text, riseMicrometres: line.rise, mostMicrometres: most },
    },
  ]
}

/**
 * A name or number as closed curves in whole-micrometre places: height by the flat digit (numbers) or the flat capital.
 * Refuses empty, overlong and right-to-left text, impossible heights and bends, missing characters (`face-lacks`) and
 * text that does not fit its width (`text-too-wide`).
 */
export const setText = (request: TextRequest): Result<TextShape, LayoutProblem | FaceProblem> => {
  const text = request.text.normalize('NFC').trim().replaceAll(/\s+/gu, ' ')
  const asked = { ...request, text }
  const refused = refuseText(asked)
  if (refused.length > 0) return { ok: false, problems: refused }
  const measured = spaceApart(asked, measureGlyphs(asked.face.shape(text)))
  const fitting = fitText(asked, measured)
  if (!fitting.ok) return fitting
  const { glyphs, spread, fit } = fitting.value
  const width = inkWidth(glyphs, spread)
  const bent = bentTooFar(asked, width)
  if (bent.length > 0) return { ok: false, problems: bent }
  const letters = placeLetters({ request: asked, glyphs, spread, width })
  const box = joinBoxes(letters.map((letter) => shiftBox(letter.box, letter.at)))
  return ok({
    text,
    face: asked.face.id,
    fingerprint: asked.face.fingerprint,
    letters,
    box,
    width: micrometres(box.right - box.left),
    height: micrometres(box.top - box.bottom),
    pen: penOf(asked.face, spread),
    fit,
    notes: fitNotes(asked, fit),
  })
}
