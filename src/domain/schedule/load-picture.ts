import type { DayLoad } from './load.ts'

const cell = { width: 46, height: 30 }
const margin = { left: 96, top: 34, right: 8, bottom: 8 }
const ink = '#1c1c1c'
const calm = '#b7c9db'
const tight = '#eda46c'

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

const percentOf = (load: DayLoad): number =>
  load.open === 0 ? (load.busy > 0 ? 100 : 0) : Math.round((load.busy * 100) / load.open)

/** One day of one station: a frame for the open time, a bar for the busy part, its share in figures. */
const dayCell = (load: DayLoad, column: number, row: number): string => {
  const percent = percentOf(load)
  const x = margin.left + column * cell.width
  const y = margin.top + row * cell.height
  const width = Math.round((Math.min(100, percent) * (cell.width - 4)) / 100)
  const title = escaped(`${load.station} ${load.day} ${load.busy}/${load.open}`)
  return [
    `<g><title>${title}</title>`,
    `<rect x="${x + 2}" y="${y + 3}" width="${cell.width - 4}" height="${cell.height - 6}" fill="none" stroke="#c8c8c8"/>`,
    `<rect x="${x + 2}" y="${y + 3}" width="${width}" height="${cell.height - 6}" fill="${percent >= 90 ? tight : calm}"/>`,
    `<text x="${x + cell.width / 2}" y="${y + cell.height / 2 + 4}" text-anchor="middle" font-size="11" fill="${ink}">${percent}</text></g>`,
  ].join('')
}

/**
 * The load as a picture: a row for each station, a column for each day, busy minutes as a share of open ones in percent; from 90 % on
 * the bar changes its colour. SVG text, sizes in CSS pixels.
 */
export const loadPicture = (load: readonly DayLoad[]): string => {
  const stations = [...new Set(load.map((one) => one.station))]
  const days = [...new Set(load.map((one) => one.day))].toSorted()
  const width = margin.left + days.length * cell.width + margin.right
  const height = margin.top + stations.length * cell.height + margin.bottom
  const heads = days.map(
    (day, column) =>
      `<text x="${margin.left + (column + 0.5) * cell.width}" y="${margin.top - 10}" text-anchor="middle" font-size="11" fill="${ink}">${escaped(day.slice(5))}</text>`,
  )
  const names = stations.map(
    (station, row) =>
      `<text x="${margin.left - 8}" y="${margin.top + row * cell.height + cell.height / 2 + 4}" text-anchor="end" font-size="12" fill="${ink}">${escaped(station)}</text>`,
  )
  const cells = load.map((one) => dayCell(one, days.indexOf(one.day), stations.indexOf(one.station)))
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif">`,
    `<rect width="${width}" height="${height}" fill="#ffffff"/>`,
    ...heads,
    ...names,
    ...cells,
    '</svg>',
  ].join('')
}
