import * as z from 'zod'
import { type Axis, axisFrom, type Interval, intersect, without } from './axis.ts'
import { dayNumber, dayText, minutesADay, readWallMinute, startOfDay } from './local-time.ts'
import type { Zone } from './zone.ts'

export const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const
export type Weekday = (typeof weekdays)[number]

/** Wall-clock time of day; '24:00' is the end of the day, and a shift that ends before it begins ends the next day. */
export const clockSchema = z.string().regex(/^(?:[01]\d|2[0-3]):[0-5]\d$|^24:00$/)
export const shiftSchema = z.strictObject({ day: z.enum(weekdays), from: clockSchema, to: clockSchema })
export const wallMinuteSchema = z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/)
export const closureSchema = z
  .strictObject({ from: wallMinuteSchema, to: wallMinuteSchema, why: z.string().max(200) })
  .refine((closure) => closure.from < closure.to, 'a closure ends after it begins')
export type Shift = z.infer<typeof shiftSchema>
export type Closure = z.infer<typeof closureSchema>

/** When the shop works. `special` days replace the week's hours of their date; breaks are the people's, machines run through. */
export const hoursSchema = z.strictObject({
  zone: z.string().min(1),
  open: z.array(shiftSchema).min(1),
  breaks: z.array(shiftSchema),
  holidays: z.array(z.strictObject({ date: z.iso.date(), name: z.string().min(1) })),
  closed: z.array(closureSchema),
  special: z.array(z.strictObject({ date: z.iso.date(), from: clockSchema, to: clockSchema, why: z.string() })),
})
export type Hours = z.infer<typeof hoursSchema>

/** From an epoch minute to another. */
export type Range = { readonly from: number; readonly to: number }

/** The shifts of a week, and shifts of single dates which replace that date's. */
export type Week = {
  readonly shifts: readonly Shift[]
  readonly dated: readonly { readonly date: string; readonly from: string; readonly to: string }[]
}

const clockMinutes = (clock: string): number => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5))

/** 1970-01-01 was a Thursday. */
const weekdayOf = (day: number): Weekday => weekdays[(((day + 3) % 7) + 7) % 7] ?? 'mon'

const onDay = (zone: Zone, day: number, span: { readonly from: string; readonly to: string }): Interval => {
  const from = clockMinutes(span.from)
  const to = clockMinutes(span.to)
  const nextDay = to <= from ? minutesADay : 0
  return {
    start: readWallMinute(zone, day * minutesADay + from).at,
    end: readWallMinute(zone, day * minutesADay + to + nextDay).at,
  }
}

const spansOf = (week: Week, day: number): readonly { readonly from: string; readonly to: string }[] => {
  const date = dayText(day)
  const dated = week.dated.filter((span) => span.date === date)
  if (dated.length > 0) return dated
  const weekday = weekdayOf(day)
  return week.shifts.filter((shift) => shift.day === weekday)
}

/** The open time of a week's shifts in a zone, for every day that touches the range of epoch minutes. */
export const weekAxis = (zone: Zone, week: Week, range: Range): Axis => {
  const intervals: Interval[] = []
  const last = Math.ceil(range.to / minutesADay) + 1
  for (let day = Math.floor(range.from / minutesADay) - 2; day <= last; day += 1) {
    for (const span of spansOf(week, day)) intervals.push(onDay(zone, day, span))
  }
  return axisFrom(intervals)
}

/** The time that closures take away, as an axis. */
export const closedAxis = (zone: Zone, closures: readonly Closure[]): Axis => {
  const wall = (text: string): number => readWallMinute(zone, Math.floor(Date.parse(`${text}Z`) / 60_000)).at
  return axisFrom(closures.map((closure) => ({ start: wall(closure.from), end: wall(closure.to) })))
}

const holidayAxis = (zone: Zone, hours: Hours): Axis =>
  axisFrom(
    hours.holidays.flatMap(({ date }) => {
      const day = dayNumber(date)
      return day === null ? [] : [{ start: startOfDay(zone, day), end: startOfDay(zone, day + 1) }]
    }),
  )

/** When the shop is open: its week and special days, less holidays and closures. */
export const openTime = (zone: Zone, hours: Hours, range: Range): Axis => {
  const week = weekAxis(zone, { shifts: hours.open, dated: hours.special }, range)
  return without(without(week, holidayAxis(zone, hours)), closedAxis(zone, hours.closed))
}

/** When people of the shop work: its open time less the breaks. */
export const peopleTime = (zone: Zone, hours: Hours, range: Range): Axis =>
  without(openTime(zone, hours, range), weekAxis(zone, { shifts: hours.breaks, dated: [] }, range))

/** A station's or person's own shifts and closures within the shop's time. */
export const ownTime = (zone: Zone, shop: Axis, own: { readonly week: Axis | null; readonly closed: readonly Closure[] }): Axis =>
  without(own.week === null ? shop : intersect(shop, own.week), closedAxis(zone, own.closed))
