import { readLocal, writeLocal } from '../domain/calendar/local-time.ts'
import type { Order } from '../domain/order/order.ts'
import { ok, type Problem, type Result } from '../domain/result/result.ts'
import type { Promised } from '../domain/schedule/promise/promise.ts'
import type { Shop } from '../domain/shop/shop.ts'
import type { Minutes } from '../domain/units/units.ts'
import type { ShopTime } from './floor.ts'

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

/** What a customer should hear of the wanted hour beside the promise: that nobody is there then, or that it is too soon. */
export const hourProblems = (
  order: Order,
  promised: Promised,
  at: { shop: Shop; time: ShopTime; wanted: Minutes },
): readonly Problem[] => {
  const { needBy } = order
  const { shop, time, wanted } = at
  const { zone } = time
  const earliest = writeLocal(zone, promised.promised)
  const late = { needBy, earliest, alone: promised.alone }
  if (!promised.feasible) return [{ code: 'late-for-need-by', at: '/needBy', severity: 'caution', facts: late }]
  if (promised.collectBy === wanted) return []
  const facts = { needBy, collectBy: writeLocal(zone, promised.collectBy), why: whyClosed(shop, needBy) }
  return [{ code: 'closed-before-need-by', at: '/needBy', severity: 'note', facts }]
}
