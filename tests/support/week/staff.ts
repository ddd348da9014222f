import { readLife } from '../../../src/desk/service/floor/read-life.ts'
import { type ShopPlan, ticketFrom } from '../../../src/desk/service/records/records.ts'
import {
  findable,
  holderOf,
  openActs,
  openForms,
  type TicketLife,
  wantsSeen,
} from '../../../src/desk/service/records/ticket-life.ts'
import { beforeFirstPiece } from '../../../src/domain/ticket/made.ts'
import { tickOf, type WorkKind, workSteps } from '../../../src/domain/ticket/work-steps.ts'
import type { Member } from '../../../src/ports/counter-desk.ts'
import type { Hands, Values } from './hands.ts'
import type { Wish } from './wishes.ts'

/** What opens a gate, as somebody who finds everything right fills it in. */
const good: { readonly [act: string]: Values } = {
  'count-in': { missing: '0' },
  'water-drops': { drops: '2 3 2 2 3' },
  'test-press': { result: 'held' },
  'bleed-test': { result: 'skipped', signedBy: 'Coach' },
  certificate: { certificate: 'C-1' },
  coupon: { hole: '3.1' },
  'first-piece': {},
  'second-look': { result: 'right' },
}

export type Shift = {
  readonly hands: Hands
  readonly now: number
  readonly plan: ShopPlan
  /** Who is in the shop just now. */
  readonly there: readonly Member[]
  readonly wishOf: (orderId: string) => Wish | undefined
  /** When each order was bagged. */
  readonly baggedAt: Map<string, number>
  /** Orders whose trouble has come. */
  readonly troubled: Set<string>
}

/** People are a little ahead of the plan, whose minutes have some room in them. */
const lead = 45

/** What of an order is not over yet and would not be for a while, by the plan. */
const isAhead = ({ plan, now }: Shift, orderId: string, of: RegExp): boolean =>
  plan.slots.some(({ order, operation, end }) => order === orderId && of.test(operation) && end > now + lead)

const firstStart = ({ plan }: Shift, orderId: string): number =>
  Math.min(...plan.slots.filter(({ order }) => order === orderId).map(({ start }) => start))

type Act = { readonly by: Member; readonly act: string; readonly values?: Values }

/** True when it was done. */
const press = async ({ hands }: Shift, life: TicketLife, { by, act, values }: Act): Promise<boolean> =>
  (await hands.act(by, `t:${life.ticket.ticketId}:${act}:1`, values)) === null

/** The next gate, filled in by whoever holds the ticket; a second look by somebody else. True when something was done. */
const openGate = async (shift: Shift, life: TicketLife, holder: Member): Promise<boolean> => {
  const found = findable(life).find(({ act }) => Object.hasOwn(good, act))
  if (found === undefined) return false
  const { act: next, gate } = found
  const by = next === 'second-look' ? shift.there.find(({ id }) => id !== holder.id) : holder
  if (by === undefined) return false
  const { orderId } = life.order
  const beads = next === 'water-drops' && shift.wishOf(orderId)?.trouble === 'beaded' && !shift.troubled.has(orderId)
  if (beads) shift.troubled.add(orderId)
  const given = beads ? { drops: '60 60 60 60 60' } : good[next]
  return press(shift, life, { by, act: next, values: { garment: gate.garment ?? '', subject: gate.subject, ...given } })
}

const scorch = async (shift: Shift, life: TicketLife, holder: Member): Promise<boolean> => {
  const { orderId } = life.order
  if (shift.wishOf(orderId)?.trouble !== 'scorched' || shift.troubled.has(orderId) || !openForms(life).includes('spoiled'))
    return false
  if (!openActs(life).includes('checked')) return false
  shift.troubled.add(orderId)
  const values = { line: '2', quantity: '1', reason: 'scorched', whose: 'shop', photo: '' }
  return press(shift, life, { by: holder, act: 'spoiled', values })
}

const remakeReady = async (shift: Shift, life: TicketLife, holder: Member): Promise<boolean> => {
  if (life.openRemakes === 0 || isAhead(shift, life.order.orderId, /^remake-/)) return false
  const shop = shift.hands.desk.store.shop(shift.hands.desk.shopId)
  const open = (await shop.floor.remakesOf(life.order.orderId)).find(({ doneAt }) => doneAt === null)
  return open !== undefined && press(shift, life, { by: holder, act: 'remade', values: { remake: open.remakeId } })
}

/** What of the plan goes with the steps of each kind that are ticked between the cutter and the check. */
const ticked: readonly (readonly [WorkKind, RegExp])[] = [
  ['weed', /^weed-/],
  ['brush', /^(plugs|coupon|brush-)/],
  ['press', /^(first-piece|press-)/],
  ['inspect', /^inspect-/],
]

