import { deskWords } from '../../../../templates/desk/words.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { isFormAct, type PlainAct, type TicketAct } from '../../../domain/ticket/acts.ts'
import type { WorkKind } from '../../../domain/ticket/work-steps.ts'
import type { Member } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { collectorSchema, isNamedCollector } from '../floor/collector.ts'
import { type Answered, type Deed, readValues, type Values } from '../floor/deed.ts'
import { gateNames } from '../floor/gate-name.ts'
import { noteComplaint } from '../floor/note-complaint.ts'
import { readLife } from '../floor/read-life.ts'
import { finishRemake, spoil } from '../floor/remake.ts'
import { stepNames } from '../floor/step-name.ts'
import { askCustomer, tellShort } from '../floor/tell-from-bench.ts'
import { tickStep, tickWhole } from '../floor/tick.ts'
import { putTicketMessage } from '../floor/ticket-message.ts'
import { learnPace } from '../plan/learn-pace.ts'
import { ticketFrom } from '../records/records.ts'
import {
  beforeAnyPiece,
  closedFor,
  holderOf,
  openActs,
  openForms,
  stateAfter,
  type TicketLife,
  unmade,
  wantsSeen,
} from '../records/ticket-life.ts'
import { deskWordsFor, hourOf, tellCustomer, wordsFor } from '../say/say-floor.ts'
import { keepTemplates } from '../stock/keep-templates.ts'
import { useRest } from '../stock/use-stock.ts'
import { findAtGate } from './find-at-gate.ts'

export type Acting = { readonly ticketId: string; readonly act: TicketAct; readonly by: Member; readonly values?: Values }

/** Gates that are shut and steps that are not ticked, which come before an act; null when nothing does. */
const comesFirst = (desk: Desk, life: TicketLife, act: TicketAct): string | null => {
  const { facts } = ticketFrom(life.ticket.body)
  const words = wordsFor(desk)
  const closed = closedFor(life, { from: act === 'start' ? 'cutting' : 'run' }).map(({ gate }) => gate)
  if ((act === 'start' || act === 'checked') && closed.length > 0) return words.first(gateNames(desk, facts, closed))
  const steps = act === 'checked' ? unmade(life) : act === 'first-piece' ? beforeAnyPiece(life) : []
  return steps.length === 0 ? null : words.first(stepNames(desk, facts, steps))
}

/** Why it cannot be done: gone, held by somebody, something to be read or found out first. */
const refusal = (desk: Desk, life: TicketLife | null, act: TicketAct): string => {
  const words = wordsFor(desk)
  if (life === null) return deskWordsFor(desk).noTicket
  if (life.ticket.state !== 'open') return deskWordsFor(desk).notOpen
  if (wantsSeen(life) && holderOf(life.findings) !== null && act !== 'take') return words.sayFirst
  const first = life.order.state === 'on-bench' ? comesFirst(desk, life, act) : null
  if (first !== null) return first
  const holder = holderOf(life.findings)
  return holder === null ? deskWordsFor(desk).notOpen : words.done.take(holder.by, hourOf(desk, holder.at))
}

/** Steps that one press for the whole ticket ticks for every line: never one that somebody else must have done before. */
const ticksAfter: { readonly [Act in PlainAct]?: readonly WorkKind[] } = {
  start: ['cut'],
  checked: ['inspect'],
  bagged: ['bag'],
}

const stockAfter = async ({ desk, shop, life, facts, by }: Omit<Deed, 'act'>, act: PlainAct): Promise<void> => {
  if (act !== 'checked') return
  await useRest(desk, shop, { ticket: life.ticket, by: by.name })
  await keepTemplates(desk, shop, facts)
}

const tellReady = ({ shop, life: { order, ticket }, facts }: Omit<Deed, 'act'>): Promise<void> =>
  tellCustomer(shop, order, {
    nonce: `ready-${ticket.ticketId}`,
    text: (language) => deskWords[language].ready[facts.handOver],
  })

