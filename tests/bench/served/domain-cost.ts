import { archiveEntries, previewOf } from '../../../src/desk/make-job.ts'
import type { WorkerDesk } from '../../../src/desk/service/desk.ts'
import { isPlaceFree } from '../../../src/desk/service/plan/keeps-place.ts'
import { bookOf, floorFor } from '../../../src/desk/service/plan/shop-plan.ts'
import type { ShopPlan } from '../../../src/desk/service/records/records.ts'
import { careCard, priceSlip } from '../../../src/desk/ticket/slips.ts'
import { ticketFacts } from '../../../src/desk/ticket/ticket-facts.ts'
import { workOut } from '../../../src/desk/work-out.ts'
import { writeLocal } from '../../../src/domain/calendar/local-time.ts'
import type { Order } from '../../../src/domain/order/order.ts'
import { replanFor } from '../../../src/domain/schedule/replan/replan.ts'
import { budgetFor } from '../../../src/domain/schedule/search/plan.ts'
import { composeTicket } from '../../../src/domain/ticket/compose.ts'
import { startConversation } from '../../../src/domain/understanding/conversation.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { ticketWords } from '../../../templates/ticket/words.ts'

/** Seconds of processor of this process meanwhile; the work of its threads counts. */
export const cpuDuring = async (work: () => Promise<unknown> | unknown): Promise<number> => {
  const before = process.cpuUsage()
  await work()
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1_000_000
}

export type Known = { readonly words: string; readonly document: Order; readonly plan: ShopPlan; readonly orderId: string }

/** The two turns of a customer who says everything at once, and answers what is asked. */
const listen = (desk: WorkerDesk, words: string, at: number): void => {
  const state = startConversation({ id: `c${at}`, person: { id: `c${at}`, name: null }, language: 'en' })
  const now = writeLocal(desk.zone, desk.clock.now())
  const about = { shop: desk.workshop.shop, now }
  const { conversation } = hear(state, { kind: 'said', id: `d${at}`, text: words, files: [] }, about)
  hear(conversation, { kind: 'said', id: `e${at}`, text: 'all are 13 or older', files: [] }, about)
}

/** What the desk asks of the domain, the printer and the picture maker for one order, and nothing else. */
export const domainWork = async (desk: WorkerDesk, { words, document, plan, orderId }: Known, at: number): Promise<void> => {
  listen(desk, words, at)
  const now = writeLocal(desk.zone, desk.clock.now())
  const floor = (_a: unknown, _b: unknown, needBy: Parameters<typeof floorFor>[2]['needBy']) =>
    floorFor(desk, plan, { orderId, needBy })
  const worked = workOut({ document, now, job: orderId, floor }, desk.workshop)
  if (worked.work === null) throw new Error(`the order was refused: ${worked.problems.map(({ code }) => code).join(', ')}`)
  const identity = { ticket: 'T0001', order: orderId, revision: 1, replaces: null, link: null, changes: [], throwAway: [] }
  const facts = ticketFacts(worked.work, desk.workshop.shop, { identity, problems: worked.problems, now })
  const picture = previewOf(facts, desk.press.picture)
  desk.press.pack(archiveEntries(worked.work, { picture, templates: null }))
  const [sold] = plan.sold
  if (sold !== undefined) isPlaceFree(desk, { ...plan, held: [] }, { ...sold, id: orderId })
  const book = bookOf(desk, plan, desk.clock.now())
  replanFor(book, plan.slots, { seed: 1, budget: budgetFor(0.3), stop: () => false })
  const papers = [
    composeTicket(facts, ticketWords[facts.language]),
    priceSlip(worked.work, facts, desk.workshop.shop),
    careCard(facts),
  ]
  for (const paper of papers) await desk.press.printer.print(paper)
}
