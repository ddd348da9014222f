import { describe, expect, it } from 'vitest'
import { readLocal } from '../../../../src/domain/calendar/local-time.ts'
import type { Book, BookOrder } from '../../../../src/domain/schedule/book/operation.ts'
import { firstPlan } from '../../../../src/domain/schedule/construct/first-plan.ts'
import { hold, type Promised, promise } from '../../../../src/domain/schedule/promise/promise.ts'
import { emptyFloor, type Floor, floorOf } from '../../../../src/domain/schedule/reserve/floor.ts'
import { randomFrom } from '../../../../src/domain/schedule/search/random.ts'
import { completionOf } from '../../../../src/domain/schedule/timeline/fit.ts'
import { shopObjective } from '../../../../src/domain/schedule/timeline/objective.ts'
import { slotsOf } from '../../../../src/domain/schedule/timeline/slots.ts'
import { brokenPromises, verify } from '../../../../src/domain/schedule/verify/verify.ts'
import { type Minutes, minutes } from '../../../../src/domain/units/units.ts'
import { bookOrder, machine, modelOf, operation } from '../../../support/scheduling.ts'
import { jobFacts, operationsFor, randomOrder, shopBook, starterShop } from '../../../support/shop-books.ts'

const shop = starterShop()
const at = (text: string): Minutes => {
  const read = readLocal(shop.zone, text)
  if (!read.ok) throw new Error(text)
  return read.value.at
}

const floorWithout = (): Floor => {
  const floor = emptyFloor(shop.stations, shop.now)
  if (!floor.ok) throw new Error('the starter shop has no floor')
  return floor.value
}

const answer = (floor: Floor, needBy: Minutes, facts = jobFacts()): Promised => {
  const promised = promise(floor, { id: 'asked', operations: operationsFor(facts), needBy })
  if (!promised.ok) throw new Error(JSON.stringify(promised.problems))
  return promised.value
}

describe('a promise in an empty shop', () => {
  it('is the hour that was asked for, with the slack and what it hangs on', () => {
    const promised = answer(floorWithout(), at('2026-08-07T17:00'))
    expect(promised).toMatchObject({ feasible: true, rung: 'gap', promised: at('2026-08-07T17:00'), alone: false, moved: [] })
    expect(promised.slackMinutes).toBe(at('2026-08-07T17:00') - promised.earliest)
    expect(promised.hangsOn.map((one) => one.code)).toEqual(['sign-off', 'garments'])
  })

  it('still holds when the sign-off and the garments come at the last hour it names', () => {
    const needBy = at('2026-08-07T17:00')
    const { hangsOn } = answer(floorWithout(), needBy)
    const last = hangsOn[0]?.by ?? minutes(0)
    const late = emptyFloor(shop.stations, last)
    if (!late.ok) throw new Error('no floor')
    expect(answer(late.value, needBy).feasible).toBe(true)
  })

  it('counts the day a bleed test waits, which is the clock’s and not the shop’s', () => {
    const plain = answer(floorWithout(), at('2026-08-14T17:00'))
    const tested = answer(floorWithout(), at('2026-08-14T17:00'), jobFacts({ bleedTest: true }))
    expect(tested.earliest - plain.earliest).toBeGreaterThanOrEqual(1_200)
    expect(tested.causes.some((one) => one.cause === 'wait' && one.minutes === 1_440)).toBe(true)
  })

  it('says no with the earliest honest hour when the work alone takes longer', () => {
    const promised = answer(floorWithout(), at('2026-08-03T09:00'))
    expect(promised).toMatchObject({ feasible: false, rung: 'no', alone: true })
    expect(promised.promised).toBeGreaterThanOrEqual(promised.earliest)
    expect(answer(floorWithout(), promised.promised).feasible).toBe(true)
  })

  it('waits for garments that come later', () => {
    const arrival = at('2026-08-05T10:00')
    const promised = answer(floorWithout(), at('2026-08-12T17:00'), jobFacts({ garmentsArrive: arrival }))
    expect(Math.min(...promised.slots.map((slot) => slot.start))).toBeGreaterThanOrEqual(arrival)
    expect(promised.causes.at(-1)).toMatchObject({ cause: 'arrival', minutes: arrival - shop.now })
  })

  it('tells the last open hour when the shop is closed at the wanted one', () => {
    const promised = answer(floorWithout(), at('2026-08-09T10:00'))
    expect(promised.promised).toBe(at('2026-08-08T13:00'))
    expect(promised.collectBy).toBe(promised.promised)
  })

  it('freezes the roster before anything of it is cut', () => {
    const promised = answer(floorWithout(), at('2026-08-07T17:00'))
    const cut = promised.held.find((slot) => slot.operation === 'cut-vinyl-1')
    expect(promised.freezesAt).toBeLessThanOrEqual(cut?.start ?? 0)
  })

  it('refuses an hour that is past', () => {
    const asked = { id: 'asked', operations: operationsFor(jobFacts()), needBy: shop.now }
    expect(promise(floorWithout(), asked)).toMatchObject({ ok: false, problems: [{ code: 'need-by-past', at: '/needBy' }] })
  })

  it('is asked without a trace on the floor', () => {
    const floor = floorWithout()
    answer(floor, at('2026-08-07T17:00'))
    expect([floor.model.orders.length, floor.model.work.length, ...floor.lines.lanes.map((lane) => lane.count)]).toEqual([
      0,
      0,
      ...floor.lines.lanes.map(() => 0),
    ])
  })
})

