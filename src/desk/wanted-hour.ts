import { readLocal, writeLocal } from '../domain/calendar/local-time.ts'
import type { Order } from '../domain/order/order.ts'
import type { ResolvedOrder } from '../domain/order/resolve.ts'
import { ok, type Problem, type Result } from '../domain/result/result.ts'
import type { Operation } from '../domain/schedule/book/operation.ts'
import type { Promised } from '../domain/schedule/promise/promise.ts'
import type { Shop } from '../domain/shop/shop.ts'
import type { Minutes } from '../domain/units/units.ts'
import type { ShopTime } from './floor.ts'

type Job = { readonly operations: readonly Operation[]; readonly resolved: ResolvedOrder; readonly promised: Promised }

/** The hour an order is wanted by, and how it was read where the clock jumps over it. */
export type WantedHour = { readonly at: Minutes; readonly problems: readonly Problem[] }

/** The instant of the order's wanted hour in the shop's zone; refuses what is no such time. */
export const wantedHour = (order: Order, { zone }: ShopTime): Result<WantedHour, Problem> => {
  const read = readLocal(zone, order.needBy)
  if (!read.ok) return { ok: false, problems: read.problems.map((problem) => ({ ...problem, at: '/needBy' })) }
  const { at, reading } = read.value
  if (reading !== 'lost-hour') return ok({ at, problems: [] })
  const facts = { text: order.needBy, readAs: writeLocal(zone, at) }
  return ok({ at, problems: [{ code: 'time-in-lost-hour', at: '/needBy', severity: 'caution', facts }] })
}

/** Why the shop is closed at a wall-clock minute 'YYYY-MM-DDTHH:MM': a holiday's name or a closure's reason, null for plain hours. */
const whyClosed = ({ hours }: Shop, minute: string): string | null => {
  const holiday = hours.holidays.find(({ date }) => date === minute.slice(0, 10))
  const closure = hours.closed.find(({ from, to }) => from <= minute && minute < to)
  return holiday?.name ?? closure?.why ?? null
}

/**
 * How many garments are made by a minute, of all: those whose last work is over by then, in equal turns, each of them as much later
 * than planned as a promise allows the whole to be.
 */
const readyBy = ({ operations, resolved, promised }: Job, by: Minutes): readonly [ready: number, of: number] => {
  const waitedFor = new Set(operations.flatMap(({ after }) => after.map(({ operation }) => operation)))
  const last = operations.filter(({ id }) => !waitedFor.has(id)).map(({ id }) => id)
  const ends = last.map((id) => Math.max(...promised.slots.filter(({ operation }) => operation === id).map(({ end }) => end)))
  const spare = promised.earliest - Math.max(...ends)
  const inTime = ends.filter((end) => end + spare <= by).length
  const garments = resolved.order.roster.reduce((sum, { quantity }) => sum + quantity, 0)
  return [Math.floor((garments * inTime) / Math.max(1, last.length)), garments]
}

/** What a customer should hear of the wanted hour beside the promise: that nobody is there then, or that it is too soon. */
export const hourProblems = (job: Job, at: { shop: Shop; time: ShopTime; wanted: Minutes }): readonly Problem[] => {
  const { promised } = job
  const { needBy } = job.resolved.order
  const { shop, time, wanted } = at
  const { zone } = time
  const earliest = writeLocal(zone, promised.promised)
  if (!promised.feasible) {
    const [ready, of] = readyBy(job, wanted)
    const facts = { needBy, earliest, alone: promised.alone, ready, of }
    return [{ code: 'late-for-need-by', at: '/needBy', severity: 'caution', facts }]
  }
  if (promised.collectBy === wanted) return []
  const facts = { needBy, collectBy: writeLocal(zone, promised.collectBy), why: whyClosed(shop, needBy) }
  return [{ code: 'closed-before-need-by', at: '/needBy', severity: 'note', facts }]
}
