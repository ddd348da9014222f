import { completionOf, placeOrder } from './fit.ts'
import { moveLate, takeOrder } from './fit-late.ts'
import { type Floor, fixedTimelines } from './floor.ts'
import { copyOf, makeRoom, type Timelines } from './lanes.ts'
import { free } from './model.ts'
import { reserve } from './reserve.ts'

/** How a place was found: in a gap, by moving slack-rich orders, by planning anew with the order in front; or not. */
export type Rung = 'gap' | 'squeeze' | 'front' | 'no'

/** A place for the order, on lanes where nobody else is later than allowed. */
export type Place = { readonly earliest: number; readonly moved: readonly string[]; readonly lines: Timelines }

type Ask = { readonly due: number; readonly stretch: number }

const workLeft = (lines: Timelines, order: number): number => {
  const { model } = lines
  const range = model.orders[order]
  let sum = 0
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if (model.state[operation] === free) sum += model.work[operation] ?? 0
  }
  return sum
}

const beginsBefore = (lines: Timelines, order: number, at: number): boolean => {
  const range = lines.model.orders[order]
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if (lines.model.state[operation] === free && (lines.start[operation] ?? 0) < at) return true
  }
  return false
}

const orderNumbers = (lines: Timelines): readonly number[] => lines.model.orders.map((_, index) => index)

/** Orders that lie in front of `due` and have the most time left after their work, the richest first. */
const slackRich = (lines: Timelines, order: number, due: number): readonly number[] => {
  const { orders } = lines.model
  return orderNumbers(lines)
    .filter((one) => one !== order && beginsBefore(lines, one, due))
    .map((one) => ({ one, slack: (orders[one]?.due ?? 0) - workLeft(lines, one) }))
    .toSorted((a, b) => b.slack - a.slack || a.one - b.one)
    .map(({ one }) => one)
}

const movedNames = (before: Timelines, after: Timelines, orders: readonly number[]): readonly string[] =>
  orders.flatMap((order) => {
    const range = before.model.orders[order]
    if (range === undefined) return []
    for (let operation = range.first; operation < range.end; operation += 1) {
      if (before.start[operation] !== after.start[operation]) return [range.id]
    }
    return []
  })

/** Takes the `pull` richest orders off, lays the new one down, and the others back behind it, each by its own promise. */
export const squeeze = (floor: Floor, order: number, ask: Ask & { readonly pull: number }): Place | null => {
  const pulled = slackRich(floor.lines, order, ask.due).slice(0, ask.pull)
  const lines = copyOf(floor.lines)
  makeRoom(lines)
  const { orders } = lines.model
  const limits = new Map(pulled.map((one) => [one, Math.max(orders[one]?.due ?? 0, completionOf(lines, one))]))
  for (const one of pulled) takeOrder(lines, one)
  const earliest = placeOrder(lines, order, ask.stretch)
  if (earliest > ask.due) return null
  moveLate(lines, order, ask.due, ask.stretch)
  for (const one of pulled.toSorted((a, b) => (limits.get(a) ?? 0) - (limits.get(b) ?? 0) || a - b)) {
    const limit = limits.get(one) ?? 0
    if (placeOrder(lines, one, 1) > limit) return null
    moveLate(lines, one, limit, 1)
  }
  return { earliest, moved: movedNames(floor.lines, lines, pulled), lines }
}

/** Books with more operations are not planned anew while a customer waits: it rarely helps them and takes too long. */
const mostOperations = 2_500

/** Plans everything that has not begun anew, the new order in front, the others by the hour they would be ready. */
export const decodeInFront = (floor: Floor, order: number, ask: Ask): Place | null => {
  if (floor.model.work.length > mostOperations) return null
  const others = orderNumbers(floor.lines).filter((one) => one !== order)
  const limits = others.map((one) => ({ one, ready: completionOf(floor.lines, one), due: floor.model.orders[one]?.due ?? 0 }))
  const lines = fixedTimelines(floor.model)
  const earliest = placeOrder(lines, order, ask.stretch)
  if (earliest > ask.due) return null
  for (const { one, ready, due } of limits.toSorted((a, b) => a.ready - b.ready || a.one - b.one)) {
    if (placeOrder(lines, one, 1) > Math.max(ready, due)) return null
  }
  moveLate(lines, order, ask.due, ask.stretch)
  reserve(lines)
  return { earliest, moved: movedNames(floor.lines, lines, others), lines }
}
