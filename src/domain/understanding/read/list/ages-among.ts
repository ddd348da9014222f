import { listed, spoken } from '../../words/languages.ts'
import { fold, type Token } from '../text/tokens.ts'

const { years, months, half } = spoken.ages

const worded = `\\d{1,2}(?: ${half})? ?(?:${years}|${months})(?: ${half})?`
const first = new RegExp(`^${worded}(?![\\w-])`, 'u')
const among = new RegExp(`(?<=[\\p{L}.'"]\\s*)[\\s,;(|–-]+(?=(${worded}))\\1(?![\\w-])\\)?(?=[\\s,;|–-]+\\S)`, 'u')
const wholeCell = new RegExp(`^(?:${worded}|(\\d{1,2}) ${half})$`, 'u')

/** "8 años", "7 yrs old", "18 months": where an age that begins at a token comes to its end; null where none begins. */
export const ageEnd = (tokens: readonly Token[], at: number): number | null => {
  const words = tokens.slice(at, at + 7).map(({ key }) => key)
  const found = first.exec(words.join(' '))?.[0]
  return found === undefined ? null : at + found.split(' ').length
}

/** "Bea, 18 months, 2T": an age in words between a name and a size, put behind them. */
export const ageBehind = (line: string): string => {
  const found = among.exec(fold(line))
  if (found === null) return line
  const to = found.index + found[0].length
  return `${line.slice(0, found.index)}${line.slice(to)}, ${found[1] ?? ''}`
}

const parted = /\s*[,;|\t]\s*/

const cellsIn = (line: string): readonly string[] => line.trim().split(parted)

const isAged = (cell: string | undefined): boolean => wholeCell.test(fold(cell ?? ''))

const isBare = (cell: string | undefined): boolean => /^\d{1,2}$/.test(cell ?? '')

/** In which cell the ages of a table stand that tells at least one of them in words. */
const columnOf = (rows: readonly (readonly string[])[]): number | null => {
  const [row] = rows.filter((cells) => cells.length > 2 && cells.some((cell, at) => at > 0 && isAged(cell)))
  const at = row?.findIndex((cell, index) => index > 0 && isAged(cell)) ?? -1
  return at < 0 ? null : at
}

/** A bare figure, or one and a half, as years. */
const inYears = (cell: string): string => {
  const whole = isBare(cell) ? cell : wholeCell.exec(fold(cell))?.[1]
  return whole === undefined ? cell : `${whole} ${listed.players.years[0] ?? ''}`
}

/** "Milo, 2 yrs, 2T" above "Ada, 4, 4T": figures in a column of ages are years and nobody's number. */
export const withAgesBehind = (lines: readonly string[]): readonly string[] => {
  const rows = lines.map(cellsIn)
  const column = columnOf(rows)
  if (column === null) return lines
  return lines.map((line, at) => {
    const cells = rows[at] ?? []
    const cell = cells[column] ?? ''
    if (cells.length < 3 || !(isAged(cell) || isBare(cell))) return line
    return [...cells.filter((_, index) => index !== column), inYears(cell)].join(', ')
  })
}
