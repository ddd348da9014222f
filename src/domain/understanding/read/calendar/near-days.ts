import { dayNumber } from '../../../calendar/local-time.ts'
import { listed } from '../../words/languages.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { countedDay } from './counted-days.ts'
import { dateOf, isWeekday, ordinal, shift, type Today, type WhenFound, weekdayOf } from './day-parts.ts'
import { dayFromEvent, saysWhichWeekday } from './days-back.ts'
import { dayAt } from './when.ts'

const said = listed.days

type DayFound = Extract<WhenFound, { kind: 'day' }>

const two = (value: number): string => String(value).padStart(2, '0')

/** "the 14th or 15th", "Friday or Saturday": another day it may be. */
const orDay = (tokens: readonly Token[], first: DayFound, scan: Today): DayFound => {
  if (!isWord(tokens[first.to], ...said.or)) return first
  const at = isWord(tokens[first.to + 1], ...said.dateArticle) ? first.to + 2 : first.to + 1
  const date = dateOf(tokens[at])
  const [day = ''] = first.days
  const sameMonth = date === null ? '' : `${day.slice(0, 8)}${two(date)}`
  const numbered = tokens.slice(first.from, first.to).some((token) => token.kind === 'number')
  if (numbered && date !== null && tokens[at + 1]?.text !== ':' && dayNumber(sameMonth) !== null && sameMonth >= scan.today)
    return { ...first, days: [...new Set([...first.days, sameMonth])], to: ordinal(tokens, at + 1) }
  const other = dayAt(tokens, first.to + 1, scan)
  return other?.kind === 'day' ? { ...first, days: [...new Set([...first.days, ...other.days])], to: other.to } : first
}

/** "Saturday April 3, pick up the Thursday before": a weekday counted back from the day named last. */
const dayBefore = (tokens: readonly Token[], found: DayFound, mentions: readonly WhenFound[]): DayFound => {
  const last = mentions.findLast((one) => one.kind === 'day')
  const [event] = last?.kind === 'day' ? last.days : []
  const weekday = tokens.slice(found.from, found.to).some(isWeekday)
  if (event === undefined || !weekday || !isWord(tokens[found.to], ...said.before)) return found
  const back = (weekdayOf(event) - weekdayOf(found.days[0] ?? event) + 7) % 7
  return { ...found, days: [shift(event, back === 0 ? -7 : -back)], to: found.to + 1 }
}

export const dayIn = (
  tokens: readonly Token[],
  at: number,
  { scan, before }: { readonly scan: Today; readonly before: readonly WhenFound[] },
): WhenFound | null => {
  const counted = dayFromEvent(tokens, at, before)
  if (counted !== null) return counted
  if (saysWhichWeekday(tokens, at, before)) return null
  const found = countedDay(tokens, at, scan) ?? dayAt(tokens, at, scan)
  return found?.kind === 'day' ? dayBefore(tokens, orDay(tokens, found, scan), before) : found
}