/** What an act changes besides its own row: ticks, the order, its roster rows, its stock, and what the customer is told. */
const consequences = async (deed: Omit<Deed, 'act'>, act: PlainAct): Promise<Result<null, Problem>> => {
  const { desk, shop, life } = deed
  const { order } = life
  const kinds = ticksAfter[act]
  const ticked = kinds === undefined ? ok(null) : await tickWhole(deed, kinds)
  if (!ticked.ok) return ticked
  const next = stateAfter[act]
  if (next !== null) {
    const handedOver = act === 'collected' ? { handedOverAt: desk.clock.now() } : {}
    const changed = await shop.orders.change({ id: order.orderId, version: order.version }, { state: next, ...handedOver })
    if (!changed.ok) return changed
  }
  await stockAfter(deed, act)
  if (act === 'checked') await learnPace(desk, shop, life.ticket)
  if (act === 'bagged') await tellReady(deed)
  return ok(null)
}

const plain = async (deed: Omit<Deed, 'act'>, act: PlainAct): Answered => {
  const { desk, shop, life, by } = deed
  if (!openActs(life).includes(act)) return ok(refusal(desk, life, act))
  const collector = act === 'collected' ? readValues(deed, collectorSchema) : null
  if (collector !== null && !collector.ok) return ok(collector.said)
  const to = collector?.value.collector ?? ''
  const named = deed.facts.people.collects
  if (act === 'collected' && named !== null && to !== '' && !isNamedCollector(named, to))
    return ok(wordsFor(desk).handOnlyTo(named))
  const facts = to === '' ? {} : { collector: 'named' }
  await shop.tickets.find(life.ticket.ticketId, { code: act, facts, by: by.name, at: desk.clock.now() })
  return consequences(deed, act)
}

const fill = (deed: Deed): Answered => {
  switch (deed.act) {
    case 'tick':
      return tickStep(deed)
    case 'spoiled':
      return spoil(deed)
    case 'remade':
      return finishRemake(deed)
    case 'short':
      return tellShort(deed)
    case 'ask':
      return askCustomer(deed)
    case 'complaint':
      return noteComplaint(deed)
    default:
      return findAtGate(deed)
  }
}

const isOpenNow = (life: TicketLife, act: TicketAct): boolean =>
  isFormAct(act) ? openForms(life).includes(act) : openActs(life).includes(act)

const act = async (desk: Desk, shop: ShopStore, acting: Acting): Answered => {
  const { ticketId, act: what, by, values = {} } = acting
  const life = await readLife(desk, shop, ticketId)
  if (life === null || !isOpenNow(life, what)) return ok(refusal(desk, life, what))
  const state = what === 'collected' ? { state: 'done' as const } : { body: life.ticket.body }
  const changed = await shop.tickets.change({ id: ticketId, version: life.ticket.version }, state)
  if (!changed.ok) return changed
  const deed = { desk, shop, life, facts: ticketFrom(life.ticket.body).facts, by, values }
  return isFormAct(what) ? fill({ ...deed, act: what }) : plain(deed, what)
}

/**
 * One act of one person on one ticket, with what was filled in where it asks for something. The shop's lock and the ticket's
 * version make it exclusive: of two who take it at once one has it and the other is told by whom and when. Answers with a word for
 * whoever acted, null when the act was done.
 */
export const actOnTicket = async (desk: Desk, shop: ShopStore, acting: Acting): Answered => {
  await shop.plan.alone()
  const answered = await act(desk, shop, acting)
  if (!answered.ok || answered.value !== null) return answered
  const after = await readLife(desk, shop, acting.ticketId)
  if (after === null) return answered
  await shop.events.add({
    code: acting.act,
    orderId: after.order.orderId,
    ticketId: acting.ticketId,
    by: acting.by.id,
    at: desk.clock.now(),
    facts: { revision: after.ticket.revision },
  })
  await putTicketMessage(desk, shop, after)
  return answered
}
