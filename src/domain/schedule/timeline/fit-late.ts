import { begin, beginWholeBy, finish, lastOpen, neverBefore, workBetween } from '../../calendar/axis.ts'
import { type Lane, put, type Spot, setupBetween, spanAfter, type Timelines, take } from './lanes.ts'
import { free } from './model.ts'

type Span = { start: number; end: number; family: number; work: number }
const span: Span = { start: 0, end: 0, family: 0, work: 0 }

const familyAt = (lines: Timelines, lane: Lane, index: number): number => lines.model.family[lane.operation[index] ?? 0] ?? 0

/** The latest minute by which the span would have to end so that the next span's set-up still fits. */
const endBefore = (lines: Timelines, station: number, index: number, family: number): number => {
  const lane = lines.lanes[station]
  if (lane === undefined || index >= lane.count) return Number.MAX_SAFE_INTEGER
  const next = lane.start[index] ?? 0
  const setup = setupBetween(lines.model, station, family, familyAt(lines, lane, index))
  const axis = lines.model.stations[station]?.axis
  return setup === 0 || axis === undefined ? next : begin(axis, next, setup)
}

const leavesRoomBefore = (lines: Timelines, station: number, index: number): boolean => {
  const lane = lines.lanes[station]
  if (lane === undefined || index === 0) return true
  const end = lane.end[index - 1] ?? 0
  if (end > span.start) return false
  const setup = setupBetween(lines.model, station, familyAt(lines, lane, index - 1), span.family)
  const axis = lines.model.stations[station]?.axis
  return setup === 0 || axis === undefined || workBetween(axis, end, span.start) >= setup
}

/** The last span from `index` back in front of which there is room for so much work. */
const roomInFront = (lane: Lane, index: number, work: number): number => {
  const { gap } = lane
  let next = index
  if (gap !== null) while (next > 0 && (gap[next - 1] ?? 0) < work) next -= 1
  return next
}

/** The latest end before `span.end` at which the station could be free for the span, or `span.end` itself when it is. */
const clearBy = (lines: Timelines, station: number): number => {
  const lane = lines.lanes[station]
  if (lane === undefined) return span.end
  const index = spanAfter(lane, span.start)
  if (index < lane.count && (lane.start[index] ?? 0) < span.end) {
    const last = spanAfter(lane, span.end - 1)
    const overlapped = last < lane.count && (lane.start[last] ?? 0) < span.end ? last : last - 1
    const first = roomInFront(lane, overlapped, span.work)
    return Math.min(lane.start[first] ?? 0, endBefore(lines, station, first, span.family))
  }
  const latest = endBefore(lines, station, index, span.family)
  if (latest < span.end) return latest
  if (leavesRoomBefore(lines, station, index)) return span.end
  return lane.start[roomInFront(lane, index - 1, span.work)] ?? 0
}

const fitCrewingLate = (lines: Timelines, crewing: number, whole: boolean, least: number): boolean => {
  const chosen = lines.model.crewings[crewing]
  if (chosen === undefined) return false
  const { axis, stations } = chosen
  for (;;) {
    span.end = lastOpen(axis, span.end)
    span.start = whole ? beginWholeBy(axis, span.end, span.work) : begin(axis, span.end, span.work)
    if (span.start === neverBefore || span.start < least) return false
    span.end = whole ? span.start + span.work : finish(axis, span.start, span.work)
    let earlier = span.end
    for (let index = 0; index < stations.length && earlier === span.end; index += 1) {
      earlier = clearBy(lines, stations[index] ?? 0)
    }
    if (earlier === span.end) return true
    span.end = earlier
  }
}

const latestOf: number[] = []
const askedFor: number[] = []
let question = 0

/** The latest minute by which a station alone could be done with so much work: no crewing with it ends later. */
const latestAlone = (lines: Timelines, station: number, by: number, work: number): number => {
  if (askedFor[station] === question) return latestOf[station] ?? 0
  askedFor[station] = question
  const lane = lines.lanes[station]
  latestOf[station] = by
  if (lane === undefined || lane.gap === null || lane.count === 0) return by
  const index = spanAfter(lane, by - 1)
  const isBusy = index < lane.count && (lane.start[index] ?? 0) < by
  if (!isBusy && (index === 0 || by - (lane.end[index - 1] ?? 0) >= work)) return by
  const next = roomInFront(lane, isBusy ? index : index - 1, work)
  latestOf[station] = lane.start[next] ?? 0
  return lane.start[next] ?? 0
}

