import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { promise } from '../../../domain/schedule/promise/promise.ts'
import { brokenPromises } from '../../../domain/schedule/verify/verify.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { Desk } from '../desk.ts'
import type { PlacedOrder, ShopPlan } from '../records/records.ts'
import { plannedAnew } from './replan-shop.ts'
import { floorFor, liveHolds } from './shop-plan.ts'

/** The place is free now, beside all that is sold and every live hold of others. */
export const isPlaceFree = (desk: Desk, plan: ShopPlan, placed: PlacedOrder): Result<boolean, Problem> => {
  const needBy = minutes(placed.promised ?? placed.needBy)
  const floor = floorFor(desk, plan, { orderId: placed.id, needBy })
  if (!floor.ok) return floor
  const again = promise(floor.value, { id: placed.id, operations: placed.operations, needBy })
  return again.ok ? ok(again.value.feasible) : ok(false)
}

/** Whether all that is sold and this order can be planned so that it is in time and nobody becomes late for it. */
const fitsAnew = (desk: Desk, plan: ShopPlan, placed: PlacedOrder): Result<boolean, Problem> => {
  const others = plan.sold.filter(({ id }) => id !== placed.id)
  const anew = plannedAnew(desk, { ...plan, sold: [...others, placed] })
  if (!anew.ok) return anew
  const { book, slots } = anew.value
  const lateBefore = new Set(brokenPromises(book, plan.slots).filter((id) => id !== placed.id))
  const isPlanned = slots.some(({ order }) => order === placed.id)
  return ok(isPlanned && brokenPromises(book, slots).every((id) => lateBefore.has(id)))
}

/**
 * The promise can be kept if it is sold now. Whoever holds the place goes before others who only hold theirs, but not before what was
 * sold meanwhile: a hold is looked at again too, because proofs are worked out beside each other and work is made again.
 */
export const keepsPlace = (desk: Desk, plan: ShopPlan, placed: PlacedOrder): Result<boolean, Problem> => {
  const held = liveHolds(plan, desk.clock.now()).some((hold) => hold.id === placed.id && hold.revision === placed.revision)
  if (!held) return isPlaceFree(desk, plan, placed)
  const free = isPlaceFree(desk, { ...plan, held: [] }, placed)
  return free.ok && !free.value ? fitsAnew(desk, plan, placed) : free
}
