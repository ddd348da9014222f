import { type Axis, axisFrom, intervalsOf } from '../calendar/axis.ts'
import { ok, type Result, refuse } from '../result/result.ts'
import type { Minutes } from '../units/units.ts'
import { bookProblems } from './check-book.ts'
import { placeFixed } from './fit.ts'
import { copyOf, emptyTimelines, type Timelines } from './lanes.ts'
import { addOrder, emptyModel, type Model } from './model.ts'
import type { Book, Station } from './operation.ts'
import type { ScheduleProblem } from './problems.ts'
import { reserve } from './reserve.ts'

export const compile = (book: Book): Result<Model, ScheduleProblem> => {
  const problems = bookProblems(book)
  if (problems.length > 0) return refuse(...problems)
  const model = emptyModel(book.now, book.stations)
  for (const order of book.orders) addOrder(model, order)
  const shared = staffingProblem(model)
  return shared === null ? ok(model) : refuse(shared)
}

/** An operation whose stations are never open together for long enough. */
export const staffingProblem = (model: Model): ScheduleProblem | null => {
  const operation = model.waysOf.findIndex((ways, index) => model.state[index] === 0 && (model.ways[ways]?.length ?? 0) === 0)
  if (operation < 0) return null
  const order = model.order[operation] ?? 0
  const facts = { order: model.orders[order]?.id ?? '', operation: model.names[operation] ?? '' }
  return { code: 'never-together', at: `/orders/${order}`, severity: 'stop', facts }
}

/** Timelines that carry only what cannot move. */
export const fixedTimelines = (model: Model): Timelines => {
  const lines = emptyTimelines(model)
  placeFixed(lines)
  return lines
}

/**
 * The shop as promises see it: the open orders in a reservation plan, and when somebody is there to hand over. `promise` leaves it
 * as it was; `hold` adds an order.
 */
export type Floor = { readonly model: Model; lines: Timelines; readonly open: Axis }

/** A floor from a compiled book and a plan of it. */
export const floorOf = (plan: Timelines): Floor => {
  const lines = copyOf(plan)
  reserve(lines)
  const open = axisFrom(plan.model.stations.flatMap((station) => intervalsOf(station.axis)))
  return { model: plan.model, lines, open }
}

/** A floor without orders; `station-never-open` and the like when the stations cannot work. */
export const emptyFloor = (stations: readonly Station[], now: Minutes): Result<Floor, ScheduleProblem> => {
  const model = compile({ now, stations, orders: [] })
  return model.ok ? ok(floorOf(emptyTimelines(model.value))) : model
}
