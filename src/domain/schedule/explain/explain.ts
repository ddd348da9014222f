import { alwaysOpen, lastOpen, never, workBetween } from '../../calendar/axis.ts'
import { minutes } from '../../units/units.ts'
import { reserve } from '../reserve/reserve.ts'
import { completionOf, placeOrder } from '../timeline/fit.ts'
import { placementsOf, putBack, takeOrder } from '../timeline/fit-late.ts'
import { fixedTimelines } from '../timeline/fixed.ts'
import { copyOf, type Timelines } from '../timeline/lanes.ts'
import { free, type Model } from '../timeline/model.ts'
import { bottleneck, type Case, type Fix, isOnTime, lookAt, rangeOf } from './bottleneck.ts'
import { type Cause, causesOf } from './causes.ts'

/** A late order: by how many elapsed minutes, the chain of causes from its end back to now, and what would bring it in on time. */
export type Late = {
  readonly order: string
  readonly minutes: number
  readonly causes: readonly Cause[]
  readonly fixes: readonly Fix[]
}

const closedWork = (lines: Timelines, order: number): number =>
  rangeOf(lines.model, order).reduce((sum, operation) => {
    const open = lines.model.crewings[lines.crewing[operation] ?? -1]?.axis ?? alwaysOpen
    const start = lines.start[operation] ?? 0
    const end = lines.end[operation] ?? 0
    return lines.model.state[operation] === free ? sum + (end - start) - workBetween(open, start, end) : sum
  }, 0)

/** Would working on after hours do it, with the stations to itself? */
const openLonger = ({ lines, order, due }: Case): readonly Fix[] => {
  const { model } = lines
  const always: Model = {
    ...model,
    stations: model.stations.map((station) => ({ ...station, axis: alwaysOpen })),
    crewings: model.crewings.map((crewing) => ({ ...crewing, axis: alwaysOpen })),
  }
  const trial = { ...fixedTimelines(model), model: always }
  if (placeOrder(trial, order, 1, due) > due) return []
  const extra = closedWork({ ...trial, model }, order)
  return extra === 0 ? [] : [{ code: 'open-longer', subject: model.orders[order]?.id ?? '', at: minutes(due), minutes: extra }]
}

/** Asks with some operations changed for the moment. */
const changed = <T>(column: number[], operations: readonly number[], value: (now: number) => number, ask: () => T): T => {
  const kept = operations.map((operation) => column[operation] ?? 0)
  for (const operation of operations) column[operation] = value(column[operation] ?? 0)
  const answer = ask()
  operations.forEach((operation, index) => {
    column[operation] = kept[index] ?? 0
  })
  return answer
}

/** The last quarter of an hour up to `by`, but not before now, at which somebody is there to take what comes. */
const handOverBy = (model: Model, operation: number, by: number): number => {
  const axis = model.crewings[model.ways[model.waysOf[operation] ?? 0]?.[0] ?? 0]?.axis ?? alwaysOpen
  return Math.max(model.now, Math.floor(lastOpen(axis, by) / quarter) * quarter)
}

const quarter = 15

/** About the least that is enough, to the quarter of an hour: `enough` is known to be, `tooLittle` not to be. */
const leastEnough = (enough: number, tooLittle: number, isEnough: (minutes: number) => boolean): number => {
  if (enough - tooLittle <= quarter) return enough
  const middle = Math.round((enough + tooLittle) / 2)
  return isEnough(middle) ? leastEnough(middle, tooLittle, isEnough) : leastEnough(enough, middle, isEnough)
}

/** An earlier delivery, where it is enough; where it is not, the earliest one together with the helpers it takes besides. */
const earlierDelivery = (one: Case, alone: boolean): readonly Fix[] => {
  const { lines, order, late } = one
  const { model } = lines
  const waiting = rangeOf(model, order).filter((op) => model.state[op] === free && (model.release[op] ?? 0) > model.now)
  if (waiting.length === 0) return []
  const sooner = <T>(by: number, ask: () => T): T => changed(model.release, waiting, (now) => Math.max(model.now, now - by), ask)
  const most = Math.max(...waiting.map((op) => (model.release[op] ?? 0) - model.now))
  const onTime = (by: number): boolean => sooner(by, () => isOnTime(lines, one))
  const [first = 0] = waiting
  const fix = (by: number): Fix => {
    const release = model.release[first] ?? 0
    const at = handOverBy(model, first, release - by)
    return { code: 'earlier-delivery', subject: model.names[first] ?? '', at: minutes(at), minutes: release - at }
  }
  if (late <= most && onTime(late)) return [fix(late)]
  if (onTime(most)) return [fix(leastEnough(most, late, onTime))]
  const helpers = alone ? sooner(most, () => bottleneck(one)) : null
  return helpers === null ? [] : [fix(most), ...helpers]
}

