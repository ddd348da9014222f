import type { Box } from '../geometry/point.ts'
import { item } from '../geometry/point.ts'
import type { StonePiece } from '../layout/layout.ts'
import { ok, type Result } from '../result/result.ts'
import { type Micrometres, micrometres } from '../units/units.ts'
import { type LoosePart, placePart } from './place-part.ts'
import type { CuttingProblem } from './problems.ts'
import type { Mark, Sheet, SheetPart, SheetWords } from './sheet.ts'
import { emptyStrip, placeNext, type Strip } from './skyline.ts'

/** One template: the holes of a piece and what its margin says (character, height, stone, job). */
export type StoneTemplate = {
  readonly key: string
  readonly piece: Pick<StonePiece, 'text' | 'stones' | 'box'>
  readonly hole: Micrometres
  readonly lines: readonly string[]
}

/** Flocked sheets as the shop buys them. */
export type SheetStock = { readonly width: Micrometres; readonly height: Micrometres }

/** Room round the holes for fingers, ticks and words. Common practice: 12 mm. */
const MARGIN = 12_000
const TEXT = 3_000
const GAP = 3_000
const TICK = 4_000

const marksOf = (frame: Box, centre: number, template: StoneTemplate, words: SheetWords): readonly Mark[] => {
  const lines = [words.top, ...template.lines].join(' · ')
  return [
    { kind: 'text', at: { x: frame.left + TEXT, y: frame.top - TEXT - 2_000 }, height: TEXT, text: lines },
    { kind: 'tick', from: { x: frame.left, y: 0 }, to: { x: frame.left + TICK, y: 0 } },
    { kind: 'tick', from: { x: frame.right, y: 0 }, to: { x: frame.right - TICK, y: 0 } },
    { kind: 'tick', from: { x: centre, y: frame.top }, to: { x: centre, y: frame.top - 1_500 } },
    { kind: 'tick', from: { x: centre, y: frame.bottom }, to: { x: centre, y: frame.bottom + TICK } },
  ]
}

const looseTemplate = (template: StoneTemplate, words: SheetWords): LoosePart => {
  const { box, stones, text } = template.piece
  const reach = template.hole / 2 + MARGIN
  const frame = { left: box.left - reach, right: box.right + reach, bottom: box.bottom - reach, top: box.top + reach }
  return {
    key: template.key,
    tag: text,
    contours: [],
    holes: stones.map(([x, y]) => ({ at: { x, y }, radius: template.hole / 2 })),
    frame,
    marks: marksOf(frame, (box.left + box.right) / 2, template, words),
    outside: { ...frame, right: frame.right + GAP, top: frame.top + GAP },
  }
}

type OpenSheet = { readonly strip: Strip; readonly parts: SheetPart[] }

const sizeOf = ({ outside }: LoosePart): { width: number; height: number } => ({
  width: Math.ceil(outside.right - outside.left),
  height: Math.ceil(outside.top - outside.bottom),
})

const tooLarge = (loose: LoosePart, stock: SheetStock): CuttingProblem => ({
  code: 'template-larger-than-sheet',
  at: '',
  severity: 'stop',
  facts: {
    text: loose.tag,
    widthMicrometres: sizeOf(loose).width - GAP,
    heightMicrometres: sizeOf(loose).height - GAP,
    sheetWidthMicrometres: stock.width,
    sheetHeightMicrometres: stock.height,
  },
})

/**
 * Templates on flocked sheets, read the right way round (the tape lifts the stones as they lie), the largest first; with TOP,
 * baseline and centre ticks and their margin text. `template-larger-than-sheet` names each that fits no sheet.
 */
export const templateSheets = (
  templates: readonly StoneTemplate[],
  stock: SheetStock,
  words: SheetWords,
): Result<readonly Sheet[], CuttingProblem> => {
  const loose = templates.map((template) => looseTemplate(template, words))
  const order = loose
    .map((_, index) => index)
    .sort((a, b) => sizeOf(item(loose, b)).height - sizeOf(item(loose, a)).height || a - b)
  const sheets: OpenSheet[] = []
  const problems: CuttingProblem[] = []
  for (const index of order) {
    const part = item(loose, index)
    const size = sizeOf(part)
    const room = (sheet: OpenSheet): boolean => {
      const spot = placeNext(sheet.strip, size, true, stock.height + GAP)
      if (spot !== undefined) sheet.parts.push(placePart(part, spot, spot.turned))
      return spot !== undefined
    }
    if (sheets.some(room)) continue
    const fresh: OpenSheet = { strip: emptyStrip(stock.width + GAP), parts: [] }
    if (room(fresh)) sheets.push(fresh)
    else problems.push(tooLarge(part, stock))
  }
  if (problems.length > 0) return { ok: false, problems }
  return ok(
    sheets.map(({ parts }, index) => ({
      id: `template-${index + 1}`,
      width: stock.width,
      length: stock.height,
      reads: 'right',
      parts,
      marks: [{ kind: 'text', at: { x: GAP, y: stock.height - TEXT - 1_000 }, height: TEXT, text: words.right }],
    })),
  )
}

/** A coupon for a new lot of stones: five by five holes at three widths, each labelled, to find the shop's hole. */
export const coupon = (
  size: string,
  holes: readonly [Micrometres, Micrometres, Micrometres],
  web: Micrometres,
): readonly StoneTemplate[] =>
  holes.map((hole) => {
    const pitch = hole + web
    const stones = Array.from({ length: 25 }, (_, index) => {
      const [column, row] = [index % 5, Math.floor(index / 5)]
      return [micrometres(column * pitch), micrometres(row * pitch)] as const
    })
    const box = { left: 0, bottom: 0, right: 4 * pitch, top: 4 * pitch }
    return { key: `coupon ${size} ${hole}`, piece: { text: size, stones, box }, hole, lines: [size, `${hole / 1000} mm`] }
  })
