import { clockWords, listed } from '../../words/languages.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { isWeekday, type WhenFound } from './day-parts.ts'

const said = listed.hours
const { hours: hourWords, parts: partWords } = clockWords

type Part = 'morning' | 'afternoon' | 'evening' | null

const two = (value: number): string => String(value).padStart(2, '0')

/**
 * The readings of an hour without morning or evening: 1 to 7 is the afternoon, 12 is noon, 13 and more says itself, and 8 to 11
 * may be either.
 */
const hoursFor = (hour: number, minute: number, part: Part): readonly string[] => {
  const at = (value: number): string => `${two(value)}:${two(minute)}`
  if (hour > 23 || minute > 59) return []
  if (hour > 12 || hour === 0) return [at(hour)]
  if (part === 'morning') return [at(hour === 12 ? 0 : hour)]
  if (part !== null) return [at(hour === 12 ? 12 : hour + 12)]
  if (hour === 12) return ['12'].map(() => at(12))
  return hour < 8 ? [at(hour + 12)] : [at(hour), at(hour + 12)]
}

/** "am", "p.m.", "a. m." */
const halfAt = (tokens: readonly Token[], at: number): { readonly part: Part; readonly to: number } | null => {
  const key = tokens[at]?.key.replace(/\./g, '') ?? ''
  if (key === 'am') return { part: 'morning', to: dotted(tokens, at) }
  if (key === 'pm') return { part: 'afternoon', to: dotted(tokens, at) }
  if (!isWord(tokens[at + 1], 'm', 'm.')) return null
  if (key === 'a') return { part: 'morning', to: at + 2 }
  return key === 'p' ? { part: 'afternoon', to: at + 2 } : null
}

/** "in the afternoon", "de la tarde", "pm": the part of the day at a token. */
const partAt = (tokens: readonly Token[], at: number): { readonly part: Part; readonly to: number } => {
  const half = halfAt(tokens, at)
  if (half !== null) return half
  const lead = isWord(tokens[at], ...said.partLead) ? at + 1 : at
  const skip = lead > at && isWord(tokens[lead], ...said.partArticle) ? lead + 1 : lead
  const key = tokens[skip]?.key ?? ''
  const part = skip > at && Object.hasOwn(partWords, key) ? partWords[key] : undefined
  return part === undefined ? { part: null, to: at } : { part, to: skip + 1 }
}

const dotted = (tokens: readonly Token[], at: number): number =>
  tokens[at + 1]?.text === '.' && tokens[at]?.key.includes('.') ? at + 2 : at + 1

const noon = phrasesOf(said.noon)

const noonAt = (tokens: readonly Token[], at: number): WhenFound | null => {
  const to = phraseEnd(tokens, at, noon)
  return to === null ? null : { kind: 'hour', hours: ['12:00'], from: at, to }
}

const openers: readonly string[] = [...said.opens, '@']

type Clock = { readonly hour: number; readonly minute: number; readonly to: number; readonly sure: boolean }

const figureClock = (tokens: readonly Token[], at: number): Clock | null => {
  const token = tokens[at]
  if (token === undefined || !/^\d{1,2}$/.test(token.text)) return null
  const minute = tokens[at + 2]
  if (tokens[at + 1]?.text === ':' && minute !== undefined && /^\d{2}$/.test(minute.text)) {
    return { hour: Number(token.text), minute: Number(minute.text), to: at + 3, sure: true }
  }
  return { hour: Number(token.text), minute: 0, to: at + 1, sure: false }
}

