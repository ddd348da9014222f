import { ok, type Result } from '../../result/result.ts'
import { type Book, type Slot, slotsByOrder } from '../book/operation.ts'
import type { ScheduleProblem } from '../book/problems.ts'
import { adopt, type Floor, floorOf } from '../reserve/floor.ts'
import { reserve, reserveOrders } from '../reserve/reserve.ts'
import { squeeze } from '../reserve/squeeze.ts'
import { type Effort, type Plan, planModel } from '../search/plan.ts'
import { completionOf, findPlace, placeOrder, readyAt } from '../timeline/fit.ts'
import { moveLate, placementsOf, putBack, takeOrder } from '../timeline/fit-late.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import { copyOf, leavesRoom, put, readyAfter, type Spot, spanAfter, type Timelines, take } from '../timeline/lanes.ts'
import { free, type Model } from '../timeline/model.ts'
import { planCost, shopObjective } from '../timeline/objective.ts'
import { compile } from '../verify/compile.ts'

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
const snapBack = (lines: Timelines, old: ReadonlyMap<number, Old>): void => {
  let displaced = byOldStart(lines.model, old)
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

/**
 * Lays the old plan around what lies on the lanes: first all that can be where it was, so that nothing that is displaced takes the
 * place of another; then the displaced as close behind their old places as can be; then what is new, into the gaps.
 */
const layOld = (lines: Timelines, old: ReadonlyMap<number, Old>): Timelines => {
  const { model } = lines
  const waiting = byOldStart(model, old).filter((operation) => !isPlaced(lines, operation))
  const known = waiting.filter((operation) => old.has(operation))
  const displaced = known.filter((operation) => {
    const place = old.get(operation)
    return place === undefined || !isFollowing(lines, operation) || !putBackAt(lines, operation, place)
  })
  for (const operation of displaced) putNear(lines, operation, old.get(operation))
  const fresh = new Set(waiting.filter((operation) => !old.has(operation)).map((operation) => model.order[operation] ?? 0))
  const due = (order: number): number => model.orders[order]?.due ?? 0
  for (const order of [...fresh].sort((a, b) => due(a) - due(b) || a - b)) placeOrder(lines, order, 1)
  return lines
}

/** A plan as it was kept, laid on the lanes of a model of now: what is gone is left out, what is new is laid into the gaps. */
export const layKept = (model: Model, slots: readonly Slot[]): Timelines => layOld(fixedTimelines(model), oldPlaces(model, slots))

const isLate = (lines: Timelines, order: number): boolean => completionOf(lines, order) > (lines.model.orders[order]?.due ?? 0)

/** Whether everybody who is in time in one plan is in time in the other. */
const isWorseForNobody = (lines: Timelines, than: Timelines): boolean =>
  lines.model.orders.every((_, order) => !isLate(lines, order) || isLate(than, order))

/** How often orders that would be late for it are left where they lie, before all of a plan is moved back piece by piece. */
const mostRounds = 8

/**
 * The old plan around some orders that stay where they lie, and around those that would be late if they went back to their old
 * places; null when there is no end to these.
 */
const oldPlanAround = (lines: Timelines, old: ReadonlyMap<number, Old>, first: readonly number[]): Timelines | null => {
  const staying = new Set(first)
  for (let round = 0; round < mostRounds; round += 1) {
    const around = fixedTimelines(lines.model)
    for (const order of staying) putBack(around, placementsOf(lines, order))
    layOld(around, old)
    const later = lines.model.orders.flatMap((_, order) => (isLate(around, order) && !isLate(lines, order) ? [order] : []))
    if (later.length === 0) return around
    for (const order of later) staying.add(order)
  }
  return null
}

/** What people have read already: the work of the next two days. */
const soonMinutes = 2_880

/** How many operations of the next days lie elsewhere than they did. */
const movedIn = (lines: Timelines, old: ReadonlyMap<number, Old>): number => {
  const soon = lines.model.now + soonMinutes
  let moved = 0
  for (const [operation, place] of old) if (place.start < soon && lines.start[operation] !== place.start) moved += 1
  return moved
}

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
  const around = oldPlanAround(floor.lines, old, late)
  snapBack(floor.lines, old)
  return around !== null && movedIn(around, old) <= movedIn(floor.lines, old) ? around : floor.lines
}

const lateCost = (lines: Timelines): number => planCost({ ...shopObjective, tardiness: 0, completion: 0, setup: 0 }, lines)

/**
 * A plan of a changed book that stays with the old one where it can: what has begun stays, what is new goes into gaps, then into the
 * reservation plan; only when orders are late even so is the book searched anew, and that plan, when it makes nobody late who was
 * in time, is moved back towards the old one. Which promise must break is for a person to say.
 */
export const replanFor = (book: Book, oldSlots: readonly Slot[], effort: Effort): Result<Plan, ScheduleProblem> => {
  const compiled = compile(book)
  if (!compiled.ok) return compiled
  const model = compiled.value
  const old = oldPlaces(model, oldSlots)
  const kept = bringIn(layOld(fixedTimelines(model), old), old)
  const cost = planCost(shopObjective, kept)
  const stable: Plan = { lines: kept, cost, iterations: 0, seed: effort.seed }
  if (lateCost(kept) === 0) return ok(stable)
  const searched = planModel(model, effort)
  const isBetter = lateCost(searched.lines) < lateCost(kept) && isWorseForNobody(searched.lines, kept)
  if (!isBetter) return ok({ ...stable, iterations: searched.iterations })
  reserve(searched.lines)
  snapBack(searched.lines, old)
  return ok({ ...searched, cost: planCost(shopObjective, searched.lines) })
}
