import { type Axis, alwaysOpen, intersect, workBetween } from '../../calendar/axis.ts'
import { dayNumber, dayOf, dayText, startOfDay } from '../../calendar/local-time.ts'
import type { Zone } from '../../calendar/zone.ts'
import { type Minutes, minutes } from '../../units/units.ts'
import { type Book, dueOf, type Slot } from '../book/operation.ts'

/** Minutes a station is at work on a day, set-ups and all, against the minutes it is open. */
export type DayLoad = { readonly station: string; readonly day: string; readonly busy: number; readonly open: number }

/**
 * What must be done on a kind of station by a day on which orders are due, against what can be done until then. Over 100 % somebody
 * is late whatever the order of work.
 */
export type DueLoad = {
  readonly kind: string
  readonly day: string
  readonly due: number
  readonly open: number
  readonly percent: number
}

const daysBetween = (zone: Zone, from: Minutes, to: Minutes): readonly string[] => {
  const first = dayNumber(dayOf(zone, from)) ?? 0
  const last = dayNumber(dayOf(zone, to)) ?? first
  return Array.from({ length: last - first + 1 }, (_, index) => dayText(first + index))
}

/** When all stations of a slot are open: only then is it worked at. */
const sharedTimes = (book: Book): ((slot: Slot) => Axis) => {
  const known = new Map<string, Axis>()
  const stations = new Map(book.stations.map((station) => [station.id, station.axis]))
  return (slot) => {
    const key = slot.stations.join(' ')
    const axis = known.get(key) ?? slot.stations.reduce((all, id) => intersect(all, stations.get(id) ?? alwaysOpen), alwaysOpen)
    known.set(key, axis)
    return axis
  }
}

const aWeek = 7 * 1_440

/** Load per station and day for a week from now, or to the end of a longer plan; days without open or busy minutes are left out. */
export const loadOf = (book: Book, zone: Zone, slots: readonly Slot[]): readonly DayLoad[] => {
  const last = slots.reduce((most, slot) => Math.max(most, slot.end), book.now + aWeek)
  const shared = sharedTimes(book)
  const days = daysBetween(zone, book.now, minutes(last - 1))
  return book.stations.flatMap((station) => {
    const own = slots.filter((slot) => slot.stations.includes(station.id))
    return days.flatMap((day): readonly DayLoad[] => {
      const number = dayNumber(day) ?? 0
      const from = Math.max(book.now, startOfDay(zone, number))
      const to = startOfDay(zone, number + 1)
      const within = own.filter((slot) => slot.start < to && slot.end > from)
      const work = within.reduce(
        (sum, slot) => sum + workBetween(shared(slot), Math.max(from, slot.start), Math.min(to, slot.end)),
        0,
      )
      const setups = within
        .filter((slot) => slot.start >= from)
        .reduce((sum, slot) => sum + ownSetup(station.setups.length, slot), 0)
      const open = workBetween(station.axis, from, to)
      return open === 0 && work === 0 ? [] : [{ station: station.id, day, busy: work + setups, open }]
    })
  })
}

const ownSetup = (rules: number, slot: Slot): number => (rules > 0 ? slot.setupMinutes : 0)

/** Cumulative must-do per kind of station and day with orders due. */
export const dueLoadOf = (book: Book, zone: Zone): readonly DueLoad[] => {
  const days = [...new Set(book.orders.map((order) => dayOf(zone, dueOf(order))))].toSorted()
  const kinds = [...new Set(book.stations.map((station) => station.kind))]
  return kinds.flatMap((kind) => {
    const stations = book.stations.filter((station) => station.kind === kind)
    const ids = new Set(stations.map((station) => station.id))
    return days.map((day): DueLoad => {
      const due = book.orders
        .filter((order) => dayOf(zone, dueOf(order)) <= day)
        .flatMap((order) => order.operations)
        .filter((one) => one.done === null && one.needs.some((list) => list.some((id) => ids.has(id))))
        .reduce((sum, one) => sum + one.minutes, 0)
      const until = startOfDay(zone, (dayNumber(day) ?? 0) + 1)
      const open = stations.reduce((sum, station) => sum + workBetween(station.axis, book.now, until), 0)
      return { kind, day, due, open, percent: open === 0 ? (due === 0 ? 0 : 999) : Math.round((due * 100) / open) }
    })
  })
}
