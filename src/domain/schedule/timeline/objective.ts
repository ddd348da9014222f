import { completionOf } from './fit.ts'
import { setupBetween, type Timelines } from './lanes.ts'
import type { Model } from './model.ts'

/**
 * What a plan costs, in one number: per order its weight times `late` when it is late, `tardiness` a minute (at most `capMinutes`
 * of them, so that no order drifts for weeks) and `completion` a minute; per plan `setup` a minute of setting up and `makespan` a
 * minute until the last order is ready.
 */
export type Objective = {
  readonly late: number
  readonly tardiness: number
  readonly capMinutes: number
  readonly completion: number
  readonly setup: number
  readonly makespan: number
}

/** Late orders first, then how late, then set-ups and work in progress: each outweighs all that comes after it. */
export const shopObjective: Objective = {
  late: 1e10,
  tardiness: 1_000,
  capMinutes: 20_160,
  completion: 1,
  setup: 10,
  makespan: 0,
}

/** What one order costs when it is ready at `complete`. */
export const orderCost = (objective: Objective, model: Model, order: number, complete: number): number => {
  const one = model.orders[order]
  if (one === undefined) return 0
  const cost = objective.completion * (complete - model.now) * one.weight
  if (complete <= one.due) return cost
  const tardy = complete - one.due
  const counted = Math.min(tardy, objective.capMinutes)
  return cost + one.weight * (objective.late + objective.tardiness * counted)
}

/** Set-up minutes of one station's lane. */
export const setupsOfLane = (lines: Timelines, station: number): number => {
  const lane = lines.lanes[station]
  let sum = 0
  for (let index = 1; index < (lane?.count ?? 0); index += 1) {
    const from = lines.model.family[lane?.operation[index - 1] ?? 0] ?? 0
    const to = lines.model.family[lane?.operation[index] ?? 0] ?? 0
    sum += setupBetween(lines.model, station, from, to)
  }
  return sum
}

/** What the plan on the lanes costs. */
export const planCost = (objective: Objective, lines: Timelines): number => {
  const { model } = lines
  let cost = 0
  let last = model.now
  for (let order = 0; order < model.orders.length; order += 1) {
    const complete = completionOf(lines, order)
    cost += orderCost(objective, model, order, complete)
    if (complete > last) last = complete
  }
  if (objective.setup > 0)
    lines.lanes.forEach((_, station) => {
      cost += objective.setup * setupsOfLane(lines, station)
    })
  return cost + objective.makespan * (last - model.now)
}

/** The weights of the orders that are late on the lanes, added up. */
export const lateWeight = (lines: Timelines): number =>
  lines.model.orders.reduce((sum, order, index) => (completionOf(lines, index) > order.due ? sum + order.weight : sum), 0)
