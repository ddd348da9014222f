import { finish, never, workBetween } from '../../calendar/axis.ts'
import type { Model } from './model.ts'

/**
 * What one station does, in the order of time: disjoint spans of epoch minutes and the operations that fill them. `gap` counts the
 * station's open minutes between a span and the next; lanes of small books do without.
 */
export type Lane = { start: Int32Array; end: Int32Array; operation: Int32Array; gap: Int32Array | null; count: number }

/**
 * All lanes, and where every operation lies: `start` is -1 and `crewing` -1 while it lies nowhere. Where lanes keep their turn, work
 * is only ever laid behind what lies on them: nobody overtakes.
 */
export type Timelines = {
  readonly model: Model
  readonly keepsTurn: boolean
  readonly lanes: Lane[]
  start: Int32Array
  end: Int32Array
  crewing: Int32Array
}

const laneOf = (room: number): Lane => ({
  start: new Int32Array(room),
  end: new Int32Array(room),
  operation: new Int32Array(room),
  gap: new Int32Array(room),
  count: 0,
})

/** The same numbers with more room behind them. */
export const grown = (array: Int32Array, room: number): Int32Array => {
  const larger = new Int32Array(room)
  larger.set(array)
  return larger
}

/** Timelines with nothing on them. */
export const emptyTimelines = (model: Model): Timelines => {
  const room = model.work.length
  return {
    model,
    keepsTurn: false,
    lanes: model.stations.map(() => laneOf(16)),
    start: new Int32Array(room).fill(-1),
    end: new Int32Array(room).fill(-1),
    crewing: new Int32Array(room).fill(-1),
  }
}

/** Makes room for the operations that were appended to the model. */
export const makeRoom = (lines: Timelines): void => {
  const have = lines.start.length
  if (have >= lines.model.work.length) return
  const room = lines.model.work.length + 256
  lines.start = grown(lines.start, room).fill(-1, have)
  lines.end = grown(lines.end, room).fill(-1, have)
  lines.crewing = grown(lines.crewing, room).fill(-1, have)
}

/** A copy that can be changed on its own. */
export const copyOf = (lines: Timelines): Timelines => ({
  model: lines.model,
  keepsTurn: lines.keepsTurn,
  lanes: lines.lanes.map((lane) => ({
    start: lane.start.slice(),
    end: lane.end.slice(),
    operation: lane.operation.slice(),
    gap: lane.gap?.slice() ?? null,
    count: lane.count,
  })),
  start: lines.start.slice(),
  end: lines.end.slice(),
  crewing: lines.crewing.slice(),
})

/** The first span of a lane that ends after `at`. */
export const spanAfter = (lane: Lane, at: number): number => {
  const ends = lane.end
  let low = 0
  let high = lane.count
  if (high > 0 && (ends[high - 1] ?? 0) <= at) return high
  while (low < high) {
    const middle = (low + high) >> 1
    if ((ends[middle] ?? 0) > at) high = middle
    else low = middle + 1
  }
  return low
}

/** The first span from `index` on that ends after `at`: in strides that double, for it is mostly near. */
export const spanFrom = (lane: Lane, index: number, at: number): number => {
  const { end, count } = lane
  let low = index
  let stride = 1
  while (low + stride <= count && (end[low + stride - 1] ?? 0) <= at) {
    low += stride
    stride += stride
  }
  let high = Math.min(count, low + stride - 1)
  while (low < high) {
    const middle = (low + high) >> 1
    if ((end[middle] ?? 0) > at) high = middle
    else low = middle + 1
  }
  return low
}

const open = (lane: Lane, index: number): void => {
  const { count } = lane
  if (count === lane.start.length) {
    const room = count * 2 + 16
    lane.start = grown(lane.start, room)
    lane.end = grown(lane.end, room)
    lane.operation = grown(lane.operation, room)
    if (lane.gap !== null) lane.gap = grown(lane.gap, room)
  }
  if (index < count) {
    lane.start.copyWithin(index + 1, index, count)
    lane.end.copyWithin(index + 1, index, count)
    lane.operation.copyWithin(index + 1, index, count)
    lane.gap?.copyWithin(index + 1, index, count)
  }
  lane.count = count + 1
}

