import { ok, type Result, refuse } from '../result/result.ts'
import { type Minutes, minutes } from '../units/units.ts'
import type { CalendarProblem } from './problems.ts'
import { firstYear, lastYear, offsetAt, type Zone } from './zone.ts'

export const minutesADay = 1_440

/** How a wall-clock minute was read: in spring an hour does not exist, in autumn one comes twice. */
export type LocalReading = { readonly at: Minutes; readonly reading: 'plain' | 'lost-hour' | 'repeated-hour' }

/**
 * The instant of a wall-clock minute given as if it were UTC, by Temporal's "compatible" rule: the earlier of two, and a minute
 * that does not exist moves forward by the lost time.
 */
export const readWallMinute = (zone: Zone, wall: number): LocalReading => {
  const before = offsetAt(zone, wall - minutesADay)
  const after = offsetAt(zone, wall + minutesADay)
  if (before === after) return { at: minutes(wall - before), reading: 'plain' }
  const early = wall - Math.max(before, after)
  const late = wall - Math.min(before, after)
  const earlyHolds = offsetAt(zone, early) === wall - early
  const lateHolds = offsetAt(zone, late) === wall - late
  if (earlyHolds && lateHolds) return { at: minutes(early), reading: 'repeated-hour' }
  if (earlyHolds) return { at: minutes(early), reading: 'plain' }
  if (lateHolds) return { at: minutes(late), reading: 'plain' }
  return { at: minutes(wall - before), reading: 'lost-hour' }
}

const pattern = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})$/

/** Days since 1970-01-01 of a date 'YYYY-MM-DD', or null when there is no such day. */
export const dayNumber = (day: string): number | null => {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(day) ? Date.parse(`${day}T00:00Z`) : Number.NaN
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== day) return null
  return time / 86_400_000
}

/** The date 'YYYY-MM-DD' that lies `number` days after 1970-01-01. */
export const dayText = (number: number): string => new Date(number * 86_400_000).toISOString().slice(0, 10)

/** The epoch minute of 'YYYY-MM-DDTHH:MM' in a zone and how it was read; refuses what is not such a minute of 2000 to 2060. */
export const readLocal = (zone: Zone, text: string): Result<LocalReading, CalendarProblem> => {
  const parts = pattern.exec(text)
  if (parts === null) return refuse({ code: 'time-malformed', at: '', severity: 'stop', facts: { text } })
  const year = Number(parts[1])
  const hour = Number(parts[4])
  const minute = Number(parts[5])
  if (year < firstYear || year > lastYear) {
    return refuse({ code: 'year-out-of-range', at: '', severity: 'stop', facts: { text, firstYear, lastYear } })
  }
  const day = dayNumber(text.slice(0, 10))
  if (day === null || hour > 23 || minute > 59) return refuse({ code: 'no-such-time', at: '', severity: 'stop', facts: { text } })
  return ok(readWallMinute(zone, day * minutesADay + hour * 60 + minute))
}

/** The wall-clock minute 'YYYY-MM-DDTHH:MM' of an epoch minute in a zone. */
export const writeLocal = (zone: Zone, at: Minutes): string =>
  new Date((at + offsetAt(zone, at)) * 60_000).toISOString().slice(0, 16)

/** The date 'YYYY-MM-DD' of an epoch minute in a zone. */
export const dayOf = (zone: Zone, at: Minutes): string => writeLocal(zone, at).slice(0, 10)

/** The first minute of the day that many days after 1970-01-01, in a zone. */
export const startOfDay = (zone: Zone, day: number): Minutes => readWallMinute(zone, day * minutesADay).at
