import type { DayLoad, DueLoad } from './load.ts'

const cell = { width: 58, height: 30 }
const margin = { left: 132, top: 62, right: 12, bottom: 16 }
const ink = '#1d2733'
const soft = '#4d5663'
const frame = '#9aa3ad'
const calm = '#b7c9db'
const tight = '#eda46c'
const tightFrom = 90
/** The least share at which somebody is late whatever the order of work. */
const overFrom = 100

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

/** Busy or due minutes as a share of the open ones; work without any open minute is over whatever there is. */
export const percentOf = (part: number, open: number): number =>
  open === 0 ? (part > 0 ? 999 : 0) : Math.round((part * 100) / open)

/** What the picture says, in the language of who looks at it. */
export type PictureWords = {
  readonly title: string
  readonly dueTitle: string
  /** 'YYYY-MM-DD' as a head of a column, in one or two short lines. */
  readonly day: (day: string) => readonly [string, string]
  readonly station: (id: string) => string
  readonly kind: (kind: string) => string
}

type At = { readonly x: number; readonly y: number }

const text = (at: At, words: string, look: string): string => `<text x="${at.x}" y="${at.y}" ${look}>${escaped(words)}</text>`

/** A frame for what is open, a bar for what is busy, its share in figures; from 90 % on hatched, so that colour is not needed. */
const shareCell = (at: At, percent: number): string => {
  const width = Math.round((Math.min(100, percent) * (cell.width - 6)) / 100)
  const inside = `x="${at.x + 3}" y="${at.y + 3}" height="${cell.height - 6}"`
  const shown = percent >= 999 ? '!' : `${percent}`
  const weight = percent >= overFrom ? 'font-weight="700"' : ''
  return [
    `<rect ${inside} width="${width}" fill="${percent >= tightFrom ? tight : calm}"/>`,
    percent >= tightFrom ? `<rect ${inside} width="${width}" fill="url(#tight)"/>` : '',
    `<rect ${inside} width="${cell.width - 6}" fill="none" stroke="${percent >= overFrom ? ink : frame}" stroke-width="${percent >= overFrom ? 2 : 1}"/>`,
    text({ x: at.x + cell.width / 2, y: at.y + 20 }, shown, `text-anchor="middle" font-size="13" fill="${ink}" ${weight}`),
  ].join('')
}

type Grid = {
  readonly top: number
  readonly title: string
  readonly days: readonly string[]
  readonly rows: readonly { readonly name: string; readonly percents: readonly (number | null)[] }[]
}

const gridHeight = (grid: Grid): number => margin.top + grid.rows.length * cell.height + margin.bottom

/** A letter of a title is about so wide, in whatever face it is drawn. */
const titleLetter = 9

/** A title in as many lines as its drawing is narrow. */
const titleLines = (title: string, width: number): readonly string[] =>
  title.match(new RegExp(`.{1,${Math.floor((width - 16) / titleLetter)}}(?:\\s|$)|\\S+`, 'g'))?.map((line) => line.trim()) ?? []

const drawGrid = (grid: Grid, width: number, words: PictureWords): string => {
  const body = grid.top + margin.top
  const heads = grid.days.flatMap((day, column) => {
    const x = margin.left + (column + 0.5) * cell.width
    const [first, second] = words.day(day)
    const look = `text-anchor="middle" font-size="12" fill="${soft}"`
    return [text({ x, y: body - 22 }, first, look), text({ x, y: body - 8 }, second, look)]
  })
  const rows = grid.rows.flatMap((row, index) => {
    const y = body + index * cell.height
    const cells = row.percents.map((percent, column) =>
      percent === null ? '' : shareCell({ x: margin.left + column * cell.width, y }, percent),
    )
    return [text({ x: margin.left - 8, y: y + 20 }, row.name, `text-anchor="end" font-size="13" fill="${ink}"`), ...cells]
  })
  const look = `font-size="15" font-weight="700" fill="${ink}"`
  const lines = titleLines(grid.title, width)
  const from = grid.top + (lines.length > 1 ? 15 : 20)
  const title = lines.map((line, index) => text({ x: 8, y: from + index * 16 }, line, look))
  return [...title, ...heads, ...rows].join('')
}

