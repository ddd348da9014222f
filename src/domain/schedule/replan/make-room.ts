import { reserve } from '../reserve/reserve.ts'
import { completionOf } from '../timeline/fit.ts'
import { takeOrder } from '../timeline/fit-late.ts'
import { copyOf, type Timelines } from '../timeline/lanes.ts'
import { free } from '../timeline/model.ts'
import { layOld, movedIn, type Old, snapBack, soonMinutes } from './old-plan.ts'
import { makeWay, pushIn, type Room } from './push-in.ts'

/** Takes off what does not lie where it did of old, and what follows it; they come back together. */
const takeDisplaced = (lines: Timelines, old: ReadonlyMap<number, Old>, order: number): void => {
  const { model } = lines
  const range = model.orders[order]
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if (model.state[operation] !== free || (lines.crewing[operation] ?? -1) < 0) continue
    if (lines.start[operation] !== old.get(operation)?.start) makeWay(lines, operation)
  }
}

const isLate = (lines: Timelines, order: number): boolean => completionOf(lines, order) > (lines.model.orders[order]?.due ?? 0)

/** How much of the time until an operation must be over is used to look for its place: what is left is for what comes after it. */
const shares = [1, 0.5, 0.2, 0]

/** Lanes on which an order is pushed in and what made way for it lies near its old place; null when it finds no place in time. */
const pushedIn = (plan: Timelines, order: number, ask: Pushing): Timelines | null => {
  for (const share of shares.filter((one) => one <= ask.share)) {
    const lines = copyOf(plan)
    if (ask.first.includes(order)) takeOrder(lines, order)
    else takeDisplaced(lines, ask.old, order)
    const room: Room = { lines, old: ask.old, staying: new Set([...ask.staying, order]), burden: new Map() }
    if (pushIn(room, order, share)) return layOld(lines, ask.old)
  }
  return null
}

type Pushing = {
  readonly old: ReadonlyMap<number, Old>
  readonly first: readonly number[]
  readonly share: number
  readonly staying: Set<number>
}

/** So many orders may have to be pushed in one after the other before it is given up. */
const mostPushed = 16

/** Pushes orders in until everybody is in time who was or had to be; answers with the order that could not be, when there is one. */
const pushAll = (plan: Timelines, ask: Pushing): Timelines | number => {
  let lines = copyOf(plan)
  reserve(lines, lines.model.now + soonMinutes)
  const waiting = [...ask.first]
  const pushed = new Set<number>()
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    const placed = pushed.has(next) || pushed.size >= mostPushed ? null : pushedIn(lines, next, ask)
    if (placed === null) return next
    lines = placed
    pushed.add(next)
    ask.staying.add(next)
    for (let order = 0; order < lines.model.orders.length; order += 1) {
      const isMeant = ask.first.includes(order) || !isLate(plan, order)
      if (isMeant && isLate(lines, order) && !waiting.includes(order)) waiting.push(order)
    }
  }
  snapBack(lines, ask.old)
  return lines
}

/** So often it is tried again with another order that may not make way, because it found no place in time when it did. */
const mostSpared = 8

/** Room for the late orders where those that cannot make way are spared; null when there is none even so. */
const pushSparing = (plan: Timelines, ask: Omit<Pushing, 'staying'>): Timelines | null => {
  const spared = new Set<number>()
  while (spared.size < mostSpared) {
    const found = pushAll(plan, { ...ask, staying: new Set(spared) })
    if (typeof found !== 'number') return found
    if (ask.first.includes(found) || spared.has(found)) return null
    spared.add(found)
  }
  return null
}

/**
 * A plan in which the late orders are in time and everything else stays where it lay, but for what has to make way and finds another
 * place near; of several such plans the one that moves the fewest operations of the next days. Null when there is none: nobody is
 * made late for another here.
 */
export const makeRoom = (plan: Timelines, old: ReadonlyMap<number, Old>, late: readonly number[]): Timelines | null => {
  let best: Timelines | null = null
  let least = Number.POSITIVE_INFINITY
  for (const share of shares) {
    const lines = pushSparing(plan, { old, first: late, share })
    const moved = lines === null ? Number.POSITIVE_INFINITY : movedIn(lines, old)
    if (moved >= least) continue
    best = lines
    least = moved
  }
  return best
}
