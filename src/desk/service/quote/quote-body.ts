import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { ok } from '../../../domain/result/result.ts'
import type { Reckoned } from '../../../domain/schedule/work/learned-rates.ts'
import type { Shop } from '../../../domain/shop/shop.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { OrderStep } from '../../../ports/queue.ts'
import type { HashedFile } from '../../../ports/talk-records.ts'
import { archiveEntries, previewOf } from '../../make-job.ts'
import { quoteOf } from '../../quote.ts'
import { stockUses } from '../../stock-uses.ts'
import { careCard, priceSlip } from '../../ticket/slips.ts'
import { templatePrint } from '../../ticket/template-print.ts'
import { ticketFacts } from '../../ticket/ticket-facts.ts'
import type { Work, WorkedOut, Workshop } from '../../work-out.ts'
import { conversationChannel, orderFiles, type WorkerDesk } from '../desk.ts'
import type { PlacedOrder, QuoteBody } from '../records/records.ts'
import { shopLanguage } from '../say/say-floor.ts'

export type Asking = { readonly desk: WorkerDesk; readonly step: OrderStep<'quote'>; readonly conversation: string | null }
type Present = { readonly workshop: Workshop; readonly reckoned: Reckoned }
type Papers = { readonly work: Work; readonly facts: TicketFacts; readonly shop: Shop }

const placedOf = (work: Work, step: OrderStep<'quote'>, reckoned: Reckoned): PlacedOrder => ({
  id: step.orderId,
  revision: step.revision,
  needBy: work.promised.promised,
  promised: work.promised.promised,
  weight: 1,
  operations: work.operations,
  reckoned,
})

type Kept = { readonly owner: string; readonly file: HashedFile }

const keepAll = async (desk: WorkerDesk, all: readonly Kept[]): Promise<void> => {
  await desk.store.together(desk.shopId, async ({ files }) => {
    for (const { owner, file } of all) await files.keep(owner, file)
    return ok(null)
  })
}

/** The new templates one to one on paper, if there are any, and the archive of everything for the cutter. */
const cutterFiles = async ({ desk, step }: Asking, { work, facts, shop }: Papers, picture: Uint8Array) => {
  const called = `${step.orderId}-${step.revision}`
  const file = (name: string, mime: string, bytes: Uint8Array): HashedFile => ({ hash: desk.ids.hash(bytes), name, mime, bytes })
  const print = templatePrint(work, facts, shop)
  const templates = print === null ? null : (await desk.press.printer.print(print)).bytes
  const zip = desk.press.pack(archiveEntries(work, { picture, templates }))
  return {
    archive: file(`cut-${called}.zip`, 'application/zip', zip),
    templates: templates === null ? null : file(`templates-${called}.pdf`, 'application/pdf', templates),
  }
}

const refusedBody = (worked: WorkedOut, { workshop }: Present): QuoteBody => ({
  version: 1,
  quote: quoteOf(worked, workshop.shop, null),
  placed: null,
  facts: null,
  stock: [],
  cutArchive: null,
  picture: null,
})

/** The same work for whoever reads another language than its customer. */
const readIn = (work: Work, language: Language): Work => ({
  ...work,
  order: { ...work.order, language },
  resolved: { ...work.resolved, order: { ...work.resolved.order, language } },
})

const factsFor = ({ desk, step }: Asking, { work, problems }: WorkedOut & { readonly work: Work }, shop: Shop): TicketFacts => {
  const { orderId: order, revision } = step
  const blank = { ticket: '', order, revision, replaces: null, link: null, changes: [], throwAway: [] }
  return ticketFacts(work, shop, { identity: blank, problems, now: writeLocal(desk.zone, desk.clock.now()) })
}

/** Keeps picture and cut files, and gathers what the ticket will need. */
export const bodyOf = async (asking: Asking, worked: WorkedOut, present: Present): Promise<QuoteBody> => {
  const { desk, step, conversation } = asking
  const { shop } = present.workshop
  const { work } = worked
  if (work === null) return refusedBody(worked, present)
  // The customer's papers are in their language, the ticket and what is cut in the one that is read at the press.
  const facts = factsFor(asking, { ...worked, work }, shop)
  const read = shopLanguage(desk)
  const bench = read === facts.language ? facts : factsFor(asking, { ...worked, work: readIn(work, read) }, shop)
  const png = previewOf(facts, desk.press.picture)
  const proof = { hash: desk.ids.hash(png), name: `proof-${step.revision}.png`, mime: 'image/png', bytes: png }
  const { archive, templates } = await cutterFiles(asking, { work, facts: bench, shop }, png)
  const own = orderFiles(step.orderId)
  await keepAll(desk, [
    { owner: conversation === null ? own : conversationChannel(conversation), file: proof },
    { owner: own, file: archive },
    ...(templates === null ? [] : [{ owner: own, file: templates }]),
  ])
  return {
    version: 1,
    quote: quoteOf(worked, shop, proof.hash),
    placed: placedOf(work, step, present.reckoned),
    facts: bench,
    stock: stockUses(work, present.workshop.shop.auxiliaries),
    cutArchive: archive.hash,
    templatePrint: templates === null ? null : templates.hash,
    slips: { price: priceSlip(work, facts, shop), care: careCard(facts) },
    picture: proof.hash,
  }
}
