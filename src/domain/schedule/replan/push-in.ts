import { beginWhole, finish, never, nextOpen } from '../../calendar/axis.ts'
import { completionOf, findPlace, placeOrder, readyAt } from '../timeline/fit.ts'
import { moveLate } from '../timeline/fit-late.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import { leavesRoom, put, readyAfter, type Spot, spanAfter, type Timelines, take } from '../timeline/lanes.ts'
import { free } from '../timeline/model.ts'
import { type Old, soonMinutes } from './old-plan.ts'

/** A late order being brought into a plan that stays as it lies otherwise: who may not make way, and what making way costs. */
export type Room = {
  readonly lines: Timelines
  readonly old: ReadonlyMap<number, Old>
  readonly staying: ReadonlySet<number>
  readonly burden: Map<number, number>
}

/** What makes way costs its order: a promise broken is as bad as so many operations moved. */
const brokenPromise = 60
/** Work of later days that moves: nobody has read of it yet. */
const movedLater = 0.1

/** Whether an order is late or would be when it is ready then, and was not before. */
const breaks = (lines: Timelines, order: number, complete: number): boolean => {
  const due = lines.model.orders[order]?.due ?? 0
  return complete > due && completionOf(lines, order) <= due
}

const aside: Spot = { start: 0, end: 0, crewing: 0 }

/** How many operations move when one makes way, each of its order's that has to follow counted; counts once asked are kept. */
const burdenOf = ({ lines, old, burden }: Room, operation: number): number => {
  const known = burden.get(operation)
  if (known !== undefined) return known
  const { model } = lines
  const order = model.order[operation] ?? 0
  const work = model.work[operation] ?? 0
  const ends = new Map<number, number>()
  const from = Math.max(readyAt(lines, operation), lines.start[operation] ?? 0)
  let complete = findPlace(lines, operation, { ready: from, work }, aside) ? aside.end : never
  ends.set(operation, complete)
  const price = (one: number): number => ((old.get(one)?.start ?? never) < model.now + soonMinutes ? 1 : movedLater)
  let sum = price(operation)
  for (let next = operation + 1; next < (model.orders[order]?.end ?? 0); next += 1) {
    let ready = 0
    model.before[next]?.forEach((before, index) => {
      ready = Math.max(ready, (ends.get(before) ?? lines.end[before] ?? 0) + (model.lag[next]?.[index] ?? 0))
    })
    const start = lines.start[next] ?? 0
    if (model.state[next] !== free || start < 0 || ready <= start) continue
    sum += price(next)
    const end = ready + (lines.end[next] ?? 0) - start
    ends.set(next, end)
    complete = Math.max(complete, end)
  }
  if (breaks(lines, order, complete)) sum += brokenPromise
  burden.set(operation, sum)
  return sum
}

/** Who would have to make way for an operation there, or null when somebody in the way stays. */
const inTheWay = (room: Room, operation: number, span: Spot): readonly number[] | null => {
  const { lines, staying } = room
  const { model } = lines
  const family = model.family[operation] ?? 0
  const others: number[] = []
  for (const station of model.crewings[span.crewing]?.stations ?? []) {
    const lane = lines.lanes[station]
    let index = lane === undefined ? 0 : spanAfter(lane, span.start)
    if (readyAfter(lines, station, index, family) > span.start) return null
    for (; !leavesRoom(lines, station, index, { end: span.end, family }); index += 1) {
      const other = lane?.operation[index] ?? 0
      if (model.state[other] !== free || staying.has(model.order[other] ?? 0)) return null
      if (!others.includes(other)) others.push(other)
    }
  }
  return others
}

/** How many operations would move, those that follow another of their order counted once. */
const costOf = (room: Room, others: readonly number[]): number => {
  const orders = new Set<number>()
  let cost = 0
  for (const other of others.toSorted((a, b) => a - b)) {
    const order = room.lines.model.order[other] ?? 0
    if (!orders.has(order)) cost += burdenOf(room, other)
    orders.add(order)
  }
  return cost
}

