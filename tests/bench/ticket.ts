import PDFDocument from 'pdfkit'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { loadPaperFonts, type PaperFonts } from '../../src/adapters/printer/pdf/fonts.ts'
import type { Mark, Node, Page } from '../../src/adapters/printer/pdf/marks.ts'
import { layOutTicket, printTicket } from '../../src/adapters/printer/pdf/print.ts'
import { composeTicket } from '../../src/domain/ticket/compose.ts'
import type { TicketFacts } from '../../src/domain/ticket/facts.ts'
import { ticketWordsEn } from '../../templates/ticket/en.ts'
import { footballFacts } from '../domain/ticket/facts.builder.ts'
import { realArt } from '../domain/ticket/real-art.builder.ts'
import type { Bench, Figure } from './bench.ts'

const drawnOf = (facts: TicketFacts): TicketFacts => ({
  ...facts,
  placements: facts.placements.map((placement) => ({
    ...placement,
    groups: placement.groups.map((group) => ({
      ...group,
      art: realArt(group.sample, group.heightMicrometres, placement.content === 'number' ? 'stones' : 'plain'),
    })),
  })),
})

const marksOf = (node: Node): readonly Mark[] => [...node.marks, ...node.children.flatMap(marksOf)]

const bare = (doc: InstanceType<typeof PDFDocument>, mark: Mark): void => {
  if (mark.kind === 'text') doc.font('latin').fontSize(mark.size).text(mark.text, mark.x, mark.y, { lineBreak: false })
  if (mark.kind === 'line')
    doc
      .moveTo(...mark.from)
      .lineTo(...mark.to)
      .stroke()
  if (mark.kind === 'box') doc.rect(mark.x, mark.y, mark.width, mark.height).stroke()
  if (mark.kind === 'path') doc.path(mark.path).stroke()
  if (mark.kind !== 'circles') return
  for (const [x, y] of mark.at) doc.moveTo(x, y).lineTo(x, y)
  doc.stroke()
}

/** The floor: the same number of bare lines of text and curves on as many pages, nothing composed, measured or tagged. */
const drawBare = (pages: readonly Page[], fonts: PaperFonts): void => {
  const doc = new PDFDocument({ autoFirstPage: false, margin: 0 })
  doc.registerFont('latin', Buffer.from(fonts.regular.latin))
  for (const page of pages) {
    doc.addPage()
    for (const { node } of page.nodes) for (const mark of marksOf(node)) bare(doc, mark)
  }
  doc.end()
  doc.read()
}

const timed = (work: () => unknown): number => {
  const start = performance.now()
  work()
  return performance.now() - start
}

const middle = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0

/** Both in turn, so that a busy machine slows both alike. */
const race = (rounds: number, [floor, whole]: readonly [() => unknown, () => unknown]) => {
  const times: { readonly floor: number[]; readonly whole: number[] } = { floor: [], whole: [] }
  for (let round = 0; round < rounds + 2; round += 1) {
    const [one, other] = [timed(floor), timed(whole)]
    if (round < 2) continue
    times.floor.push(one)
    times.whole.push(other)
  }
  return { floor: middle(times.floor), whole: middle(times.whole) }
}

const figuresOf = (count: number, fonts: PaperFonts, rounds: number): readonly Figure[] => {
  const facts = drawnOf(footballFacts(count))
  const { pages } = layOutTicket(composeTicket(facts, ticketWordsEn), fonts)
  const { bytes } = printTicket(composeTicket(facts, ticketWordsEn), fonts)
  const { floor, whole } = race(rounds, [
    () => drawBare(pages, fonts),
    () => printTicket(composeTicket(facts, ticketWordsEn), fonts),
  ])
  return [
    { name: `${count} garments: pages`, value: pages.length, unit: 'pages' },
    { name: `${count} garments: size`, value: bytes.length / 1000, unit: 'KB', ...(count === 100 ? { most: 600 } : {}) },
    { name: `${count} garments: composed, set, drawn`, value: whole, unit: 'ms' },
    { name: `${count} garments: bare lines and curves`, value: floor, unit: 'ms' },
    { name: `${count} garments: against the floor`, value: whole / floor, unit: '×', most: 3 },
  ]
}

export const bench: Bench = async ({ quick }) => {
  const fonts = await loadPaperFonts(projectRoot())
  const rounds = quick ? 3 : 15
  return [...figuresOf(12, fonts, rounds), ...figuresOf(100, fonts, rounds)]
}
