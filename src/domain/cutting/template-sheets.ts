import type { Box } from '../geometry/point.ts'
import { item } from '../geometry/point.ts'
import type { StonePiece } from '../layout/layout.ts'
import { ok, type Result } from '../result/result.ts'
import { type Micrometres, micrometres } from '../units/units.ts'
import { packStrip } from './pack-strip.ts'
import { type LoosePart, placePart } from './place-part.ts'
import type { CuttingProblem } from './problems.ts'
import type { Mark, Sheet, SheetWords } from './sheet.ts'
import { emptyStrip, placeNext, type Spot, type Strip } from './skyline.ts'

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

/** Room at the top of a sheet for its own line of words. */
const HEAD = 6_000

const usable = ({ height }: SheetStock): number => height - HEAD + GAP

type Laid = { readonly part: LoosePart; readonly spot: Spot }

type OpenSheet = { readonly strip: Strip; readonly laid: readonly Laid[] }

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

const ROUNDS = 40

/** Two sheets on one where the tighter packing finds room; undefined where it does not. */
const merged = (one: OpenSheet, two: OpenSheet, stock: SheetStock): OpenSheet | undefined => {
  const parts = [...one.laid, ...two.laid].map(({ part }) => part)
  const width = stock.width + GAP
  const area = parts.reduce((sum, part) => sum + sizeOf(part).width * sizeOf(part).height, 0)
  if (area > width * usable(stock)) return undefined
  const { height, spots } = packStrip(parts.map(sizeOf), width, ROUNDS)
  if (height > usable(stock)) return undefined
  return { strip: one.strip, laid: parts.map((part, index) => ({ part, spot: item(spots, index) })) }
}

const mergeSheets = (sheets: readonly OpenSheet[], stock: SheetStock): readonly OpenSheet[] => {
  const kept: OpenSheet[] = []
  for (const sheet of sheets) {
    const at = kept.findIndex((other) => merged(other, sheet, stock) !== undefined)
    const joined = at < 0 ? undefined : merged(item(kept, at), sheet, stock)
    if (joined === undefined) kept.push(sheet)
    else kept[at] = joined
  }
  return kept
}

const placeOn = (sheet: OpenSheet, part: LoosePart, stock: SheetStock): OpenSheet | undefined => {
  const spot = placeNext(sheet.strip, sizeOf(part), true, usable(stock))
  return spot === undefined ? undefined : { ...sheet, laid: [...sheet.laid, { part, spot }] }
}

const sheetOf = ({ laid }: OpenSheet, index: number, stock: SheetStock, words: SheetWords): Sheet => ({
  id: `template-${index + 1}`,
  width: stock.width,
  length: stock.height,
  reads: 'right',
  parts: laid.map(({ part, spot }) => placePart(part, spot, spot.turned)),
  marks: [{ kind: 'text', at: { x: GAP, y: stock.height - TEXT - 1_000 }, height: TEXT, text: words.right }],
})

/**
 * Templates on as few flocked sheets as found, read the right way round (the tape lifts the stones as they lie), the largest
 * first; with TOP, baseline and centre ticks and their margin text. `template-larger-than-sheet` names each that fits no sheet.
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
    const fresh: OpenSheet = { strip: emptyStrip(stock.width + GAP), laid: [] }
    const at = [...sheets, fresh].findIndex((sheet, place) => {
      const grown = placeOn(sheet, part, stock)
      if (grown !== undefined) sheets[place] = grown
      return grown !== undefined
    })
    if (at < 0) problems.push(tooLarge(part, stock))
  }
  if (problems.length > 0) return { ok: false, problems }
  return ok(mergeSheets(sheets, stock).map((sheet, index) => sheetOf(sheet, index, stock, words)))
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
