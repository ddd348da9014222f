import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Book, Slot } from '../../../domain/schedule/book/operation.ts'
import { replanFor } from '../../../domain/schedule/replan/replan.ts'
import { budgetFor } from '../../../domain/schedule/search/plan.ts'
import { slotsOf } from '../../../domain/schedule/timeline/slots.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { type ShopPlan, shopPlanFrom } from '../records/records.ts'
import { bookOf } from './shop-plan.ts'

/** The search is seeded and counted, not timed: the same book gives the same plan on every machine. */
const planSeed = 1
const planSeconds = 0.3

/** What is sold, planned anew and leaving what lies well where it is; nothing is kept. */
export const plannedAnew = (
  desk: Desk,
  plan: ShopPlan,
): Result<{ readonly book: Book; readonly slots: readonly Slot[] }, Problem> => {
  const book = bookOf(desk, plan, desk.clock.now())
  const found = replanFor(book, plan.slots, { seed: planSeed, budget: budgetFor(planSeconds), stop: () => false })
  return found.ok ? ok({ book, slots: slotsOf(found.value.lines) }) : found
}

export type HeldPlan = Awaited<ReturnType<ShopStore['plan']['hold']>>

/** Plans every sold order anew in the plan that is held, leaving what lies well where it is, and keeps the plan. */
export const replanHeld = async (desk: Desk, shop: ShopStore, read: HeldPlan): Promise<Result<ShopPlan, Problem>> => {
  const plan = shopPlanFrom(read.body)
  const planned = plannedAnew(desk, plan)
  if (!planned.ok) return planned
  const next: ShopPlan = { ...plan, slots: planned.value.slots }
  const written = await shop.plan.write(read.version, next)
  return written.ok ? ok(next) : written
}

/** The same under the plan's lock, which it takes. */
export const replanShop = async (desk: Desk, shop: ShopStore): Promise<Result<ShopPlan, Problem>> =>
  replanHeld(desk, shop, await shop.plan.hold())
