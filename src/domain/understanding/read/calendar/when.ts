import { dayNumber } from '../../../calendar/local-time.ts'
import { clockWords, languages, listed, months, weekdays } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import {
  dateOf,
  indexIn,
  nextOfMonth,
  nextOnWeekday,
  ordinal,
  settled,
  shift,
  type Today,
  type WhenFound,
  weekdayOf,
  yearAt,
} from './day-parts.ts'
import { nthWeekday } from './nth-weekday.ts'

const said = listed.days
const nextBehind = phrasesOf(said.nextBehind)
const weekFrom = phrasesOf(said.weekFrom)
const goesOn = phrasesOf(said.goesOn)

/** "December 10", "Dec 10th, 2026", "10 de diciembre", "30 November". */
const monthDay = (tokens: readonly Token[], at: number, today: Today): WhenFound | null => {
  const month = indexIn(months, tokens[at])
  if (month >= 0) {
    const skip = isWord(tokens[at + 1], ...said.monthArticle) ? at + 2 : at + 1
    const date = dateOf(tokens[skip])
    if (date === null || tokens[skip + 1]?.text === ':' || sizeAt(tokens, skip + 1)?.size !== undefined) return null
    const year = yearAt(tokens, ordinal(tokens, skip + 1))
    const day = settled(today, month, { date, year: year.year })
    return day === null ? null : { kind: 'day', days: [day], from: at, to: year.to }
  }
  const date = dateOf(tokens[at])
  if (date === null) return null
  const skip = isWord(tokens[ordinal(tokens, at + 1)], ...said.ofMonth) ? ordinal(tokens, at + 1) + 1 : ordinal(tokens, at + 1)
  const named = indexIn(months, tokens[skip])
  if (named < 0) return null
  const year = yearAt(tokens, skip + 1)
  const day = settled(today, named, { date, year: year.year })
  return day === null ? null : { kind: 'day', days: [day], from: at, to: year.to }
}

/** "12/19", "3/4": both ways when both are days; the earlier-first order of the language comes first. */
const slashDay = (tokens: readonly Token[], at: number, { today, language }: Today): WhenFound | null => {
  const match = /^(\d{1,2})\/(\d{1,2})(?:\/(\d{2}|\d{4}))?$/.exec(tokens[at]?.text ?? '')
  if (match === null || isWord(tokens[at + 1], ...said.notSlash)) return null
  const [first, second] = [Number(match[1]), Number(match[2])]
  const year = match[3] === undefined ? null : Number(match[3].length === 2 ? `20${match[3]}` : match[3])
  const pairs = languages[language].basics.monthFirst
    ? [
        [first, second],
        [second, first],
      ]
    : [
        [second, first],
        [first, second],
      ]
  const days = pairs.flatMap(([month = 0, date = 0]) => {
    if (month < 1 || month > 12 || date < 1 || date > 31) return []
    return settled({ today, language }, month - 1, { date, year }) ?? []
  })
  return days.length === 0 ? null : { kind: 'day', days: [...new Set(days)], from: at, to: at + 1 }
}

const isoDay = (tokens: readonly Token[], at: number): WhenFound | null => {
  const text = tokens
    .slice(at, at + 5)
    .map((token) => token.text)
    .join('')
  const match = /^20\d\d-\d{2}-\d{2}/.exec(text)
  return match === null || dayNumber(match[0]) === null ? null : { kind: 'day', days: [match[0]], from: at, to: at + 5 }
}

const isNext = (token: Token | undefined): boolean => isWord(token, ...said.next)

/** "next Friday" said before that Friday of the same week may mean either; "this Friday" is the nearest. */
const weekdayDays = (today: string, weekday: number, next: boolean): readonly string[] => {
  const ahead = (weekday - weekdayOf(today) + 7) % 7
  const nearest = shift(today, ahead === 0 && next ? 7 : ahead)
  const sameWeek = (weekdayOf(today) + 6) % 7 < (weekday + 6) % 7
  return next && sameWeek ? [nearest, shift(nearest, 7)] : [nearest]
}

