import { type Slot, slotsByOrder } from '../book/operation.ts'
import { findPlace, placeOrder, readyAt } from '../timeline/fit.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import { leavesRoom, put, readyAfter, type Spot, spanAfter, type Timelines, take } from '../timeline/lanes.ts'
import { free, type Model } from '../timeline/model.ts'
import { lateWeight } from '../timeline/objective.ts'

/** Where an operation lay before: epoch minutes and the crewing that held it. */
export type Old = { readonly start: number; readonly end: number; readonly crewing: number }

const crewingOf = (model: Model, operation: number, stations: readonly string[]): number => {
  const key = stations.map((id) => model.stationIndex.get(id) ?? -1).join(' ')
  const crewing = model.known.crewings.get(key) ?? -1
  return model.ways[model.waysOf[operation] ?? -1]?.includes(crewing) === true ? crewing : -1
}

/** Where the operations of the model lay in the old plan, when that plan still makes sense for them. */
export const oldPlaces = (model: Model, slots: readonly Slot[]): ReadonlyMap<number, Old> => {
  const groups = slotsByOrder(slots)
  const places = new Map<number, Old>()
  for (const { id, first, end } of model.orders) {
    const own = groups.get(id)
    for (let operation = first; own !== undefined && operation < end; operation += 1) {
      const name = model.names[operation]
      const slot = own.findLast((one) => one.operation === name)
      if (slot === undefined || model.state[operation] !== free) continue
      const crewing = crewingOf(model, operation, slot.stations)
      if (crewing >= 0) places.set(operation, { start: slot.start, end: slot.end, crewing })
    }
  }
  return places
}

/** Whether the stations of an old place are free for it now. */
const isFree = (lines: Timelines, operation: number, old: Old): boolean => {
  const { model } = lines
  const span = { end: old.end, family: model.family[operation] ?? 0 }
  return (
    model.crewings[old.crewing]?.stations.every((station) => {
      const lane = lines.lanes[station]
      if (lane === undefined) return false
      const index = spanAfter(lane, old.start)
      return readyAfter(lines, station, index, span.family) <= old.start && leavesRoom(lines, station, index, span)
    }) ?? false
  )
}

const spot: Spot = { start: 0, end: 0, crewing: 0 }

/** Puts an operation at its old place when it may begin there and the stations are free. */
const putBackAt = (lines: Timelines, operation: number, old: Old): boolean => {
  if (old.start < readyAt(lines, operation) || !isFree(lines, operation, old)) return false
  put(lines, operation, old)
  return true
}

/** Puts an operation at its old place, or at the first place after it; false when there is none. */
const putNear = (lines: Timelines, operation: number, old: Old | undefined): boolean => {
  if (old !== undefined && putBackAt(lines, operation, old)) return true
  const from = Math.max(readyAt(lines, operation), old?.start ?? 0)
  if (!findPlace(lines, operation, { ready: from, work: lines.model.work[operation] ?? 0 }, spot)) return false
  put(lines, operation, spot)
  return true
}

/** Operations by the start of their old place; what had none comes last, in its own order. */
const byOldStart = (
  { model }: Timelines,
  old: ReadonlyMap<number, Old>,
  isMeant: (operation: number) => boolean,
): readonly number[] => {
  const start = (operation: number): number => old.get(operation)?.start ?? Number.MAX_SAFE_INTEGER
  const operations: number[] = []
  for (let operation = 0; operation < model.work.length; operation += 1) {
    if (model.state[operation] === free && isMeant(operation)) operations.push(operation)
  }
  return operations.sort((a, b) => start(a) - start(b) || a - b)
}

/** Takes an operation off and lets `place` put it elsewhere; it stays when that fails or would end later. */
const moveIfSooner = (lines: Timelines, operation: number, place: () => boolean): void => {
  const present = { start: lines.start[operation] ?? 0, end: lines.end[operation] ?? 0, crewing: lines.crewing[operation] ?? -1 }
  if (present.crewing < 0) return
  take(lines, operation)
  const placed = place()
  if (placed && (lines.end[operation] ?? 0) <= present.end) return
  if (placed) take(lines, operation)
  put(lines, operation, present)
}

/** Sends operations to their old places where those are free; answers with those that found them taken. */
const sendBack = (lines: Timelines, operations: readonly number[], old: ReadonlyMap<number, Old>): readonly number[] =>
  operations.filter((operation) => {
    const place = old.get(operation)
    if (place === undefined) return true
    moveIfSooner(lines, operation, () => putBackAt(lines, operation, place))
    return lines.start[operation] !== place.start
  })

