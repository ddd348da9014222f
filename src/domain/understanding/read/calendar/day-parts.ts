import { dayNumber, dayText } from '../../../calendar/local-time.ts'
import type { Language } from '../../../units/language.ts'
import { listed, months, weekdays } from '../../words/languages.ts'
import { isWord, type Token } from '../text/tokens.ts'

/** A day or an hour as it stands in a message. `days` and `hours` hold every reading. */
export type WhenFound =
  | { readonly kind: 'day'; readonly days: readonly string[]; readonly from: number; readonly to: number }
  | { readonly kind: 'hour'; readonly hours: readonly string[]; readonly from: number; readonly to: number }

export const indexIn = (lists: readonly (readonly string[])[], token: Token | undefined): number =>
  token?.kind === 'word' ? lists.findIndex((list) => list.includes(token.key.replace(/(?:\.|'s)$/, ''))) : -1

export const isMonth = (token: Token | undefined): boolean => indexIn(months, token) >= 0
export const isWeekday = (token: Token | undefined): boolean => indexIn(weekdays, token) >= 0

export type Today = { readonly today: string; readonly language: Language }

export const weekdayOf = (day: string): number => ((((dayNumber(day) ?? 0) + 4) % 7) + 7) % 7
export const shift = (day: string, by: number): string => dayText((dayNumber(day) ?? 0) + by)

const two = (value: number): string => String(value).padStart(2, '0')

/** The next such day of a month, from today on; null when the month has no such day. */
const nextDate = (today: string, month: number, date: number): string | null => {
  const year = Number(today.slice(0, 4))
  const day = [year, year + 1, year + 2, year + 3, year + 4]
    .map((one) => `${one}-${two(month)}-${two(date)}`)
    .find((one) => dayNumber(one) !== null && one >= today)
  return day ?? null
}

/** "The 25th": this month's if it has not passed, else next month's. */
export const nextOfMonth = (today: string, date: number): string | null => {
  const year = Number(today.slice(0, 4))
  const month = Number(today.slice(5, 7)) - 1
  for (let ahead = 0; ahead < 3; ahead += 1) {
    const at = month + ahead
    const day = `${year + Math.floor(at / 12)}-${two((at % 12) + 1)}-${two(date)}`
    if (dayNumber(day) !== null && day >= today) return day
  }
  return null
}

/** "Friday the 11th": this month's or the next one's, whichever is a Friday; where neither is, what the figure says. */
export const nextOnWeekday = (today: string, date: number, weekday: number): string | null => {
  const first = nextOfMonth(today, date)
  const second = first === null ? null : nextOfMonth(shift(first, 1), date)
  const fits = (day: string | null): boolean => day !== null && weekdayOf(day) === weekday
  return !fits(first) && fits(second) ? second : first
}

export const yearAt = (tokens: readonly Token[], at: number): { readonly year: number | null; readonly to: number } => {
  const skip = tokens[at]?.text === ',' || isWord(tokens[at], ...listed.days.ofYear) ? 1 : 0
  const token = tokens[at + skip]
  return token !== undefined && /^20\d\d$/.test(token.text)
    ? { year: Number(token.text), to: at + skip + 1 }
    : { year: null, to: at }
}

export const ordinal = (tokens: readonly Token[], at: number): number =>
  isWord(tokens[at], ...listed.days.ordinals) && tokens[at]?.start === tokens[at - 1]?.end ? at + 1 : at

export const dateOf = (token: Token | undefined): number | null => {
  if (isWord(token, ...listed.days.first)) return 1
  return token !== undefined && /^\d{1,2}$/.test(token.text) && Number(token.text) >= 1 && Number(token.text) <= 31
    ? Number(token.text)
    : null
}

export const settled = (
  { today }: Today,
  month: number,
  { date, year }: { date: number; year: number | null },
): string | null => {
  if (year === null) return nextDate(today, month + 1, date)
  const day = `${year}-${two(month + 1)}-${two(date)}`
  return dayNumber(day) === null ? null : day
}
