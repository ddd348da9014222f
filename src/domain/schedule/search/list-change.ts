import { below, type Random } from './random.ts'
import type { Level, Stack } from './stack.ts'

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
  /** Ways to staff operations that were looked at so far, and pictures gone back to: what a budget is counted in. */
  work: number
  heat: number
  cooling: number
  left: number
  cycle: number
  readonly deltas: number[]
}

export type Change = { low: number; high: number }
/** The places that the last proposal touches. */
export const change: Change = { low: 0, high: 0 }

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

/** The place, of three by chance, whose element costs most where it lies. */
const costlyPlace = (search: Anneal): number => {
  const { cost } = search.stack
  let place = 0
  let most = -1
  for (let round = 0; round < 3; round += 1) {
    const other = below(search.random, search.list.length)
    const own = (cost[other + 1] ?? 0) - (cost[other] ?? 0)
    if (own <= most) continue
    most = own
    place = other
  }
  return place
}

/** From where to where: a costly element to the front, or any element a little or a long way. */
const chooseMove = (search: Anneal): { readonly from: number; readonly to: number } => {
  const { random, list } = search
  const count = list.length
  const way = below(random, 6)
  if (way < 1) {
    const from = costlyPlace(search)
    return { from, to: from === 0 ? 0 : below(random, from) }
  }
  const from = below(random, count)
  if (way > 3) return { from, to: below(random, count) }
  const aim = from + (below(random, 2) === 0 ? 1 : -1) * (1 + below(random, 4))
  return { from, to: aim < 0 ? 0 : aim >= count ? count - 1 : aim }
}

/** Moves all of an order's operations that lie between two places to the front of them, or to the back. */
const gather = (search: Anneal, from: number, to: number): boolean => {
  const { stack, list, trial } = search
  const { order } = stack.lines.model
  const own = order[stack.first[list[from] ?? 0] ?? 0] ?? 0
  change.low = Math.min(from, to)
  change.high = Math.max(from, to)
  let place = change.low
  for (const wanted of to < from ? [true, false] : [false, true]) {
    for (let at = change.low; at <= change.high; at += 1) {
      const element = list[at] ?? 0
      if ((order[stack.first[element] ?? 0] === own) !== wanted) continue
      trial[place] = element
      place += 1
    }
  }
  return true
}

/** Writes a changed list into `trial` and says which places it touches; false when nothing changes. */
export const propose = (search: Anneal): boolean => {
  const { list, trial, random } = search
  const { from, to: wanted } = chooseMove(search)
  if (search.level === 'operation' && from !== wanted && below(random, 3) === 0) return gather(search, from, wanted)
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
