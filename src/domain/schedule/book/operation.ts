import type { Axis } from '../../calendar/axis.ts'
import type { Minutes } from '../../units/units.ts'

export const stationKinds = ['cutter', 'press', 'bench', 'person'] as const
export type StationKind = (typeof stationKinds)[number]

/** Minutes it takes to change a station from one set-up family to another; '*' stands for any. */
export type SetUp = { readonly from: string; readonly to: string; readonly minutes: number }

/** Anything that does one piece of work at a time and has open hours. */
export type Station = {
  readonly id: string
  readonly kind: StationKind
  readonly axis: Axis
  readonly setups: readonly SetUp[]
}

/** What must end before, and how many elapsed minutes before: cooling, a bleed test's day. */
export type After = { readonly operation: string; readonly lagMinutes: number }

/**
 * One piece of work of an order. It takes one station out of each list of `needs`, all at the same time; `after` names
 * operations that end at least `lagMinutes` of elapsed time before it begins.
 */
export type Operation = {
  readonly id: string
  readonly minutes: number
  readonly needs: readonly (readonly string[])[]
  readonly family: string | null
  readonly splittable: boolean
  readonly after: readonly After[]
  readonly release: Minutes | null
  readonly started: Minutes | null
  readonly done: Minutes | null
  /** The stations of work that has begun, when they are known. */
  readonly on: readonly string[] | null
}

/** An order of the book: `promised` is what the customer was told, `needBy` what was asked for. */
export type BookOrder = {
  readonly id: string
  readonly needBy: Minutes
  readonly promised: Minutes | null
  readonly weight: number
  readonly operations: readonly Operation[]
}

/** Everything a plan is made from, in epoch minutes. */
export type Book = {
  readonly now: Minutes
  readonly stations: readonly Station[]
  readonly orders: readonly BookOrder[]
}

/** Where and when one operation is done; `setupMinutes` lie before `start`. */
export type Slot = {
  readonly order: string
  readonly operation: string
  readonly stations: readonly string[]
  readonly start: Minutes
  readonly end: Minutes
  readonly setupMinutes: number
}

/** What an order is measured by: the promise when one was given. */
export const dueOf = (order: BookOrder): Minutes => order.promised ?? order.needBy

/** The slots of each order, as they come. */
export const slotsByOrder = (slots: readonly Slot[]): ReadonlyMap<string, readonly Slot[]> => {
  const groups = new Map<string, Slot[]>()
  for (const slot of slots) {
    const group = groups.get(slot.order)
    if (group === undefined) groups.set(slot.order, [slot])
    else group.push(slot)
  }
  return groups
}
