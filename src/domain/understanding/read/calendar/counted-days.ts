import { dayNumber } from '../../../calendar/local-time.ts'
import { clockWords, listed, weekdays, wordValues } from '../../words/languages.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { indexIn, isWeekday, shift, type Today, type WhenFound, weekdayOf } from './day-parts.ts'

const said = listed.days
const ahead = phrasesOf(Object.keys(clockWords.ahead))
const from = phrasesOf(said.countedFrom)
const lead = phrasesOf(said.countLead)

type Base = { readonly day: string; readonly to: number }

/** The day that is counted from: "now", "tomorrow", "this Friday". */
const baseAt = (tokens: readonly Token[], at: number, { today }: Today): Base | null => {
  if (isWord(tokens[at], ...said.now)) return { day: today, to: at + 1 }
  const start = isWord(tokens[at], ...said.weekdayArticle, ...said.nearest) ? at + 1 : at
  const weekday = indexIn(weekdays, tokens[start])
  if (weekday >= 0) return { day: shift(today, (weekday - weekdayOf(today) + 7) % 7), to: start + 1 }
  const to = phraseEnd(tokens, start, ahead)
  const days =
    clockWords.ahead[
      tokens
        .slice(start, to ?? start)
        .map(({ key }) => key)
        .join(' ')
    ]
  return to === null || days === undefined ? null : { day: shift(today, days), to }
}

/** How many, of days or weeks; null where the word is no amount. */
export const amountAt = (token: Token | undefined): number | null => {
  if (token === undefined) return null
  if (isNumber(token)) return /^[1-9]\d?$/.test(token.text) ? Number(token.text) : null
  return wordValues.dropped[token.key] ?? wordValues.figures[token.key] ?? null
}

const monthsLater = (day: string, months: number): string => {
  const month = Number(day.slice(5, 7)) - 1 + months
  const start = `${Number(day.slice(0, 4)) + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, '0')}`
  const date = Number(day.slice(8))
  const dates = [date, 30, 29, 28].filter((one) => one <= date)
  return dates.map((one) => `${start}-${String(one).padStart(2, '0')}`).find((one) => dayNumber(one) !== null) ?? day
}

/** So many of a unit later; null where the word is no unit. */
export const later = (day: string, amount: number, unit: Token | undefined): string | null => {
  if (isWord(unit, ...said.monthUnit)) return monthsLater(day, amount)
  const days = isWord(unit, ...said.dayUnit) ? 1 : isWord(unit, ...said.weekUnit) ? 7 : isWord(unit, ...said.fortnight) ? 14 : 0
  return days === 0 ? null : shift(day, amount * days)
}

/** Days that are said for whole weeks: "de hoy en ocho", "del viernes en quince". */
const weeks: Readonly<Record<number, number>> = { 8: 7, 15: 14 }

/** "De hoy en dos semanas", "de mañana en ocho días". */
const ledDay = (tokens: readonly Token[], at: number, today: Today): WhenFound | null => {
  const start = phraseEnd(tokens, at, lead)
  const base = start === null ? null : baseAt(tokens, start, today)
  if (base === null || !isWord(tokens[base.to], ...said.countIn)) return null
  const amount = amountAt(tokens[base.to + 1])
  if (amount === null) return null
  const unit = tokens[base.to + 2]
  const whole = weeks[amount]
  const inDays = isWord(unit, ...said.dayUnit)
  if (whole !== undefined && (inDays || later(base.day, amount, unit) === null))
    return { kind: 'day', days: [shift(base.day, whole)], from: at, to: base.to + (inDays ? 3 : 2) }
  const day = later(base.day, amount, unit)
  return day === null ? null : { kind: 'day', days: [day], from: at, to: base.to + 3 }
}

/** "El viernes en ocho", "este sábado en quince": a weekday and whole weeks behind it, without a word that leads to it. */
const weekdayIn = (tokens: readonly Token[], at: number, today: Today): WhenFound | null => {
  const base = isWeekday(tokens[at]) || isWeekday(tokens[at + 1]) ? baseAt(tokens, at, today) : null
  if (base === null || !isWord(tokens[base.to], ...said.countIn)) return null
  const whole = weeks[amountAt(tokens[base.to + 1]) ?? 0]
  const inDays = isWord(tokens[base.to + 2], ...said.dayUnit)
  const to = inDays ? base.to + 3 : base.to + 2
  const ends = tokens[to]?.kind !== 'word' || isWord(tokens[to], ...said.behindDay)
  return whole === undefined || !ends ? null : { kind: 'day', days: [shift(base.day, whole)], from: at, to }
}

/** A day that is counted from another: "two weeks from tomorrow", "ten days from now", "de hoy en ocho". */
export const countedDay = (tokens: readonly Token[], at: number, today: Today): WhenFound | null => {
  const led = ledDay(tokens, at, today)
  if (led !== null) return led
  const behind = weekdayIn(tokens, at, today)
  if (behind !== null) return behind
  const amount = amountAt(tokens[at])
  const start = amount === null ? null : phraseEnd(tokens, at + 2, from)
  const base = start === null ? null : baseAt(tokens, start, today)
  const day = base === null || amount === null ? null : later(base.day, amount, tokens[at + 1])
  return base === null || day === null ? null : { kind: 'day', days: [day], from: at, to: base.to }
}
