import type { Timelines } from '../timeline/lanes.ts'
import type { Model } from '../timeline/model.ts'
import { type Objective, planCost } from '../timeline/objective.ts'
import { byDue, layDown, layDownFor, paceOf, startLists } from './dispatch.ts'

/** The best of the lists of the usual rules, and the plan it makes. */
export const firstList = (
  model: Model,
  objective: Objective,
): { readonly list: readonly number[]; readonly lines: Timelines } => {
  const due = byDue(model)
  let best = { list: due, lines: layDown(model, due) }
  let least = planCost(objective, best.lines)
  for (const list of startLists(model, paceOf(model, best.lines)).slice(1)) {
    const lines = layDownFor(model, list, { objective, most: least })
    const cost = lines === null ? least : planCost(objective, lines)
    if (lines === null || cost >= least) continue
    best = { list, lines }
    least = cost
  }
  return best
}

/** The best of the plans that come from laying orders down by the usual rules. */
export const firstPlan = (model: Model, objective: Objective): Timelines => firstList(model, objective).lines
