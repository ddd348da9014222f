import { lastOpen, never } from '../../calendar/axis.ts'
import { ok, type Result, refuse } from '../../result/result.ts'
import { type Minutes, minutes } from '../../units/units.ts'
import type { BookOrder, Operation, Slot } from '../book/operation.ts'
import type { ScheduleProblem } from '../book/problems.ts'
import { type Cause, causesOf } from '../explain/causes.ts'
import { adopt, type Floor } from '../reserve/floor.ts'
import { reserveOrders } from '../reserve/reserve.ts'
import { decodeAnew, type Place, type Rung, squeeze } from '../reserve/squeeze.ts'
import { placeOrder } from '../timeline/fit.ts'
import { moveLate, placementsOf, putBack, takeOrder } from '../timeline/fit-late.ts'
import { makeRoom, type Timelines } from '../timeline/lanes.ts'
import { addOrder, dropLastOrder } from '../timeline/model.ts'
import { slotsOfOrder } from '../timeline/slots.ts'
import { orderProblems, shutStations } from '../verify/check-book.ts'
import { staffingProblem } from '../verify/compile.ts'

/** What is asked: can these operations be over by then? `decideMinutes` is the time a customer gets when the answer is a later date. */
export type Request = {
  readonly id: string
  readonly operations: readonly Operation[]
  readonly needBy: Minutes
  readonly weight?: number
  readonly decideMinutes?: number
}

/**
 * The answer. `promised` is the hour that can be told: the wanted one when `feasible`, else the earliest honest one; `collectBy` is
 * the last minute up to the wanted one at which somebody is there to hand over. It hangs on the
 * sign-off and the arrival of garments by the hours in `hangsOn`; from `freezesAt` on the roster is cut. `slots` is the work as
 * early as it can be, `held` as late as the promise allows; `moved` names orders that change places, none of whose promises breaks.
 */
export type Promised = {
  readonly feasible: boolean
  readonly promised: Minutes
  readonly collectBy: Minutes
  readonly earliest: Minutes
  readonly slackMinutes: number
  readonly rung: Rung
  readonly alone: boolean
  readonly causes: readonly Cause[]
  readonly hangsOn: readonly { readonly code: 'sign-off' | 'garments'; readonly by: Minutes }[]
  readonly freezesAt: Minutes | null
  readonly slots: readonly Slot[]
  readonly held: readonly Slot[]
  readonly moved: readonly string[]
}

/** Plans and clocks differ: a promise counts on every piece of work taking this much longer. */
const stretch = 1.15
const quarter = 15
/** Who is told a later date gets this long to say yes. */
const decideMinutes = 240

const earlierQuarter = (at: number): Minutes => minutes(Math.floor(at / quarter) * quarter)

/** When the order would be ready in an empty shop. */
const aloneCompletion = ({ fixed }: Floor, order: number): number => {
  makeRoom(fixed)
  const complete = placeOrder(fixed, order, 1)
  takeOrder(fixed, order)
  return complete
}

const shifted = (request: Request, from: number): Request => ({
  ...request,
  operations: request.operations.map((one) => ({ ...one, release: minutes(Math.max(one.release ?? 0, from)) })),
})

const asOrder = (request: Request, due: number): BookOrder => ({
  id: request.id,
  needBy: minutes(due),
  promised: minutes(due),
  weight: request.weight ?? 1,
  operations: request.operations,
})

const firstStart = (slots: readonly Slot[], of: (slot: Slot) => boolean): Minutes | null => {
  const starts = slots.filter(of).map((slot) => slot.start)
  return starts.length === 0 ? null : earlierQuarter(Math.min(...starts))
}

const hangsOnOf = (held: readonly Slot[]): Promised['hangsOn'] => {
  const signOff = firstStart(held, () => true)
  const garments = firstStart(held, (slot) => slot.operation === 'count-in')
  return [
    ...(signOff === null ? [] : [{ code: 'sign-off' as const, by: signOff }]),
    ...(garments === null ? [] : [{ code: 'garments' as const, by: garments }]),
  ]
}

type Found = { readonly rung: Rung; readonly alone: boolean } & Place

/** Asks each rung in turn for a place by `due`; the order was added to the floor and lies on `lines` of what is found. */
const climb = (floor: Floor, order: number, due: number): Found => {
  const { lines } = floor
  const earliest = placeOrder(lines, order, stretch)
  if (earliest <= due) return { rung: 'gap', alone: false, earliest, moved: [], lines, limits: new Map() }
  takeOrder(lines, order)
  const alone = aloneCompletion(floor, order) > due
  const none: Found = { rung: 'no', alone, earliest, moved: [], lines, limits: new Map() }
  if (alone) return none
  const squeezed = squeeze(floor, order, { due, stretch })
  if (squeezed !== null) return { rung: 'squeeze', alone, ...squeezed }
  const anew = decodeAnew(floor, order, { due, stretch })
  return anew === null ? none : { rung: 'anew', alone, ...anew }
}

