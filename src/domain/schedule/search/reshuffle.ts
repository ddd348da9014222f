import { layDown } from '../construct/dispatch.ts'
import { completionOf, placeOrder } from '../timeline/fit.ts'
import { type Placement, placementsOf, putBack, takeOrder } from '../timeline/fit-late.ts'
import { copyOf, spanAfter, type Timelines } from '../timeline/lanes.ts'
import { free } from '../timeline/model.ts'
import { type Objective, orderCost, planCost, setupsOfLane } from '../timeline/objective.ts'
import { below, patience, type Random } from './random.ts'

/**
 * A search on the timelines of a large book: some related orders are taken off and laid down again in another order; what costs more
 * is put back exactly as it was.
 */
export type Reshuffle = {
  lines: Timelines
  readonly objective: Objective
  readonly random: Random
  readonly cost: Float64Array
  total: number
  best: Timelines
  bestCost: number
  tries: number
  /** Operations laid down so far: what a budget is counted in. */
  work: number
  heat: number
  sinceBetter: number
}

const costsOf = (lines: Timelines, objective: Objective): Float64Array =>
  Float64Array.from(lines.model.orders, (_, order) => orderCost(objective, lines.model, order, completionOf(lines, order)))

/** A search that starts from a plan; the plan itself is left alone. */
export const reshuffleFrom = (plan: Timelines, objective: Objective, random: Random): Reshuffle => {
  const total = planCost(objective, plan)
  return {
    lines: copyOf(plan),
    objective,
    random,
    cost: costsOf(plan, objective),
    total,
    best: copyOf(plan),
    bestCost: total,
    tries: 0,
    work: 0,
    heat: 0,
    sinceBetter: 0,
  }
}

const setupTotal = (lines: Timelines): number => {
  let sum = 0
  for (let station = 0; station < lines.lanes.length; station += 1) {
    if ((lines.model.setups[station]?.length ?? 0) > 0) sum += setupsOfLane(lines, station)
  }
  return sum
}

const movable = (lines: Timelines, order: number): boolean => {
  const range = lines.model.orders[order]
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if (lines.model.state[operation] === free) return true
  }
  return false
}

/** An order that costs more than most, by a small tournament. */
const costly = (search: Reshuffle, rounds: number): number => {
  const { cost, random } = search
  let chosen = below(random, cost.length)
  for (let round = 1; round < rounds; round += 1) {
    const other = below(random, cost.length)
    if ((cost[other] ?? 0) > (cost[chosen] ?? 0)) chosen = other
  }
  return chosen
}

/** Orders whose work lies next to an order's work on the same stations, up to `reach` spans away. */
const neighbours = (search: Reshuffle, order: number, count: number): readonly number[] => {
  const { lines, random } = search
  const { model } = lines
  const range = model.orders[order]
  const chosen = new Set<number>([order])
  const operations = (range?.end ?? 0) - (range?.first ?? 0)
  for (let attempt = 0; attempt < count * 4 && chosen.size < count; attempt += 1) {
    const operation = (range?.first ?? 0) + below(random, Math.max(1, operations))
    const stations = model.crewings[lines.crewing[operation] ?? -1]?.stations
    if (stations === undefined || stations.length === 0) continue
    const lane = lines.lanes[stations[below(random, stations.length)] ?? 0]
    if (lane === undefined) continue
    const index = spanAfter(lane, lines.start[operation] ?? 0) + below(random, 17) - 12
    const other = lane.operation[index]
    if (other === undefined || index < 0 || index >= lane.count) continue
    chosen.add(model.order[other] ?? order)
  }
  return [...chosen]
}

/** Orders that share a set-up family with the given one. */
const relatives = (search: Reshuffle, order: number, count: number): readonly number[] => {
  const { lines, random } = search
  const { model } = lines
  const range = model.orders[order]
  const families = new Set<number>()
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1)
    families.add(model.family[operation] ?? 0)
  families.delete(0)
  const chosen = new Set<number>([order])
  for (let attempt = 0; attempt < count * 12 && chosen.size < count; attempt += 1) {
    const operation = below(random, model.work.length)
    if (families.has(model.family[operation] ?? 0)) chosen.add(model.order[operation] ?? order)
  }
  return [...chosen]
}

const choose = (search: Reshuffle): readonly number[] => {
  const { random, lines } = search
  const count = Math.min(lines.model.orders.length, 2 + below(random, below(random, 4) === 0 ? 22 : 7))
  const seed = costly(search, 1 + below(random, 6))
  const orders = below(random, 5) === 0 ? relatives(search, seed, count) : neighbours(search, seed, count)
  return orders.filter((order) => movable(lines, order))
}

