import { minutes } from '../../units/units.ts'
import type { Slot } from '../book/operation.ts'
import { setupBetween, spanAfter, type Timelines } from './lanes.ts'
import { over } from './model.ts'

const setupBefore = (lines: Timelines, operation: number, station: number): number => {
  const lane = lines.lanes[station]
  if (lane === undefined) return 0
  const index = spanAfter(lane, lines.start[operation] ?? 0)
  if (index === 0) return 0
  const { family } = lines.model
  return setupBetween(lines.model, station, family[lane.operation[index - 1] ?? 0] ?? 0, family[operation] ?? 0)
}

/** One operation as it lies on the lanes. */
const slotOf = (lines: Timelines, operation: number): Slot => {
  const { model } = lines
  const stations = [...(model.crewings[lines.crewing[operation] ?? -1]?.stations ?? [])]
  return {
    order: model.orders[model.order[operation] ?? 0]?.id ?? '',
    operation: model.names[operation] ?? '',
    stations: stations.map((station) => model.stations[station]?.id ?? ''),
    start: minutes(lines.start[operation] ?? 0),
    end: minutes(lines.end[operation] ?? 0),
    setupMinutes: stations.reduce((most, station) => Math.max(most, setupBefore(lines, operation, station)), 0),
  }
}

/** The slots of one order in the order of time; work that is over has none. */
export const slotsOfOrder = (lines: Timelines, order: number): readonly Slot[] => {
  const range = lines.model.orders[order]
  const slots: Slot[] = []
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if (lines.model.state[operation] !== over) slots.push(slotOf(lines, operation))
  }
  return slots.toSorted((a, b) => a.start - b.start || a.end - b.end)
}

/** The slots of the whole plan. */
export const slotsOf = (lines: Timelines): readonly Slot[] => lines.model.orders.flatMap((_, order) => slotsOfOrder(lines, order))
