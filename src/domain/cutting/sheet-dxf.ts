import { flatten } from '../geometry/contour.ts'
import type { Box, Point } from '../geometry/point.ts'
import type { Mark, Sheet, SheetPart } from './sheet.ts'

/** How far a cut line may lie from the true curve, in micrometres. */
const FLATNESS = 10

const figure = (micrometres: number): string => (Math.round(micrometres) / 1000).toFixed(3)

const pair = (code: number, value: string | number): string => `${code}\n${value}`

const place = ({ x, y }: Point, code = 10): string[] => [
  pair(code, figure(x)),
  pair(code + 10, figure(y)),
  pair(code + 20, '0.0'),
]

const polyline = (layer: string, points: readonly Point[]): string[] => [
  pair(0, 'POLYLINE'),
  pair(8, layer),
  pair(66, 1),
  pair(70, 1),
  ...place({ x: 0, y: 0 }),
  ...points.flatMap((point) => [pair(0, 'VERTEX'), pair(8, layer), ...place(point)]),
  pair(0, 'SEQEND'),
  pair(8, layer),
]

const corners = ({ left, bottom, right, top }: Box): readonly Point[] => [
  { x: left, y: bottom },
  { x: right, y: bottom },
  { x: right, y: top },
  { x: left, y: top },
]

/** R12 knows no characters beyond ASCII; others are written as the \U+ escape of their code. */
const plain = (text: string): string =>
  text.replaceAll(
    /[^\x20-\x7e]/gu,
    (character) => `\\U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`,
  )

const markDxf = (mark: Mark): string[] => {
  if (mark.kind === 'tick') return [pair(0, 'LINE'), pair(8, 'MARK'), ...place(mark.from), ...place(mark.to, 11)]
  return [pair(0, 'TEXT'), pair(8, 'MARK'), ...place(mark.at), pair(40, figure(mark.height)), pair(1, plain(mark.text))]
}

const partDxf = (part: SheetPart): string[] => [
  ...polyline('FRAME', corners(part.frame)),
  ...part.contours.flatMap((contour) => polyline('CUT', flatten(contour, FLATNESS))),
  ...part.holes.flatMap(({ at, radius }) => [pair(0, 'CIRCLE'), pair(8, 'HOLE'), ...place(at), pair(40, figure(radius))]),
  ...part.marks.flatMap(markDxf),
]

/** One sheet as DXF R12 in millimetres, y up: layers CUT, HOLE, FRAME (weeding box or template edge) and MARK (not cut). */
export const sheetDxf = (sheet: Sheet): string =>
  [
    pair(0, 'SECTION'),
    pair(2, 'HEADER'),
    pair(9, '$ACADVER'),
    pair(1, 'AC1009'),
    pair(9, '$INSUNITS'),
    pair(70, 4),
    pair(9, '$EXTMIN'),
    ...place({ x: 0, y: 0 }),
    pair(9, '$EXTMAX'),
    ...place({ x: sheet.width, y: sheet.length }),
    pair(0, 'ENDSEC'),
    pair(0, 'SECTION'),
    pair(2, 'ENTITIES'),
    ...sheet.marks.flatMap(markDxf),
    ...sheet.parts.flatMap(partDxf),
    pair(0, 'ENDSEC'),
    pair(0, 'EOF'),
    '',
  ].join('\n')
