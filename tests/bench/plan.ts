import { byDue, layDown } from '../../src/domain/schedule/construct/dispatch.ts'
import { firstPlan } from '../../src/domain/schedule/construct/first-plan.ts'
import { explainOrder, type Late } from '../../src/domain/schedule/explain/explain.ts'
import { hold, promise } from '../../src/domain/schedule/promise/promise.ts'
import { floorOf } from '../../src/domain/schedule/reserve/floor.ts'
import { reserve } from '../../src/domain/schedule/reserve/reserve.ts'
import { planModel } from '../../src/domain/schedule/search/plan.ts'
import { randomFrom } from '../../src/domain/schedule/search/random.ts'
import { completionOf, placeOrder } from '../../src/domain/schedule/timeline/fit.ts'
import { fixedTimelines } from '../../src/domain/schedule/timeline/fixed.ts'
import { copyOf, type Timelines } from '../../src/domain/schedule/timeline/lanes.ts'
import type { Model } from '../../src/domain/schedule/timeline/model.ts'
import { setupsOfLane, shopObjective } from '../../src/domain/schedule/timeline/objective.ts'
import { slotsOf } from '../../src/domain/schedule/timeline/slots.ts'
import { verify } from '../../src/domain/schedule/verify/verify.ts'
import { minutes } from '../../src/domain/units/units.ts'
import { modelOf } from '../support/scheduling.ts'
import { minutesOfWork, randomOrder, shopBook } from '../support/shop-books.ts'
import type { Bench, Figure } from './bench.ts'

const lateWeight = (lines: Timelines): number =>
  lines.model.orders.reduce((sum, order, index) => sum + (completionOf(lines, index) > order.due ? order.weight : 0), 0)

const setups = (lines: Timelines): number => lines.lanes.reduce((sum, _, station) => sum + setupsOfLane(lines, station), 0)

const elapsed = <T>(work: () => T): { readonly ms: number; readonly value: T } => {
  const start = performance.now()
  const value = work()
  return { ms: performance.now() - start, value }
}

