import { monthName, weekdayName } from '../calendar/day-names.ts'
import type { Language } from '../units/language.ts'

/** A wall-clock minute in its parts; `weekday` counts from 0 = Sunday. */
export type Moment = {
  readonly year: number
  readonly month: number
  readonly day: number
  readonly hour: number
  readonly minute: number
  readonly weekday: number
}

/** A moment with the names of its day and month in the language of the paper. */
export type NamedMoment = Moment & { readonly dayName: string; readonly monthName: string }

const DAYS_BEFORE = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334]

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0

/** The day of the week of a Gregorian date, 0 = Sunday (1 January of year 1 was a Monday). */
export const weekdayOf = (year: number, month: number, day: number): number => {
  const past = year - 1
  const leapDay = month > 2 && isLeap(year) ? 1 : 0
  const days = past * 365 + Math.floor(past / 4) - Math.floor(past / 100) + Math.floor(past / 400)
  return (days + (DAYS_BEFORE[month - 1] ?? 0) + leapDay + day) % 7
}

/** The parts of 'YYYY-MM-DDTHH:MM', or of a bare day at midnight; anything else is a bug and thrown. */
export const readMoment = (text: string): Moment => {
  const found = /^(\d{4})-(\d{2})-(\d{2})(?:T(\d{2}):(\d{2}))?$/.exec(text)
  if (found === null) throw new RangeError(`not a local minute: ${text}`)
  const [year, month, day, hour, minute] = [1, 2, 3, 4, 5].map((part) => Number(found[part] ?? 0))
  if (year === undefined || month === undefined || day === undefined) throw new RangeError(`not a local minute: ${text}`)
  return { year, month, day, hour: hour ?? 0, minute: minute ?? 0, weekday: weekdayOf(year, month, day) }
}

/** 'YYYY-MM-DDTHH:MM' or a bare day, with its names in a language. */
export const namedMoment = (text: string, language: Language): NamedMoment => {
  const moment = readMoment(text)
  return { ...moment, dayName: weekdayName(language, moment.weekday), monthName: monthName(language, moment.month) }
}
