import { dayNumber, dayText } from '../../../calendar/local-time.ts'
import { listed } from '../../words/languages.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { isWeekday, type WhenFound } from './day-parts.ts'

const said = listed.days

/** An event named only by a weekday or a day of the month comes on or after the day the garments are needed. */
export const onOrAfter = (day: string, need: string | undefined, isBare: boolean): string => {
  if (need === undefined || !isBare || day >= need) return day
  const weekday = (dayNumber(day) ?? 0) % 7
  const start = dayNumber(need) ?? 0
  return dayText(start + ((weekday - (start % 7) + 7) % 7))
}

/** A date of no month that comes before the day the garments are needed is that of its month. */
export const sameDateLater = (day: string, need: string | undefined): string => {
  if (need === undefined || day >= need) return day
  const moved = `${need.slice(0, 8)}${day.slice(8)}`
  return dayNumber(moved) !== null && moved >= need ? moved : day
}

/** "The 13th", "Saturday": no month and no year says which. */
export const isBare = (tokens: readonly Token[], { from, to }: WhenFound): boolean =>
  tokens
    .slice(from, to)
    .every(
      (token) =>
        isWeekday(token) ||
        /^\d{1,2}$/.test(token.text) ||
        isWord(token, ...said.ordinals, ...said.onThe, ...said.weekdayArticle),
    )
