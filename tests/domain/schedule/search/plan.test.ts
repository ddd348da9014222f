import { describe, expect, it } from 'vitest'
import { axisFrom } from '../../../../src/domain/calendar/axis.ts'
import { readBook } from '../../../../src/domain/schedule/book/book-record.ts'
import type { Book, Slot } from '../../../../src/domain/schedule/book/operation.ts'
import { firstPlan } from '../../../../src/domain/schedule/construct/first-plan.ts'
import { explainLate } from '../../../../src/domain/schedule/explain/explain.ts'
import { dueLoadOf, loadOf } from '../../../../src/domain/schedule/load/load.ts'
import { replanFor } from '../../../../src/domain/schedule/replan/replan.ts'
import { planFor, planModel } from '../../../../src/domain/schedule/search/plan.ts'
import { randomFrom } from '../../../../src/domain/schedule/search/random.ts'
import { completionOf } from '../../../../src/domain/schedule/timeline/fit.ts'
import { shopObjective } from '../../../../src/domain/schedule/timeline/objective.ts'
import { slotsOf } from '../../../../src/domain/schedule/timeline/slots.ts'
import { brokenPromises, verify } from '../../../../src/domain/schedule/verify/verify.ts'
import { minutes } from '../../../../src/domain/units/units.ts'
import { bookOrder, jobsBook, machine, modelOf, operation } from '../../../support/scheduling.ts'
import { randomOrder, shopBook } from '../../../support/shop-books.ts'

const effort = { seed: 3, budget: 8_000, stop: () => false }
const planned = (book: Book) => {
  const plan = planFor(book, effort)
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
  return plan.value
}

describe('a plan of a book', () => {
  it('is sound, and the same again for the same seed', () => {
    for (const seed of [1, 2, 3]) {
      const { book } = shopBook(25, seed, 6_000)
      const plan = planned(book)
      expect(verify(book, slotsOf(plan.lines))).toEqual([])
      expect(slotsOf(planned(book).lines)).toEqual(slotsOf(plan.lines))
    }
  })

  it('leaves less late than working by due time does', () => {
    const { book } = shopBook(60, 5, 7_000)
    const model = modelOf(book)
    const first = firstPlan(model, shopObjective)
    const late = (lines: typeof first): number =>
      model.orders.reduce((sum, order, index) => sum + (completionOf(lines, index) > order.due ? order.weight : 0), 0)
    expect(late(planModel(model, effort).lines)).toBeLessThanOrEqual(late(first))
  })

  it('leaves begun work where it is and plans around it', () => {
    const begun = operation('a', { minutes: 30, started: minutes(90), on: ['a'] })
    const book: Book = {
      now: minutes(100),
      stations: [machine('a')],
      orders: [
        bookOrder('x', { needBy: minutes(500), operations: [begun] }),
        bookOrder('y', { needBy: minutes(110), operations: [operation('a', { minutes: 10 })] }),
      ],
    }
    const slots = slotsOf(planned(book).lines)
    expect(slots.map((slot) => [slot.order, slot.start, slot.end])).toEqual([
      ['x', 90, 120],
      ['y', 120, 130],
    ])
  })

  it('does work of one set-up together when nothing is late for it', () => {
    const orders = ['hot', 'cold', 'hot', 'cold'].map((family, index) =>
      bookOrder(`o${index}`, { needBy: minutes(9_000), operations: [operation('a', { minutes: 10, family })] }),
    )
    const stations = [machine('a', { setups: [{ from: '*', to: '*', minutes: 15 }] })]
    const slots = slotsOf(planned({ now: minutes(0), stations, orders }).lines)
    expect(slots.reduce((sum, slot) => sum + slot.setupMinutes, 0)).toBe(15)
  })
})