/** One garment of each kind goes through the press before its first piece is looked at; true when a step of it was ticked. */
const makeFirst = async (shift: Shift, life: TicketLife, holder: Member): Promise<boolean> => {
  if (!openForms(life).includes('tick') || isAhead(shift, life.order.orderId, /^first-piece/)) return false
  const waiting = life.gates.filter(({ gate, why }) => gate.code === 'first-piece' && why === 'not-done')
  for (const { gate } of waiting) {
    const [next] = beforeFirstPiece(life, gate.garment)
    if (next === undefined) continue
    const values = { step: String(next.step.no), deed: 'done', lines: String(next.line) }
    if (await press(shift, life, { by: holder, act: 'tick', values })) return true
  }
  return false
}

/** The next step that is through by the plan is ticked for every garment that is still to go through it; true when one was. */
const tick = async (shift: Shift, life: TicketLife, holder: Member): Promise<boolean> => {
  if (!openForms(life).includes('tick')) return false
  const steps = workSteps(ticketFrom(life.ticket.body).facts)
  for (const [kind, operations] of ticked) {
    if (isAhead(shift, life.order.orderId, operations)) return false
    for (const step of steps.filter((one) => one.kind === kind)) {
      const lines = step.lines.filter((line) => !['done', 'spoiled'].includes(tickOf(life.ticks, step.no, line).state))
      const values = { step: String(step.no), deed: 'done', lines: lines.join(' ') }
      if (lines.length > 0) return press(shift, life, { by: holder, act: 'tick', values })
    }
  }
  return false
}

/** What the holder of a ticket does next; true when something was done. */
const nextDeed = async (shift: Shift, life: TicketLife, holder: Member): Promise<boolean> => {
  const { orderId } = life.order
  const acts = openActs(life)
  if (wantsSeen(life)) return press(shift, life, { by: holder, act: 'seen' })
  if (acts.includes('resume')) return press(shift, life, { by: holder, act: 'resume' })
  if (await openGate(shift, life, holder)) return true
  if (await scorch(shift, life, holder)) return true
  if (await remakeReady(shift, life, holder)) return true
  if (acts.includes('start') && !isAhead(shift, orderId, /^cut-/)) return press(shift, life, { by: holder, act: 'start' })
  if (hasStarted(life) && ((await makeFirst(shift, life, holder)) || (await tick(shift, life, holder)))) return true
  if (acts.includes('checked') && !isAhead(shift, orderId, /./)) return press(shift, life, { by: holder, act: 'checked' })
  return false
}

const hasStarted = (life: TicketLife): boolean => life.findings.some(({ code }) => code === 'start')

const mostDeeds = 60

const holderNow = (shift: Shift, life: TicketLife): Member | undefined => {
  const name = holderOf(life.findings)?.by
  return shift.there.find((one) => one.name === name)
}

const handOut = async (shift: Shift, life: TicketLife, by: Member): Promise<boolean> => {
  const { orderId } = life.order
  const since = shift.baggedAt.get(orderId)
  if (since === undefined) shift.baggedAt.set(orderId, shift.now)
  if (since === undefined || shift.now < since + (shift.wishOf(orderId)?.fetches ?? 0)) return false
  return press(shift, life, { by, act: 'collected' })
}

/** One deed at one ticket by whoever it is for; true when something was done, so that it is looked at again. */
const oneDeed = async (shift: Shift, ticketId: string, at: number): Promise<boolean> => {
  const { desk } = shift.hands
  const life = await readLife(desk, desk.store.shop(desk.shopId), ticketId)
  const by = shift.there[at % shift.there.length]
  if (life === null || by === undefined || life.ticket.state !== 'open' || life.order.hold !== null) return false
  const { state, orderId } = life.order
  if (state === 'bagged') return handOut(shift, life, by)
  if (state === 'checked' && life.openRemakes > 0) return remakeReady(shift, life, by)
  if (state === 'checked') return press(shift, life, { by, act: 'bagged' })
  if (holderOf(life.findings) === null) {
    if (firstStart(shift, orderId) > shift.now + lead && !openActs(life).includes('seen')) return false
    return press(shift, life, { by, act: 'take' })
  }
  const holder = holderNow(shift, life)
  // Whoever holds it went home: a colleague hands it on, and takes it at the next look.
  if (holder === undefined) return press(shift, life, { by, act: 'hand-on' })
  return nextDeed(shift, life, holder)
}

/** What staff do now: take, open gates, start, spoil, make again, check, bag, hand over; as far as the plan is. */
export const staffAct = async (shift: Shift): Promise<void> => {
  const { desk } = shift.hands
  const tickets = await desk.store.shop(desk.shopId).tickets.list(['open'])
  for (const [at, { ticketId }] of tickets.entries()) {
    for (let deeds = 0; deeds < mostDeeds && (await oneDeed(shift, ticketId, at)); deeds += 1);
  }
}
