import { create, type Font, type GlyphRun } from 'fontkit'

/** Words whose glyphs are kept; beyond them all are forgotten. */
const mostWords = 5_000

/** pdfkit scales what it is given in place to a thousand units; only what is of that scale already can be given twice. */
const unitsOfPdf = 1_000

const opened = (bytes: Uint8Array): Font => {
  const font = create(Buffer.from(bytes))
  if ('fonts' in font) throw new TypeError('a collection of several fonts')
  if (font.unitsPerEm !== unitsOfPdf) throw new TypeError(`a font of ${font.unitsPerEm} units to the em, not ${unitsOfPdf}`)
  // A glyph says for good which signs it was first met as, which is what is read when words are copied from the paper.
  for (const sign of font.characterSet) font.glyphForCodePoint(sign)
  const known = new Map<string, GlyphRun>()
  const wordOf = (text: string): GlyphRun => {
    const run = known.get(text) ?? font.layout(text)
    if (known.size >= mostWords) known.clear()
    known.set(text, run)
    return run
  }
  const layout = (text: string, features?: string[]): GlyphRun =>
    features === undefined ? wordOf(text) : font.layout(text, features)
  return Object.create(font, { layout: { value: layout } })
}

const fonts = new WeakMap<Uint8Array, Font>()

/**
 * A font that is opened once in a process, as pdfkit takes it (anything with a `layout`). Its tables are read when they are first needed,
 * and most words of a paper stand on every paper: a document that opens its own reads and sets them all again.
 */
export const openFont = (bytes: Uint8Array): Font => {
  const font = fonts.get(bytes) ?? opened(bytes)
  fonts.set(bytes, font)
  return font
}