/** Counts the open minutes behind the span at `index` anew. */
const measureGap = (lines: Timelines, station: number, index: number): void => {
  const lane = lines.lanes[station]
  const axis = lines.model.stations[station]?.axis
  if (lane === undefined || axis === undefined || lane.gap === null || index < 0 || index >= lane.count) return
  lane.gap[index] = index + 1 < lane.count ? workBetween(axis, lane.end[index] ?? 0, lane.start[index + 1] ?? 0) : never
}

/** Where an operation may go: filled by the search for a place, read by `put`. */
export type Spot = { start: number; end: number; crewing: number }

/** Puts an operation on the lanes of a crewing; the place must be free. */
export const put = (lines: Timelines, operation: number, spot: Spot): void => {
  lines.start[operation] = spot.start
  lines.end[operation] = spot.end
  lines.crewing[operation] = spot.crewing
  const stations = lines.model.crewings[spot.crewing]?.stations
  if (stations === undefined) return
  for (let one = 0; one < stations.length; one += 1) {
    const station = stations[one] ?? 0
    const lane = lines.lanes[station]
    if (lane === undefined) continue
    const index = spanAfter(lane, spot.start)
    open(lane, index)
    lane.start[index] = spot.start
    lane.end[index] = spot.end
    lane.operation[index] = operation
    if (lane.gap === null) continue
    measureGap(lines, station, index - 1)
    measureGap(lines, station, index)
  }
}

/** Takes an operation off its lanes. */
export const take = (lines: Timelines, operation: number): void => {
  const stations = lines.model.crewings[lines.crewing[operation] ?? -1]?.stations
  for (let one = 0; one < (stations?.length ?? 0); one += 1) {
    const station = stations?.[one] ?? 0
    const lane = lines.lanes[station]
    if (lane === undefined) continue
    const index = spanAfter(lane, lines.start[operation] ?? 0)
    lane.start.copyWithin(index, index + 1, lane.count)
    lane.end.copyWithin(index, index + 1, lane.count)
    lane.operation.copyWithin(index, index + 1, lane.count)
    lane.gap?.copyWithin(index, index + 1, lane.count)
    lane.count -= 1
    measureGap(lines, station, index - 1)
  }
  lines.start[operation] = -1
  lines.end[operation] = -1
  lines.crewing[operation] = -1
}

/** Set-up minutes of a station between two families. */
export const setupBetween = (model: Model, station: number, from: number, to: number): number => {
  const table = model.setups[station]
  if (table === undefined || table.length === 0) return 0
  return table[from * model.families.length + to] ?? 0
}

/** When a station is ready for a family after the span at `index - 1` of its lane. */
export const readyAfter = (lines: Timelines, station: number, index: number, family: number): number => {
  const lane = lines.lanes[station]
  if (lane === undefined || index === 0) return 0
  const end = lane.end[index - 1] ?? 0
  const table = lines.model.setups[station]
  if (table === undefined || table.length === 0) return end
  const before = lines.model.family[lane.operation[index - 1] ?? 0] ?? 0
  const setup = table[before * lines.model.families.length + family] ?? 0
  const axis = lines.model.stations[station]?.axis
  return setup === 0 || axis === undefined ? end : finish(axis, end, setup)
}

/** Whether a span that ends at `end` leaves room for the set-up of the span at `index` of the lane. */
export const leavesRoom = (lines: Timelines, station: number, index: number, span: { end: number; family: number }): boolean => {
  const lane = lines.lanes[station]
  if (lane === undefined || index >= lane.count) return true
  const next = lane.start[index] ?? 0
  if (next < span.end) return false
  const table = lines.model.setups[station]
  if (table === undefined || table.length === 0) return true
  const family = lines.model.family[lane.operation[index] ?? 0] ?? 0
  const setup = table[span.family * lines.model.families.length + family] ?? 0
  const axis = lines.model.stations[station]?.axis
  return setup === 0 || axis === undefined || workBetween(axis, span.end, next) >= setup
}
