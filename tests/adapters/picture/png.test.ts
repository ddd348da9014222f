import { readFileSync } from 'node:fs'
import { inflateSync } from 'node:zlib'
import { create } from 'fontkit'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadPictureFonts } from '../../../src/adapters/picture/png/fonts.ts'
import { pngPicture } from '../../../src/adapters/picture/png/render.ts'
import { previewSvg } from '../../../src/domain/ticket/preview.ts'
import { unpackWoff } from '../../../src/domain/ticket/woff.ts'
import type { Picture } from '../../../src/ports/picture.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { footballFacts } from '../../domain/ticket/facts.builder.ts'

const root = new URL('../../..', import.meta.url).pathname
const woffFile = `${root}/node_modules/@fontsource/ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-400-normal.woff`

let picture: Picture
beforeAll(async () => {
  picture = pngPicture(await loadPictureFonts(root))
})

const svg = (inner: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="0 0 100 50" font-family="IBM Plex Sans Condensed">${inner}</svg>`

describe('the picture', () => {
  it('is a PNG of the width asked for', () => {
    const png = Buffer.from(picture.render(previewSvg(footballFacts(3), ticketWordsEn), 700))
    expect(png.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a')
    expect(png.readUInt32BE(16)).toBe(700)
  })

  it('is the same to the byte each time', () => {
    const drawn = previewSvg(footballFacts(3), ticketWordsEn)
    expect(Buffer.compare(picture.render(drawn, 300), picture.render(drawn, 300))).toBe(0)
  })

  it('draws words with the face it was given and none of the machine’s', () => {
    const words = svg('<text x="5" y="40" font-size="30">Hello Ł</text>')
    expect(picture.render(words, 200).length).toBeGreaterThan(picture.render(svg(''), 200).length + 300)
    expect(pngPicture([]).render(words, 200)).toEqual(picture.render(svg(''), 200))
  })
})

const fontOf = (bytes: Buffer) => {
  const made = create(bytes)
  if (!('layout' in made)) throw new Error('not one font')
  return made
}

describe('a font unpacked from WOFF', () => {
  it('has the same glyphs, widths and characters as the packed one', () => {
    const packed = fontOf(readFileSync(woffFile))
    const unpacked = fontOf(Buffer.from(unpackWoff(readFileSync(woffFile), inflateSync)))
    expect(unpacked.numGlyphs).toBe(packed.numGlyphs)
    expect(unpacked.characterSet).toEqual(packed.characterSet)
    for (const text of ['Ticket', '325 °F', 'Ñandú'])
      expect(unpacked.layout(text).advanceWidth).toBe(packed.layout(text).advanceWidth)
  })

  it('is refused when the bytes are something else', () => {
    expect(() => unpackWoff(new Uint8Array(64), inflateSync)).toThrow(RangeError)
  })
})