type DayFound = Extract<WhenFound, { kind: 'day' }>

const yearBefore = (day: string): string => `${Number(day.slice(0, 4)) - 1}${day.slice(4)}`

/** A date right beside a weekday: of two ways to read it the one on that weekday holds, and one that has just passed before a year's wait. */
const dateBeside = (
  tokens: readonly Token[],
  at: number,
  { today, weekday }: { today: Today; weekday: number },
): DayFound | null => {
  const beside = monthDay(tokens, at, today) ?? slashDay(tokens, at, today)
  if (beside?.kind !== 'day') return null
  const fitting = beside.days.filter((day) => weekdayOf(day) === weekday)
  if (fitting.length > 0) return { ...beside, days: fitting }
  const withYear = tokens.slice(beside.from, beside.to).some((token) => /^20\d\d$/.test(token.text))
  const lately = withYear ? [] : beside.days.map(yearBefore).filter((day) => weekdayOf(day) === weekday && day < today.today)
  return { ...beside, days: lately.length > 0 ? lately : beside.days }
}

/** "Friday the 11th", "viernes 18": the day of the month beside a weekday. */
const numberBeside = (
  tokens: readonly Token[],
  at: number,
  { today, weekday, marked }: { today: Today; weekday: number; marked: boolean },
): DayFound | null => {
  const date = dateOf(tokens[at])
  const to = ordinal(tokens, at + 1)
  if (date === null || isHourAhead(tokens, at) || !(marked || to > at + 1 || languages[today.language].basics.nounFirst))
    return null
  const day = nextOnWeekday(today.today, date, weekday)
  return day === null ? null : { kind: 'day', days: [day], from: at, to }
}

/** "Thursday December 10", "viernes 11", "next Friday", "a week from Friday": a date beside the weekday settles it. */
const weekdayDay = (tokens: readonly Token[], at: number, today: Today): WhenFound | null => {
  const week = phraseEnd(tokens, at, weekFrom)
  const start = week ?? (isWord(tokens[at], ...said.beforeWeekday) ? at + 1 : at)
  const weekday = indexIn(weekdays, tokens[start])
  if (weekday < 0) return null
  const comma = tokens[start + 1]?.text === ',' ? start + 2 : start + 1
  const skip = isWord(tokens[comma], ...said.weekdayArticle) ? comma + 1 : comma
  const beside =
    dateBeside(tokens, skip, { today, weekday }) ?? numberBeside(tokens, skip, { today, weekday, marked: skip > comma })
  if (beside !== null) return { ...beside, from: at }
  const later = phraseEnd(tokens, comma, nextBehind)
  const days = weekdayDays(today.today, weekday, isNext(tokens[at]) || later !== null)
  return {
    kind: 'day',
    days: week === null ? days : [shift(days[0] ?? today.today, 7)],
    from: at,
    to: later ?? start + 1,
  }
}

const isHourAhead = (tokens: readonly Token[], at: number): boolean =>
  tokens[at + 1]?.text === ':' || isWord(tokens[at + 1], 'am', 'pm', 'a.m.', 'p.m.')

const givesNumber = (tokens: readonly Token[], at: number): boolean => {
  const before = isWord(tokens[at - 1], ...said.givesBy) ? at - 2 : at - 1
  if (isWord(tokens[before], ...said.giving) || isWord(tokens[at - 1], ...said.alsoGives)) return true
  return isWord(tokens[at - 1], ...said.becomes) && !isWord(tokens[at - 2], ...said.happening)
}

/** "the 19th of January": its month stands behind it. */
const isOfMonth = (tokens: readonly Token[], at: number): boolean => {
  const to = ordinal(tokens, at + 1)
  return indexIn(months, tokens[isWord(tokens[to], ...said.ofMonth) ? to + 1 : to]) >= 0
}

