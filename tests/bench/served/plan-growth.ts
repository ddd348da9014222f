import type { Desk } from '../../../src/desk/service/desk.ts'
import { isPlaceFree } from '../../../src/desk/service/plan/keeps-place.ts'
import { bookOf } from '../../../src/desk/service/plan/shop-plan.ts'
import { type PlacedOrder, type ShopPlan, shopPlanFrom } from '../../../src/desk/service/records/records.ts'
import { firstPlan } from '../../../src/domain/schedule/construct/first-plan.ts'
import { replanFor } from '../../../src/domain/schedule/replan/replan.ts'
import { budgetFor } from '../../../src/domain/schedule/search/plan.ts'
import { shopObjective } from '../../../src/domain/schedule/timeline/objective.ts'
import { slotsOf } from '../../../src/domain/schedule/timeline/slots.ts'
import { compile } from '../../../src/domain/schedule/verify/compile.ts'
import { minutes } from '../../../src/domain/units/units.ts'
import { cpuDuring } from './domain-cost.ts'

const dayMinutes = 1_440
/** So many orders of this size leave this shop's room for a day's work without anybody being late. */
const ordersADay = 12

/** A plan of so many orders like this one, due one after the other from its own day on. */
const planOf = (desk: Desk, plan: ShopPlan, model: PlacedOrder, many: number): ShopPlan => {
  const due = (at: number) => minutes((model.promised ?? model.needBy) + Math.floor(at / ordersADay) * dayMinutes)
  const sold = Array.from({ length: many }, (_, at) => ({ ...model, id: `g${at}`, needBy: due(at), promised: due(at) }))
  const grown = { ...plan, sold, held: [], slots: [] }
  const compiled = compile(bookOf(desk, grown, desk.clock.now()))
  if (!compiled.ok) throw new Error('the grown plan could not be laid down')
  return { ...grown, slots: slotsOf(firstPlan(compiled.value, shopObjective)) }
}

/** What the plan alone costs of one more order: read and written twice, a place found, looked at again, and all planned anew. */
const planWork = (desk: Desk, kept: string, asked: PlacedOrder): void => {
  const plan = shopPlanFrom(JSON.parse(kept))
  if (!isPlaceFree(desk, plan, asked).ok) throw new Error('no floor was found')
  JSON.stringify(plan)
  const read = shopPlanFrom(JSON.parse(kept))
  if (!isPlaceFree(desk, read, asked).ok) throw new Error('no floor was found')
  const sold = { ...read, sold: [...read.sold, asked] }
  replanFor(bookOf(desk, sold, desk.clock.now()), sold.slots, { seed: 1, budget: budgetFor(0.3), stop: () => false })
  JSON.stringify(sold)
}

/** Seconds of processor that the plan takes of an order while so many are in it. */
export const planCost = async (desk: Desk, plan: ShopPlan, many: number): Promise<number> => {
  const [model] = plan.sold
  if (model === undefined) throw new Error('nothing is sold yet')
  const kept = JSON.stringify(planOf(desk, plan, model, many))
  const asked = { ...model, id: 'asked' }
  planWork(desk, kept, asked)
  const rounds = many > 1_000 ? 1 : 5
  return (await cpuDuring(() => Array.from({ length: rounds }, () => planWork(desk, kept, asked)))) / rounds
}
