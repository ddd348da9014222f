import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadPaperFonts, type PaperFonts } from '../../../src/adapters/printer/pdf/fonts.ts'
import { pdfPrinter, printTicket } from '../../../src/adapters/printer/pdf/print.ts'
import { composeTicket } from '../../../src/domain/ticket/compose.ts'
import type { Ticket } from '../../../src/domain/ticket/ticket.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { ticketWordsEs } from '../../../templates/ticket/es.ts'
import { everythingFacts } from '../../domain/ticket/everything.builder.ts'
import { footballFacts } from '../../domain/ticket/facts.builder.ts'
import { printerContract } from '../../ports/printer.contract.ts'
import { randomFacts } from './random-facts.ts'
import { flat, outside, overlaps, type ReadPdf, readPdf } from './read-pdf.ts'

const root = new URL('../../..', import.meta.url).pathname
const orders = process.env['LONG'] === undefined ? 30 : 500

let fonts: PaperFonts
beforeAll(async () => {
  fonts = await loadPaperFonts(root)
})

const english = async (facts = footballFacts(12)): Promise<ReadPdf> =>
  readPdf(printTicket(composeTicket(facts, ticketWordsEn), fonts).bytes)

printerContract('pdf', () => pdfPrinter(fonts))

describe('a press box', () => {
  const row = (covers: string) => ({
    covers,
    figures: [
      { label: 'Set', value: '320 °F' },
      { label: 'Time', value: '15 s' },
      { label: 'Pressure', value: 'firm (gauge 8)' },
    ],
    notes: [],
  })
  const printed = async (blocks: Ticket['sheets'][number]['blocks']): Promise<ReadPdf> => {
    const ticket = composeTicket(footballFacts(1), ticketWordsEn)
    return readPdf(printTicket({ ...ticket, sheets: [{ title: 'Boxes', blocks }] }, fonts).bytes)
  }
  const textOn = (page: ReadPdf['pages'][number] | undefined): string => (page?.found ?? []).map((one) => one.text).join(' ')

  it('says again on every page whose it is', async () => {
    const rows = Array.from({ length: 14 }, (_row, at) => row(`place ${at + 1}`))
    const { pages } = await printed([{ kind: 'press-box', title: 'PRESS BOX · away hoodie', rows }])
    expect(pages.length).toBeGreaterThan(1)
    for (const page of pages) expect(textOn(page)).toContain('PRESS BOX · away hoodie')
  })

  it('never stands alone at the foot of a page before the steps it leads', async () => {
    const filler = Array.from({ length: 60 }, (_line, at) => ({ kind: 'text', style: 'body', text: `line ${at + 1}` }) as const)
    const step = { no: '1', title: 'Pre-press: front', figures: ['320 °F'], lines: [], cautions: [] }
    const box = { kind: 'press-box', title: 'PRESS BOX · home', leads: true, rows: [row('front')] } as const
    for (let lines = 30; lines <= 60; lines += 2) {
      const { pages } = await printed([...filler.slice(0, lines), box, { kind: 'steps', steps: [step] }])
      const boxed = pages.findIndex((page) => textOn(page).includes('PRESS BOX'))
      expect(textOn(pages[boxed])).toContain('Pre-press: front')
    }
  })
})

describe('a printed ticket read back with another library', () => {
  it('holds every roster line twice: once for the press and once for the bags', async () => {
    const { pages } = await english()
    const lines = pages.map((page) => page.found.map((one) => one.text))
    for (const name of ['ALVAREZ', 'O’BRIEN', 'NUÑEZ', 'KOVÁCS', 'BAKER']) {
      const times = lines.flat().filter((text) => text === name).length
      expect(times, name).toBeGreaterThanOrEqual(2)
    }
  })

  it('reads in the order in which the shop works', async () => {
    const { text } = await english()
    const stations = [
      'Lakeside Herons',
      'PRESS BOX',
      'WARNING',
      'Gates:',
      'Where everything goes',
      'Cut, weed, brush',
      'Press sequence',
      'Roster by size',
      'Roster by name',
      'Check, pack, background',
      'Strips: one for each garment',
    ]
    const at = stations.map((station) => text.indexOf(station))
    expect(at).not.toContain(-1)
    expect(at).toEqual([...at].sort((a, b) => a - b))
  })

  it('says page n of m and the revision on every page', async () => {
    const { pages } = await english()
    pages.forEach((page, index) => {
      const all = page.found.map((one) => one.text).join(' ')
      expect(all).toContain(`page ${index + 1} of ${pages.length}`)
      expect(all).toContain('T-1042')
      expect(all).toContain('revision 1')
    })
  })

  it('shows one temperature for one setting wherever it stands', async () => {
    const { text } = await english()
    const said = new Set(text.match(/\d+(?:\.\d+)? °[FC]/g))
    expect([...said]).toEqual(['325 °F'])
  })

  it('carries no price', async () => {
    const { text } = await english(everythingFacts())
    expect(text).not.toMatch(/USD|EUR|\$|price|total amount/i)
  })

  it('has a title, a language and the mark of a tagged document', async () => {
    const read = await english()
    expect(read.info['Title']).toBe('Job ticket T-1042: Lakeside Herons')
    expect(read.language).toBe('en')
    expect(read.marked).toBe(true)
  })

  it('is said in Spanish with Spanish as its language', async () => {
    const facts = everythingFacts({ language: 'es' })
    const read = await readPdf(printTicket(composeTicket(facts, ticketWordsEs), fonts).bytes)
    expect(read.language).toBe('es')
    expect(read.text).toContain('jueves 12 de noviembre de 2026')
    expect(read.text).toContain('ADVERTENCIA')
    expect(read.text).toContain('SE LEE AL REVÉS')
  })

  it('prints a sign that no font file has as its code point and names it', async () => {
    const printed = printTicket(composeTicket(everythingFacts(), ticketWordsEn), fonts)
    expect(printed.lacking).toEqual(['中', '村'])
    const read = await readPdf(printed.bytes)
    expect(read.text).toContain('U+4E2D U+6751')
    expect(read.text).toContain('stands for a sign that this paper cannot print')
  })
})

