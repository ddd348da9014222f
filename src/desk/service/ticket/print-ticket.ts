import { ticketWords } from '../../../../templates/ticket/words.ts'
import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { changesBetween, throwAwayBetween } from '../../../domain/ticket/compare.ts'
import { composeTicket } from '../../../domain/ticket/compose.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import type { PlanFacts } from '../../../domain/ticket/plan-facts.ts'
import type { OrderStep } from '../../../ports/queue.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { HashedFile } from '../../../ports/talk-records.ts'
import type { StoredTicket } from '../../../ports/work-records.ts'
import { slotFacts } from '../../ticket/ticket-facts.ts'
import { type Desk, orderFiles, shopChannel, type WorkerDesk } from '../desk.ts'
import { isDropped } from '../records/moot.ts'
import { type QuoteBody, quoteFrom, type ShopPlan, shopPlanFrom, type TicketBody, ticketFrom } from '../records/records.ts'
import { ticketIdOf, ticketName } from '../records/ticket-names.ts'
import { type BenchPapers, type CustomerPapers, keepBenchPapers, offerCustomerPapers, printCustomerPapers } from './job-papers.ts'

/** The plan in the ticket's words. */
const plannedFacts = (desk: Desk, plan: ShopPlan, facts: TicketFacts): PlanFacts => {
  const slots = plan.slots.filter((slot) => slot.order === facts.order)
  return {
    ...facts.plan,
    slots: slots.map((slot) => slotFacts(slot, desk.zone, facts.language)),
  }
}

/** What differs from the ticket that this one replaces, and which pieces already made must not be used. */
const differences = async (
  shop: ShopStore,
  earlier: StoredTicket | undefined,
  facts: TicketFacts,
): Promise<Pick<TicketFacts, 'changes' | 'throwAway'>> => {
  if (earlier === undefined) return { changes: [], throwAway: [] }
  const before = ticketFrom(earlier.body).facts
  const states = new Map((await shop.orders.rows(earlier.orderId)).map(({ line, state }) => [line, state]))
  return {
    changes: changesBetween(before, facts, ticketWords[facts.language]),
    throwAway: throwAwayBetween(before, facts, (line) => states.get(line) ?? 'not-cut'),
  }
}

/** What was worked out for the revision; a ticket without it is a bug and thrown. */
const keptQuote = ({ orderId, revision }: OrderStep<'ticket'>, stored: unknown): QuoteBody => {
  if (stored === null || stored === undefined) throw new Error(`no quote is kept for ${orderId}, revision ${revision}`)
  return quoteFrom(stored)
}

type Printing = {
  readonly step: OrderStep<'ticket'>
  readonly quote: QuoteBody
  readonly tickets: readonly StoredTicket[]
  readonly shopPlan: ShopPlan
}

const factsOf = async (desk: Desk, shop: ShopStore, printing: Printing): Promise<TicketFacts> => {
  const { step, quote, tickets, shopPlan } = printing
  const { orderId, revision } = step
  const { facts } = quote
  if (facts === null) throw new Error(`the quote of ${orderId}, revision ${revision} was refused, so there is nothing to print`)
  const earlier = tickets.filter((ticket) => ticket.revision < revision).at(-1)
  const now = writeLocal(desk.zone, desk.clock.now())
  const differs = await differences(shop, earlier, facts)
  const plan = plannedFacts(desk, shopPlan, facts)
  return { ...facts, ...differs, now, order: orderId, revision, replaces: earlier?.revision ?? null, plan }
}

/** Reserves the ticket's number first, because the number stands on the paper; a repeated step finds it again. */
const numberedTicket = async (shop: ShopStore, { step, tickets }: Printing, facts: TicketFacts): Promise<StoredTicket> => {
  const { orderId, revision } = step
  const ticketId = ticketIdOf(orderId, revision)
  const known = tickets.find((ticket) => ticket.ticketId === ticketId)
  if (known !== undefined) return known
  const body: TicketBody = { version: 1, pdf: '', facts }
  const added = await shop.tickets.add({ ticketId, orderId, revision, body })
  if (added.ok) return added.value
  const raced = await shop.tickets.read(ticketId)
  if (raced === null) throw new Error(`the ticket ${ticketId} could not be numbered`)
  return raced
}

