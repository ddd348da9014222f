import { rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { zipPack } from '../adapters/archive/zip.ts'
import { loadFaces } from '../adapters/folder/faces.ts'
import { loadShop } from '../adapters/folder/shop.ts'
import { loadPictureFonts } from '../adapters/picture/png/fonts.ts'
import { pngPicture } from '../adapters/picture/png/render.ts'
import { loadPaperFonts } from '../adapters/printer/pdf/fonts.ts'
import { pdfPrinter } from '../adapters/printer/pdf/print.ts'
import type { Press } from '../desk/make-job.ts'
import type { Workshop } from '../desk/work-out.ts'
import type { PieceStones } from '../domain/layout/layout.ts'
import { ok, type Result } from '../domain/result/result.ts'

/** The shop's records and faces, read and checked. */
export const openWorkshop = async (root: string, shopFolder: string | undefined): Promise<Result<Workshop>> => {
  const folder = shopFolder ?? join(root, 'templates', 'shop')
  const shop = await loadShop(folder)
  if (!shop.ok) return shop
  const faces = await loadFaces(shop.value.faces, { root, shop: folder })
  if (!faces.ok) return faces
  return ok({ shop: shop.value, faces: faces.value, cache: new Map<string, PieceStones>() })
}

/** Printer and picture maker with the project's own fonts. */
export const openPress = async (root: string): Promise<Press> => {
  const unpacked = await loadPictureFonts(root)
  process.once('exit', () => {
    for (const file of unpacked) rmSync(dirname(file), { recursive: true, force: true })
  })
  return { printer: pdfPrinter(await loadPaperFonts(root)), picture: pngPicture(unpacked), pack: zipPack }
}
