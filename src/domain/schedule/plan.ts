import { ok, type Result } from '../result/result.ts'
import { byDue, layDown, paceOf, startLists } from './dispatch.ts'
import { compile } from './floor.ts'
import type { Timelines } from './lanes.ts'
import type { Model } from './model.ts'
import { type Objective, planCost, shopObjective } from './objective.ts'
import type { Book } from './operation.ts'
import type { ScheduleProblem } from './problems.ts'

/** The best of the plans that come from laying orders down by the usual rules. */
export const firstPlan = (model: Model, objective: Objective): Timelines => {
  let best = layDown(model, byDue(model))
  let least = planCost(objective, best)
  for (const list of startLists(model, paceOf(model, best)).slice(1)) {
    const lines = layDown(model, list)
    const cost = planCost(objective, lines)
    if (cost < least) {
      best = lines
      least = cost
    }
  }
  return best
}

/** A plan of the book without a search; refuses a book that cannot be planned. */
export const planOf = (book: Book): Result<Timelines, ScheduleProblem> => {
  const model = compile(book)
  return model.ok ? ok(firstPlan(model.value, shopObjective)) : model
}
