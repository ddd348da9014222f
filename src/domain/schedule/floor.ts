import { type Axis, axisFrom, intervalsOf } from '../calendar/axis.ts'
import { ok, type Result, refuse } from '../result/result.ts'
import type { Minutes } from '../units/units.ts'
import { bookProblems } from './check-book.ts'
import { copyOf, emptyTimelines, type Timelines } from './lanes.ts'
import { addOrder, emptyModel, free, type Model } from './model.ts'
import type { Book, Station } from './operation.ts'
import { placeFixed } from './place-fixed.ts'
import type { ScheduleProblem } from './problems.ts'
import { reserve } from './reserve.ts'

/** The book as a model; refuses one that cannot be planned with everything that `bookProblems` finds, or with `never-together`. */
export const compile = (book: Book): Result<Model, ScheduleProblem> => {
  const problems = bookProblems(book)
  if (problems.length > 0) return refuse(...problems)
  const model = emptyModel(book.now, book.stations)
  for (const order of book.orders) addOrder(model, order)
  const shared = staffingProblem(model)
  return shared === null ? ok(model) : refuse(shared)
}

/** An operation from `first` on whose stations are never open together for long enough. */
export const staffingProblem = (model: Model, first = 0): ScheduleProblem | null => {
  const isUnstaffed = (operation: number): boolean =>
    model.state[operation] === free && (model.ways[model.waysOf[operation] ?? 0]?.length ?? 0) === 0
  let operation = first
  while (operation < model.work.length && !isUnstaffed(operation)) operation += 1
  if (operation >= model.work.length) return null
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
 * The shop as promises see it: the open orders in a reservation plan, lanes with nothing on them but what cannot move, spare lanes
 * to try things on, and when somebody is there to hand over. `promise` leaves it as it was; `hold` adds an order.
 */
export type Floor = { readonly model: Model; lines: Timelines; spare: Timelines; readonly fixed: Timelines; readonly open: Axis }

/** A floor from a compiled book and a plan of it. */
export const floorOf = (plan: Timelines): Floor => {
  const lines = copyOf(plan)
  reserve(lines)
  const open = axisFrom(plan.model.stations.flatMap((station) => intervalsOf(station.axis)))
  return { model: plan.model, lines, spare: emptyTimelines(plan.model), fixed: fixedTimelines(plan.model), open }
}

/** Makes lanes that were tried the floor's own; the old ones are spare now. */
export const adopt = (floor: Floor, lines: Timelines): void => {
  if (lines === floor.lines) return
  floor.spare = floor.lines
  floor.lines = lines
}

/** A floor without orders; `station-never-open` and the like when the stations cannot work. */
export const emptyFloor = (stations: readonly Station[], now: Minutes): Result<Floor, ScheduleProblem> => {
  const model = compile({ now, stations, orders: [] })
  return model.ok ? ok(floorOf(emptyTimelines(model.value))) : model
}
