import { execFile } from 'node:child_process'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import jsQR from 'jsqr'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadPaperFonts, type PaperFonts } from '../../../src/adapters/printer/pdf/fonts.ts'
import { layOutTicket, printTicket } from '../../../src/adapters/printer/pdf/print.ts'
import { codeRows } from '../../../src/domain/ticket/code.ts'
import { composeTicket } from '../../../src/domain/ticket/compose.ts'
import type { TicketFacts } from '../../../src/domain/ticket/facts.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { footballFacts } from '../../domain/ticket/facts.builder.ts'
import { needs } from '../../support/needs.ts'

const run = promisify(execFile)
const root = new URL('../../..', import.meta.url).pathname

let fonts: PaperFonts
beforeAll(async () => {
  fonts = await loadPaperFonts(root)
})

type Grey = { readonly width: number; readonly height: number; readonly pixels: Uint8Array }

const readGrey = (file: Uint8Array): Grey => {
  const head = /^P5\s+(\d+)\s+(\d+)\s+(\d+)\s/.exec(Buffer.from(file.subarray(0, 64)).toString('latin1'))
  if (head === null) throw new Error('no PGM')
  return { width: Number(head[1]), height: Number(head[2]), pixels: file.subarray(head[0].length) }
}

const firstPage = async (facts: TicketFacts): Promise<Grey> => {
  const folder = await mkdtemp(join(tmpdir(), 'ticket-'))
  const { bytes } = printTicket(composeTicket(facts, ticketWordsEn), fonts)
  await writeFile(join(folder, 'ticket.pdf'), bytes)
  await run('pdftoppm', [
    '-r',
    '200',
    '-gray',
    '-f',
    '1',
    '-l',
    '1',
    '-singlefile',
    join(folder, 'ticket.pdf'),
    join(folder, 'page'),
  ])
  const grey = readGrey(await readFile(join(folder, 'page.pgm')))
  await rm(folder, { recursive: true })
  return grey
}

const decoded = async (facts: TicketFacts): Promise<string | undefined> => {
  const { width, height, pixels } = await firstPage(facts)
  const rgba = new Uint8ClampedArray(width * height * 4)
  for (let at = 0; at < width * height; at += 1) rgba.set([pixels[at] ?? 255, pixels[at] ?? 255, pixels[at] ?? 255, 255], at * 4)
  return jsQR.default(rgba, width, height)?.data
}

describe.runIf(needs('pdftoppm'))('the code on the ticket', () => {
  it('decodes at 200 dpi in grey to the plain code when there is no address', async () => {
    expect(await decoded(footballFacts(3))).toBe('T-1042-1')
  }, 60_000)

  it('decodes at 200 dpi in grey to the link when there is one', async () => {
    const link = 'https://bench.example.org/channels/123456789012345678/987654321098765432'
    expect(await decoded(footballFacts(3, { link }))).toBe(link)
  }, 60_000)

  it('needs no more than 29 modules for 50 alphanumeric signs (ISO/IEC 18004, version 3 at level M)', () => {
    expect(codeRows('A1'.repeat(25)).length).toBeLessThanOrEqual(29)
  })

  it('has modules of at least 4 dots of a 300 dpi printer and 4 modules free all round (ISO/IEC 18004)', () => {
    const link = `https://bench.example.org/${'x'.repeat(150)}`
    const { pages } = layOutTicket(composeTicket(footballFacts(3, { link }), ticketWordsEn), fonts)
    const marks = (pages[0]?.nodes ?? []).flatMap(({ node, y }) => node.marks.map((mark) => ({ mark, top: y })))
    const modules = codeRows(link).length
    const [code] = marks.flatMap(({ mark, top }) =>
      mark.kind === 'path' && /^M\d+ \d+h1v1h-1Z/.test(mark.path) ? [{ ...mark, top }] : [],
    )
    if (code === undefined) throw new Error('no code on the first page')
    expect(code.scale).toBeGreaterThanOrEqual((4 * 72) / 300)
    const quiet = 4 * code.scale
    const [left, bottom] = [code.x - quiet, code.top + code.y + modules * code.scale + quiet]
    const near = marks.flatMap(({ mark, top }) => (mark.kind === 'text' && top + mark.y < bottom - 0.01 ? [mark] : []))
    expect(near.length).toBeGreaterThan(3)
    expect(near.filter((text) => text.x + text.width > left).map((text) => text.text)).toEqual([])
  })
})
