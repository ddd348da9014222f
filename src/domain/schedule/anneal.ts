import { placeOrder } from './fit.ts'
import { fixedTimelines } from './floor.ts'
import { free, type Model } from './model.ts'
import { orderCost } from './objective.ts'
import { below, patience, type Random } from './random.ts'
import { goBack, keep, type Level, layElement, type Stack, type Tally } from './stack.ts'

/**
 * A search over lists: a change of the list is tried by laying down again what it touches, and is taken when it costs no more than the
 * present list and some patience, which cools in cycles.
 */
export type Anneal = {
  readonly stack: Stack
  readonly level: Level
  readonly random: Random
  /** The present list, a scratch list for trials, and the best list so far. */
  readonly list: Int32Array
  readonly trial: Int32Array
  readonly best: Int32Array
  /** What each element costs at least, were it alone. */
  readonly alone: Float64Array
  bestCost: number
  tries: number
  /** Operations laid down so far: what a budget is counted in. */
  work: number
  heat: number
  cooling: number
  left: number
  cycle: number
  readonly deltas: number[]
}

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

type Change = { low: number; high: number }
const change: Change = { low: 0, high: 0 }

/** How far an element may move towards `to` before it meets one it waits for, or one that waits for it. */
const reach = (search: Anneal, from: number, to: number): number => {
  if (search.level === 'order') return to
  const { stack, list } = search
  const { before } = stack.lines.model
  const own = stack.first[list[from] ?? 0] ?? 0
  const step = to > from ? 1 : -1
  let place = from
  while (place !== to) {
    const next = stack.first[list[place + step] ?? 0] ?? 0
    const meets = step > 0 ? before[next]?.includes(own) : before[own]?.includes(next)
    if (meets === true) return place
    place += step
  }
  return to
}

/** Writes a changed list into `trial` and says which places it touches; false when nothing changes. */
const propose = (search: Anneal): boolean => {
  const { list, trial, random } = search
  const count = list.length
  const from = below(random, count)
  const near = below(random, 2) === 0
  const aim = near ? from + (below(random, 2) === 0 ? 1 : -1) * (1 + below(random, 4)) : below(random, count)
  const wanted = aim < 0 ? 0 : aim >= count ? count - 1 : aim
  const swap = search.level === 'order' && below(random, 5) < 2
  const to = swap ? wanted : reach(search, from, wanted)
  if (from === to) return false
  change.low = Math.min(from, to)
  change.high = Math.max(from, to)
  for (let place = change.low; place <= change.high; place += 1) trial[place] = list[place] ?? 0
  const moved = list[from] ?? 0
  if (swap) {
    trial[from] = list[to] ?? 0
    trial[to] = moved
    return true
  }
  if (from < to) trial.copyWithin(from, from + 1, to + 1)
  else trial.copyWithin(to + 1, to, from)
  trial[to] = moved
  return true
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
  goBack(stack, low)
  load(stack, low)
  let rest = 0
  for (let place = low; place < count; place += 1) rest += alone[list[place] ?? 0] ?? 0
  for (let place = low; place < count; place += 1) {
    const element = (place <= high ? trial[place] : list[place]) ?? 0
    search.work += (stack.end[element] ?? 0) - (stack.first[element] ?? 0)
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

const quantiles = [0.4, 0.15, 0.6, 0.05, 0.3, 0.9]

const nextCycle = (search: Anneal): void => {
  if (search.deltas.length === 0) sample(search)
  const { deltas, cycle } = search
  const quantile = quantiles[cycle % quantiles.length] ?? 0.4
  const length = Math.min(60_000, 600 * 2 ** Math.min(20, cycle))
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

/** Searches until so many more operations have been laid down. */
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
