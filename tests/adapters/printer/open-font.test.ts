import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { create, type Font } from 'fontkit'
import { describe, expect, it } from 'vitest'
import { loadPaperFonts } from '../../../src/adapters/printer/pdf/fonts.ts'
import { openFont } from '../../../src/adapters/printer/pdf/open-font.ts'
import { printTicket } from '../../../src/adapters/printer/pdf/print.ts'
import { composeTicket } from '../../../src/domain/ticket/compose.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { footballFacts } from '../../domain/ticket/facts.builder.ts'

const root = new URL('../../..', import.meta.url).pathname

const words = ['AVATAR ', 'office', '12 × ', 'Fluffy', 'To. ', '']

describe('a font that is opened once', () => {
  it('sets words as one that is opened anew, however often they are asked for', async () => {
    const { latin } = (await loadPaperFonts(root)).regular
    const anew = (): Font => {
      const font = create(Buffer.from(latin))
      if ('fonts' in font) throw new TypeError('one font is meant')
      return font
    }
    for (const word of [...words, ...words]) {
      const [shared, own] = [openFont(latin).layout(word), anew().layout(word)]
      expect(shared.glyphs.map(({ id }) => id)).toEqual(own.glyphs.map(({ id }) => id))
      expect(shared.positions.map(({ xAdvance, xOffset }) => [xAdvance, xOffset])).toEqual(
        own.positions.map(({ xAdvance, xOffset }) => [xAdvance, xOffset]),
      )
      expect(shared.advanceWidth).toBe(own.advanceWidth)
    }
  })

  it('prints a ticket the same whatever was printed with it before', async () => {
    const [used, fresh] = [await loadPaperFonts(root), await loadPaperFonts(root)]
    const noted = (notes: string) => composeTicket(footballFacts(12, { notes }), ticketWordsEn)
    for (const notes of ['ĳ ŀ ŉ î ï í į ffi fl', 'ı j i\u0302 no\u00a0break']) printTicket(noted(notes), used)
    const ticket = noted('ı î ﬁ ﬂ no break')
    const [after, alone] = [printTicket(ticket, used), printTicket(ticket, fresh)]
    expect(Buffer.from(after.bytes).equals(Buffer.from(alone.bytes))).toBe(true)
  })

  it('is refused when a document would scale its words in place', async () => {
    const bytes = await readFile(join(root, 'node_modules/@fontsource/anton/files/anton-latin-400-normal.woff'))
    expect(() => openFont(bytes)).toThrow('units to the em')
  })
})