describe('the letters of the paper', () => {
  it('are all printed that its font files have, with a space that must not break among them', async () => {
    const signs = Array.from({ length: 0x160 }, (_sign, at) => String.fromCodePoint(at + 0x20)).filter((sign) =>
      /[\p{L}\p{N}]/u.test(sign),
    )
    const long = `no\u00a0break ${signs.join('')}`
    const facts = footballFacts(1, { team: 'A', notes: long })
    const printed = printTicket(composeTicket(facts, ticketWordsEn), fonts)
    const read = await readPdf(printed.bytes)
    const has = signs.filter((sign) => !printed.lacking.includes(sign.normalize('NFC')))
    expect(has.length).toBeGreaterThan(240)
    const found = new Set([...read.text].map((sign) => sign.normalize('NFKC')))
    expect(has.filter((sign) => !found.has(sign.normalize('NFKC')))).toEqual([])
  })
})

describe('the tag tree of a printed ticket', () => {
  it('has headings, tables with head cells, lists and figures with words for them', async () => {
    const { tags } = await english()
    const nodes = flat(tags)
    const roles = new Set(nodes.map((one) => one.role))
    for (const role of ['H1', 'H2', 'P', 'Table', 'TR', 'TH', 'TD', 'L', 'LI', 'LBody', 'Figure']) expect(roles).toContain(role)
    const figures = nodes.filter((one) => one.role === 'Figure')
    expect(figures.length).toBeGreaterThan(5)
    for (const figure of figures) expect(figure.alt ?? '').not.toBe('')
  })

  it('keeps rows in tables and items in lists', async () => {
    const { tags } = await english()
    const within: Readonly<Record<string, readonly string[]>> = {
      Table: ['TR'],
      TR: ['TH', 'TD'],
      L: ['LI'],
      LI: ['Lbl', 'LBody'],
    }
    const strays = flat(tags).flatMap((one) =>
      one.children
        .filter((child) => within[one.role]?.includes(child.role) === false)
        .map((child) => `${child.role} in ${one.role}`),
    )
    expect(strays).toEqual([])
  })
})

describe('the room on the page', () => {
  it('is watched by a checker that sees two texts in one place and one over the edge', () => {
    const run = { text: 'one', x: 100, y: 100, width: 50, size: 10 }
    const page = {
      width: 612,
      height: 792,
      found: [run, { ...run, text: 'two', x: 140, y: 104 }, { ...run, text: 'far', x: 590 }],
    }
    expect(overlaps(page)).toEqual([['one', 'two']])
    expect(outside(page)).toEqual(['far'])
  })

  it('is never shared by two texts and never left by one, whatever is ordered', async () => {
    await fc.assert(
      fc.asyncProperty(randomFacts, fc.constantFrom(ticketWordsEn, ticketWordsEs), async (facts, words) => {
        const read = await readPdf(printTicket(composeTicket(facts, words), fonts).bytes)
        for (const page of read.pages) {
          expect(overlaps(page)).toEqual([])
          expect(outside(page)).toEqual([])
        }
      }),
      { numRuns: orders, seed: 8 },
    )
  }, 7_200_000)

  it('keeps 100 garments readable: heads again on every page of the roster, no row cut', async () => {
    const { pages } = await english(footballFacts(100))
    const roster = pages.filter((page) => page.found.some((one) => one.text === 'Inspected'))
    expect(roster.length).toBeGreaterThan(2)
    const rows = pages.flatMap((page) => page.found.filter((one) => /^adult (S|M|L|XL)$/.test(one.text)))
    expect(rows.length).toBe(200)
    for (const page of pages) {
      expect(overlaps(page)).toEqual([])
      expect(outside(page)).toEqual([])
    }
  }, 60_000)

  it('takes no more than 600 KB for 100 garments', async () => {
    const { bytes } = printTicket(composeTicket(footballFacts(100), ticketWordsEn), fonts)
    expect(bytes.length).toBeLessThanOrEqual(600_000)
  }, 60_000)
})
