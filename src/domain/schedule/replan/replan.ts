import { ok, type Result } from '../../result/result.ts'
import type { Book, Slot } from '../book/operation.ts'
import type { ScheduleProblem } from '../book/problems.ts'
import { adopt, type Floor, floorOf } from '../reserve/floor.ts'
import { reserve, reserveOrders } from '../reserve/reserve.ts'
import { squeeze } from '../reserve/squeeze.ts'
import { type Effort, type Plan, planModel } from '../search/plan.ts'
import { completionOf, placeOrder } from '../timeline/fit.ts'
import { moveLate, placementsOf, putBack, takeOrder } from '../timeline/fit-late.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import { copyOf, type Timelines } from '../timeline/lanes.ts'
import { planCost, shopObjective } from '../timeline/objective.ts'
import { compile } from '../verify/compile.ts'
import { makeRoom } from './make-room.ts'
import { layNear, layOld, movedIn, type Old, oldPlaces, snapBack } from './old-plan.ts'

const isLate = (lines: Timelines, order: number): boolean => completionOf(lines, order) > (lines.model.orders[order]?.due ?? 0)

/** Whether everybody who is in time in one plan is in time in the other. */
const isWorseForNobody = (lines: Timelines, than: Timelines): boolean =>
  lines.model.orders.every((_, order) => !isLate(lines, order) || isLate(than, order))

/** How often orders that would be late for it are left where they lie, before all of a plan is moved back piece by piece. */
const mostRounds = 8

/**
 * The old plan around some orders that stay where they lie, and around those that would be late if they went back to their old
 * places; null when there is no end to these.
 */
const oldPlanAround = (lines: Timelines, old: ReadonlyMap<number, Old>, first: readonly number[]): Timelines | null => {
  const staying = new Set(first)
  for (let round = 0; round < mostRounds; round += 1) {
    const around = fixedTimelines(lines.model)
    for (const order of staying) putBack(around, placementsOf(lines, order))
    layOld(around, old)
    const later = lines.model.orders.flatMap((_, order) => (isLate(around, order) && !isLate(lines, order) ? [order] : []))
    if (later.length === 0) return around
    for (const order of later) staying.add(order)
  }
  return null
}

/** Tries to bring late orders in by the reservation plan: into its gaps first, then by moving a few that have time. */
const bringIn = (lines: Timelines, old: ReadonlyMap<number, Old>): Timelines => {
  const { model } = lines
  const late = model.orders.map((_, order) => order).filter((order) => isLate(lines, order))
  if (late.length === 0 || late.length > 20) return lines
  const roomy = makeRoom(lines, old, late)
  if (roomy !== null) return roomy
  const floor: Floor = floorOf(lines)
  for (const order of late) {
    const due = model.orders[order]?.due ?? 0
    const before = copyOf(floor.lines)
    takeOrder(floor.lines, order)
    if (placeOrder(floor.lines, order, 1) <= due) {
      moveLate(floor.lines, order, due, 1)
      continue
    }
    takeOrder(floor.lines, order)
    const place = squeeze(floor, order, { due, stretch: 1 })
    adopt(floor, place?.lines ?? before)
    if (place !== null) reserveOrders(floor.lines, new Map([...place.limits, [order, due]]))
  }
  const around = oldPlanAround(floor.lines, old, late)
  snapBack(floor.lines, old)
  return around !== null && movedIn(around, old) <= movedIn(floor.lines, old) ? around : floor.lines
}

const lateCost = (lines: Timelines): number => planCost({ ...shopObjective, tardiness: 0, completion: 0, setup: 0 }, lines)

/**
 * A plan of a changed book that stays with the old one where it can: what has begun stays, what is new goes into gaps, then into the
 * reservation plan; only when orders are late even so is the book searched anew, and that plan, when it makes nobody late who was
 * in time, is moved back towards the old one. Which promise must break is for a person to say.
 */
export const replanFor = (book: Book, oldSlots: readonly Slot[], effort: Effort): Result<Plan, ScheduleProblem> => {
  const compiled = compile(book)
  if (!compiled.ok) return compiled
  const model = compiled.value
  const old = oldPlaces(model, oldSlots)
  const kept = bringIn(layNear(model, old), old)
  const cost = planCost(shopObjective, kept)
  const stable: Plan = { lines: kept, cost, iterations: 0, seed: effort.seed }
  if (lateCost(kept) === 0) return ok(stable)
  const searched = planModel(model, effort)
  const isBetter = lateCost(searched.lines) < lateCost(kept) && isWorseForNobody(searched.lines, kept)
  if (!isBetter) return ok({ ...stable, iterations: searched.iterations })
  reserve(searched.lines)
  snapBack(searched.lines, old)
  return ok({ ...searched, cost: planCost(shopObjective, searched.lines) })
}
