import { listed, weekdays } from '../../words/languages.ts'
import { isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { amountAt, later } from './counted-days.ts'
import { indexIn, shift, type WhenFound, weekdayOf } from './day-parts.ts'

const said = listed.days
const eves = phrasesOf(said.eves)
const backThan = phrasesOf(said.backThan)
const thatWeek = phrasesOf(said.thatWeek)
const isA = phrasesOf(said.isA)

type DayFound = Extract<WhenFound, { kind: 'day' }>

/** The day that was named last, where it is one day for sure: the event's. */
const lastNamed = (mentions: readonly WhenFound[]): string | null => {
  const last = mentions.findLast((one) => one.kind === 'day')
  const [event, ...more] = last?.kind === 'day' ? last.days : []
  return event === undefined || more.length > 0 ? null : event
}

const daysApart = (from: string, to: string): number => {
  for (let days = 0; days <= 366; days += 1) if (shift(from, days) === to) return days
  return 0
}

/** "Picture day March 18, so the day before", "un día antes". */
const eveAt = (tokens: readonly Token[], at: number, event: string): DayFound | null => {
  const to = phraseEnd(tokens, at, eves)
  return to === null ? null : { kind: 'day', days: [shift(event, -1)], from: at, to: phraseEnd(tokens, to, backThan) ?? to }
}

/** "Two days before that", "a week earlier", "dos días antes". */
const countedBack = (tokens: readonly Token[], at: number, event: string): DayFound | null => {
  const amount = amountAt(tokens[at])
  const ahead = amount === null || !isWord(tokens[at + 2], ...said.back) ? null : later(event, amount, tokens[at + 1])
  if (ahead === null) return null
  const to = phraseEnd(tokens, at + 3, backThan) ?? at + 3
  return { kind: 'day', days: [shift(event, -daysApart(event, ahead))], from: at, to }
}

/** "The Tuesday of that week", "el lunes de esa semana": weeks begin on Monday (ISO 8601). */
const inThatWeek = (tokens: readonly Token[], at: number, event: string): DayFound | null => {
  const weekday = indexIn(weekdays, tokens[at])
  const to = weekday < 0 ? null : phraseEnd(tokens, at + 1, thatWeek)
  if (to === null) return null
  const fromMonday = (day: number): number => (day + 6) % 7
  return { kind: 'day', days: [shift(event, fromMonday(weekday) - fromMonday(weekdayOf(event)))], from: at, to }
}

/** A day that is told by way of the day named last. */
export const dayFromEvent = (tokens: readonly Token[], at: number, mentions: readonly WhenFound[]): WhenFound | null => {
  const event = lastNamed(mentions)
  if (event === null) return null
  return eveAt(tokens, at, event) ?? countedBack(tokens, at, event) ?? inThatWeek(tokens, at, event)
}

/** "Sept 10 at 5pm, that's a Friday": said of the day named last, and no other. */
export const saysWhichWeekday = (tokens: readonly Token[], at: number, mentions: readonly WhenFound[]): boolean => {
  const event = lastNamed(mentions)
  const weekday = indexIn(weekdays, tokens[at])
  return event !== null && weekday === weekdayOf(event) && isA.some((keys) => phraseEnd(tokens, at - keys.length, [keys]) === at)
}