describe('planning anew', () => {
  it('gives an urgent order its place, breaks no promise and moves little', () => {
    let near = 0
    let moved = 0
    for (const seed of [1, 2, 3, 4]) {
      const { shop, book } = shopBook(60, 40 + seed, 16_000)
      const before = planned(book)
      const old: readonly Slot[] = slotsOf(before.lines)
      const orders = book.orders.map((order, index) => ({
        ...order,
        promised: minutes(Math.max(order.needBy, completionOf(before.lines, index))),
      }))
      const urgent = randomOrder(shop, randomFrom(seed), { id: 'urgent', within: 1_200 })
      const next: Book = { ...book, orders: [...orders, urgent] }
      const plan = replanFor(next, old, effort)
      if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
      const slots = slotsOf(plan.value.lines)
      expect([verify(next, slots), brokenPromises(next, slots)]).toEqual([[], []])
      const starts = new Map(slots.map((slot) => [`${slot.order} ${slot.operation}`, slot.start]))
      const soon = old.filter((slot) => slot.start < book.now + 2_880)
      near += soon.length
      moved += soon.filter((slot) => Math.abs((starts.get(`${slot.order} ${slot.operation}`) ?? 0) - slot.start) > 15).length
    }
    expect(moved / near).toBeLessThanOrEqual(0.1)
  })
})

describe('why an order is late', () => {
  const late = (book: Book) => explainLate(firstPlan(modelOf(book), shopObjective))
  const open = axisFrom([
    { start: 0, end: 500 },
    { start: 1_000, end: 1_500 },
  ])

  it('adds up, cause by cause, to the time from now until it is ready', () => {
    const { book } = shopBook(60, 8, 2_500)
    const lines = firstPlan(modelOf(book), shopObjective)
    const all = explainLate(lines)
    expect(all.length).toBeGreaterThan(5)
    for (const one of all) {
      const index = book.orders.findIndex((order) => order.id === one.order)
      const sum = one.causes.reduce((total, cause) => total + cause.minutes, 0)
      expect([one.order, sum]).toEqual([one.order, completionOf(lines, index) - book.now])
    }
    const mended = all.filter((one) => one.fixes.some((fix) => fix.code !== 'move-promise'))
    expect(mended.length / all.length).toBeGreaterThanOrEqual(0.9)
  })

  it('names the busy station, the minutes there and who could wait', () => {
    const book = jobsBook({ p: [100, 100], d: [100, 100] })
    expect(late(book)).toMatchObject([
      {
        minutes: 100,
        causes: [
          { cause: 'work', minutes: 100 },
          { cause: 'queue', station: 'm0', minutes: 100 },
        ],
        fixes: [{ code: 'extra-minutes', subject: 'm0', minutes: 100 }, { code: 'move-promise' }],
      },
    ])
  })

  it('asks for an earlier delivery, at a quarter of an hour, when that is enough', () => {
    const order = bookOrder('o', { needBy: minutes(400), operations: [operation('a', { minutes: 50, release: minutes(380) })] })
    const fixes = late({ now: minutes(0), stations: [machine('a')], orders: [order] })[0]?.fixes
    expect(fixes?.find((fix) => fix.code === 'earlier-delivery')).toMatchObject({ subject: 'a', at: 345, minutes: 35 })
  })

  it('asks for longer hours when the work alone does not fit the open ones', () => {
    const order = bookOrder('o', { needBy: minutes(900), operations: [operation('a', { minutes: 600, splittable: true })] })
    const fixes = late({ now: minutes(0), stations: [machine('a', { axis: open })], orders: [order] })[0]?.fixes
    expect(fixes?.[0]).toMatchObject({ code: 'open-longer', minutes: 100 })
  })
})

describe('the load', () => {
  it('counts busy minutes per station and day and what is due by each game day', () => {
    const { shop, book } = shopBook(30, 6, 5_000)
    const slots = slotsOf(planned(book).lines)
    const load = loadOf(book, shop.zone, slots)
    const busy = load.filter((one) => one.station === 'cutter-1').reduce((sum, one) => sum + one.busy, 0)
    const own = slots.filter((slot) => slot.stations.includes('cutter-1'))
    const work = book.orders.flatMap((order) => order.operations.filter((one) => one.needs.flat().includes('cutter-1')))
    expect(busy).toBe(work.reduce((sum, one) => sum + one.minutes, 0) + own.reduce((sum, slot) => sum + slot.setupMinutes, 0))
    expect(load.every((one) => one.busy <= one.open)).toBe(true)
    const due = dueLoadOf(book, shop.zone).filter((one) => one.kind === 'cutter')
    expect(due.map((one) => one.due)).toEqual(due.map((one) => one.due).toSorted((a, b) => a - b))
  })
})

