import { describe, expect, it } from 'vitest'
import type { Book, BookOrder, Operation, Slot } from '../../../../src/domain/schedule/book/operation.ts'
import { replanFor } from '../../../../src/domain/schedule/replan/replan.ts'
import { budgetFor, planModel } from '../../../../src/domain/schedule/search/plan.ts'
import { randomFrom } from '../../../../src/domain/schedule/search/random.ts'
import { completionOf } from '../../../../src/domain/schedule/timeline/fit.ts'
import { slotsOf } from '../../../../src/domain/schedule/timeline/slots.ts'
import { brokenPromises, verify } from '../../../../src/domain/schedule/verify/verify.ts'
import { minutes } from '../../../../src/domain/units/units.ts'
import { bookOrder, machine, modelOf, operation } from '../../../support/scheduling.ts'
import { minutesOfWork, randomOrder, shopBook } from '../../../support/shop-books.ts'

const long = process.env['LONG'] !== undefined
const effort = { seed: 1, budget: budgetFor(0.3), stop: () => false }
const keyOf = (slot: Pick<Slot, 'order' | 'operation'>): string => `${slot.order} ${slot.operation}`

/** What was planned to have happened by now has happened. */
const asPlanned = (one: Operation, slot: Slot | undefined, now: number): Operation => {
  if (slot === undefined || slot.start >= now) return one
  return { ...one, started: slot.start, on: slot.stations, done: slot.end <= now ? slot.end : null }
}

/** A book some hours into its plan, everything promised as planned. */
const underWay = (orders: number, seed: number, within: number) => {
  const { shop, book } = shopBook(orders, 40 + seed, within)
  const { lines } = planModel(modelOf(book), effort)
  const old = slotsOf(lines)
  const slots = new Map(old.map((slot) => [keyOf(slot), slot]))
  const now = minutes(book.now + 240)
  const promised = book.orders.map(
    (order, index): BookOrder => ({
      ...order,
      promised: minutes(Math.max(order.needBy, completionOf(lines, index))),
      operations: order.operations.map((one) => asPlanned(one, slots.get(`${order.id} ${one.id}`), now)),
    }),
  )
  return { shop, old, book: { ...book, now, orders: promised } }
}

/** Of the work of the next two days, how much begins more than a quarter of an hour earlier or later. */
const disturbed = (
  book: Book,
  old: readonly Slot[],
  next: readonly Slot[],
): { readonly near: number; readonly moved: number } => {
  const starts = new Map(next.map((slot) => [keyOf(slot), slot.start]))
  const soon = old.filter((slot) => slot.start >= book.now && slot.start < book.now + 2_880)
  const moved = soon.filter((slot) => Math.abs((starts.get(keyOf(slot)) ?? 0) - slot.start) > 15)
  return { near: soon.length, moved: moved.length }
}

describe('one urgent order', () => {
  it.each([0.6, 0.9])(
    'gets its place in a shop at %s of its load, breaks no promise and moves little',
    { timeout: 600_000 },
    (load) => {
      const orders = long ? 500 : 60
      const within = Math.round(minutesOfWork(shopBook(orders, 1, 1_000).book, 2.6) / load)
      let near = 0
      let moved = 0
      for (const seed of long ? [1, 2, 3, 4, 5, 6, 7, 8] : [1, 2, 3]) {
        const { shop, old, book } = underWay(orders, seed, within)
        const urgent = { ...randomOrder(shop, randomFrom(seed), { id: 'urgent', within: 600 }), weight: 5 }
        const next: Book = { ...book, orders: [...book.orders, urgent] }
        const plan = replanFor(next, old, effort)
        if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
        const slots = slotsOf(plan.value.lines)
        expect([verify(next, slots), brokenPromises(next, slots)]).toEqual([[], []])
        const counted = disturbed(book, old, slots)
        near += counted.near
        moved += counted.moved
      }
      console.info(`load ${load}: ${moved} of ${near} operations of two days moved, ${((moved * 100) / near).toFixed(1)} %`)
      expect(moved / near).toBeLessThanOrEqual(0.1)
    },
  )
})

describe('work that did not begin when it should have', () => {
  const two = (id: string, due: number): BookOrder =>
    bookOrder(id, {
      needBy: minutes(due),
      operations: [
        operation('cut', { minutes: 30, needs: [['cutter']] }),
        operation('press', { minutes: 30, needs: [['press']], after: [{ operation: 'cut', lagMinutes: 0 }] }),
      ],
    })

  it('is planned from now, and what waits for it after it', () => {
    const stations = [machine('cutter'), machine('press')]
    const book: Book = { now: minutes(0), stations, orders: [two('a', 200), two('b', 220)] }
    const old = slotsOf(planModel(modelOf(book), effort).lines)
    const later: Book = { ...book, now: minutes(40) }
    const plan = replanFor(later, old, effort)
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
    const slots = slotsOf(plan.value.lines)
    expect([verify(later, slots), brokenPromises(later, slots)]).toEqual([[], []])
  })

  it('pushes what comes behind it by the minutes it is late, instead of going to the end', () => {
    const stations = [machine('press')]
    const one = (id: string): BookOrder =>
      bookOrder(id, { needBy: minutes(1_000), operations: [operation('press', { minutes: 60, needs: [['press']] })] })
    const book: Book = { now: minutes(0), stations, orders: ['a', 'b', 'c', 'd'].map(one) }
    const old = slotsOf(planModel(modelOf(book), effort).lines)
    const plan = replanFor({ ...book, now: minutes(10) }, old, effort)
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
    const starts = new Map(slotsOf(plan.value.lines).map((slot) => [slot.order, slot.start]))
    expect(old.map((slot) => (starts.get(slot.order) ?? 0) - slot.start)).toEqual([10, 10, 10, 10])
  })
})
