import { completionOf, placeOrder } from '../timeline/fit.ts'
import type { Timelines } from '../timeline/lanes.ts'
import { free } from '../timeline/model.ts'
import type { Floor } from './floor.ts'
import { pullOff } from './pull.ts'

/** How a place was found: in a gap, by moving the orders around it, by planning the whole book anew; or not. */
export type Rung = 'gap' | 'squeeze' | 'anew' | 'no'

/**
 * A place for the order, on lanes where nobody else is later than allowed; `limits` says until when the orders that were laid down
 * anew may be ready.
 */
export type Place = {
  readonly earliest: number
  readonly moved: readonly string[]
  readonly lines: Timelines
  readonly limits: ReadonlyMap<number, number>
}

type Ask = { readonly due: number; readonly stretch: number }

/** An order as it lies on the floor: when its free work begins, when it is ready, and when it may be ready at the latest. */
type Lying = {
  readonly order: number
  readonly begins: number
  readonly ready: number
  readonly limit: number
  readonly work: number
}

const lyingOf = (lines: Timelines, order: number): Lying => {
  const { model } = lines
  const range = model.orders[order]
  let begins = Number.MAX_SAFE_INTEGER
  let work = 0
  for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
    if (model.state[operation] !== free) continue
    begins = Math.min(begins, lines.start[operation] ?? 0)
    work += model.work[operation] ?? 0
  }
  const ready = completionOf(lines, order)
  return { order, begins, ready, limit: Math.max(ready, range?.due ?? 0), work }
}

/** Orders that begin before `due`, those that are ready last first. */
const inFrontOf = (lines: Timelines, order: number, due: number): readonly Lying[] => {
  const lying: Lying[] = []
  for (let one = 0; one < lines.model.orders.length; one += 1) {
    const own = one === order ? null : lyingOf(lines, one)
    if (own !== null && own.begins < due) lying.push(own)
  }
  return lying.sort((a, b) => b.ready - a.ready || a.order - b.order)
}

const movedNames = (before: Timelines, after: Timelines, pulled: readonly Lying[]): readonly string[] =>
  pulled.flatMap(({ order }) => {
    const range = before.model.orders[order]
    if (range === undefined) return []
    for (let operation = range.first; operation < range.end; operation += 1) {
      if (before.start[operation] !== after.start[operation]) return [range.id]
    }
    return []
  })

/** Laying down in turn by the latest hour they may be ready, or by the latest at which their work would have to begin. */
const byLimit = (one: Lying): number => one.limit
const byLatestStart = (one: Lying): number => one.limit - one.work

/** Lays the orders and the new one down in turn; when the new one is ready, or null as soon as one would be late. */
const layInTurn = (
  lines: Timelines,
  asking: Lying,
  others: readonly Lying[],
  task: Ask & { turn: (one: Lying) => number },
): number | null => {
  const { turn, stretch } = task
  let earliest = 0
  for (const one of [asking, ...others].toSorted((a, b) => turn(a) - turn(b) || a.order - b.order)) {
    const ready = placeOrder(lines, one.order, one === asking ? stretch : 1)
    if (ready > one.limit) return null
    if (one === asking) earliest = ready
  }
  return earliest
}

const placeOf = ({ lines, spare }: Floor, pulled: readonly Lying[], earliest: number): Place => ({
  earliest,
  moved: movedNames(lines, spare, pulled),
  lines: spare,
  limits: new Map(pulled.map((one) => [one.order, one.limit])),
})

const asking = (floor: Floor, order: number, due: number): Lying => ({ ...lyingOf(floor.lines, order), limit: due })

/**
 * Takes the orders that lie nearest in front of the wanted hour off, and lays them down again with the new one among
 * them, each as early as it can be. Tried with few orders, then with more in another turn; everything happens on the
 * floor's spare lanes.
 */
export const squeeze = (floor: Floor, order: number, ask: Ask): Place | null => {
  const near = inFrontOf(floor.lines, order, ask.due)
  const own = asking(floor, order, ask.due)
  const { spare } = floor
  for (const { count, turn } of [
    { count: 24, turn: byLatestStart },
    { count: 40, turn: byLimit },
  ]) {
    const pulled = near.slice(0, count)
    pullOff(
      floor.lines,
      pulled.map((one) => one.order),
      spare,
    )
    const earliest = layInTurn(spare, own, pulled, { ...ask, turn })
    if (earliest === null) continue
    return placeOf(floor, pulled, earliest)
  }
  return null
}

/** Books with more operations are not planned anew while a customer waits: it takes too long. */
const mostOperations = 1_200

/** Plans everything that has not begun anew, by the latest hours the orders may be ready. */
export const decodeAnew = (floor: Floor, order: number, ask: Ask): Place | null => {
  if (floor.model.work.length > mostOperations) return null
  const all = inFrontOf(floor.lines, order, Number.MAX_SAFE_INTEGER)
  const own = asking(floor, order, ask.due)
  const { spare } = floor
  pullOff(
    floor.lines,
    all.map((one) => one.order),
    spare,
  )
  const earliest = layInTurn(spare, own, all, { ...ask, turn: byLimit })
  if (earliest === null) return null
  return placeOf(floor, all, earliest)
}