const record = (over: object = {}, station: object = {}, work: object = {}): unknown => ({
  version: 1,
  now: '2026-03-02T08:00',
  zone: 'America/Chicago',
  stations: [{ id: 'a', kind: 'press', hours: [{ day: 'mon', from: '08:00', to: '17:00' }], closed: [], setups: [], ...station }],
  orders: [
    {
      id: 'o',
      needBy: '2026-03-09T17:00',
      weight: 1,
      operations: [{ id: 'x', minutes: 60, needs: [['a']], splittable: false, after: [], ...work }],
    },
  ],
  ...over,
})
const codesOf = (input: unknown): readonly (readonly string[])[] => {
  const read = readBook(input)
  if (!read.ok) return read.problems.map((one) => [one.code, one.at])
  const plan = planFor(read.value.book, { ...effort, budget: 100 })
  const found = plan.ok ? read.value.cautions : plan.problems
  return found.map((one) => [one.code, one.at])
}
const order = (needBy: string): object => ({
  orders: [{ id: 'o', needBy, weight: 1, operations: [{ id: 'x', minutes: 60, needs: [['a']] }] }],
})

describe('a book that cannot be planned', () => {
  it('is planned when nothing is wrong with it', () => {
    expect(codesOf(record())).toEqual([])
  })

  it.each([
    [
      'work longer than any open interval',
      record({}, {}, { minutes: 541 }),
      'work-longer-than-open',
      '/orders/0/operations/0/minutes',
    ],
    ['a calendar without an open hour', record({}, { hours: [] }), 'station-never-open', '/stations/0/hours'],
    ['a wish in the lost hour of spring', record(order('2026-03-08T02:30')), 'time-in-lost-hour', '/orders/0/needBy'],
    ['a wish in the past', record(order('2026-03-01T12:00')), 'need-by-past', '/orders/0/needBy'],
    ['a station that does not exist', record({}, {}, { needs: [['b']] }), 'station-unknown', '/orders/0/operations/0/needs'],
    [
      'a predecessor that does not exist',
      record({}, {}, { after: [{ operation: 'y', lagMinutes: 0 }] }),
      'after-unknown',
      '/orders/0/operations/0/after',
    ],
    [
      'work that waits for itself',
      record({}, {}, { after: [{ operation: 'x', lagMinutes: 0 }] }),
      'after-circle',
      '/orders/0/operations/0/after',
    ],
    ['an unknown zone', record({ zone: 'Mars/Olympus' }), 'zone-unknown', '/zone'],
    [
      'work that began in the future',
      record({}, {}, { started: '2026-03-03T08:00' }),
      'started-in-future',
      '/orders/0/operations/0/started',
    ],
    ['a word nobody knows', record({ colour: 'blue' }), 'book-malformed', ''],
  ])('says so of %s', (_, input, code, at) => {
    expect(codesOf(input)).toContainEqual([code, at])
  })

  it('says so of stations that are never open together', () => {
    const hours = (day: string): object => ({ hours: [{ day, from: '08:00', to: '17:00' }], closed: [], setups: [] })
    const stations = [
      { id: 'a', kind: 'press', ...hours('mon') },
      { id: 'p', kind: 'person', ...hours('tue') },
    ]
    expect(codesOf(record({ stations }, {}, { needs: [['a'], ['p']] }))).toContainEqual(['never-together', '/orders/0'])
  })

  it('says so of set-ups that are quicker by way of a third', () => {
    const setups = [
      { from: 'a', to: 'b', minutes: 30 },
      { from: 'a', to: 'c', minutes: 5 },
      { from: 'c', to: 'b', minutes: 5 },
    ]
    const orders = ['a', 'b', 'c'].map((family) => ({
      id: family,
      needBy: '2026-03-09T17:00',
      weight: 1,
      operations: [{ id: 'x', minutes: 5, needs: [['a']], family }],
    }))
    expect(codesOf(record({ orders }, { setups }))).toContainEqual(['setup-shortcut', '/stations/0/setups'])
  })
})