const loadGrid = (load: readonly DayLoad[], words: PictureWords): Grid => {
  const stations = [...new Set(load.map((one) => one.station))]
  const days = [...new Set(load.map((one) => one.day))].toSorted()
  const share = (station: string, day: string): number | null => {
    const one = load.find((each) => each.station === station && each.day === day)
    return one === undefined ? null : percentOf(one.busy, one.open)
  }
  const rows = stations.map((station) => ({ name: words.station(station), percents: days.map((day) => share(station, day)) }))
  return { top: 0, title: words.title, days, rows }
}

const dueGrid = (due: readonly DueLoad[], words: PictureWords): Grid => {
  const days = [...new Set(due.map((one) => one.day))].toSorted()
  const share = (kind: string, day: string): number | null =>
    due.find((one) => one.kind === kind && one.day === day)?.percent ?? null
  const kinds = [...new Set(due.map((one) => one.kind))]
  const rows = kinds.map((kind) => ({ name: words.kind(kind), percents: days.map((day) => share(kind, day)) }))
  return { top: 0, title: words.dueTitle, days, rows }
}

/** The same rows in bands of so many days, one below the other. */
const bands = (grid: Grid, most: number): readonly Grid[] =>
  Array.from({ length: Math.ceil(grid.days.length / most) }, (_, band) => {
    const [from, to] = [band * most, (band + 1) * most]
    const rows = grid.rows.map((row) => ({ ...row, percents: row.percents.slice(from, to) }))
    return { ...grid, title: band === 0 ? grid.title : '', days: grid.days.slice(from, to), rows }
  })

const stacked = (grids: readonly Grid[]): readonly Grid[] => {
  const tops = grids.map((_, index) => grids.slice(0, index).reduce((sum, grid) => sum + gridHeight(grid), 0))
  return grids.map((grid, index) => ({ ...grid, top: tops[index] ?? 0 }))
}

const drawAll = (grids: readonly Grid[], columns: number, words: PictureWords): string => {
  const width = margin.left + columns * cell.width + margin.right
  const height = grids.reduce((sum, grid) => sum + gridHeight(grid), 0)
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="IBM Plex Sans Condensed, sans-serif">`,
    `<defs><pattern id="tight" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="2" height="6" fill="#ffffff" fill-opacity="0.55"/></pattern></defs>`,
    `<rect width="${width}" height="${height}" fill="#fffcf3"/>`,
    ...grids.map((grid) => drawGrid(grid, width, words)),
    '</svg>',
  ].join('')
}

const gridsOf = (load: readonly DayLoad[], due: readonly DueLoad[], words: PictureWords): readonly Grid[] => {
  const lower = dueGrid(due, words)
  return [loadGrid(load, words), ...(lower.rows.length === 0 ? [] : [lower])]
}

/**
 * The load as a picture: a row for each station, a column for each day, busy minutes as a share of open ones in percent; below it,
 * per kind of station and day on which orders are due, what must be done by then against what can be. SVG text in CSS pixels.
 */
export const loadPicture = (load: readonly DayLoad[], due: readonly DueLoad[], words: PictureWords): string => {
  const grids = gridsOf(load, due, words)
  return drawAll(stacked(grids), Math.max(...grids.map(({ days }) => days.length), 7), words)
}

/** So many days beside the names of stations are as wide as a phone held upright. */
const phoneDays = 4

/** The same for a phone: a few days a band, the next days below. */
export const narrowLoadPicture = (load: readonly DayLoad[], due: readonly DueLoad[], words: PictureWords): string =>
  drawAll(stacked(gridsOf(load, due, words).flatMap((grid) => bands(grid, phoneDays))), phoneDays, words)
