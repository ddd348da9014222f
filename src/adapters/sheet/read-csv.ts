import { sheetLimits } from './sheet-limits.ts'

/** Bytes as text: UTF-8, or Windows-1252 as older spreadsheets write it. */
const decoded = (bytes: Uint8Array): string => {
  const utf16 = bytes[0] === 0xff && bytes[1] === 0xfe
  if (utf16) return new TextDecoder('utf-16le').decode(bytes)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return new TextDecoder('windows-1252').decode(bytes)
  }
}

/** The sign that separates most evenly: the one with which the first lines have most cells. */
const separatorOf = (text: string): string => {
  const lines = text.split('\n').slice(0, 10)
  const count = (sign: string) => lines.reduce((sum, line) => sum + line.split(sign).length - 1, 0)
  return ['\t', ';', ','].reduce((best, sign) => (count(sign) > count(best) ? sign : best), ',')
}

type Reading = { cell: string; cells: string[]; readonly lines: string[][]; quoted: boolean }

const closeCell = (reading: Reading): void => {
  reading.cells.push(reading.cell.slice(0, sheetLimits.characters))
  reading.cell = ''
}

const closeLine = (reading: Reading): void => {
  closeCell(reading)
  if (reading.cells.some((cell) => cell.trim() !== '')) reading.lines.push(reading.cells.slice(0, sheetLimits.cells))
  reading.cells = []
}

/** Reads one sign outside quotes. */
const plainSign = (reading: Reading, sign: string, separator: string): void => {
  if (sign === '"' && reading.cell.trim() === '') {
    reading.quoted = true
    reading.cell = ''
  } else if (sign === separator) closeCell(reading)
  else if (sign === '\n') closeLine(reading)
  else if (sign !== '\r') reading.cell += sign
}

/** Comma-, semicolon- or tab-separated lines with quoted cells (RFC 4180), empty lines left out. */
export const readCsv = (bytes: Uint8Array): readonly (readonly string[])[] => {
  const text = decoded(bytes).replace(/^\ufeff/, '')
  const separator = separatorOf(text)
  const reading: Reading = { cell: '', cells: [], lines: [], quoted: false }
  for (let at = 0; at < text.length; at += 1) {
    const sign = text.charAt(at)
    if (!reading.quoted) plainSign(reading, sign, separator)
    else if (sign !== '"') reading.cell += sign
    else if (text.charAt(at + 1) === '"') {
      reading.cell += '"'
      at += 1
    } else reading.quoted = false
    if (reading.lines.length > sheetLimits.lines) break
  }
  closeLine(reading)
  return reading.lines
}
