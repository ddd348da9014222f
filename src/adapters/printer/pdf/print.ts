import { createHash } from 'node:crypto'
import PDFDocument from 'pdfkit'
import type { Ticket } from '../../../domain/ticket/ticket.ts'
import type { Printed, Printer } from '../../../ports/printer.ts'
import { SMALL } from './blocks/room.ts'
import { registerFonts } from './document-fonts.ts'
import { type Canvas, drawMark, drawPages } from './draw.ts'
import type { PaperFonts } from './fonts.ts'
import { type Page, rule } from './marks.ts'
import { measureOf } from './measure.ts'
import { paginate } from './pages.ts'
import { setBlocks } from './set-blocks.ts'
import { lineMarks, type TypeSetter, typeSetter } from './type-setter.ts'

type Doc = InstanceType<typeof PDFDocument>

/** ANSI A Letter and ISO 216 A4 in points. */
const PAPERS = { letter: { width: 612, height: 792 }, a4: { width: 595.28, height: 841.89 } } as const
const MARGIN = 34
const HEAD = 20
const FOOT = 0

const lastLine = '%%EOF\n'

/** All of a document is written by the time that its end was asked for (ISO 32000-2, 7.5.5: its last line says so). */
const bytesOf = (doc: Doc): Uint8Array => {
  doc.end()
  const bytes: Buffer | null = doc.read()
  if (bytes === null || bytes.toString('latin1', bytes.length - lastLine.length) !== lastLine) {
    throw new Error('a paper was not written to its end')
  }
  return new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}

const instantOf = (minute: string): Date => new Date(`${minute}:00Z`)

const open = (ticket: Ticket, fonts: PaperFonts): Doc => {
  const made = instantOf(ticket.made)
  const content = createHash('sha256').update(JSON.stringify(ticket)).digest('hex')
  const { width, height } = PAPERS[ticket.paper]
  const doc = new PDFDocument({
    size: [width, height],
    margin: 0,
    autoFirstPage: false,
    // Without it each document would read a font of its own that no paper uses.
    font: '',
    pdfVersion: '1.7',
    tagged: true,
    lang: ticket.language,
    displayTitle: true,
    info: {
      Title: ticket.title,
      Creator: 'platenpost',
      Producer: 'platenpost',
      CreationDate: made,
      ModDate: made,
      Keywords: content,
    },
  })
  return registerFonts(doc, fonts)
}

type Laid = {
  readonly pages: readonly Page[]
  readonly setter: TypeSetter
  readonly doc: Doc
  readonly width: number
  readonly height: number
}

/** Everything measured and set on pages, nothing drawn. */
export const layOutTicket = (ticket: Ticket, fonts: PaperFonts): Laid => {
  const doc = open(ticket, fonts)
  const setter = typeSetter(measureOf(fonts))
  const { width, height } = PAPERS[ticket.paper]
  const room = { setter, width: width - 2 * MARGIN }
  const sheets = ticket.sheets.map((sheet) => setBlocks(sheet.blocks, room))
  const pages = paginate(sheets, { top: MARGIN + HEAD, bottom: height - MARGIN - FOOT })
  return { pages, setter, doc, width, height }
}

/** What stands at the head and foot of each page. */
const frameOf = (ticket: Ticket, { setter, doc, width, height, pages }: Laid): ((page: number) => void) => {
  const room = width - 2 * MARGIN
  const canvas = { doc, setter, left: MARGIN }
  const running = setter.wrap(ticket.running, room - 90, SMALL)[0] ?? ''
  const lacking = setter.lacking.size > 0 ? setter.spell(ticket.lacking) : ''
  const line = (text: string, top: number, align: 'left' | 'right'): void => {
    for (const mark of lineMarks(setter, [text], { x: 0, y: 0, room, align, look: SMALL })) drawMark(canvas, mark, top)
  }
  return (page) => {
    line(running, MARGIN, 'left')
    const number = ticket.foot.replace('{page}', String(page + 1)).replace('{pages}', String(pages.length))
    line(setter.spell(number), MARGIN, 'right')
    drawMark(canvas, rule([0, 12], [room, 12], 0.6), MARGIN)
    if (lacking !== '') line(lacking, height - MARGIN + 4, 'left')
  }
}

/** Prints a document to PDF bytes; the same document gives the same bytes. */
export const printTicket = (ticket: Ticket, fonts: PaperFonts): Printed => {
  const laid = layOutTicket(ticket, fonts)
  const canvas: Canvas = { doc: laid.doc, setter: laid.setter, left: MARGIN }
  drawPages(canvas, laid.pages, frameOf(ticket, laid))
  const bytes = bytesOf(laid.doc)
  return { bytes, pages: laid.pages.length, lacking: [...laid.setter.lacking].sort() }
}

export const pdfPrinter = (fonts: PaperFonts): Printer => ({ print: async (ticket) => printTicket(ticket, fonts) })
