import type PDFDocument from 'pdfkit'
import type { PaperFonts } from './fonts.ts'

type Doc = InstanceType<typeof PDFDocument>

/** The fonts as they are registered in a document. */
export const fontName = (font: 'latin' | 'extended', bold: boolean): string => `${font}-${bold ? 'bold' : 'regular'}`

export const registerFonts = (doc: Doc, fonts: PaperFonts): Doc => {
  for (const weight of ['regular', 'bold'] as const) {
    for (const font of ['latin', 'extended'] as const)
      doc.registerFont(fontName(font, weight === 'bold'), Buffer.from(fonts[weight][font]))
  }
  return doc
}
