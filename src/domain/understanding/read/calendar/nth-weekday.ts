import { clockWords, listed, months, weekdays } from '../../words/languages.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { indexIn, settled, shift, type Today, type WhenFound, weekdayOf } from './day-parts.ts'

const said = listed.days
const nth = clockWords.nthOfMonth

/** The month that is named at a token, "this month" among them; null where none is. */
const monthAt = (
  tokens: readonly Token[],
  at: number,
  { today }: Today,
): { readonly month: number; readonly to: number } | null => {
  let to = at
  while (isWord(tokens[to], ...said.weekdayArticle, ...said.nearest)) to += 1
  const named = indexIn(months, tokens[to])
  if (named >= 0) return { month: named, to: to + 1 }
  return isWord(tokens[to], ...said.month) ? { month: Number(today.slice(5, 7)) - 1, to: to + 1 } : null
}

const dayOf = (first: string, weekday: number, which: number): string => {
  const ahead = (weekday - weekdayOf(first) + 7) % 7
  if (which > 0) return shift(first, ahead + 7 * (which - 1))
  const fifth = shift(first, ahead + 28)
  return fifth.slice(0, 7) === first.slice(0, 7) ? fifth : shift(fifth, -7)
}

/** "The last Friday of March", "el segundo sábado de junio": a weekday counted within its month, the next such that has not passed. */
export const nthWeekday = (tokens: readonly Token[], at: number, scan: Today): WhenFound | null => {
  const key = tokens[at]?.key ?? ''
  const which = Object.hasOwn(nth, key) ? nth[key] : undefined
  const weekday = indexIn(weekdays, tokens[at + 1])
  if (which === undefined || weekday < 0 || !isWord(tokens[at + 2], ...said.ofMonth, ...said.inMonth)) return null
  const month = monthAt(tokens, at + 3, scan)
  if (month === null) return null
  const since = `${scan.today.slice(0, 8)}01`
  const first = settled({ ...scan, today: since }, month.month, { date: 1, year: null })
  const day = first === null ? null : dayOf(first, weekday, which)
  if (first === null || day === null) return null
  const next = day >= scan.today ? day : dayOf(`${Number(first.slice(0, 4)) + 1}${first.slice(4)}`, weekday, which)
  return { kind: 'day', days: [next], from: at, to: month.to }
}
