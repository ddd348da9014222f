import PDFDocument from 'pdfkit'
import { fontName, registerFonts } from './document-fonts.ts'
import type { PaperFonts } from './fonts.ts'
import { openFont } from './open-font.ts'
import type { FontMeasure, Run } from './type-setter.ts'

type Doc = InstanceType<typeof PDFDocument>

/** Words whose widths are kept; beyond them all are forgotten, and the document that measured them, which keeps its own. */
const mostWords = 20_000

const measuring = (fonts: PaperFonts): FontMeasure => {
  const fresh = (): Doc => registerFonts(new PDFDocument({ autoFirstPage: false, font: '' }), fonts)
  const state = { doc: fresh(), widths: new Map<string, number>() }
  const signs = {
    latin: new Set(openFont(fonts.regular.latin).characterSet),
    extended: new Set(openFont(fonts.regular.extended).characterSet),
  }
  const widthIn = (name: string, text: string): number => {
    if (state.widths.size >= mostWords) Object.assign(state, { doc: fresh(), widths: new Map() })
    const width = state.doc.font(name).fontSize(1000).widthOfString(text) / 1000
    state.widths.set(`${name} ${text}`, width)
    return width
  }
  const advance = ({ font, text }: Run, bold: boolean): number => {
    const name = fontName(font, bold)
    return state.widths.get(`${name} ${text}`) ?? widthIn(name, text)
  }
  return { has: (font, codePoint) => signs[font].has(codePoint), advance }
}

const known = new WeakMap<PaperFonts, FontMeasure>()

/**
 * How wide words are in these fonts. Most words of a paper stand on every paper: they are measured once in a process, in a document of
 * their own, so that what was measured before leaves no trace in the one that is printed.
 */
export const measureOf = (fonts: PaperFonts): FontMeasure => {
  const measure = known.get(fonts) ?? measuring(fonts)
  known.set(fonts, measure)
  return measure
}
