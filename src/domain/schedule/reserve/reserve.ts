import { completionOf } from '../timeline/fit.ts'
import { fitLate } from '../timeline/fit-late.ts'
import { put, type Spot, type Timelines, take } from '../timeline/lanes.ts'
import { free } from '../timeline/model.ts'

/** The latest end of an operation: its order's deadline, and what waits for it. */
const limitOf = (lines: Timelines, operation: number, deadline: number): number => {
  const { model } = lines
  const end = model.orders[model.order[operation] ?? 0]?.end ?? 0
  let by = deadline
  for (let next = operation + 1; next < end; next += 1) {
    if (model.state[next] !== free || (lines.crewing[next] ?? -1) < 0) continue
    const before = model.before[next] ?? []
    for (let index = 0; index < before.length; index += 1) {
      if (before[index] === operation) by = Math.min(by, (lines.start[next] ?? 0) - (model.lag[next]?.[index] ?? 0))
    }
  }
  return by
}

const spot: Spot = { start: 0, end: 0, crewing: 0 }

/** Moves operations as late as the deadline of their order and what waits for them allow, the last first; in place. */
const moveAllLate = (lines: Timelines, operations: number[], deadlineOf: (order: number) => number): void => {
  const { model, start, end } = lines
  operations.sort((a, b) => (end[b] ?? 0) - (end[a] ?? 0) || (start[b] ?? 0) - (start[a] ?? 0) || b - a)
  for (const operation of operations) {
    const old = { start: start[operation] ?? 0, end: end[operation] ?? 0, crewing: lines.crewing[operation] ?? 0 }
    take(lines, operation)
    const by = limitOf(lines, operation, deadlineOf(model.order[operation] ?? 0))
    const work = model.work[operation] ?? 0
    put(lines, operation, fitLate(lines, operation, { by, least: old.start, work }, spot) ? spot : old)
  }
}

const isMovable = (lines: Timelines, operation: number): boolean =>
  lines.model.state[operation] === free && (lines.crewing[operation] ?? -1) >= 0

/**
 * Turns an execution plan into a reservation plan, in place: every operation that has not begun goes as late as its order's promise
 * and the work behind it allow, so that the gaps lie in front. No order ends later than it did or than it is due. What begins before
 * `from` stays.
 */
export const reserve = (lines: Timelines, from = 0): void => {
  const { model } = lines
  const deadlines = model.orders.map((order, index) => Math.max(order.due, completionOf(lines, index)))
  const operations: number[] = []
  for (let operation = 0; operation < model.work.length; operation += 1) {
    if (isMovable(lines, operation) && (lines.start[operation] ?? 0) >= from) operations.push(operation)
  }
  moveAllLate(lines, operations, (order) => deadlines[order] ?? 0)
}

/** The same for some orders, each with the latest minute it may be ready. */
export const reserveOrders = (lines: Timelines, limits: ReadonlyMap<number, number>): void => {
  const operations: number[] = []
  for (const order of limits.keys()) {
    const range = lines.model.orders[order]
    for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
      if (isMovable(lines, operation)) operations.push(operation)
    }
  }
  moveAllLate(lines, operations, (order) => limits.get(order) ?? 0)
}
