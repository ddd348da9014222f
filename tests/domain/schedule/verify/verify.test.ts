import { describe, expect, it } from 'vitest'
import { axisFrom } from '../../../../src/domain/calendar/axis.ts'
import type { Book, Operation, Slot } from '../../../../src/domain/schedule/book/operation.ts'
import { brokenPromises, verify } from '../../../../src/domain/schedule/verify/verify.ts'
import { minutes } from '../../../../src/domain/units/units.ts'
import { bookOrder, machine, operation } from '../../../support/scheduling.ts'

const day = axisFrom([
  { start: 100, end: 200 },
  { start: 300, end: 400 },
])
const bookWith = (...operations: readonly Operation[]): Book => ({
  now: minutes(100),
  stations: [machine('a', { axis: day, setups: [{ from: '*', to: '*', minutes: 10 }] }), machine('b', { axis: day })],
  orders: [bookOrder('o', { needBy: minutes(400), promised: minutes(380), operations })],
})
const slot = (name: string, start: number, end: number, over: Partial<Slot> = {}): Slot => ({
  order: 'o',
  operation: name,
  stations: ['a'],
  start: minutes(start),
  end: minutes(end),
  setupMinutes: 0,
  ...over,
})
const rules = (book: Book, ...slots: readonly Slot[]): readonly string[] => verify(book, slots).map((breach) => breach.rule)
const x = operation('x', { minutes: 50 })

describe('the independent check of a plan', () => {
  it('finds nothing wrong with work at its station in open time', () => {
    expect(rules(bookWith(x), slot('x', 110, 160))).toEqual([])
  })

  it('lets work that may be split run over the closed hours', () => {
    expect(rules(bookWith({ ...x, splittable: true }), slot('x', 170, 320))).toEqual([])
  })

  it.each([
    ['missing', bookWith(x), []],
    ['twice', bookWith(x), [slot('x', 110, 160), slot('x', 300, 350)]],
    ['unknown', bookWith(x), [slot('x', 110, 160), slot('y', 300, 350)]],
    ['unknown', bookWith(x), [slot('x', 110, 160), slot('x', 300, 350, { order: 'p' })]],
    ['wrong-stations', bookWith(x), [slot('x', 110, 160, { stations: ['b'] })]],
    ['wrong-stations', bookWith(x), [slot('x', 110, 160, { stations: [] })]],
    ['before-release', bookWith({ ...x, release: minutes(120) }), [slot('x', 110, 160)]],
    ['closed', bookWith(x), [slot('x', 170, 320)]],
    ['closed', bookWith({ ...x, splittable: true }), [slot('x', 170, 330)]],
    ['wrong-length', bookWith(x), [slot('x', 110, 150)]],
    ['started-moved', bookWith({ ...x, started: minutes(105) }), [slot('x', 110, 160)]],
  ] as const)('finds what is %s', (rule, book, slots) => {
    expect(rules(book, ...slots)).toContain(rule)
  })

  it('finds work before now, before its predecessor and before its wait is over', () => {
    expect(rules(bookWith({ ...x, minutes: 5 }), slot('x', 90, 95))).toContain('before-now')
    const y = operation('y', { minutes: 20, needs: [['b']], after: [{ operation: 'x', lagMinutes: 30 }] })
    expect(rules(bookWith(x, y), slot('x', 100, 150), slot('y', 179, 199, { stations: ['b'] }))).toContain('before-predecessor')
    expect(rules(bookWith(x, y), slot('x', 100, 150), slot('y', 180, 200, { stations: ['b'] }))).toEqual([])
  })

  it('finds two pieces of work on one station at once, and a set-up that was left out', () => {
    const other = operation('y', { minutes: 20, family: 'hot' })
    const first = { ...x, family: 'cold' }
    expect(rules(bookWith(first, other), slot('x', 100, 150), slot('y', 149, 169))).toContain('overlap')
    expect(rules(bookWith(first, other), slot('x', 100, 150), slot('y', 159, 179))).toContain('set-up')
    expect(rules(bookWith(first, other), slot('x', 100, 150), slot('y', 160, 180))).toEqual([])
  })

  it('names the orders whose promise is broken, to the minute', () => {
    const book = bookWith(x)
    expect(brokenPromises(book, [slot('x', 331, 381)])).toEqual(['o'])
    expect(brokenPromises(book, [slot('x', 330, 380)])).toEqual([])
  })
})
