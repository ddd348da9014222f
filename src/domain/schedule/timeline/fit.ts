import { beginWhole, finish, never, nextOpen } from '../../calendar/axis.ts'
import { type Lane, leavesRoom, put, readyAfter, type Spot, spanAfter, spanFrom, type Timelines } from './lanes.ts'
import { free } from './model.ts'

/** The first span from `index` on behind which there is room for so much work. */
const roomBehind = (lane: Lane, index: number, work: number): number => {
  const { start, end, count, gap } = lane
  let next = index
  if (gap === null) while (next + 1 < count && (start[next + 1] ?? 0) - (end[next] ?? 0) < work) next += 1
  else while ((gap[next] ?? never) < work) next += 1
  return next
}

/** What is looked for, and where the search stands. */
type Span = { start: number; end: number; family: number; work: number; whole: boolean }
const span: Span = { start: 0, end: 0, family: 0, work: 0, whole: false }

/** Per station, the first span that ends after the start that is being looked at: it only ever moves on. */
const cursors: number[] = []

const advance = (lane: Lane, station: number, at: number): number => {
  const index = spanFrom(lane, cursors[station] ?? 0, at)
  cursors[station] = index
  return index
}

/** The earliest minute from `span.start` on at which a station could begin: not within its work, and set up. */
const couldBegin = (lines: Timelines, station: number): number => {
  const lane = lines.lanes[station]
  if (lane === undefined) return span.start
  const index = advance(lane, station, span.start)
  if (index < lane.count && (lane.start[index] ?? 0) <= span.start) {
    const next = roomBehind(lane, index, span.work)
    cursors[station] = next
    return lane.end[next] ?? 0
  }
  if ((lines.model.setups[station]?.length ?? 0) === 0) return span.start
  const ready = readyAfter(lines, station, index, span.family)
  return Math.max(ready, span.start)
}

/** `span.start` when a station is free until `span.end`, else the next minute at which it could be free for long enough. */
const couldEnd = (lines: Timelines, station: number): number => {
  const lane = lines.lanes[station]
  if (lane === undefined) return span.start
  const index = cursors[station] ?? 0
  if (leavesRoom(lines, station, index, span)) return span.start
  const next = roomBehind(lane, index, span.work)
  cursors[station] = next
  return lane.end[next] ?? 0
}

/** The first answer of the crewing's stations that is later than `span.start`, or `span.start` when all agree. */
const firstObjection = (lines: Timelines, stations: Int32Array, ask: (lines: Timelines, station: number) => number): number => {
  for (let index = 0; index < stations.length; index += 1) {
    const later = ask(lines, stations[index] ?? 0)
    if (later !== span.start) return later
  }
  return span.start
}

/** Earliest free place with one crewing from `span.start` on; leaves it in `span`, gives up at `limit`. */
const fitCrewing = (lines: Timelines, crewing: number, limit: number): boolean => {
  const chosen = lines.model.crewings[crewing]
  if (chosen === undefined) return false
  const { axis, stations } = chosen
  const { whole } = span
  for (;;) {
    span.start = whole ? beginWhole(axis, span.start, span.work) : nextOpen(axis, span.start)
    if (span.start + span.work > limit) return false
    let later = firstObjection(lines, stations, couldBegin)
    if (later === span.start) {
      span.end = whole ? span.start + span.work : finish(axis, span.start, span.work)
      if (span.end > limit) return false
      later = firstObjection(lines, stations, couldEnd)
      if (later === span.start) return true
    }
    span.start = later
  }
}

/** The first minute behind everything that lies on the lanes of a crewing; sets their cursors there. */
const turnOf = (lines: Timelines, crewing: number, ready: number): number => {
  let at = ready
  const stations = lines.model.crewings[crewing]?.stations
  for (let index = 0; index < (stations?.length ?? 0); index += 1) {
    const station = stations?.[index] ?? 0
    const lane = lines.lanes[station]
    if (lane === undefined) continue
    cursors[station] = lane.count
    const end = lane.count === 0 ? 0 : (lane.end[lane.count - 1] ?? 0)
    if (end > at) at = end
  }
  return at
}

/** When everything an operation waits for is over. */
export const readyAt = (lines: Timelines, operation: number): number => {
  const { model } = lines
  let ready = model.release[operation] ?? 0
  const before = model.before[operation] ?? []
  const lag = model.lag[operation] ?? []
  for (let index = 0; index < before.length; index += 1) {
    const end = (lines.end[before[index] ?? 0] ?? 0) + (lag[index] ?? 0)
    if (end > ready) ready = end
  }
  return ready
}

const soonestOf: number[] = []
const soonestSpan: number[] = []
const askedFor: number[] = []
let question = 0