/** "half past five", "quarter to 6". */
const pastClock = (tokens: readonly Token[], at: number): Clock | null => {
  const on = isWord(tokens[at + 2], ...said.article) ? at + 3 : at + 2
  const token = tokens[on]
  const hour = token === undefined ? undefined : isNumber(token) ? Number(token.text) : hourWords[token.key]
  if (hour === undefined || hour > 23 || !isWord(tokens[at + 1], ...said.past, ...said.to)) return null
  const to = on + 1
  if (isWord(tokens[at], ...said.half)) return { hour, minute: 30, to, sure: true }
  if (!isWord(tokens[at], ...said.quarter)) return null
  const before = { hour: hour === 1 ? 12 : hour - 1, minute: 45, to, sure: true }
  return isWord(tokens[at + 1], ...said.to) ? before : { hour, minute: 15, to, sure: true }
}

const wordClock = (tokens: readonly Token[], at: number): Clock | null => {
  const past = pastClock(tokens, at)
  if (past !== null) return past
  const token = tokens[at]
  const hour = token?.kind === 'word' && Object.hasOwn(hourWords, token.key) ? hourWords[token.key] : undefined
  return hour === undefined ? null : { hour, minute: 0, to: at + 1, sure: false }
}

const andHalf = phrasesOf(said.andHalf)
const andQuarter = phrasesOf(said.andQuarter)
const lessQuarter = phrasesOf(said.lessQuarter)
const sharp = phrasesOf(said.sharp)

/** "y media", "y cuarto", "menos cuarto", "o'clock", "en punto", "hrs" after an hour. */
const tailOf = (tokens: readonly Token[], clock: Clock): Clock => {
  const [half, quarter, exact] = [andHalf, andQuarter, sharp].map((phrases) => phraseEnd(tokens, clock.to, phrases) ?? 0)
  const less = phraseEnd(tokens, clock.to, lessQuarter)
  if (less !== null) return { ...clock, hour: clock.hour === 1 ? 12 : clock.hour - 1, minute: 45, to: less }
  if (half) return { ...clock, minute: 30, to: half }
  if (quarter) return { ...clock, minute: 15, to: quarter }
  return exact ? { ...clock, to: exact, sure: true } : clock
}

/** "about 14 shirts", "unas 20 playeras": a figure that counts what stands behind it. */
const countsThings = (token: Token | undefined): boolean =>
  token?.kind === 'word' && /\p{L}{3}s$/u.test(token.key) && !isWord(token, ...said.sharp) && !isWeekday(token)

/** "De la 8", "2 de la 2T": one o'clock alone has that article, and letters on a figure make it a size. */
const isOfThing = (tokens: readonly Token[], at: number, { hour, to }: Clock): boolean => {
  const glued = tokens[to]?.kind === 'word' && tokens[to]?.start === tokens[to - 1]?.end
  return glued || (hour !== 1 && isWord(tokens[at - 1], ...said.articleOfOne))
}

/** "A las 5", "at 5", "by 5"; "about 14 shirts" opens none. */
const isOpened = (tokens: readonly Token[], at: number, { to }: Clock): boolean => {
  const led = isWord(tokens[at - 1], ...said.article) && isWord(tokens[at - 2], ...said.lead)
  const other = said.notHours.includes(tokens[to]?.key ?? '') || countsThings(tokens[to])
  return led || (openers.includes(tokens[at - 1]?.key ?? '') && !other)
}

/** The hour that is named at a token: with its part of the day, a colon, or a word before it that makes it an hour. */
export const hourAt = (tokens: readonly Token[], at: number, bare = false): WhenFound | null => {
  const noon = noonAt(tokens, at)
  if (noon !== null) return noon
  const plain = figureClock(tokens, at) ?? wordClock(tokens, at)
  if (plain === null || tokens[at - 1]?.text === '#') return null
  const clock = tailOf(tokens, plain)
  const { part, to } = partAt(tokens, clock.to)
  const opened = (bare || isOpened(tokens, at, clock)) && !isOfThing(tokens, at, { ...clock, hour: plain.hour })
  if (part === null && !clock.sure && !opened) return null
  if (part === null && tokens[clock.to]?.text === '/') return null
  const hours = hoursFor(clock.hour, clock.minute, part)
  return hours.length === 0 ? null : { kind: 'hour', hours, from: at, to }
}