const latestTogether = (lines: Timelines, crewing: number, by: number, work: number): number => {
  const stations = lines.model.crewings[crewing]?.stations
  let latest = by
  for (let index = 0; index < (stations?.length ?? 0); index += 1) {
    const own = latestAlone(lines, stations?.[index] ?? 0, by, work)
    if (own < latest) latest = own
  }
  return latest
}

/**
 * The place where an operation begins latest and is over by `by`, not before `least`; false when there is none. The place is
 * left in `spot`.
 */
export const fitLate = (
  lines: Timelines,
  operation: number,
  ask: { by: number; least: number; work: number },
  spot: Spot,
): boolean => {
  const { model } = lines
  const ways = model.ways[model.waysOf[operation] ?? -1]
  if (ways === undefined) return false
  const whole = model.whole[operation] ?? false
  let { least } = ask
  spot.crewing = -1
  question += 1
  for (let index = 0; index < ways.length; index += 1) {
    const crewing = ways[index] ?? 0
    span.end = latestTogether(lines, crewing, ask.by, ask.work)
    if (span.end - ask.work < least) continue
    span.work = ask.work
    span.family = model.family[operation] ?? 0
    if (!fitCrewingLate(lines, crewing, whole, least)) continue
    spot.start = span.start
    spot.end = span.end
    spot.crewing = crewing
    least = span.start + 1
  }
  return spot.crewing >= 0
}

/** The latest ends of an order's operations, one by one from the back: by its deadline and before what waits for them. */
const latestEnd = (lines: Timelines, operation: number, order: { readonly end: number }, deadline: number): number => {
  const { model } = lines
  let by = deadline
  for (let next = operation + 1; next < order.end; next += 1) {
    const before = model.before[next] ?? []
    for (let index = 0; index < before.length; index += 1) {
      if (before[index] !== operation || model.state[next] !== free) continue
      by = Math.min(by, (lines.start[next] ?? 0) - (model.lag[next]?.[index] ?? 0))
    }
  }
  return by
}

/** Where the operations of an order lie, to be put back as they were. */
export type Placement = { readonly operation: number; readonly start: number; readonly end: number; readonly crewing: number }

/** Where the operations of an order lie, to be put back there. */
export const placementsOf = (lines: Timelines, order: number): readonly Placement[] => {
  const range = lines.model.orders[order]
  const placements: Placement[] = []
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if (lines.model.state[operation] !== free || (lines.crewing[operation] ?? -1) < 0) continue
    placements.push({
      operation,
      start: lines.start[operation] ?? 0,
      end: lines.end[operation] ?? 0,
      crewing: lines.crewing[operation] ?? 0,
    })
  }
  return placements
}

/** Takes all operations of an order that may move off the lanes. */
export const takeOrder = (lines: Timelines, order: number): void => {
  const range = lines.model.orders[order]
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if (lines.model.state[operation] === free && (lines.crewing[operation] ?? -1) >= 0) take(lines, operation)
  }
}

/** Puts operations back where they lay; the places must be free. */
export const putBack = (lines: Timelines, placements: readonly Placement[]): void => {
  for (const placement of placements) put(lines, placement.operation, placement)
}

/**
 * Moves an order that lies on the lanes as late as its deadline and the free places allow, each operation's minutes times
 * `stretch`. An operation that finds no later place stays; the lanes stay sound.
 */
export const moveLate = (lines: Timelines, order: number, deadline: number, stretch: number): void => {
  const { model } = lines
  const range = model.orders[order]
  if (range === undefined) return
  const spot: Spot = { start: 0, end: 0, crewing: 0 }
  for (let operation = range.end - 1; operation >= range.first; operation -= 1) {
    const crewing = lines.crewing[operation] ?? -1
    if (model.state[operation] !== free || crewing < 0) continue
    const old = { start: lines.start[operation] ?? 0, end: lines.end[operation] ?? 0, crewing }
    take(lines, operation)
    const by = latestEnd(lines, operation, range, deadline)
    const work = Math.ceil((model.work[operation] ?? 0) * stretch)
    const found = fitLate(lines, operation, { by, least: old.start, work }, spot)
    put(lines, operation, found ? spot : old)
  }
}
