import { ticketWords } from '../../templates/ticket/words.ts'
import { sheetDxf } from '../domain/cutting/sheet-dxf.ts'
import { sheetSvg } from '../domain/cutting/sheet-svg.ts'
import type { Problem } from '../domain/result/result.ts'
import type { Shop } from '../domain/shop/shop.ts'
import { composeTicket } from '../domain/ticket/compose.ts'
import type { TicketFacts } from '../domain/ticket/facts.ts'
import { previewSvg } from '../domain/ticket/preview.ts'
import { paperLacks } from '../domain/ticket/problems.ts'
import type { Ticket } from '../domain/ticket/ticket.ts'
import type { Pack } from '../ports/archive.ts'
import type { Picture } from '../ports/picture.ts'
import type { Printer } from '../ports/printer.ts'
import {
  archiveFile,
  careFile,
  dxfOf,
  previewFile,
  priceFile,
  templatePrintFile,
  templateSheetFile,
  ticketFile,
  vinylSheetFile,
} from './file-names.ts'
import { type JobFile, resultDocument } from './result-document.ts'
import { careCard, priceSlip } from './ticket/slips.ts'
import { templatePrint } from './ticket/template-print.ts'
import { type TicketIdentity, ticketFacts } from './ticket/ticket-facts.ts'
import { type Asked, type Work, type WorkedOut, type Workshop, workOut } from './work-out.ts'

const previewPixels = 1_400

export type Press = { readonly printer: Printer; readonly picture: Picture; readonly pack: Pack }

export type Made = {
  readonly refused: boolean
  readonly problems: readonly Problem[]
  readonly result: ReturnType<typeof resultDocument>
  /** Without the result document itself. */
  readonly files: readonly JobFile[]
}

const encode = (text: string): Uint8Array => new TextEncoder().encode(text)

/** Every sheet for the cutter, as SVG in mm and as DXF. */
const cutFiles = (work: Work): readonly JobFile[] =>
  [
    ...work.cuts.vinyl.map(({ material, sheet }) => ({ name: vinylSheetFile(material.id), sheet })),
    ...work.cuts.templates.map((sheet) => ({ name: templateSheetFile(sheet.id), sheet })),
  ].flatMap(({ name, sheet }) => [
    { name, bytes: encode(sheetSvg(sheet)) },
    { name: dxfOf(name), bytes: encode(sheetDxf(sheet)) },
  ])

/** Everything that goes to the cutter in one archive: its sheets, the templates one to one on paper, and the picture. */
export const archiveEntries = (
  work: Work,
  shown: { readonly picture: Uint8Array; readonly templates: Uint8Array | null },
): readonly JobFile[] => [
  ...cutFiles(work),
  ...(shown.templates === null ? [] : [{ name: templatePrintFile, bytes: shown.templates }]),
  { name: previewFile, bytes: shown.picture },
]

const printTemplates = async (ticket: Ticket | null, printer: Printer): Promise<Uint8Array | null> =>
  ticket === null ? null : (await printer.print(ticket)).bytes

type Papers = { readonly work: Work; readonly facts: TicketFacts; readonly shop: Shop }

/** The papers beside the ticket, the picture, and the files for the cutter, loose and in one archive. */
const otherFiles = async ({ work, facts, shop }: Papers, { printer, picture, pack }: Press): Promise<readonly JobFile[]> => {
  const price = await printer.print(priceSlip(work, facts, shop))
  const care = await printer.print(careCard(facts))
  const preview = previewOf(facts, picture)
  const templates = await printTemplates(templatePrint(work, facts, shop), printer)
  const entries = archiveEntries(work, { picture: preview, templates })
  return [
    { name: priceFile, bytes: price.bytes },
    { name: careFile, bytes: care.bytes },
    ...entries,
    { name: archiveFile, bytes: pack(entries) },
  ]
}

/** The picture a customer and a presser see: front and back of every garment, to scale. */
export const previewOf = (facts: TicketFacts, picture: Picture): Uint8Array =>
  picture.render(previewSvg(facts, ticketWords[facts.language]), previewPixels)

/** A refused order: its problems in words, and nothing else. */
export const refusedJob = (worked: WorkedOut, shop: Shop): Made => ({
  refused: true,
  problems: worked.problems,
  result: resultDocument(worked, shop, []),
  files: [],
})

/**
 * The whole job for one order without database or chat: worked out, drawn and printed. A refused order gives the result
 * document alone.
 */
export const makeJob = async (
  asked: Asked & { readonly identity: TicketIdentity },
  workshop: Workshop,
  press: Press,
): Promise<Made> => {
  const worked = workOut(asked, workshop)
  if (worked.work === null) return refusedJob(worked, workshop.shop)
  const { problems } = worked
  const facts = ticketFacts(worked.work, workshop.shop, { identity: asked.identity, problems, now: asked.now })
  const { printer } = press
  const printed = await printer.print(composeTicket(facts, ticketWords[facts.language]))
  const others = await otherFiles({ work: worked.work, facts, shop: workshop.shop }, press)
  const files: readonly JobFile[] = [{ name: ticketFile, bytes: printed.bytes }, ...others]
  const all = [...problems, ...paperLacks(printed.lacking)]
  const names = files.map((file) => file.name)
  return { refused: false, problems: all, result: resultDocument({ ...worked, problems: all }, workshop.shop, names), files }
}