/** "el 16" without an ending: at a pause or an hour, and no number that somebody is given. */
const isBareDate = (
  tokens: readonly Token[],
  at: number,
  { article, to }: { readonly article: boolean; readonly to: number },
): boolean => {
  if (!article || !isWord(tokens[at], ...said.bareArticle) || !endsThere(tokens, to)) return false
  return !(isWord(tokens[at], ...said.numberArticle) && givesNumber(tokens, at))
}

/** "the 25th", "el 16", "on the 3rd". */
const bareDay = (tokens: readonly Token[], at: number, scan: Today): WhenFound | null => {
  const article = isWord(tokens[at], ...said.weekdayArticle)
  const start = article ? at + 1 : at
  const date = isNumber(tokens[start]) || isWord(tokens[start], ...said.first) ? dateOf(tokens[start]) : null
  if (date === null) return null
  const to = ordinal(tokens, start + 1)
  if (article && (isWord(tokens[at - 1], ...said.with) || isOfMonth(tokens, start))) return null
  if (!article && isWord(tokens[at - 1], ...said.one)) return null
  if (isWord(tokens[to], ...said.notDays) || (to === start + 1 && !isBareDate(tokens, at, { article, to }))) return null
  const day = nextOfMonth(scan.today, date)
  return day === null ? null : { kind: 'day', days: [day], from: at, to }
}

/** "el 16" is a day only where it cannot be a player: at a pause, or before an hour. */
const endsThere = (tokens: readonly Token[], at: number): boolean => {
  const token = tokens[at]
  return (
    token === undefined || token.kind === 'break' || ['.', ','].includes(token.text) || phraseEnd(tokens, at, goesOn) !== null
  )
}

const ahead = phrasesOf(Object.keys(clockWords.ahead))

/** "Tomorrow", "pasado mañana"; "por la mañana" is a part of the day. */
const relativeDay = (tokens: readonly Token[], at: number, { today }: Today): WhenFound | null => {
  const to = phraseEnd(tokens, at, ahead)
  const phrase = tokens
    .slice(at, to ?? at)
    .map(({ key }) => key)
    .join(' ')
  const days = clockWords.ahead[phrase]
  const isPart = Object.hasOwn(clockWords.parts, phrase) && isWord(tokens[at - 1], ...said.partBefore)
  return to === null || days === undefined || isPart ? null : { kind: 'day', days: [shift(today, days)], from: at, to }
}

/** "The end of the month", "end of March", "a fin de mes", "finales de marzo": its last day. */
const endOfMonth = (tokens: readonly Token[], at: number, today: Today): WhenFound | null => {
  if (!isWord(tokens[at], ...said.monthEnd)) return null
  let to = at + 1
  while (isWord(tokens[to], ...said.monthEndOf)) to += 1
  const named = indexIn(months, tokens[to])
  if (to === at + 1 || (named < 0 && !isWord(tokens[to], ...said.month))) return null
  const month = named < 0 ? Number(today.today.slice(5, 7)) - 1 : named
  const days = [31, 30, 29, 28].flatMap((date) => settled(today, month, { date, year: null }) ?? [])
  const [first] = days
  return first === undefined
    ? null
    : { kind: 'day', days: [days.find((day) => day.slice(0, 7) === first.slice(0, 7)) ?? first], from: at, to: to + 1 }
}

/** The day that is named at a token, with all its readings, from today on. */
export const dayAt = (tokens: readonly Token[], at: number, today: Today): WhenFound | null =>
  isoDay(tokens, at) ??
  endOfMonth(tokens, at, today) ??
  nthWeekday(tokens, at, today) ??
  weekdayDay(tokens, at, today) ??
  monthDay(tokens, at, today) ??
  slashDay(tokens, at, today) ??
  bareDay(tokens, at, today) ??
  relativeDay(tokens, at, today)
