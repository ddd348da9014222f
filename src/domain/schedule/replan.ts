import { ok, type Result } from '../result/result.ts'
import { completionOf, findPlace, placeOrder, readyAt } from './fit.ts'
import { moveLate, takeOrder } from './fit-late.ts'
import { adopt, compile, type Floor, fixedTimelines, floorOf } from './floor.ts'
import { copyOf, leavesRoom, put, readyAfter, type Spot, spanAfter, type Timelines, take } from './lanes.ts'
import { free, type Model } from './model.ts'
import { planCost, shopObjective } from './objective.ts'
import { type Book, type Slot, slotsByOrder } from './operation.ts'
import { type Effort, type Plan, planModel } from './plan.ts'
import type { ScheduleProblem } from './problems.ts'
import { reserve, reserveOrders } from './reserve.ts'
import { squeeze } from './squeeze.ts'

type Old = { readonly start: number; readonly end: number; readonly crewing: number }

const crewingOf = (model: Model, operation: number, stations: readonly string[]): number => {
  const key = stations.map((id) => model.stationIndex.get(id) ?? -1).join(' ')
  const crewing = model.known.crewings.get(key) ?? -1
  return model.ways[model.waysOf[operation] ?? -1]?.includes(crewing) === true ? crewing : -1
}

/** Where the operations of the model lay in the old plan, when that plan still makes sense for them. */
const oldPlaces = (model: Model, slots: readonly Slot[]): ReadonlyMap<number, Old> => {
  const groups = slotsByOrder(slots)
  const places = new Map<number, Old>()
  for (const { id, first, end } of model.orders) {
    const own = groups.get(id)
    for (let operation = first; own !== undefined && operation < end; operation += 1) {
      const name = model.names[operation]
      const slot = own.findLast((one) => one.operation === name)
      if (slot === undefined || model.state[operation] !== free || slot.start < model.now) continue
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
const byOldStart = (model: Model, old: ReadonlyMap<number, Old>): readonly number[] => {
  const starts = Float64Array.from(model.work, (_, operation) => old.get(operation)?.start ?? Number.MAX_SAFE_INTEGER)
  const operations = model.work.map((_, operation) => operation).filter((operation) => model.state[operation] === free)
  return operations.sort((a, b) => (starts[a] ?? 0) - (starts[b] ?? 0) || a - b)
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

/**
 * Moves a sound plan back towards an old one, in place: first every operation goes to its old place where that is free, then those
 * that found it taken come as close behind it as can be. Nothing ends later than it did.
 */
const snapBack = (lines: Timelines, old: ReadonlyMap<number, Old>): void => {
  const operations = byOldStart(lines.model, old)
  const displaced = operations.filter((operation) => {
    const place = old.get(operation)
    if (place === undefined) return true
    moveIfSooner(lines, operation, () => putBackAt(lines, operation, place))
    return lines.start[operation] !== place.start
  })
  for (const operation of displaced) moveIfSooner(lines, operation, () => putNear(lines, operation, old.get(operation)))
}

/** The old plan with what is new laid into its gaps. */
const oldPlanWithNew = (model: Model, old: ReadonlyMap<number, Old>): Timelines => {
  const lines = fixedTimelines(model)
  const fresh = new Set<number>()
  for (const operation of byOldStart(model, old)) {
    const order = model.order[operation] ?? 0
    if (old.has(operation)) putNear(lines, operation, old.get(operation))
    else fresh.add(order)
  }
  const due = (order: number): number => model.orders[order]?.due ?? 0
  for (const order of [...fresh].sort((a, b) => due(a) - due(b) || a - b)) placeOrder(lines, order, 1)
  return lines
}

/** A plan as it was kept, laid on the lanes of a model of now: what is gone is left out, what is new is laid into the gaps. */
export const layKept = (model: Model, slots: readonly Slot[]): Timelines => oldPlanWithNew(model, oldPlaces(model, slots))

const isLate = (lines: Timelines, order: number): boolean => completionOf(lines, order) > (lines.model.orders[order]?.due ?? 0)

/** Tries to bring late orders in by the reservation plan: into its gaps first, then by moving a few that have time. */
const bringIn = (lines: Timelines, old: ReadonlyMap<number, Old>): Timelines => {
  const { model } = lines
  const late = model.orders.map((_, order) => order).filter((order) => isLate(lines, order))
  if (late.length === 0 || late.length > 20) return lines
  const floor: Floor = floorOf(lines)
  for (const order of late) {
    const due = model.orders[order]?.due ?? 0
    const before = copyOf(floor.lines)
    takeOrder(floor.lines, order)
    if (placeOrder(floor.lines, order, 1) <= due) {
      moveLate(floor.lines, order, due, 1)
      continue
    }
    takeOrder(floor.lines, order)
    const place = squeeze(floor, order, { due, stretch: 1 })
    adopt(floor, place?.lines ?? before)
    if (place !== null) reserveOrders(floor.lines, new Map([...place.limits, [order, due]]))
  }
  snapBack(floor.lines, old)
  return floor.lines
}

const lateCost = (lines: Timelines): number => planCost({ ...shopObjective, tardiness: 0, completion: 0, setup: 0 }, lines)

/**
 * A plan of a changed book that stays with the old one where it can: what has begun stays, what is new goes into gaps, then into the
 * reservation plan; only when orders are late even so is the book searched anew, and that plan moved back towards the old one.
 */
export const replanFor = (book: Book, oldSlots: readonly Slot[], effort: Effort): Result<Plan, ScheduleProblem> => {
  const compiled = compile(book)
  if (!compiled.ok) return compiled
  const model = compiled.value
  const old = oldPlaces(model, oldSlots)
  const kept = bringIn(oldPlanWithNew(model, old), old)
  const cost = planCost(shopObjective, kept)
  const stable: Plan = { lines: kept, cost, iterations: 0, seed: effort.seed }
  if (lateCost(kept) === 0) return ok(stable)
  const searched = planModel(model, effort)
  if (lateCost(searched.lines) >= lateCost(kept)) return ok({ ...stable, iterations: searched.iterations })
  reserve(searched.lines)
  snapBack(searched.lines, old)
  return ok({ ...searched, cost: planCost(shopObjective, searched.lines) })
}
