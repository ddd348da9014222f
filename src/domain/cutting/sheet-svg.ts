import type { Contour } from '../geometry/contour.ts'
import type { Box } from '../geometry/point.ts'
import type { Mark, Sheet, SheetPart } from './sheet.ts'
import { type Pen, pathData, penFrom } from './svg-path.ts'

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

const rectangle = ({ left, bottom, right, top }: Box): Contour => ({
  start: { x: left, y: bottom },
  segments: [
    { kind: 'line', to: { x: right, y: bottom } },
    { kind: 'line', to: { x: right, y: top } },
    { kind: 'line', to: { x: left, y: top } },
  ],
})

const markSvg = (mark: Mark, pen: Pen): string => {
  if (mark.kind === 'tick') return `<path class="mark" d="M${pen(mark.from)}L${pen(mark.to)}"/>`
  const [x, y] = pen(mark.at).split(' ')
  return `<text class="mark" x="${x}" y="${y}" font-size="${mark.height / 1000}">${escaped(mark.text)}</text>`
}

const partSvg = (part: SheetPart, pen: Pen): string[] => {
  const curves = part.contours.map((contour) => pathData(contour, pen)).join('')
  const holes = part.holes.map(({ at, radius }) => {
    const [x, y] = pen(at).split(' ')
    return `<circle class="hole" cx="${x}" cy="${y}" r="${radius / 1000}"/>`
  })
  return [
    `<path class="frame" d="${pathData(rectangle(part.frame), pen)}"/>`,
    ...(curves === '' ? [] : [`<path class="cut" d="${curves}"/>`]),
    ...holes,
    ...part.marks.map((mark) => markSvg(mark, pen)),
  ]
}

const STYLE =
  '.cut,.hole,.frame{fill:none;stroke:#000;stroke-width:.1}.frame{stroke:#0a0}.mark{stroke:#06c;stroke-width:.1;fill:none}text.mark{fill:#06c;stroke:none;font-family:sans-serif}'

/** One sheet as SVG in millimetres: no transforms, holes as circles, curves kept. */
export const sheetSvg = (sheet: Sheet): string => {
  const pen = penFrom(0, sheet.length)
  const [width, height] = [sheet.width / 1000, sheet.length / 1000]
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<style>${STYLE}</style>`,
    ...sheet.marks.map((mark) => markSvg(mark, pen)),
    ...sheet.parts.flatMap((part) => partSvg(part, pen)),
    '</svg>\n',
  ].join('\n')
}
