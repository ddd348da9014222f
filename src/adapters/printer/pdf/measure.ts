import type { PaperFonts } from './fonts.ts'
import { openFont } from './open-font.ts'
import type { FontMeasure, Run } from './type-setter.ts'

/** Texts whose widths are kept; beyond them all are forgotten. */
const mostTexts = 20_000

/** pdfkit sets word by word, each with the space behind it. */
const wordsOf = (text: string): readonly string[] => text.split(/(?<=[ \t])/)

const measuring = (fonts: PaperFonts): FontMeasure => {
  const signs = {
    latin: new Set(openFont(fonts.regular.latin).characterSet),
    extended: new Set(openFont(fonts.regular.extended).characterSet),
  }
  const widths = new Map<string, number>()
  const widthOf = ({ font, text }: Run, weight: keyof PaperFonts): number => {
    const { layout, unitsPerEm } = openFont(fonts[weight][font])
    return wordsOf(text).reduce((sum, word) => sum + layout(word).advanceWidth, 0) / unitsPerEm
  }
  const advance = (run: Run, bold: boolean): number => {
    const weight = bold ? 'bold' : 'regular'
    const name = `${weight} ${run.font} ${run.text}`
    const width = widths.get(name) ?? widthOf(run, weight)
    if (widths.size >= mostTexts) widths.clear()
    widths.set(name, width)
    return width
  }
  return { has: (font, codePoint) => signs[font].has(codePoint), advance }
}

const known = new WeakMap<PaperFonts, FontMeasure>()

/** How wide texts are in these fonts. Most of a paper stand on every paper: they are measured once in a process. */
export const measureOf = (fonts: PaperFonts): FontMeasure => {
  const measure = known.get(fonts) ?? measuring(fonts)
  known.set(fonts, measure)
  return measure
}
