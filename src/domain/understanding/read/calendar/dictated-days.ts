import { listed, wordValues } from '../../words/languages.ts'
import { spokenAt } from '../text/spoken-figures.ts'
import { isCapital, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { isMonth, isWeekday } from './day-parts.ts'

type DaySpoken = { readonly date: string; readonly from: number; readonly to: number; readonly ordinal: boolean }

const ordinals: Readonly<Record<string, number>> = wordValues.ordinals

const ordinalOf = (key: string | undefined): number | null =>
  key !== undefined && Object.hasOwn(ordinals, key) ? (ordinals[key] ?? null) : null

/** "Nineteenth", "twenty-second", "thirty first". */
const ordinalAt = (tokens: readonly Token[], at: number): DaySpoken | null => {
  const own = ordinalOf(tokens[at]?.key)
  if (own !== null) return { date: String(own), from: at, to: at + 1, ordinal: true }
  const [tens = '', joined] = (tokens[at]?.key ?? '').split('-')
  const ten = wordValues.figures[tens]
  const one = ordinalOf(joined ?? tokens[at + 1]?.key)
  if ((ten !== 20 && ten !== 30) || one === null || one > 9) return null
  return { date: String(ten + one), from: at, to: joined === undefined ? at + 2 : at + 1, ordinal: true }
}

const dayAt = (tokens: readonly Token[], at: number): DaySpoken | null => {
  const ordinal = ordinalAt(tokens, at)
  if (ordinal !== null) return ordinal
  const spoken = spokenAt(tokens, at)
  return spoken === null || /^0/.test(spoken.figure) ? null : { date: spoken.figure, from: at, to: spoken.to, ordinal: false }
}

const said = listed.days

/** "By the nineteenth": beyond the first few, which count other things, and nobody's grade or place. */
const isBareDay = (tokens: readonly Token[], { date, from, to, ordinal }: DaySpoken): boolean =>
  ordinal &&
  Number(date) > 3 &&
  isWord(tokens[from - 1], ...said.dateArticle) &&
  isWord(tokens[from - 2], ...said.dayLead) &&
  !isWord(tokens[to], ...said.notDays)

/** Where the day ends that is named at these places: beside a month, or right behind a weekday. */
const isDay = (tokens: readonly Token[], day: DaySpoken): boolean => {
  if (Number(day.date) < 1 || Number(day.date) > 31) return false
  const behind = isWord(tokens[day.to], ...said.ofMonth) ? day.to + 1 : day.to
  const article = isWord(tokens[day.from - 1], ...said.weekdayArticle) ? day.from - 2 : day.from - 1
  if (isMonth(tokens[behind]) && (behind > day.to || day.ordinal) && !isCapital(tokens[day.from])) return true
  const next = tokens[day.to]
  const ends = next === undefined || next.kind !== 'word' || isWord(next, ...said.behindDay)
  if (isMonth(tokens[article])) return day.ordinal || ends
  return (isWeekday(tokens[article]) && (day.ordinal || ends)) || isBareDay(tokens, day)
}

/** Days that are spoken in words, written in figures: "the nineteenth of January", "el cinco de enero", "martes veintidós". */
export const withDictatedDays = (text: string): string => {
  const tokens = tokensOf(text)
  const days: DaySpoken[] = []
  for (const at of tokens.keys()) {
    const day = at < (days.at(-1)?.to ?? 0) ? null : dayAt(tokens, at)
    if (day !== null && isDay(tokens, day)) days.push(day)
  }
  return days.reduceRight((left, { date, from, to, ordinal }) => {
    const [start, end] = [tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0]
    return `${left.slice(0, start)}${date}${ordinal ? 'th' : ''}${left.slice(end)}`
  }, text)
}
