import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Book } from '../../../domain/schedule/book/operation.ts'
import { stationsOf } from '../../../domain/schedule/book/station-records.ts'
import { firstPlan } from '../../../domain/schedule/construct/first-plan.ts'
import { withExtra } from '../../../domain/schedule/explain/extra-hours.ts'
import { layKept } from '../../../domain/schedule/replan/old-plan.ts'
import { type Floor, floorOf } from '../../../domain/schedule/reserve/floor.ts'
import { lateWeight, shopObjective } from '../../../domain/schedule/timeline/objective.ts'
import { compile } from '../../../domain/schedule/verify/compile.ts'
import { type Minutes, minutes } from '../../../domain/units/units.ts'
import type { Desk } from '../desk.ts'
import type { HeldPlace, PlacedOrder, ShopPlan } from '../records/records.ts'

const horizonMinutes = 120 * 1_440

/** Places whose time to decide is not over. */
export const liveHolds = (plan: ShopPlan, now: Minutes): readonly HeldPlace[] => plan.held.filter((held) => held.until > now)

/** The shop's book: what is sold or held and not on hold, on its stations in their hours and the extra ones, from now on. */
export const bookOf = (desk: Desk, { sold, extra }: Pick<ShopPlan, 'sold' | 'extra'>, until: Minutes): Book => {
  const now = desk.clock.now()
  const orders = sold.filter(({ onHold }) => onHold !== true)
  const { hours, stations: records } = desk.workshop.shop
  const last = Math.max(now, until, ...orders.map((order) => order.promised ?? order.needBy))
  const range = { from: minutes(now - 1_440), to: minutes(last + horizonMinutes) }
  const stations = stationsOf(desk.zone, hours, records, range)
  return { now, stations: withExtra(stations, extra), orders }
}

/** A held revision stands beside what was sold of the same order, until it is signed or let go: both need their place. */
const asOrder = (held: HeldPlace): PlacedOrder => ({ ...held, id: `${held.id}~${held.revision}` })

/**
 * The floor that a new promise is asked of: every sold order and every live hold but the asking order's own, as the kept plan has
 * them. Only where somebody is late in it is the book laid down anew.
 */
export const floorFor = (
  desk: Desk,
  plan: ShopPlan,
  asking: { readonly orderId: string; readonly needBy: Minutes },
): Result<Floor, Problem> => {
  const isOther = (order: PlacedOrder): boolean => order.id !== asking.orderId
  const held = liveHolds(plan, desk.clock.now()).filter(isOther).map(asOrder)
  const book = bookOf(desk, { ...plan, sold: [...plan.sold.filter(isOther), ...held] }, asking.needBy)
  const model = compile(book)
  if (!model.ok) return model
  const kept = layKept(model.value, plan.slots)
  if (lateWeight(kept) === 0) return ok(floorOf(kept))
  const fresh = firstPlan(model.value, shopObjective)
  return ok(floorOf(lateWeight(fresh) < lateWeight(kept) ? fresh : kept))
}
