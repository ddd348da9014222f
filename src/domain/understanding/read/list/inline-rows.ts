import { readRowLine } from './row-line.ts'

const fewest = 2

/** A number, a name and a size. */
const isWhole = (part: string): boolean => {
  const row = readRowLine(part)
  return row?.number !== undefined && row.name !== undefined && row.size !== undefined
}

/** "5 jerseys: 13 Luna XL; 4 Reza L": in a sentence as well such lines are parted by commas. */
const withCommas = (line: string): string => {
  const parts = line.split(';')
  const [first = '', ...others] = parts
  const [head] = others.splice(-1, 1)
  const rows = [first.replace(/^.*[:.](?= )/u, ''), ...others, (head ?? '').replace(/\..*$/u, '')]
  const listed = rows.every(isWhole) || (rows.length > 2 && rows.slice(1).every(isWhole))
  return parts.length > 1 && listed ? line.replaceAll(';', ',') : line
}

/** A name in capitals and a size, with a number or without one, and nothing else but a remark. */
const isSized = (part: string): boolean => {
  const row = readRowLine(part)
  return row?.name !== undefined && row.size !== undefined && /^\p{Lu}/u.test(row.name) && !row.name.includes(' ')
}

const signs: readonly (string | RegExp)[] = [';', ' / ', /\.(?:\s+|$)/]

/** "Ana YM; Bo youth L, he's 9; Cy 2T": players parted by other signs than a comma, each on a line of its own. */
const withLines = (line: string): string => {
  const parted = signs
    .map((sign) => line.split(sign).flatMap((part) => (part.trim() === '' ? [] : [part.trim()])))
    .find((parts) => parts.length >= fewest && parts.every((part) => isSized(part)))
  return parted === undefined ? line : parted.join('\n')
}

/** "1 Ana YM, 2 Bea YM, 3 Cleo YL" in one line of a list: a line for each of them. */
export const spreadRows = (text: string): string => {
  const lines = text.split('\n').map(withLines).join('\n').split('\n')
  if (lines.length < 2) return withCommas(text)
  return lines
    .map((line) => {
      const parts = line.split(/[,;]/).map((part) => part.trim())
      const whole = parts.filter((part) => part !== '')
      return whole.length >= fewest && whole.every(isWhole) ? whole.join('\n') : line
    })
    .join('\n')
}
