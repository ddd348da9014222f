import { ok, type Result } from '../../result/result.ts'
import type { Book } from '../book/operation.ts'
import type { ScheduleProblem } from '../book/problems.ts'
import { layDown } from '../construct/dispatch.ts'
import { firstList } from '../construct/first-plan.ts'
import { placeOperation } from '../timeline/fit.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import type { Timelines } from '../timeline/lanes.ts'
import type { Model } from '../timeline/model.ts'
import { type Objective, planCost, shopObjective } from '../timeline/objective.ts'
import { compile } from '../verify/compile.ts'
import { annealFor, annealFrom, asOperations } from './anneal.ts'
import type { Anneal } from './list-change.ts'
import { type Random, randomFrom } from './random.ts'
import { reshuffleFor, reshuffleFrom } from './reshuffle.ts'
import { type Level, type Stack, stackOf, stackSize } from './stack.ts'

/** How to search: `budget` counts operations laid down on a large book's lanes; `stop` is the safety stop of the caller's clock. */
export type Effort = {
  readonly seed: number
  readonly budget: number
  readonly stop: () => boolean
  readonly objective?: Objective
  readonly keepsTurn?: boolean
}

/** A plan on its lanes, what it costs by the objective, the changes that were tried for it, and the seed that makes it again. */
export type Plan = { readonly lines: Timelines; readonly cost: number; readonly iterations: number; readonly seed: number }

const laidDownASecond = 100_000

/** The budget a machine of our day spends in that time with room to spare. */
export const budgetFor = (seconds: number): number => Math.max(1, Math.round(seconds * laidDownASecond))

/** Numbers the pictures of a list may take. */
const largestTable = 4_000_000
/** In the time of an operation on a large book's lanes, so many ways to staff one are looked at on those of an annealed list. */
const quicker = 24
const slice = 5_000

/** Spends a budget in slices, so that the caller's clock is asked now and then; nothing costs less than nothing. */
const spend = (budget: number, effort: Effort, search: (work: number) => number): void => {
  for (let left = budget; left > 0 && !effort.stop(); left -= slice) {
    if (search(Math.min(slice, left)) <= 0) return
  }
}

const anneal = (
  stack: Stack,
  list: readonly number[],
  task: { level: Level; random: Random; budget: number; effort: Effort },
): Anneal => {
  const search = annealFrom(stack, task.level, list, task.random)
  spend(task.budget, task.effort, (work) => {
    annealFor(search, work * quicker)
    return search.bestCost
  })
  return search
}

const layOperations = (stack: Stack, list: Int32Array): Timelines => {
  const lines = fixedTimelines(stack.lines.model)
  for (const element of list) placeOperation(lines, stack.first[element] ?? 0, 1)
  return lines
}

const layInTurn = (model: Model, list: Int32Array, keepsTurn: boolean): Timelines => {
  if (!keepsTurn) return layDown(model, [...list])
  const lines = { ...fixedTimelines(model), keepsTurn }
  for (const order of list) {
    const range = model.orders[order]
    for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) placeOperation(lines, operation, 1)
  }
  return lines
}

type Found = { readonly lines: Timelines; readonly cost: number; readonly iterations: number }

const better = (objective: Objective, one: Found, lines: Timelines, iterations: number): Found => {
  const cost = planCost(objective, lines)
  return { lines: cost < one.cost ? lines : one.lines, cost: Math.min(cost, one.cost), iterations: one.iterations + iterations }
}

/** Lists of orders first, then lists of single operations: each only when its pictures fit. */
const searchLists = (model: Model, list: readonly number[], start: Found, task: { effort: Effort; random: Random }): Found => {
  const { effort, random } = task
  const objective = effort.objective ?? shopObjective
  const keepsTurn = effort.keepsTurn ?? false
  const single = model.orders.every((order) => order.end - order.first === 1)
  const alone = keepsTurn || single
  const stack = stackOf(model, { level: 'order', objective, keepsTurn })
  const orders = anneal(stack, list, { level: 'order', random, budget: effort.budget * (alone ? 1 : 0.3), effort })
  const found = better(objective, start, layInTurn(model, orders.best, keepsTurn), orders.tries)
  if (alone || stackSize(model, 'operation') > largestTable) return found
  const fine = stackOf(model, { level: 'operation', objective, keepsTurn })
  const operations = anneal(fine, asOperations(fine, [...orders.best]), {
    level: 'operation',
    random,
    budget: effort.budget * 0.6,
    effort,
  })
  return better(objective, found, layOperations(fine, operations.best), operations.tries)
}

/** A plan of a compiled book: the usual rules, then lists where the book is small, then the timelines. */
export const planModel = (model: Model, effort: Effort): Plan => {
  const objective = effort.objective ?? shopObjective
  const random = randomFrom(effort.seed)
  const { list, lines } = firstList(model, objective)
  const keepsTurn = effort.keepsTurn ?? false
  const first = keepsTurn ? layInTurn(model, Int32Array.from(list), true) : lines
  let found: Found = { lines: first, cost: planCost(objective, first), iterations: 0 }
  const small = stackSize(model, 'order') <= largestTable
  if (small) found = searchLists(model, list, found, { effort, random })
  if (!keepsTurn && !(small && model.orders.every((order) => order.end - order.first === 1))) {
    const search = reshuffleFrom(found.lines, objective, random)
    spend(effort.budget * (small ? 0.1 : 1), effort, (work) => {
      reshuffleFor(search, work)
      return search.bestCost
    })
    found = better(objective, found, search.best, search.tries)
  }
  return { ...found, seed: effort.seed }
}

/** A plan of the book; refuses a book that cannot be planned. */
export const planFor = (book: Book, effort: Effort): Result<Plan, ScheduleProblem> => {
  const model = compile(book)
  return model.ok ? ok(planModel(model.value, effort)) : model
}
