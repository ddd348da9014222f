import type { Art } from './art.ts'
import type { GarmentFacts, TicketFacts } from './facts.ts'
import { type LaidMark, type LaidView, sizeSets, viewsOf } from './lay-out-marks.ts'
import type { TicketWords } from './words.ts'

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

const GAP = 60_000
const LABEL = 30_000

const inkSvg = (ink: Art['inks'][number]): string => {
  if (ink.kind === 'vinyl') return `<path d="${ink.path}" fill="${ink.colour.hex}" stroke="#808080" stroke-width="600"/>`
  const radius = Math.round(ink.diameterMicrometres / 2)
  const circles = ink.at.map(([x, y]) => `<circle cx="${x}" cy="${y}" r="${radius}"/>`).join('')
  return `<g fill="${ink.colour.hex}" stroke="#606060" stroke-width="250">${circles}</g>`
}

const markSvg = (mark: LaidMark): string => {
  const { art } = mark.group
  if (art === null) {
    return `<rect x="${mark.left}" y="${mark.top}" width="${mark.width}" height="${mark.height}" fill="none" stroke="#808080" stroke-width="2000"/>`
  }
  const shift = `translate(${mark.left - art.box.left} ${mark.top - art.box.top})`
  return `<g transform="${shift}">${art.inks.map(inkSvg).join('')}</g>`
}

const label = (x: number, y: number, text: string): string =>
  `<text x="${x}" y="${y}" font-size="22000" text-anchor="middle" fill="#202020">${escaped(text)}</text>`

const viewSvg = (garment: GarmentFacts, view: LaidView, words: TicketWords): string => {
  const [body, ...details] = view.shape.outline
  const cloth = body === undefined ? '' : `<path d="${body}" fill="${garment.colour.hex}" stroke="#404040" stroke-width="2500"/>`
  const lines = details.map((path) => `<path d="${path}" fill="none" stroke="#808080" stroke-width="2000"/>`).join('')
  const title = label(view.shape.middle, view.shape.height + LABEL, words.press.sides[view.side])
  return `${cloth}${lines}${view.marks.map(markSvg).join('')}${title}`
}

type Row = { readonly title: string; readonly views: readonly LaidView[]; readonly garment: GarmentFacts }

const rowsOf = (facts: Shown, words: TicketWords): readonly Row[] =>
  facts.garments.flatMap((garment) => {
    const [set] = sizeSets(garment, facts.placements)
    if (set === undefined) return []
    return [{ garment, title: words.pick.vinylName(garment.colour.name, garment.name), views: viewsOf(garment, set) }]
  })

const rowHeight = (row: Row): number => Math.max(0, ...row.views.map((view) => view.shape.height)) + 3 * LABEL
const rowWidth = (row: Row): number => row.views.reduce((sum, view) => sum + view.shape.width + GAP, GAP)

export type Shown = Pick<TicketFacts, 'garments' | 'placements'>

/** The picture that is shown and signed: front and back of every garment to scale as SVG, in the colours of the shop's records. */
export const previewSvg = (facts: Shown, words: TicketWords): string => {
  const rows = rowsOf(facts, words)
  const width = Math.max(2 * GAP, ...rows.map(rowWidth))
  let y = GAP / 2
  const drawn = rows.map((row) => {
    let x = (width - rowWidth(row)) / 2 + GAP
    const views = row.views.map((view) => {
      const placed = `<g transform="translate(${Math.round(x)} ${2 * LABEL})">${viewSvg(row.garment, view, words)}</g>`
      x += view.shape.width + GAP
      return placed
    })
    const svg = `<g transform="translate(0 ${Math.round(y)})">${label(Math.round(width / 2), LABEL, row.title)}${views.join('')}</g>`
    y += rowHeight(row) + GAP / 2
    return svg
  })
  const height = Math.round(y + GAP / 2)
  const open = `<svg xmlns="http://www.w3.org/2000/svg" width="${width / 1000}mm" height="${height / 1000}mm" viewBox="0 0 ${width} ${height}" font-family="IBM Plex Sans Condensed">`
  return `${open}<rect width="${width}" height="${height}" fill="#f4f4f2"/>${drawn.join('')}</svg>`
}
