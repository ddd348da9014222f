import { Unzip, UnzipInflate } from 'fflate'
import readXlsxFile from 'read-excel-file/node'
import { sheetLimits } from './sheet-limits.ts'

/** The unpacked size counted while it streams, so that a small file that unpacks to gigabytes is stopped on the way. */
export const unpacksWithin = (bytes: Uint8Array, most: number): boolean => {
  let unpacked = 0
  let files = 0
  const over = (): boolean => unpacked > most || files > 1_000
  const unzip = new Unzip((file) => {
    files += 1
    file.ondata = (error, chunk) => {
      if (error !== null) throw error
      unpacked += chunk.length
      if (over()) file.terminate()
    }
    if (!over()) file.start()
  })
  unzip.register(UnzipInflate)
  for (let at = 0; at < bytes.length && !over(); at += 16_384) {
    unzip.push(bytes.subarray(at, at + 16_384), at + 16_384 >= bytes.length)
  }
  return !over()
}

/** A cell as text; a whole number keeps no decimals, a date is left out. */
const cellText = (cell: unknown): string => {
  if (typeof cell === 'string') return cell.slice(0, sheetLimits.characters)
  return typeof cell === 'number' || typeof cell === 'boolean' ? String(cell) : ''
}

/** The cells of an XLSX workbook's first sheet as text, "07" kept where the sheet has it as text. */
export const readXlsx = async (bytes: Uint8Array): Promise<readonly (readonly string[])[]> => {
  const sheets = await readXlsxFile(Buffer.from(bytes))
  const rows = sheets[0]?.data ?? []
  return rows
    .slice(0, sheetLimits.lines + 1)
    .map((row) => row.slice(0, sheetLimits.cells).map(cellText))
    .filter((row) => row.some((cell) => cell.trim() !== ''))
}
