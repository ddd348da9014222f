import { placeOperation } from '../timeline/fit.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import { type Lane, setupBetween, spanAfter, type Timelines } from '../timeline/lanes.ts'
import { free, type Model } from '../timeline/model.ts'
import { type Objective, orderCost, planCost } from '../timeline/objective.ts'

/**
 * A list being laid down, with a picture of the lanes kept after every element: so that a change at some place of the list is tried by
 * going back to the picture before it. All pictures and the lanes at work are windows of one array of numbers.
 */
export type Stack = {
  readonly lines: Timelines
  readonly objective: Objective
  readonly first: Int32Array
  readonly end: Int32Array
  /** Per element, in how many ways its operations can be staffed: what it takes to lay it down. */
  readonly ways: Int32Array
  readonly table: Int32Array
  readonly size: number
  /** Per place of the list: cost so far, latest end so far, two fingerprints of what is busy. */
  readonly cost: Float64Array
  readonly last: Int32Array
  readonly print: Int32Array
  readonly print2: Int32Array
}

/** Elements of a list: whole orders, or single operations. */
export type Level = 'order' | 'operation'

const elementsOf = (model: Model, level: Level): readonly { readonly first: number; readonly end: number }[] => {
  if (level === 'order') return model.orders
  return model.work.flatMap((_, operation) => (model.state[operation] === free ? [{ first: operation, end: operation + 1 }] : []))
}

const waysOf = (model: Model, element: { readonly first: number; readonly end: number }): number => {
  let sum = 0
  for (let operation = element.first; operation < element.end; operation += 1) {
    if (model.state[operation] === free) sum += model.ways[model.waysOf[operation] ?? 0]?.length ?? 0
  }
  return sum
}

/** How many spans can ever lie on each lane. */
const roomsOf = (model: Model, fixed: Timelines): readonly number[] =>
  model.stations.map((_, station) => {
    let room = fixed.lanes[station]?.count ?? 0
    for (let operation = 0; operation < model.work.length; operation += 1) {
      const ways = model.ways[model.waysOf[operation] ?? 0] ?? new Int32Array()
      if (model.state[operation] !== free) continue
      if (ways.some((way) => model.crewings[way]?.stations.includes(station))) room += 1
    }
    return room
  })

const windowed = (table: Int32Array, fixed: Timelines, rooms: readonly number[]): Timelines => {
  let at = rooms.length
  const window = (source: Int32Array, room: number): Int32Array => {
    const view = table.subarray(at, at + room)
    view.set(source.subarray(0, room))
    at += room
    return view
  }
  const lanes = rooms.map((room, station): Lane => {
    const lane = fixed.lanes[station]
    const none = new Int32Array()
    table[station] = lane?.count ?? 0
    return {
      start: window(lane?.start ?? none, room),
      end: window(lane?.end ?? none, room),
      operation: window(lane?.operation ?? none, room),
      gap: null,
      count: lane?.count ?? 0,
    }
  })
  const operations = fixed.start.length
  const place = {
    start: window(fixed.start, operations),
    end: window(fixed.end, operations),
    crewing: window(fixed.crewing, operations),
  }
  return { model: fixed.model, keepsTurn: fixed.keepsTurn, lanes, ...place }
}

/** What a list is made of, what it is measured by, and whether lanes keep their turn. */
export type StackAsk = { readonly level: Level; readonly objective: Objective; readonly keepsTurn: boolean }

/** Numbers one picture takes, and how many elements a list has. */
export const stackSize = (model: Model, level: Level): number => {
  const fixed = fixedTimelines(model)
  const rooms = roomsOf(model, fixed)
  const size = rooms.length + 3 * rooms.reduce((a, b) => a + b, 0) + 3 * model.work.length
  return size * (elementsOf(model, level).length + 2)
}

/** A stack with nothing but the fixed work on its lanes. */
export const stackOf = (model: Model, ask: StackAsk): Stack => {
  const fixed = { ...fixedTimelines(model), keepsTurn: ask.keepsTurn }
  const elements = elementsOf(model, ask.level)
  const rooms = roomsOf(model, fixed)
  const size = rooms.length + 3 * rooms.reduce((a, b) => a + b, 0) + 3 * model.work.length
  const table = new Int32Array(size * (elements.length + 2))
  const lines = windowed(table, fixed, rooms)
  const count = elements.length + 1
  const stack: Stack = {
    lines,
    objective: ask.objective,
    first: Int32Array.from(elements, (one) => one.first),
    end: Int32Array.from(elements, (one) => one.end),
    ways: Int32Array.from(elements, (one) => waysOf(model, one)),
    table,
    size,
    cost: new Float64Array(count),
    last: new Int32Array(count).fill(model.now),
    print: new Int32Array(count),
    print2: new Int32Array(count),
  }
  stack.cost[0] = fixedCost(stack, fixed)
  keep(stack, 0)
  return stack
}