/** The work as early and as late as its places allow; the order is left lying late. */
const bothWays = (lines: Timelines, order: number, due: number): Pick<Promised, 'slots' | 'held' | 'causes'> => {
  const stretched = placementsOf(lines, order)
  takeOrder(lines, order)
  placeOrder(lines, order, 1)
  const slots = slotsOfOrder(lines, order)
  const causes = causesOf(lines, order)
  takeOrder(lines, order)
  putBack(lines, stretched)
  moveLate(lines, order, due, stretch)
  return { slots, causes, held: slotsOfOrder(lines, order) }
}

const answerOf = (order: number, found: Found, due: number): Omit<Promised, 'feasible' | 'collectBy' | 'alone'> => {
  const both = bothWays(found.lines, order, due)
  return {
    promised: minutes(due),
    earliest: minutes(found.earliest),
    slackMinutes: due - found.earliest,
    rung: found.rung,
    moved: found.moved,
    ...both,
    hangsOn: hangsOnOf(both.held),
    freezesAt: firstStart(both.held, (slot) => slot.operation.startsWith('cut-')),
  }
}

const requestProblems = (floor: Floor, request: Request): readonly ScheduleProblem[] => {
  const { now } = floor.model
  if (request.needBy <= now) {
    const facts = { order: request.id, needByMinutes: request.needBy, nowMinutes: now }
    return [{ code: 'need-by-past', at: '/needBy', severity: 'stop', facts }]
  }
  const stations = new Map(floor.model.stations.map((one) => [one.id, one]))
  const shut = shutStations(request.operations, stations).map(
    (station): ScheduleProblem => ({ code: 'station-never-open', at: '/operations', severity: 'stop', facts: { station } }),
  )
  return [...shut, ...orderProblems(asOrder(request, request.needBy), stations, '')]
}

/** Adds an order to the floor while `ask` looks at it, and takes it off again. */
const visiting = <T>(floor: Floor, order: BookOrder, ask: (index: number) => T): T => {
  const index = addOrder(floor.model, order)
  makeRoom(floor.lines)
  try {
    return ask(index)
  } finally {
    takeOrder(floor.lines, index)
    dropLastOrder(floor.model)
  }
}

/** Rounded up to the half hour, unless the shop closes before. */
const honestHour = (floor: Floor, earliest: number): number => {
  const rounded = Math.ceil(earliest / 30) * 30
  return Math.max(earliest, lastOpen(floor.open, rounded))
}

const laterDate = (floor: Floor, request: Request, alone: boolean): Result<Promised, ScheduleProblem> =>
  visiting(floor, asOrder(shiftedBy(floor, request), never), (index) => {
    const earliest = placeOrder(floor.lines, index, stretch)
    if (earliest >= never) {
      return refuse({ code: 'beyond-horizon', at: '/operations', severity: 'stop', facts: { order: request.id } })
    }
    const due = honestHour(floor, earliest)
    const found: Found = { rung: 'no', alone, earliest, moved: [], lines: floor.lines, limits: new Map() }
    const answer = answerOf(index, found, due)
    const collectBy = minutes(lastOpen(floor.open, request.needBy))
    return ok({ ...answer, feasible: false, alone, collectBy, slackMinutes: request.needBy - earliest })
  })

const shiftedBy = (floor: Floor, request: Request): Request =>
  shifted(request, floor.model.now + (request.decideMinutes ?? decideMinutes))

/**
 * Can it be ready by then, and on what does it hang? A yes is sound by construction: the floor with this order in its held places
 * is a plan in which no promise breaks. The floor is left as it was. Refuses what never can be planned.
 */
export const promise = (floor: Floor, request: Request): Result<Promised, ScheduleProblem> => {
  const problems = requestProblems(floor, request)
  if (problems.length > 0) return refuse(...problems)
  const due = minutes(lastOpen(floor.open, request.needBy))
  const wanted = visiting(floor, asOrder(request, due), (index) => {
    const unstaffed = staffingProblem(floor.model, floor.model.orders[index]?.first)
    if (unstaffed !== null) return refuse({ ...unstaffed, at: '/operations' })
    const found = climb(floor, index, due)
    if (found.rung !== 'no') return ok({ ...answerOf(index, found, due), feasible: true, alone: false, collectBy: due })
    return ok(found.alone)
  })
  if (!wanted.ok) return wanted
  return typeof wanted.value === 'object' ? ok(wanted.value) : laterDate(floor, request, wanted.value)
}

/**
 * Gives an order the place it was promised, for good. False when the place is gone: ask again. Orders that had to move keep their
 * promises.
 */
export const hold = (floor: Floor, request: Request, promised: Minutes): boolean => {
  const index = addOrder(floor.model, asOrder(request, promised))
  makeRoom(floor.lines)
  const found = climb(floor, index, promised)
  if (found.rung === 'no') {
    takeOrder(floor.lines, index)
    dropLastOrder(floor.model)
    return false
  }
  adopt(floor, found.lines)
  moveLate(floor.lines, index, promised, 1)
  reserveOrders(floor.lines, found.limits)
  return true
}