/** The earliest minute a station alone could begin so much work: no crewing with it begins sooner. */
const soonest = (lines: Timelines, station: number, ready: number, work: number): number => {
  if (askedFor[station] === question) return soonestOf[station] ?? 0
  askedFor[station] = question
  const lane = lines.lanes[station]
  const index = lane === undefined ? 0 : spanAfter(lane, ready)
  soonestSpan[station] = index
  soonestOf[station] = ready
  if (lane === undefined || lane.gap === null || index === lane.count || (lane.start[index] ?? 0) - ready >= work) return ready
  const next = roomBehind(lane, index, work)
  soonestSpan[station] = next
  soonestOf[station] = lane.end[next] ?? 0
  return lane.end[next] ?? 0
}

/** The earliest minute a crewing could begin, from what its stations could do alone; sets their cursors there. */
const soonestTogether = (lines: Timelines, crewing: number, ready: number, work: number): number => {
  const stations = lines.model.crewings[crewing]?.stations
  let soon = ready
  for (let index = 0; index < (stations?.length ?? 0); index += 1) {
    const station = stations?.[index] ?? 0
    const own = soonest(lines, station, ready, work)
    cursors[station] = soonestSpan[station] ?? 0
    if (own > soon) soon = own
  }
  return soon
}

/** What is asked for: so much work from `ready` on. */
type Ask = { ready: number; work: number }

/** The first minute from which it is worth to look for a place with a crewing; sets the cursors of its stations there. */
const lookFrom = (lines: Timelines, crewing: number, { ready, work }: Ask): number =>
  lines.keepsTurn ? turnOf(lines, crewing, ready) : soonestTogether(lines, crewing, ready, work)

/** Which crewing may begin first: where it ends is mostly too soon for the others to be worth a look. */
const mostPromising = (lines: Timelines, ways: Int32Array, ask: Ask): number => {
  let chosen = 0
  let soonest = never
  for (let index = 0; index < ways.length && soonest > ask.ready; index += 1) {
    const from = lookFrom(lines, ways[index] ?? 0, ask)
    if (from >= soonest) continue
    chosen = index
    soonest = from
  }
  return chosen
}

/**
 * The place where an operation of `work` minutes ends earliest at or after `ready`, over all its crewings, with the one named first
 * where several end alike; false when the horizon is too short. The place is left in `spot`.
 */
export const findPlace = (lines: Timelines, operation: number, ask: Ask, spot: Spot): boolean => {
  const { model } = lines
  const ways = model.ways[model.waysOf[operation] ?? -1]
  if (ways === undefined) return false
  question += 1
  span.work = ask.work
  span.whole = model.whole[operation] ?? false
  span.family = model.family[operation] ?? 0
  spot.crewing = -1
  spot.end = never
  const first = ways.length > 1 ? mostPromising(lines, ways, ask) : 0
  let chosen = -1
  for (let turn = -1; turn < ways.length; turn += 1) {
    const index = turn < 0 ? first : turn
    const latest = index < chosen ? spot.end : spot.end - 1
    if (turn === first || ask.ready + ask.work > latest) continue
    const crewing = ways[index] ?? 0
    span.start = lookFrom(lines, crewing, ask)
    if (span.start + ask.work > latest || !fitCrewing(lines, crewing, latest)) continue
    spot.start = span.start
    spot.end = span.end
    spot.crewing = crewing
    chosen = index
  }
  return spot.crewing >= 0
}

const spot: Spot = { start: 0, end: 0, crewing: 0 }
const ask = { ready: 0, work: 0 }

/** Puts one operation where it ends earliest, its minutes times `stretch`; false when it fits nowhere. */
export const placeOperation = (lines: Timelines, operation: number, stretch: number): boolean => {
  ask.ready = readyAt(lines, operation)
  ask.work = Math.ceil((lines.model.work[operation] ?? 0) * stretch)
  if (!findPlace(lines, operation, ask, spot)) return false
  put(lines, operation, spot)
  return true
}

/**
 * Puts all free operations of an order where each ends earliest, and says when the order is ready, or `never`; given up as soon as
 * one of them ends after `by`.
 */
export const placeOrder = (lines: Timelines, order: number, stretch: number, by = never): number => {
  const range = lines.model.orders[order]
  if (range === undefined) return never
  let complete = 0
  for (let operation = range.first; operation < range.end; operation += 1) {
    if (
      lines.model.state[operation] === free &&
      (lines.crewing[operation] ?? -1) < 0 &&
      !placeOperation(lines, operation, stretch)
    ) {
      return never
    }
    const end = lines.end[operation] ?? 0
    if (end > by) return never
    if (end > complete) complete = end
  }
  return complete
}

/** When an order that lies on the lanes is ready. */
export const completionOf = (lines: Timelines, order: number): number => {
  const range = lines.model.orders[order]
  let complete = 0
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    const end = lines.end[operation] ?? 0
    if (end > complete) complete = end
  }
  return complete
}
