import { type Axis, axisFrom, intervalsOf } from '../../calendar/axis.ts'
import { ok, type Result } from '../../result/result.ts'
import type { Minutes } from '../../units/units.ts'
import type { Station } from '../book/operation.ts'
import type { ScheduleProblem } from '../book/problems.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import { copyOf, emptyTimelines, type Timelines } from '../timeline/lanes.ts'
import type { Model } from '../timeline/model.ts'
import { compile } from '../verify/compile.ts'
import { reserve } from './reserve.ts'

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