describe('the rungs of the ladder', () => {
  const one = (id: string, due: number, work: number): BookOrder =>
    bookOrder(id, { needBy: minutes(due), promised: minutes(due), operations: [operation('a', { minutes: work })] })
  const floorOfOrders = (orders: readonly BookOrder[]): Floor => {
    const book: Book = { now: minutes(0), stations: [machine('a')], orders }
    return floorOf(firstPlan(modelOf(book), shopObjective))
  }
  const ask = (floor: Floor, due: number, work: number) =>
    promise(floor, { id: 'new', needBy: minutes(due), operations: [operation('a', { minutes: work })] })

  it('put a new order into the gap in front of what is promised later', () => {
    expect(ask(floorOfOrders([one('x', 200, 100)]), 100, 80)).toMatchObject({ ok: true, value: { feasible: true, rung: 'gap' } })
  })

  it('move an order that has time when the gaps are too short', () => {
    const floor = floorOfOrders([one('x', 150, 50), one('y', 400, 40)])
    const tight = ask(floor, 110, 80)
    expect(tight).toMatchObject({ ok: true, value: { feasible: true } })
  })

  it('say no when every minute before is sold', () => {
    const full = floorOfOrders([one('x', 100, 100), one('y', 200, 100)])
    expect(ask(full, 150, 20)).toMatchObject({ ok: true, value: { feasible: false, rung: 'no', alone: false } })
  })

  it('sell the last place once: the second customer is told it is gone', () => {
    const floor = floorOfOrders([one('x', 100, 60)])
    const asked = (id: string) => ({ id, needBy: minutes(100), operations: [operation('a', { minutes: 30 })] })
    expect([hold(floor, asked('first'), minutes(100)), hold(floor, asked('second'), minutes(100))]).toEqual([true, false])
    expect(floor.model.orders.map((order) => order.id)).toEqual(['x', 'first'])
  })
})

describe('many promises one after the other', () => {
  const requests = process.env['LONG'] === undefined ? 120 : 10_000

  it('are all kept: the held plan is sound and nobody is later than promised', { timeout: 3_600_000 }, () => {
    let asked = 0
    let yes = 0
    for (let round = 0; asked < requests; round += 1) {
      const { shop: starter, book } = shopBook(30, 100 + round, 20_000)
      const floor = floorOf(firstPlan(modelOf(book), shopObjective))
      const orders: BookOrder[] = book.orders.map((order, index) => ({
        ...order,
        promised: minutes(Math.max(order.needBy, completionOf(floor.lines, index))),
      }))
      const random = randomFrom(round)
      for (let index = 0; index < 60 && asked < requests; index += 1) {
        asked += 1
        const order = randomOrder(starter, random, { id: `asked-${index}`, within: 14_000 })
        const promised = promise(floor, order)
        if (!promised.ok || !promised.value.feasible) continue
        expect(hold(floor, order, promised.value.promised)).toBe(true)
        orders.push({ ...order, promised: promised.value.promised })
        yes += 1
        const now = { ...book, orders }
        const slots = slotsOf(floor.lines)
        expect([verify(now, slots), brokenPromises(now, slots)]).toEqual([[], []])
      }
    }
    expect(yes).toBeGreaterThan(requests / 4)
  })
})
