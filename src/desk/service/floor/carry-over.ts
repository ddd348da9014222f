import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import { isAllKnown, isSameMaking, keptLines } from '../../../domain/ticket/kept-lines.ts'
import { type LineState, lineState, type WorkKind, workSteps } from '../../../domain/ticket/work-steps.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Finding, StoredTicket, Tick } from '../../../ports/work-records.ts'
import type { StockUse } from '../../stock-uses.ts'
import { ticketFrom } from '../records/records.ts'
import type { UsedAt } from '../stock/use-stock.ts'

/** What was found of a lot stays; of garments only while none came in that nobody looked at; of cloth and material while both stay. */
const ofLots: readonly string[] = ['certificate', 'coupon']
const ofGarments: readonly string[] = ['count-in', 'strings']
const ofMaking: readonly string[] = ['water-drops', 'test-press', 'bleed-test']

const kindsThrough: { readonly [state in LineState]: readonly WorkKind[] } = {
  'not-cut': [],
  cut: ['cut'],
  pressed: ['cut', 'weed', 'brush', 'press', 'inspect'],
  bagged: ['cut', 'weed', 'brush', 'press', 'inspect', 'bag'],
}

const usedThrough: { readonly [state in LineState]: readonly UsedAt[] } = {
  'not-cut': [],
  cut: ['cut'],
  pressed: ['cut', 'brush', 'press'],
  bagged: ['cut', 'brush', 'press'],
}

type Kept = ReadonlyMap<number, LineState>

/** How far the lines of a later revision are already, by the rows of the ticket before it. */
export const keptFrom = async (shop: ShopStore, earlier: StoredTicket, after: TicketFacts): Promise<Kept> => {
  const states = new Map((await shop.orders.rows(earlier.orderId)).map(({ line, state }) => [line, state]))
  return keptLines(ticketFrom(earlier.body).facts, after, (line) => states.get(line) ?? 'not-cut')
}

/** What a later revision still takes from the shelf: nothing for what is made already and stays. */
export const stillWanted = (uses: readonly StockUse[], kept: Kept, usedAt: (item: string) => UsedAt): readonly StockUse[] =>
  uses.filter(({ line, item }) => !usedThrough[kept.get(line) ?? 'not-cut'].includes(usedAt(item)))

const ticksOf = (facts: TicketFacts, kept: Kept): readonly Tick[] =>
  workSteps(facts).flatMap(({ no, kind, lines }) =>
    lines
      .filter((line) => kindsThrough[kept.get(line) ?? 'not-cut'].includes(kind))
      .map((line) => ({ step: no, line, state: 'done' as const, by: null })),
  )

type Carrying = { readonly from: StoredTicket; readonly to: StoredTicket; readonly at: Minutes }

const garmentIn = (facts: unknown): string =>
  typeof facts === 'object' && facts !== null && 'garment' in facts ? String(facts.garment) : ''

/** Whether what was found for the earlier revision is true of the later one. */
const staysTrue = (before: TicketFacts, after: TicketFacts): ((finding: Finding) => boolean) => {
  const same = isSameMaking(before, after)
  return ({ code, facts }) =>
    ofLots.includes(code) ||
    (same && ofMaking.includes(code)) ||
    (ofGarments.includes(code) && isAllKnown(before, after, garmentIn(facts)))
}

const carryFindings = async (shop: ShopStore, { from, to, at }: Carrying, kept: Kept): Promise<void> => {
  const stays = staysTrue(ticketFrom(from.body).facts, ticketFrom(to.body).facts)
  for (const finding of await shop.tickets.findings(from.ticketId))
    if (stays(finding)) await shop.tickets.find(to.ticketId, finding)
  for (const used of ['cut', 'brush', 'press'] as const) {
    const lines = [...kept].filter(([, state]) => usedThrough[state].includes(used)).map(([line]) => line)
    if (lines.length > 0) await shop.tickets.find(to.ticketId, { code: 'used', facts: { at: used, lines }, by: 'desk', at })
  }
}

/**
 * What was made for the earlier revision and stays the same stays made: its rows, its ticks and what was found go over to the
 * new ticket.
 */
export const carryOver = async (shop: ShopStore, carrying: Carrying): Promise<Result<null, Problem>> => {
  const { from, to } = carrying
  const { facts } = ticketFrom(to.body)
  const kept = await keptFrom(shop, from, facts)
  const ticks = ticksOf(facts, kept)
  await carryFindings(shop, carrying, kept)
  const ticket = await shop.tickets.read(to.ticketId)
  const ticked = await shop.tickets.tick({ id: to.ticketId, version: ticket?.version ?? to.version }, ticks)
  if (!ticked.ok) return ticked
  const steps = workSteps(facts)
  const rows = facts.roster.map(({ line }) => ({ line, state: lineState(steps, ticks, line) }))
  await shop.orders.setRows(to.orderId, rows)
  return ok(null)
}
