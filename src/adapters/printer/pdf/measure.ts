import PDFDocument from 'pdfkit'
import { fontName, registerFonts } from './document-fonts.ts'
import type { PaperFonts } from './fonts.ts'
import type { FontMeasure, Run } from './type-setter.ts'

type Doc = InstanceType<typeof PDFDocument>

/** pdfkit keeps the font it has open; its signs are asked for here and nowhere else. */
const codePoints = (doc: Doc, name: string): ReadonlySet<number> => {
  doc.font(name)
  const open: unknown = Reflect.get(doc, '_font')
  const font: unknown = typeof open === 'object' && open !== null ? Reflect.get(open, 'font') : null
  const list: unknown = typeof font === 'object' && font !== null ? Reflect.get(font, 'characterSet') : null
  if (!Array.isArray(list)) throw new TypeError(`the font ${name} tells no characters`)
  return new Set(list.filter((one) => typeof one === 'number'))
}

/** Words whose widths are kept; beyond them all are forgotten, and the document that measured them, which keeps its own. */
const mostWords = 20_000

const measuring = (fonts: PaperFonts): FontMeasure => {
  const fresh = (): Doc => registerFonts(new PDFDocument({ autoFirstPage: false, font: '' }), fonts)
  const state = { doc: fresh(), widths: new Map<string, number>() }
  const signs = {
    latin: codePoints(state.doc, fontName('latin', false)),
    extended: codePoints(state.doc, fontName('extended', false)),
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
