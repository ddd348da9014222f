import { workBetween } from '../../calendar/axis.ts'
import type { Timelines } from '../timeline/lanes.ts'

/**
 * Why an order is ready when it is: minutes of its own `work`, of `wait` (cooling, bleed test), of stations `closed`, of `queue`
 * for a busy station, and until an `arrival`. They add up to the time from now to the end.
 */
export type Cause = {
  readonly cause: 'work' | 'wait' | 'closed' | 'queue' | 'arrival'
  readonly operation: string
  readonly station: string | null
  readonly minutes: number
}

type Binding = { readonly at: number; readonly before: number; readonly lag: number }

/** What an operation waited for last: an operation before it (with its lag), an arrival, or nothing but now. */
const bindingOf = (lines: Timelines, operation: number): Binding => {
  const { model } = lines
  let binding: Binding = { at: model.release[operation] ?? 0, before: -1, lag: 0 }
  const before = model.before[operation] ?? []
  for (let index = 0; index < before.length; index += 1) {
    const one = before[index] ?? 0
    const lag = model.lag[operation]?.[index] ?? 0
    const at = (lines.end[one] ?? 0) + lag
    if (at >= binding.at) binding = { at, before: one, lag }
  }
  return binding
}

const lastOf = (lines: Timelines, order: number): number => {
  const range = lines.model.orders[order]
  let last = range?.first ?? -1
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if ((lines.end[operation] ?? 0) > (lines.end[last] ?? 0)) last = operation
  }
  return last
}

/** The station of an operation that was busy last before it began: where it queued. */
const queuedAt = (lines: Timelines, operation: number): string | null => {
  const { model } = lines
  const stations = model.crewings[lines.crewing[operation] ?? -1]?.stations ?? []
  let latest = -1
  let found: string | null = null
  for (const station of stations) {
    const lane = lines.lanes[station]
    const index = lane?.operation.subarray(0, lane.count).indexOf(operation) ?? -1
    const end = index > 0 ? (lane?.end[index - 1] ?? -1) : -1
    if (end > latest) {
      latest = end
      found = model.stations[station]?.id ?? null
    }
  }
  return found
}

const open = (lines: Timelines, operation: number, from: number, to: number): number => {
  const axis = lines.model.crewings[lines.crewing[operation] ?? -1]?.axis
  return axis === undefined ? to - from : workBetween(axis, from, to)
}

const causesOfOne = (lines: Timelines, operation: number, binding: Binding): readonly Cause[] => {
  const start = lines.start[operation] ?? 0
  const end = lines.end[operation] ?? 0
  const name = lines.model.names[operation] ?? ''
  const work = open(lines, operation, start, end)
  const queue = start > binding.at ? open(lines, operation, binding.at, start) : 0
  const closed = end - start - work + Math.max(0, start - binding.at - queue)
  const causes: Cause[] = [
    { cause: 'work', operation: name, station: null, minutes: work },
    { cause: 'closed', operation: name, station: null, minutes: closed },
    { cause: 'queue', operation: name, station: queue > 0 ? queuedAt(lines, operation) : null, minutes: queue },
    { cause: 'wait', operation: name, station: null, minutes: binding.lag },
  ]
  return causes.filter((one) => one.minutes > 0)
}

/** The chain of causes of an order's completion, from its end back to now. */
export const causesOf = (lines: Timelines, order: number): readonly Cause[] => {
  const { model } = lines
  const causes: Cause[] = []
  let operation = lastOf(lines, order)
  while (operation >= 0) {
    const binding = bindingOf(lines, operation)
    causes.push(...causesOfOne(lines, operation, binding))
    if (binding.before < 0 && binding.at > model.now) {
      causes.push({ cause: 'arrival', operation: model.names[operation] ?? '', station: null, minutes: binding.at - model.now })
    }
    operation = binding.before
  }
  return causes
}
