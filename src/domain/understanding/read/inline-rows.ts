import { readRowLine } from './row-line.ts'

const fewest = 2

/** A number, a name and a size. */
const isWhole = (part: string): boolean => {
  const row = readRowLine(part)
  return row?.number !== undefined && row.name !== undefined && row.size !== undefined
}

/** "1 Ana YM, 2 Bea YM, 3 Cleo YL" in one line of a list: a line for each of them. */
export const spreadRows = (text: string): string => {
  const lines = text.split('\n')
  if (lines.length < 2) return text
  return lines
    .map((line) => {
      const parts = line.split(/[,;]/).map((part) => part.trim())
      const whole = parts.filter((part) => part !== '')
      return whole.length >= fewest && whole.every(isWhole) ? whole.join('\n') : line
    })
    .join('\n')
}
