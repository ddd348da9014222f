import type PDFDocument from 'pdfkit'
import type { PaperFonts } from './fonts.ts'
import { openFont } from './open-font.ts'

type Doc = InstanceType<typeof PDFDocument>

/** The fonts as they are registered in a document. */
export const fontName = (font: 'latin' | 'extended', bold: boolean): string => `${font}-${bold ? 'bold' : 'regular'}`

/** pdfkit takes opened fonts, too (0.20, `PDFFontFactory`); its types do not know it. */
export const registerFonts = (doc: Doc, fonts: PaperFonts): Doc => {
  for (const weight of ['regular', 'bold'] as const) {
    for (const font of ['latin', 'extended'] as const)
      Reflect.apply(doc.registerFont, doc, [fontName(font, weight === 'bold'), openFont(fonts[weight][font])])
  }
  return doc
}
