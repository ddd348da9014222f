import { completionOf } from './fit.ts'
import { fitLate } from './fit-late.ts'
import { put, type Spot, type Timelines, take } from './lanes.ts'
import { free } from './model.ts'

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

/**
 * Turns an execution plan into a reservation plan, in place: every operation that has not begun goes as late as its order's promise
 * and the work behind it allow, so that the gaps lie in front. No order ends later than it did or than it is due.
 */
export const reserve = (lines: Timelines): void => {
  const { model } = lines
  const deadlines = model.orders.map((order, index) => Math.max(order.due, completionOf(lines, index)))
  const movable: number[] = []
  for (let operation = 0; operation < model.work.length; operation += 1) {
    if (model.state[operation] === free && (lines.crewing[operation] ?? -1) >= 0) movable.push(operation)
  }
  const ends = lines.end
  const starts = lines.start
  movable.sort((a, b) => (ends[b] ?? 0) - (ends[a] ?? 0) || (starts[b] ?? 0) - (starts[a] ?? 0) || b - a)
  const spot: Spot = { start: 0, end: 0, crewing: 0 }
  for (const operation of movable) {
    const old = { start: starts[operation] ?? 0, end: ends[operation] ?? 0, crewing: lines.crewing[operation] ?? 0 }
    take(lines, operation)
    const by = limitOf(lines, operation, deadlines[model.order[operation] ?? 0] ?? 0)
    const work = model.work[operation] ?? 0
    put(lines, operation, fitLate(lines, operation, { by, least: old.start, work }, spot) ? spot : old)
  }
}