const shuffled = (random: Random, orders: readonly number[]): number[] => {
  const list = [...orders]
  for (let index = list.length - 1; index > 0; index -= 1) {
    const other = below(random, index + 1)
    const kept = list[index] ?? 0
    list[index] = list[other] ?? 0
    list[other] = kept
  }
  return list
}

/** In which order they come back: by chance, by due time, the costly first, or as they lay with two exchanged. */
const sequence = (search: Reshuffle, orders: readonly number[]): readonly number[] => {
  const { random, lines, cost } = search
  const way = below(random, 4)
  if (way === 0) return shuffled(random, orders)
  const due = (order: number): number => lines.model.orders[order]?.due ?? 0
  if (way === 1) return orders.toSorted((a, b) => due(a) - due(b) || a - b)
  if (way === 2) return orders.toSorted((a, b) => (cost[b] ?? 0) - (cost[a] ?? 0) || a - b)
  const list = orders.toSorted((a, b) => completionOf(lines, a) - completionOf(lines, b) || a - b)
  const from = below(random, list.length)
  const [moved] = list.splice(from, 1)
  if (moved !== undefined) list.splice(below(random, list.length + 1), 0, moved)
  return list
}

const layAgain = (search: Reshuffle, orders: readonly number[], limit: number): number => {
  const { lines, objective } = search
  let sum = 0
  for (const order of orders) {
    const range = lines.model.orders[order]
    search.work += (range?.end ?? 0) - (range?.first ?? 0)
    sum += orderCost(objective, lines.model, order, placeOrder(lines, order, 1))
    if (sum > limit) return Number.POSITIVE_INFINITY
  }
  return sum
}

const undo = (search: Reshuffle, orders: readonly number[], placements: readonly (readonly Placement[])[]): void => {
  for (const order of orders) takeOrder(search.lines, order)
  for (const placement of placements) putBack(search.lines, placement)
}

const keepBest = (search: Reshuffle): void => {
  if (search.total >= search.bestCost) return
  search.best = copyOf(search.lines)
  search.bestCost = search.total
  search.sinceBetter = 0
}

const settle = (search: Reshuffle, orders: readonly number[], total: number): void => {
  const { lines, objective, cost } = search
  for (const order of orders) cost[order] = orderCost(objective, lines.model, order, completionOf(lines, order))
  search.total = total
  keepBest(search)
}

const tryOnce = (search: Reshuffle): void => {
  const { lines, objective } = search
  const orders = choose(search)
  if (orders.length < 2) return
  const before = objective.setup > 0 ? setupTotal(lines) : 0
  const list = sequence(search, orders)
  const old = orders.reduce((sum, order) => sum + (search.cost[order] ?? 0), 0)
  const placements = orders.map((order) => placementsOf(lines, order))
  for (const order of orders) takeOrder(lines, order)
  const patient = search.heat * patience(search.random)
  const sum = layAgain(search, list, old + patient + objective.setup * before)
  const setups = objective.setup > 0 && sum < Number.POSITIVE_INFINITY ? setupTotal(lines) - before : 0
  const delta = sum - old + objective.setup * setups
  if (delta > patient) undo(search, orders, placements)
  else settle(search, orders, search.total + delta)
}

/** Lays the whole book down again by the hours its orders are ready or begin: closes the gaps that have opened. */
const tighten = (search: Reshuffle): void => {
  const { lines, objective, random } = search
  const { model } = lines
  const begins = below(random, 2) === 0
  const key = (order: number): number =>
    begins ? (lines.start[model.orders[order]?.first ?? 0] ?? 0) : completionOf(lines, order)
  const keys = model.orders.map((_, order) => ({ order, key: key(order) }))
  const next = layDown(
    model,
    keys.toSorted((a, b) => a.key - b.key || a.order - b.order).map((one) => one.order),
  )
  search.work += model.work.length
  const cost = planCost(objective, next)
  if (cost > search.total) return
  search.lines = next
  search.cost.set(costsOf(next, objective))
  search.total = cost
  keepBest(search)
}

const backToBest = (search: Reshuffle): void => {
  search.lines = copyOf(search.best)
  search.cost.set(costsOf(search.best, search.objective))
  search.total = search.bestCost
  search.sinceBetter = 0
}

/** Searches until so many more operations have been laid down. */
export const reshuffleFor = (search: Reshuffle, work: number): void => {
  const until = search.work + work
  if (search.lines.model.orders.length < 2) return
  let idle = 0
  while (search.work < until && idle < 1_000) {
    const before = search.work
    search.tries += 1
    search.sinceBetter += 1
    if (search.tries % 400 === 1) tighten(search)
    else tryOnce(search)
    if (search.sinceBetter > 4_000) backToBest(search)
    idle = search.work === before ? idle + 1 : 0
  }
}