/** The first minute at or after `at` when a crewing can begin an operation, with its end; false when its hours are over. */
const spanFrom = (lines: Timelines, operation: number, at: number, span: Spot): boolean => {
  const axis = lines.model.crewings[span.crewing]?.axis
  const work = lines.model.work[operation] ?? 0
  if (axis === undefined) return false
  const whole = lines.model.whole[operation] ?? false
  span.start = whole ? beginWhole(axis, at, work) : nextOpen(axis, at)
  if (span.start === never) return false
  span.end = whole ? span.start + work : finish(axis, span.start, work)
  return span.end !== never
}

/** When a crewing might begin an operation: at once, and whenever one of its stations is through with something. */
const beginningsOf = (lines: Timelines, operation: number, crewing: number, last: number): readonly number[] => {
  const ready = readyAt(lines, operation)
  const beginnings = new Set([ready])
  for (const station of lines.model.crewings[crewing]?.stations ?? []) {
    const lane = lines.lanes[station]
    if (lane === undefined) continue
    for (let index = spanAfter(lane, ready); index < lane.count && (lane.end[index] ?? 0) <= last; index += 1) {
      beginnings.add(readyAfter(lines, station, index + 1, lines.model.family[operation] ?? 0))
    }
  }
  return [...beginnings]
}

type Choice = { readonly spot: Spot; readonly others: readonly number[]; readonly cost: number }

/** A later beginning costs a little too: what comes after has less choice then. */
const aMinute = 0.0005

/** The cheapest place of an operation that ends by then. */
const cheapest = (room: Room, operation: number, by: number): Choice | null => {
  const { lines } = room
  const { model } = lines
  let best: Choice | null = null
  for (const crewing of model.ways[model.waysOf[operation] ?? -1] ?? []) {
    for (const at of beginningsOf(lines, operation, crewing, by - (model.work[operation] ?? 0))) {
      const span: Spot = { start: 0, end: 0, crewing }
      if (!spanFrom(lines, operation, at, span) || span.end > by) continue
      const others = inTheWay(room, operation, span)
      if (others === null) continue
      const cost = costOf(room, others) + (span.start - model.now) * aMinute
      if (best === null || cost < best.cost) best = { spot: span, others, cost }
    }
  }
  return best
}

/** Takes an operation off, and what follows it in its order: they come back together. */
export const makeWay = (lines: Timelines, operation: number): void => {
  const { model } = lines
  const end = model.orders[model.order[operation] ?? 0]?.end ?? 0
  const off = new Set([operation])
  for (let next = operation; next < end; next += 1) {
    if (model.before[next]?.some((before) => off.has(before)) === true) off.add(next)
    if (off.has(next) && model.state[next] === free && (lines.crewing[next] ?? -1) >= 0) take(lines, next)
  }
}

/** The latest ends of an order's operations if the shop worked for it alone; null when it would be late even so. */
const latestEnds = (lines: Timelines, order: number): Int32Array | null => {
  const due = lines.model.orders[order]?.due ?? 0
  const alone = fixedTimelines(lines.model)
  if (placeOrder(alone, order, 1) > due) return null
  moveLate(alone, order, due, 1)
  return alone.end
}

/** Lays an order down in time, each operation where the fewest have to make way; those lie nowhere then. False when it cannot be. */
export const pushIn = (room: Room, order: number, share: number): boolean => {
  const { lines } = room
  const { model } = lines
  const latest = latestEnds(lines, order)
  const range = model.orders[order]
  if (latest === null || range === undefined) return false
  for (let operation = range.first; operation < range.end; operation += 1) {
    if (model.state[operation] !== free || (lines.crewing[operation] ?? -1) >= 0) continue
    const soonest = readyAt(lines, operation) + (model.work[operation] ?? 0)
    const last = latest[operation] ?? 0
    const choice = cheapest(room, operation, soonest + Math.round((last - soonest) * share)) ?? cheapest(room, operation, last)
    if (choice === null) return false
    for (const other of choice.others) makeWay(lines, other)
    if (choice.others.length > 0) room.burden.clear()
    put(lines, operation, choice.spot)
  }
  return true
}