const stoneWork = /^(?:cut-templates|plugs|coupon|brush-)/

const dropStones = (one: Case): readonly Fix[] => {
  const { lines, order } = one
  const { model } = lines
  const stones = rangeOf(model, order).filter((op) => model.state[op] === free && stoneWork.test(model.names[op] ?? ''))
  if (stones.length === 0) return []
  const saved = stones.reduce((sum, op) => sum + (model.work[op] ?? 0), 0)
  const onTime = changed(
    model.work,
    stones,
    () => 1,
    () => isOnTime(lines, one),
  )
  return onTime ? [{ code: 'drop-stones', subject: model.orders[order]?.id ?? '', at: null, minutes: saved }] : []
}

const beginsBefore = (lines: Timelines, order: number, at: number): boolean => {
  const { model } = lines
  const end = model.orders[order]?.end ?? 0
  let operation = model.orders[order]?.first ?? 0
  while (operation < end && (model.state[operation] !== free || (lines.start[operation] ?? at) >= at)) operation += 1
  return operation < end
}

/** Orders that could wait: they weigh no more, or keep their own time behind this one. */
const goBefore = ({ lines, order, due, late }: Case): readonly Fix[] => {
  const { model } = lines
  const rivals = model.orders
    .map((one, index) => ({ index, slack: one.due - completionOf(lines, index), weight: one.weight }))
    .filter((one) => one.index !== order && beginsBefore(lines, one.index, due))
    .toSorted((a, b) => b.slack - a.slack || a.weight - b.weight || a.index - b.index)
    .slice(0, 12)
  for (const rival of rivals) {
    const placements = placementsOf(lines, rival.index)
    takeOrder(lines, rival.index)
    const limit = model.orders[rival.index]?.due ?? 0
    const complete = placeOrder(lines, order, 1, due)
    const other = complete <= due ? placeOrder(lines, rival.index, 1, limit) : never
    takeOrder(lines, rival.index)
    takeOrder(lines, order)
    putBack(lines, placements)
    if (other > limit) continue
    return [{ code: 'go-before', subject: model.orders[rival.index]?.id ?? '', at: minutes(other), minutes: late }]
  }
  return []
}

/** How many of the last operations of an order are over by its time, when it is worked in several turns. */
const splitCollection = ({ lines, order, due, late }: Case): readonly Fix[] => {
  const { model } = lines
  const all = rangeOf(model, order)
  const waitedFor = new Set(all.flatMap((one) => model.before[one] ?? []))
  const last = all.filter((one) => !waitedFor.has(one))
  const ready = lookAt(lines, order, () => last.filter((one) => (lines.end[one] ?? 0) <= due).length)
  if (ready === 0 || ready === last.length) return []
  return [{ code: 'split-collection', subject: `${ready}/${last.length}`, at: minutes(due), minutes: late }]
}

const fixesOf = (one: Case): readonly Fix[] => {
  const helpers = bottleneck(one)
  const direct = helpers === null ? openLonger(one) : helpers
  const promised: Fix = {
    code: 'move-promise',
    subject: one.lines.model.orders[one.order]?.id ?? '',
    at: minutes(Math.ceil((one.due + one.late) / quarter) * quarter),
    minutes: one.late,
  }
  return [
    ...direct,
    ...earlierDelivery(one, direct.length === 0),
    ...dropStones(one),
    ...goBefore(one),
    ...splitCollection(one),
    promised,
  ]
}

/** Why one order of a plan is late and what would mend it; `reserved` is the plan's reservation, which is left as it was. */
export const explainOrder = (lines: Timelines, reserved: Timelines, order: number): Late => {
  const { model } = lines
  const due = model.orders[order]?.due ?? 0
  const late = completionOf(lines, order) - due
  const placements = placementsOf(reserved, order)
  takeOrder(reserved, order)
  const fixes = fixesOf({ lines: reserved, order, due, late })
  putBack(reserved, placements)
  return { order: model.orders[order]?.id ?? '', minutes: late, causes: causesOf(lines, order), fixes }
}

/** Every late order of a plan, the latest first, with its causes and what would mend it. */
export const explainLate = (lines: Timelines): readonly Late[] => {
  const { model } = lines
  const reserved = copyOf(lines)
  reserve(reserved)
  return model.orders
    .map((order, index) => ({ index, late: completionOf(lines, index) - order.due }))
    .filter((one) => one.late > 0)
    .toSorted((a, b) => b.late - a.late || a.index - b.index)
    .map((one) => explainOrder(lines, reserved, one.index))
}