/**
 * Moves a sound plan back towards an old one, in place: first every operation goes to its old place where that is free, again as long
 * as others make way, then those that find it taken come as close behind it as can be. Nothing ends later than it did.
 */
export const snapBack = (lines: Timelines, old: ReadonlyMap<number, Old>): void => {
  let displaced = byOldStart(lines, old, (operation) => lines.start[operation] !== old.get(operation)?.start)
  for (let before = displaced.length + 1; displaced.length < before; ) {
    before = displaced.length
    displaced = sendBack(lines, displaced, old)
  }
  for (const operation of displaced) moveIfSooner(lines, operation, () => putNear(lines, operation, old.get(operation)))
}

const isPlaced = (lines: Timelines, operation: number): boolean =>
  lines.model.state[operation] !== free || (lines.crewing[operation] ?? -1) >= 0

/** Whether all that an operation waits for lies on the lanes. */
const isFollowing = (lines: Timelines, operation: number): boolean =>
  lines.model.before[operation]?.every((before) => isPlaced(lines, before)) ?? true

/** What lies nowhere yet goes into the gaps, the orders that are due first before the others. */
const layRest = (lines: Timelines, waiting: readonly number[]): void => {
  const { model } = lines
  const rest = new Set(waiting.filter((operation) => !isPlaced(lines, operation)).map((operation) => model.order[operation] ?? 0))
  const due = (order: number): number => model.orders[order]?.due ?? 0
  for (const order of [...rest].sort((a, b) => due(a) - due(b) || a - b)) placeOrder(lines, order, 1)
}

/**
 * Lays the old plan around what lies on the lanes: first all that can be where it was, so that nothing that is displaced takes the
 * place of another; then the displaced as close behind their old places as can be; then what is new, into the gaps.
 */
export const layOld = (lines: Timelines, old: ReadonlyMap<number, Old>): Timelines => {
  const waiting = byOldStart(lines, old, (operation) => !isPlaced(lines, operation))
  const displaced = waiting.filter((operation) => {
    const place = old.get(operation)
    return place !== undefined && !(isFollowing(lines, operation) && putBackAt(lines, operation, place))
  })
  for (const operation of displaced) if (isFollowing(lines, operation)) putNear(lines, operation, old.get(operation))
  layRest(lines, waiting)
  return lines
}

/** The same, but in strict turn: what comes too late for its old place pushes those behind it, mostly by a few minutes. */
const layInTurn = (lines: Timelines, old: ReadonlyMap<number, Old>): Timelines => {
  const waiting = byOldStart(lines, old, (operation) => !isPlaced(lines, operation))
  for (const operation of waiting) {
    if (old.has(operation) && isFollowing(lines, operation)) putNear(lines, operation, old.get(operation))
  }
  layRest(lines, waiting)
  return lines
}

/** What people have read already: the work of the next two days. */
export const soonMinutes = 2_880

/** A shift that nobody minds: a quarter of an hour. */
const unnoticed = 15

/** How many operations of the next days begin noticeably earlier or later than they did. */
export const movedIn = (lines: Timelines, old: ReadonlyMap<number, Old>): number => {
  const soon = lines.model.now + soonMinutes
  let moved = 0
  for (const [operation, place] of old) {
    if (place.start < soon && Math.abs((lines.start[operation] ?? 0) - place.start) > unnoticed) moved += 1
  }
  return moved
}

const isUndisturbed = (lines: Timelines, old: ReadonlyMap<number, Old>): boolean => {
  for (const [operation, place] of old) if (lines.start[operation] !== place.start) return false
  return true
}

/** The old plan on the lanes of now: around what moved, or in turn where that disturbs fewer and makes nobody later. */
export const layNear = (model: Model, old: ReadonlyMap<number, Old>): Timelines => {
  const around = layOld(fixedTimelines(model), old)
  if (isUndisturbed(around, old)) return around
  const moved = movedIn(around, old)
  const turned = layInTurn(fixedTimelines(model), old)
  const gain = lateWeight(around) - lateWeight(turned)
  return gain > 0 || (gain === 0 && movedIn(turned, old) < moved) ? turned : around
}

/** A plan as it was kept, laid on the lanes of a model of now: what is gone is left out, what is new is laid into the gaps. */
export const layKept = (model: Model, slots: readonly Slot[]): Timelines => layNear(model, oldPlaces(model, slots))
