import { workBetween } from '../../calendar/axis.ts'
import { type Minutes, minutes } from '../../units/units.ts'
import { placeOrder } from '../timeline/fit.ts'
import { takeOrder } from '../timeline/fit-late.ts'
import type { Lane, Timelines } from '../timeline/lanes.ts'
import type { Model } from '../timeline/model.ts'

/**
 * Something that would bring a late order in on time, tried before it is told: a gap that breaks no promise, extra minutes at a station, a longer day, an earlier
 * delivery, the order without its stones, in front of another order, a part of it first; and what is left: another promise. Extra
 * minutes at several stations belong together, as does an earlier delivery that stands before them.
 */
export type Fix = {
  readonly code:
    | 'move-up'
    | 'extra-minutes'
    | 'open-longer'
    | 'earlier-delivery'
    | 'drop-stones'
    | 'go-before'
    | 'split-collection'
    | 'move-promise'
  readonly subject: string
  readonly at: Minutes | null
  readonly minutes: number
}

/** A late order taken off a reservation plan, so that "what if" can be asked. */
export type Case = { readonly lines: Timelines; readonly order: number; readonly due: number; readonly late: number }

const emptyLane = (): Lane => ({
  start: new Int32Array(8),
  end: new Int32Array(8),
  operation: new Int32Array(8),
  gap: new Int32Array(8),
  count: 0,
})

/** The operations of an order, by their place in the model. */
export const rangeOf = (model: Model, order: number): readonly number[] => {
  const range = model.orders[order]
  return Array.from({ length: (range?.end ?? 0) - (range?.first ?? 0) }, (_, index) => (range?.first ?? 0) + index)
}

/** Lays the order down, looks at it, takes it off. */
export const lookAt = <T>(lines: Timelines, order: number, look: () => T): T => {
  placeOrder(lines, order, 1)
  const seen = look()
  takeOrder(lines, order)
  return seen
}

/** Whether the order could be ready by its time; it does not stay. */
export const isOnTime = (lines: Timelines, { order, due }: Pick<Case, 'order' | 'due'>): boolean => {
  const complete = placeOrder(lines, order, 1, due)
  takeOrder(lines, order)
  return complete <= due
}

/** The lanes where some stations have a helper, who has nothing else to do: `helpers` are empty lanes, one for each station. */
const withHelpers = (lines: Timelines, helped: ReadonlySet<number>, helpers: readonly Lane[]): Timelines => ({
  ...lines,
  lanes: lines.lanes.map((lane, station) => (helped.has(station) ? (helpers[station] ?? lane) : lane)),
})

const usedStations = (lines: Timelines, order: number): readonly number[] => {
  const { model } = lines
  const used = new Set<number>()
  for (const operation of rangeOf(model, order)) {
    for (const way of model.ways[model.waysOf[operation] ?? 0] ?? []) {
      for (const station of model.crewings[way]?.stations ?? []) used.add(station)
    }
  }
  return [...used].sort((a, b) => b - a)
}

/** Minutes by which the helper's work meets work that lies on the station's own lane, and when that begins; both lie in order of time. */
const overlap = (lines: Timelines, helped: Timelines, station: number): { readonly at: number; readonly minutes: number } => {
  const own = lines.lanes[station]
  const help = helped.lanes[station]
  const axis = lines.model.stations[station]?.axis
  let at = -1
  let sum = 0
  let next = 0
  for (let one = 0; one < (help?.count ?? 0); one += 1) {
    const begins = help?.start[one] ?? 0
    const ends = help?.end[one] ?? 0
    while (next < (own?.count ?? 0) && (own?.end[next] ?? 0) <= begins) next += 1
    for (let other = next; other < (own?.count ?? 0) && (own?.start[other] ?? 0) < ends; other += 1) {
      const from = Math.max(begins, own?.start[other] ?? 0)
      const to = Math.min(ends, own?.end[other] ?? 0)
      if (to <= from) continue
      if (at < 0) at = from
      sum += axis === undefined ? to - from : workBetween(axis, from, to)
    }
  }
  return { at, minutes: sum }
}

/**
 * The bottleneck, by trial: every station gets a helper, then the helpers go home one by one where the order stays on time without
 * them. Who cannot go home is the bottleneck; null when the order is late even with all of them.
 */
export const bottleneck = (one: Case): readonly Fix[] | null => {
  const { lines, order, due, late } = one
  const helped = new Set(usedStations(lines, order))
  const helpers = lines.lanes.map(emptyLane)
  const onTime = (): boolean => isOnTime(withHelpers(lines, helped, helpers), one)
  if (!onTime()) return null
  for (const station of [...helped]) {
    helped.delete(station)
    if (!onTime()) helped.add(station)
  }
  if (helped.size === 0)
    return [{ code: 'move-up', subject: lines.model.orders[order]?.id ?? '', at: minutes(due), minutes: late }]
  const trial = withHelpers(lines, helped, helpers)
  return lookAt(trial, order, () =>
    [...helped].flatMap((station): readonly Fix[] => {
      const extra = overlap(lines, trial, station)
      const subject = lines.model.stations[station]?.id ?? ''
      return extra.minutes === 0 ? [] : [{ code: 'extra-minutes', subject, at: minutes(extra.at), minutes: extra.minutes }]
    }),
  )
}
