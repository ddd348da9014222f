import { completionOf, placeOrder } from '../timeline/fit.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import type { Timelines } from '../timeline/lanes.ts'
import { free, type Model } from '../timeline/model.ts'
import { type Objective, orderCost } from '../timeline/objective.ts'

const squared = (x: number): number => x * x

/** e^-x as (1 + x/256)^-256, from products alone, so that every machine ranks alike. */
const decay = (x: number): number => {
  const fourth = squared(squared(1 / (1 + x / 256)))
  const sixteenth = squared(squared(fourth))
  return squared(squared(squared(squared(sixteenth))))
}

const workOf = (model: Model, order: number): number => {
  const range = model.orders[order]
  let sum = 0
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if (model.state[operation] === free) sum += model.work[operation] ?? 0
  }
  return sum
}

const numbers = (model: Model): number[] => model.orders.map((_, index) => index)

/** Orders by due time. */
export const byDue = (model: Model): readonly number[] =>
  numbers(model).sort((a, b) => (model.orders[a]?.due ?? 0) - (model.orders[b]?.due ?? 0) || a - b)

const familyOf = (model: Model, order: number): number => {
  const range = model.orders[order]
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    const family = model.family[operation] ?? 0
    if (family > 0) return family
  }
  return 0
}

/** An order as the rules see it: `worth` is weight over work. */
type Ranked = {
  readonly order: number
  readonly work: number
  readonly due: number
  readonly family: number
  readonly worth: number
}

const rankedOf = (model: Model): readonly Ranked[] =>
  model.orders.map(({ due, weight }, order) => {
    const work = Math.max(1, workOf(model, order))
    return { order, work, due, family: familyOf(model, order), worth: weight / work }
  })

type Rule = { readonly look: number; readonly pace: number; readonly sameFamily: number }

/**
 * Orders by apparent tardiness cost (Vepsalainen and Morton 1987): weight over work, decaying with slack; `look` is the look-ahead
 * in mean work, `sameFamily` the reward for following an order of the same set-up family.
 */
const byTardinessCost = (ranked: readonly Ranked[], now: number, rule: Rule): readonly number[] => {
  const { look, pace, sameFamily } = rule
  const rest = ranked.toSorted((a, b) => b.worth - a.worth || a.order - b.order)
  const mean = rest.reduce((sum, one) => sum + one.work, 0) / Math.max(1, rest.length)
  const sorted: number[] = []
  let at = now
  let family = 0
  while (rest.length > 0) {
    let best = 0
    let most = -1
    for (let index = 0; index < rest.length; index += 1) {
      const one = rest[index]
      if (one === undefined || one.worth * sameFamily < most) break
      const bonus = one.family === family ? sameFamily : 1
      const slack = Math.max(0, one.due - one.work * pace - at)
      const value = one.worth * decay(slack / (look * mean * pace)) * bonus
      if (value < most || (value === most && one.order > (rest[best]?.order ?? 0))) continue
      most = value
      best = index
    }
    const [chosen] = rest.splice(best, 1)
    if (chosen === undefined) break
    sorted.push(chosen.order)
    family = chosen.family
    at += chosen.work * pace
  }
  return sorted
}

/**
 * Orders by due time, those set aside that would make others late (after Moore 1968, the largest work per weight first); the ones set
 * aside come last.
 */
const bySettingAside = (model: Model, pace: number): readonly number[] => {
  const works = numbers(model).map((order) => workOf(model, order))
  const costs = works.map((work, order) => work / Math.max(1e-9, model.orders[order]?.weight ?? 0))
  const kept: number[] = []
  const aside: number[] = []
  let at = model.now
  for (const order of byDue(model)) {
    kept.push(order)
    at += (works[order] ?? 0) * pace
    if (at <= (model.orders[order]?.due ?? 0)) continue
    const worst = kept.reduce((most, one) => ((costs[one] ?? 0) > (costs[most] ?? 0) ? one : most), order)
    kept.splice(kept.indexOf(worst), 1)
    aside.push(worst)
    at -= (works[worst] ?? 0) * pace
  }
  return [...kept, ...aside]
}

/** A plan that lays the orders down one after the other, each as early as it can be. */
export const layDown = (model: Model, orders: readonly number[]): Timelines => {
  const lines = fixedTimelines(model)
  for (const order of orders) placeOrder(lines, order, 1)
  return lines
}

/** The same, given up with null as soon as the orders that lie cost more than `most`. */
export const layDownFor = (
  model: Model,
  orders: readonly number[],
  { objective, most }: { readonly objective: Objective; readonly most: number },
): Timelines | null => {
  const lines = fixedTimelines(model)
  let cost = 0
  for (const order of orders) {
    cost += orderCost(objective, model, order, placeOrder(lines, order, 1))
    if (cost > most) return null
  }
  return lines
}

/** Elapsed minutes a minute of work takes when the shop works through the book. */
export const paceOf = (model: Model, lines: Timelines): number => {
  let total = 0
  let last = model.now
  for (let order = 0; order < model.orders.length; order += 1) {
    total += workOf(model, order)
    last = Math.max(last, completionOf(lines, order))
  }
  return total === 0 ? 1 : Math.max(0.01, (last - model.now) / total)
}

/** A book of more orders than this starts from fewer lists, so that its first plan is there at once. */
const manyOrders = 200

/**
 * The lists to start from: due time, setting aside, and tardiness cost with several look-aheads. Setting aside leaves the least late
 * in a busy book, so it stands early: what comes after it is given up soon.
 */
export const startLists = (model: Model, pace: number): readonly (readonly number[])[] => {
  const many = model.orders.length > manyOrders
  const ranked = rankedOf(model)
  const byCost = (look: number, sameFamily: number): readonly number[] =>
    byTardinessCost(ranked, model.now, { look, pace, sameFamily })
  return [
    byDue(model),
    bySettingAside(model, pace),
    ...(many ? [0.5, 2] : [0.5, 1, 2, 4]).map((look) => byCost(look, 1)),
    ...(many ? [] : [0.5, 2]).map((look) => byCost(look, 2)),
  ]
}
