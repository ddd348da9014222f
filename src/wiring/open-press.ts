import { rmSync } from 'node:fs'
import { dirname } from 'node:path'
import { zipPack } from '../adapters/archive/zip.ts'
import { loadPictureFonts } from '../adapters/picture/png/fonts.ts'
import { pngPicture } from '../adapters/picture/png/render.ts'
import { loadPaperFonts } from '../adapters/printer/pdf/fonts.ts'
import { pdfPrinter } from '../adapters/printer/pdf/print.ts'
import type { Press } from '../desk/make-job.ts'

/** Printer and picture maker with the project's own fonts. */
export const openPress = async (root: string): Promise<Press> => {
  const unpacked = await loadPictureFonts(root)
  process.once('exit', () => {
    for (const file of unpacked) rmSync(dirname(file), { recursive: true, force: true })
  })
  return { printer: pdfPrinter(await loadPaperFonts(root)), picture: pngPicture(unpacked), pack: zipPack }
}