type Printed = {
  readonly step: OrderStep<'ticket'>
  readonly ticket: StoredTicket
  readonly facts: TicketFacts
  readonly bench: BenchPapers
  readonly file: HashedFile
  readonly slips: CustomerPapers | null
}

/** The order was cancelled while its ticket was being printed: the number stays used, the ticket is none. */
const dropTicket = async (shop: ShopStore, step: OrderStep<'ticket'>, ticket: StoredTicket): Promise<Result<null, Problem>> => {
  const changed = await shop.tickets.change({ id: ticket.ticketId, version: ticket.version }, { state: 'cancelled' })
  if (!changed.ok) return changed
  await shop.steps.done(step)
  return ok(null)
}

const finish = async (desk: Desk, shop: ShopStore, done: Printed): Promise<Result<null, Problem>> => {
  const { step, ticket, facts, bench, file, slips } = done
  const { orderId, revision } = step
  const [about, present, papers] = await Promise.all([
    shop.steps.about(step),
    shop.tickets.read(ticket.ticketId),
    keepBenchPapers(shop, step, bench),
  ])
  if (about.isDone) return ok(null)
  if (isDropped(about)) return dropTicket(shop, step, present ?? ticket)
  for (const owner of [orderFiles(orderId), shopChannel('bench')]) await shop.files.keep(owner, file)
  const body: TicketBody = { version: 1, pdf: file.hash, papers, facts }
  const changed = await shop.tickets.change({ id: ticket.ticketId, version: present?.version ?? ticket.version }, { body })
  if (!changed.ok) return changed
  const { order, language } = about
  if (order !== null && order.state === 'planned' && order.revision === revision) {
    const moved = await shop.orders.change({ id: orderId, version: order.version }, { state: 'ticketed' })
    if (!moved.ok) return moved
  }
  await shop.events.add({
    code: 'ticketed',
    orderId,
    ticketId: ticket.ticketId,
    by: 'desk',
    at: desk.clock.now(),
    facts: { revision },
  })
  const id = order?.conversationId ?? null
  if (slips !== null && id !== null && language !== null)
    await offerCustomerPapers(shop, step, { conversation: { id, language }, papers: slips })
  await shop.steps.want({ step: 'post', orderId, revision })
  await shop.steps.done(step)
  return ok(null)
}

/** The ticket step: prints the ticket of a planned revision once, from what the quote kept, and wants it posted. */
export const printTicket = async (desk: WorkerDesk, step: OrderStep<'ticket'>): Promise<void> => {
  const shop = desk.store.shop(desk.shopId)
  const [about, stored, tickets, plan] = await desk.store.look(desk.shopId, ({ steps, quotes, tickets: all, plan: book }) =>
    Promise.all([steps.about(step), quotes.ofRevision(step), all.ofOrder(step.orderId), book.read()]),
  )
  if (about.isDone) return
  if (isDropped(about) || about.revision === null) {
    await shop.steps.done(step)
    return
  }
  const quote = keptQuote(step, stored)
  const printing = { step, quote, tickets, shopPlan: shopPlanFrom(plan.body) }
  const facts = await factsOf(desk, shop, printing)
  const ticket = await numberedTicket(shop, printing, facts)
  const named = { ...facts, ticket: ticketName(ticket.number) }
  const printed = await desk.press.printer.print(composeTicket(named, ticketWords[named.language]))
  const hash = desk.ids.hash(printed.bytes)
  const called = `${named.ticket}-${step.revision}`
  const file = { hash, name: `${called}.pdf`, mime: 'application/pdf', bytes: printed.bytes }
  const slips = about.language === null ? null : await printCustomerPapers(desk, { quote, called })
  const kept = await desk.store.together(desk.shopId, (inside) =>
    finish(desk, inside, { step, ticket, facts: named, bench: { quote, called }, file, slips }),
  )
  if (!kept.ok)
    throw new Error(`the ticket ${ticket.ticketId} could not be kept: ${kept.problems.map((one) => one.code).join(', ')}`)
}
