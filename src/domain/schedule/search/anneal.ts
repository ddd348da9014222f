import { placeOrder } from '../timeline/fit.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import { free, type Model } from '../timeline/model.ts'
import { orderCost } from '../timeline/objective.ts'
import { type Anneal, change, propose } from './list-change.ts'
import { patience, type Random } from './random.ts'
import { goBack, keep, type Level, layElement, type Stack, type Tally } from './stack.ts'

const tally: Tally = { cost: 0, last: 0, print: 0, print2: 0 }

const load = (stack: Stack, place: number): void => {
  tally.cost = stack.cost[place] ?? 0
  tally.last = stack.last[place] ?? 0
  tally.print = stack.print[place] ?? 0
  tally.print2 = stack.print2[place] ?? 0
}

const store = (stack: Stack, place: number): void => {
  stack.cost[place] = tally.cost
  stack.last[place] = tally.last
  stack.print[place] = tally.print
  stack.print2[place] = tally.print2
  keep(stack, place)
}

/** Lays the list down from a place to another and keeps the pictures; false when something fits nowhere. */
const relay = (search: Anneal, from: number, to: number): boolean => {
  const { stack, list } = search
  goBack(stack, from)
  load(stack, from)
  for (let place = from; place < to; place += 1) {
    if (!layElement(stack, list[place] ?? 0, tally)) return false
    store(stack, place + 1)
  }
  return true
}

const total = (search: Anneal): number => search.stack.cost[search.list.length] ?? 0

const aloneCosts = (model: Model, stack: Stack, level: Level): Float64Array => {
  if (level === 'operation' || stack.objective.makespan > 0) return new Float64Array(stack.first.length)
  return Float64Array.from(model.orders, (_, order) => {
    const lines = fixedTimelines(model)
    return orderCost(stack.objective, model, order, placeOrder(lines, order, 1))
  })
}

/** A search that starts from a list of elements. */
export const annealFrom = (stack: Stack, level: Level, start: readonly number[], random: Random): Anneal => {
  const search: Anneal = {
    stack,
    level,
    random,
    list: Int32Array.from(start),
    trial: Int32Array.from(start),
    best: Int32Array.from(start),
    alone: aloneCosts(stack.lines.model, stack, level),
    bestCost: Number.POSITIVE_INFINITY,
    tries: 0,
    work: 0,
    heat: 0,
    cooling: 1,
    left: 0,
    cycle: 0,
    deltas: [],
  }
  if (relay(search, 0, start.length)) search.bestCost = total(search)
  return search
}

const different = Number.NaN

/**
 * What the changed list costs, or NaN once it is clear that it costs more than `limit`. `settled` is the place from which on nothing
 * differs from the present list.
 */
const tryChange = (search: Anneal, limit: number): number => {
  const { stack, trial, list, alone } = search
  const count = list.length
  const { low, high } = change
  search.work += stack.size >> 8
  goBack(stack, low)
  load(stack, low)
  let rest = 0
  for (let place = low; place < count; place += 1) rest += alone[list[place] ?? 0] ?? 0
  for (let place = low; place < count; place += 1) {
    const element = (place <= high ? trial[place] : list[place]) ?? 0
    search.work += stack.ways[element] ?? 0
    if (!layElement(stack, element, tally)) return different
    rest -= alone[element] ?? 0
    if (tally.cost + rest > limit) return different
    if (place >= high && tally.print === stack.print[place + 1] && tally.print2 === stack.print2[place + 1]) {
      settled = place + 1
      const cost = tally.cost + total(search) - (stack.cost[place + 1] ?? 0)
      return cost > limit ? different : cost
    }
  }
  settled = count
  return tally.cost
}
let settled = 0

const accept = (search: Anneal, cost: number): void => {
  const { list, trial, stack } = search
  const delta = cost - total(search)
  list.set(trial.subarray(change.low, change.high + 1), change.low)
  const to = settled
  relay(search, change.low, to)
  if (to < list.length) {
    const count = list.length
    for (let place = to + 1; place <= count; place += 1) stack.cost[place] = (stack.cost[place] ?? 0) + delta
  }
  if (cost < search.bestCost) {
    search.bestCost = cost
    search.best.set(list)
  }
}

/** Costs of some random changes, to know how hot is hot. */
const sample = (search: Anneal): void => {
  const present = total(search)
  for (let index = 0; index < 60; index += 1) {
    if (!propose(search)) continue
    search.tries += 1
    const cost = tryChange(search, Number.POSITIVE_INFINITY)
    if (cost > present) search.deltas.push(cost - present)
  }
  search.deltas.sort((a, b) => a - b)
}

const quantiles = [0.3, 0.05, 0.5, 0.15, 0.02, 0.8]

const nextCycle = (search: Anneal): void => {
  if (search.deltas.length === 0) sample(search)
  const { deltas, cycle } = search
  const quantile = quantiles[cycle % quantiles.length] ?? 0.4
  const length = 2_000 + 400 * cycle
  search.heat = 0.4 * (deltas[Math.floor(quantile * deltas.length)] ?? 0)
  search.cooling = coolingOver(length)
  search.left = length
  search.cycle += 1
  if (cycle > 0 && total(search) > search.bestCost) {
    search.list.set(search.best)
    relay(search, 0, search.list.length)
  }
}

/** The factor that brings the heat to about a five-hundredth over so many tries, from products alone. */
const coolingOver = (tries: number): number => 1 - 6.2 / (tries + 6.2)

/** Searches until so many more ways to staff operations have been looked at. */
export const annealFor = (search: Anneal, work: number): void => {
  if (search.list.length < 2 || search.bestCost === Number.POSITIVE_INFINITY) return
  const until = search.work + work
  for (let idle = 0; search.work < until && idle < 1_000; idle += 1) {
    if (search.left === 0) nextCycle(search)
    search.left -= 1
    search.tries += 1
    search.heat *= search.cooling
    if (!propose(search)) continue
    idle = 0
    const limit = total(search) + search.heat * patience(search.random)
    const cost = tryChange(search, limit)
    if (cost <= limit) accept(search, cost)
  }
}

/** Operations of orders laid down one after the other, as a list of single operations. */
export const asOperations = (stack: Stack, orders: readonly number[]): readonly number[] => {
  const { model } = stack.lines
  const place = new Map(Array.from(stack.first, (operation, element) => [operation, element] as const))
  return orders.flatMap((order) => {
    const range = model.orders[order]
    const elements: number[] = []
    for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
      if (model.state[operation] === free) elements.push(place.get(operation) ?? 0)
    }
    return elements
  })
}
