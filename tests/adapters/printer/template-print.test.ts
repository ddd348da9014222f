import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import { loadPaperFonts } from '../../../src/adapters/printer/pdf/fonts.ts'
import { pdfPrinter } from '../../../src/adapters/printer/pdf/print.ts'
import { composeTemplatePrint, type PrintedTemplate, type TemplatePrintFacts } from '../../../src/domain/ticket/template-print.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { outside, overlaps, readPdf } from './read-pdf.ts'

const root = new URL('../../..', import.meta.url).pathname
const printer = pdfPrinter(await loadPaperFonts(root))

/** Holes of 3.3 mm whose outermost middles lie 120 mm and 60 mm apart. */
const square: PrintedTemplate = {
  text: '8',
  stone: 'SS10 crystal',
  heightMicrometres: 254_000,
  holeMicrometres: 3_300,
  holes: [
    [0, 0],
    [120_000, 0],
    [0, 60_000],
    [120_000, 60_000],
  ],
  paths: [],
}

const facts = (length: 'in' | 'cm', paper: 'letter' | 'a4', templates = [square]): TemplatePrintFacts => ({
  now: '2026-11-02T08:30',
  language: 'en',
  show: { length, paper },
  of: 'T1042',
  revision: 1,
  templates,
})

const print = async (asked: TemplatePrintFacts): Promise<Uint8Array> =>
  (await printer.print(composeTemplatePrint(asked, ticketWordsEn))).bytes

type Drawn = { readonly width: number; readonly height: number; readonly x: number; readonly y: number }

/** Every path of a page as pdf.js finds it, in points of the paper; a page that is scaled anywhere is a failure. */
const pathsOf = async (bytes: Uint8Array, page: number): Promise<readonly Drawn[]> => {
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 })
  const list = await (await (await task.promise).getPage(page)).getOperatorList()
  const drawn: Drawn[] = []
  let at = { x: 0, y: 0, down: 1 }
  const kept: (typeof at)[] = []
  list.fnArray.forEach((operator, index) => {
    const given: unknown = list.argsArray[index]
    if (operator === OPS.save) kept.push(at)
    if (operator === OPS.restore) at = kept.pop() ?? at
    if (operator === OPS.transform && Array.isArray(given)) {
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = given.map(Number)
      expect([Math.abs(a), b, c, Math.abs(d)]).toEqual([1, 0, 0, 1])
      at = { x: at.x + e, y: at.y + at.down * f, down: at.down * d }
    }
    if (operator !== OPS.constructPath || !Array.isArray(given)) return
    const [left = 0, low = 0, right = 0, high = 0] = Array.from<number>(given[2] ?? [])
    drawn.push({ width: right - left, height: high - low, x: at.x + (left + right) / 2, y: at.y + (at.down * (low + high)) / 2 })
  })
  await task.destroy()
  return drawn
}

const points = (millimetres: number): number => (millimetres * 72) / 25.4

describe('templates printed one to one, measured in the PDF itself', () => {
  it.each([
    ['in', 'letter', 6 * 25.4, 61],
    ['cm', 'a4', 150, 151],
  ] as const)('in %s on %s have a ruler of its length with a tick every tenth', async (length, paper, millimetres, count) => {
    const paths = await pathsOf(await print(facts(length, paper)), 1)
    const base = paths.filter((path) => path.height < 0.01 && Math.abs(path.width - points(millimetres)) < 0.01)
    expect(base).toHaveLength(1)
    const ticks = paths.filter((path) => path.width < 0.01 && path.height > 5 && path.height < 13).map((path) => path.x)
    expect(ticks).toHaveLength(count)
    const step = points(millimetres) / (count - 1)
    const first = Math.min(...ticks)
    for (const [at, x] of ticks.toSorted((a, b) => a - b).entries()) expect(Math.abs(x - first - at * step)).toBeLessThan(0.02)
  })

  it('have every hole in its size and place: the outermost edges lie 123.3 and 63.3 mm apart', async () => {
    const paths = await pathsOf(await print(facts('in', 'letter')), 1)
    const one = await pathsOf(await print(facts('in', 'letter', [{ ...square, holes: [[0, 0]] }])), 1)
    const near = (path: Drawn, width: number, height: number): boolean =>
      Math.abs(path.width - points(width)) < 0.05 && Math.abs(path.height - points(height)) < 0.05
    expect(paths.filter((path) => near(path, 123.3, 63.3))).toHaveLength(1)
    expect(one.filter((path) => near(path, 3.3, 3.3))).toHaveLength(1)
  })

  it('say on every page to print at 100 %, and nothing overlaps or leaves the paper', async () => {
    const read = await readPdf(await print(facts('in', 'a4', [square, { ...square, text: '9' }])))
    expect(read.pages).toHaveLength(2)
    for (const page of read.pages) {
      expect(page.found.map((one) => one.text).join(' ')).toContain('Print at 100 %')
      expect(overlaps(page)).toEqual([])
      expect(outside(page)).toEqual([])
    }
  })
})