const fixedCost = (stack: Stack, fixed: Timelines): number =>
  planCost({ ...stack.objective, late: 0, tardiness: 0, completion: 0, makespan: 0 }, fixed)

/** Keeps the picture of the lanes after `place` elements. */
export const keep = (stack: Stack, place: number): void => {
  const { table, size, lines } = stack
  for (let station = 0; station < lines.lanes.length; station += 1) table[station] = lines.lanes[station]?.count ?? 0
  table.copyWithin(size * (place + 1), 0, size)
}

/** Goes back to the picture after `place` elements. */
export const goBack = (stack: Stack, place: number): void => {
  const { table, size, lines } = stack
  table.copyWithin(0, size * (place + 1), size * (place + 2))
  for (let station = 0; station < lines.lanes.length; station += 1) {
    const lane = lines.lanes[station]
    if (lane !== undefined) lane.count = table[station] ?? 0
  }
}

const mix = (value: number, salt: number): number => {
  let mixed = Math.imul(value ^ Math.imul(salt, 0x9e3779b1), 0x85ebca6b)
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35)
  return mixed ^ (mixed >>> 16)
}

/** What laying elements down adds up to: cost, latest end, and fingerprints of what is busy. */
export type Tally = { cost: number; last: number; print: number; print2: number }

const setupAdded = (stack: Stack, operation: number): number => {
  const { lines } = stack
  const { model } = lines
  const stations = model.crewings[lines.crewing[operation] ?? -1]?.stations
  const family = model.family[operation] ?? 0
  let added = 0
  for (let index = 0; index < (stations?.length ?? 0); index += 1) {
    const station = stations?.[index] ?? 0
    const lane = lines.lanes[station]
    if (lane === undefined || (model.setups[station]?.length ?? 0) === 0) continue
    const at = spanAfter(lane, lines.start[operation] ?? 0)
    const before = at > 0 ? (model.family[lane.operation[at - 1] ?? 0] ?? 0) : -1
    const after = at + 1 < lane.count ? (model.family[lane.operation[at + 1] ?? 0] ?? 0) : -1
    if (before >= 0) added += setupBetween(model, station, before, family)
    if (after >= 0) added += setupBetween(model, station, family, after)
    if (before >= 0 && after >= 0) added -= setupBetween(model, station, before, after)
  }
  return added
}

const fingerprint = (stack: Stack, operation: number, tally: Tally): void => {
  const { lines } = stack
  const { model } = lines
  const stations = model.crewings[lines.crewing[operation] ?? -1]?.stations
  const start = lines.start[operation] ?? 0
  const end = lines.end[operation] ?? 0
  for (let index = 0; index < (stations?.length ?? 0); index += 1) {
    const station = stations?.[index] ?? 0
    const family = (model.setups[station]?.length ?? 0) === 0 ? 0 : (model.family[operation] ?? 0)
    const salt = station * 977 + family + 1
    tally.print ^= mix(start, salt) ^ mix(end, salt)
    tally.print2 ^= mix(start, salt + 0x51ed27) ^ mix(end, salt + 0x51ed27)
  }
}

/** Lays one element down behind what lies there; false when it fits nowhere. */
export const layElement = (stack: Stack, element: number, tally: Tally): boolean => {
  const { lines, objective } = stack
  const { model } = lines
  const end = stack.end[element] ?? 0
  let complete = 0
  for (let operation = stack.first[element] ?? 0; operation < end; operation += 1) {
    if (model.state[operation] === free) {
      if (!placeOperation(lines, operation, 1)) return false
      fingerprint(stack, operation, tally)
      if (objective.setup > 0) tally.cost += objective.setup * setupAdded(stack, operation)
    }
    const done = lines.end[operation] ?? 0
    if (done > complete) complete = done
  }
  tally.cost += costOfEnd(stack, element, complete, tally)
  if (complete > tally.last) {
    tally.cost += objective.makespan * (complete - tally.last)
    tally.last = complete
  }
  return true
}

/** What an order costs is known when its last operation lies. */
const costOfEnd = (stack: Stack, element: number, complete: number, tally: Tally): number => {
  const { lines, objective } = stack
  const first = stack.first[element] ?? 0
  const order = lines.model.order[first] ?? 0
  const range = lines.model.orders[order]
  if (range === undefined) return 0
  if ((stack.end[element] ?? 0) - first === range.end - range.first) return orderCost(objective, lines.model, order, complete)
  const salt = first + 0x2c1b3
  tally.print ^= mix(complete, salt)
  tally.print2 ^= mix(complete, salt + 0x51ed27)
  let ready = complete
  for (let operation = range.first; operation < range.end; operation += 1) {
    if (operation === first) continue
    const end = lines.end[operation] ?? -1
    if (end < 0) return 0
    if (end > ready) ready = end
  }
  return orderCost(objective, lines.model, order, ready)
}