const percentile = (times: readonly number[], share: number): number => {
  const sorted = times.toSorted((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0
}

const within = (orders: number, load: number): number => minutesOfWork(shopBook(orders, 1, 1_000).book, 2.6 * load)

const searchFor = (seconds: number) => {
  const end = performance.now() + seconds * 1_000
  return { seed: 1, budget: Number.MAX_SAFE_INTEGER, stop: () => performance.now() > end }
}

/** How many orders, of what weight, no plan could bring in on time. */
const hopelessWeight = (model: Model): number =>
  model.orders.reduce(
    (sum, order, index) => (placeOrder(fixedTimelines(model), index, 1) > order.due ? sum + order.weight : sum),
    0,
  )

/** A book due in a little more time than the shop has for it: by due time alone most of it would be late. */
const planning = (orders: number, quick: boolean): readonly Figure[] => {
  const { book } = shopBook(orders, 1, within(orders, 1.3))
  const cold = elapsed(() => firstPlan(modelOf(book), shopObjective))
  const model = modelOf(book)
  const due = layDown(model, byDue(model))
  const two = planModel(model, searchFor(quick ? 0.7 : 2))
  const five = planModel(model, searchFor(quick ? 1.5 : 5))
  const floor = Math.max(1, lateWeight(due))
  return [
    { name: `first plan of ${orders} orders, cold`, value: cold.ms, unit: 'ms', most: 100 },
    { name: 'weighted late by due time (the floor)', value: lateWeight(due), unit: '' },
    { name: 'of it late alone in an empty shop', value: hopelessWeight(model), unit: '' },
    { name: 'weighted late after 2 s, of the floor', value: (lateWeight(two.lines) * 100) / floor, unit: '%', most: 10 },
    {
      name: 'weighted late after 2 s against 5 s',
      value: (lateWeight(two.lines) * 100) / Math.max(1, lateWeight(five.lines)),
      unit: '%',
      most: 115,
    },
    { name: 'set-up minutes, of the floor', value: (setups(two.lines) * 100) / Math.max(1, setups(due)), unit: '%' },
    { name: 'breaches found by verify', value: verify(book, slotsOf(two.lines)).length, unit: '', most: 0 },
  ]
}

/** The least of three: a machine that others use is slower than itself, never faster. */
const timed = <T>(work: () => T): { readonly ms: number; readonly value: T } => {
  const rounds = [elapsed(work), elapsed(work), elapsed(work)]
  return rounds.reduce((least, one) => (one.ms < least.ms ? one : least))
}

const promising = (orders: number, requests: number): readonly Figure[] => {
  const { shop, book } = shopBook(orders, 2, within(orders, 0.8))
  const floor = floorOf(planModel(modelOf(book), searchFor(1)).lines)
  const lateBefore = lateWeight(floor.lines)
  const random = randomFrom(9)
  const times: number[] = []
  const reach = within(orders, 1)
  let yes = 0
  for (let index = 0; index < requests; index += 1) {
    const order = randomOrder(shop, random, { id: `asked-${index}`, within: reach })
    const { ms, value } = timed(() => promise(floor, order))
    times.push(ms)
    if (value.ok && value.value.feasible && hold(floor, order, value.value.promised)) yes += 1
  }
  return [
    { name: `promise at ${orders} open orders and more, p50`, value: percentile(times, 0.5), unit: 'ms' },
    { name: `promise at ${orders} open orders and more, p99`, value: percentile(times, 0.99), unit: 'ms', most: 5 },
    { name: `promised of ${requests} asked`, value: yes, unit: '' },
    { name: 'promises broken', value: lateWeight(floor.lines) - lateBefore, unit: '', most: 0 },
  ]
}

/** Of what the ladder or a search of two seconds accepts, how much the ladder accepts; every request asked on its own. */
const accepting = (orders: number, requests: number): readonly Figure[] => {
  const { shop, book } = shopBook(orders, 2, within(orders, 0.9))
  const lines = planModel(modelOf(book), searchFor(1)).lines
  const floor = floorOf(lines)
  const kept = book.orders.map((order, index) => ({
    ...order,
    promised: minutes(Math.max(order.needBy, completionOf(lines, index))),
  }))
  const random = randomFrom(9)
  let ladder = 0
  let search = 0
  for (let index = 0; index < requests; index += 1) {
    const order = randomOrder(shop, random, { id: `asked-${index}`, within: within(orders, 1) })
    const asked = promise(floor, order)
    if (!asked.ok || asked.value.alone) continue
    if (asked.value.feasible) ladder += 1
    else {
      const model = modelOf({ ...book, orders: [...kept, order] })
      if (lateWeight(planModel(model, searchFor(2)).lines) === 0) search += 1
    }
  }
  const share = (ladder * 100) / Math.max(1, ladder + search)
  return [
    { name: `refused by the ladder, found in 2 s, of ${requests}`, value: search, unit: '' },
    { name: 'accepted of what 2 s of search accept', value: share, unit: '% (97 wanted)' },
  ]
}

/** Each late order of some busy books, explained. */
const explained = (orders: number, seed: number): readonly { readonly ms: number; readonly value: Late }[] => {
  const { book } = shopBook(orders, seed, within(orders, 1.15))
  const lines = firstPlan(modelOf(book), shopObjective)
  const reserved = copyOf(lines)
  reserve(reserved)
  return lines.model.orders
    .map((_, order) => order)
    .filter((order) => completionOf(lines, order) > (lines.model.orders[order]?.due ?? 0))
    .slice(0, 40)
    .map((order) => timed(() => explainOrder(lines, reserved, order)))
}

const explaining = (orders: number, books: number): readonly Figure[] => {
  const told = Array.from({ length: books }, (_, book) => explained(orders, 3 + book)).flat()
  const times = told.map((one) => one.ms)
  const mended = told.filter(({ value }) => value.fixes.some((fix) => fix.code !== 'move-promise')).length
  const without = ((told.length - mended) * 100) / Math.max(1, told.length)
  return [
    { name: `explanation of a late order, p50 of ${told.length}`, value: percentile(times, 0.5), unit: 'ms' },
    { name: `explanation of a late order, p95 of ${told.length}`, value: percentile(times, 0.95), unit: 'ms', most: 5 },
    { name: 'late orders without a concrete fix', value: without, unit: '%', most: 5 },
  ]
}

export const bench: Bench = async ({ quick }) => {
  const orders = quick ? 120 : 500
  return [
    ...planning(orders, quick),
    ...promising(orders, quick ? 60 : 400),
    ...accepting(orders, quick ? 20 : 100),
    ...explaining(orders, quick ? 2 : 8),
  ]
}
