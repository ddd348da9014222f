import type { WhenFound } from './day-parts.ts'
import { isNumber, isWord, type Token } from './tokens.ts'

const hourWords: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  una: 1,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  seis: 6,
  siete: 7,
  ocho: 8,
  nueve: 9,
  diez: 10,
  once: 11,
  doce: 12,
}

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

const partWords: Readonly<Record<string, Exclude<Part, null>>> = {
  morning: 'morning',
  manana: 'morning',
  afternoon: 'afternoon',
  tarde: 'afternoon',
  evening: 'evening',
  night: 'evening',
  noche: 'evening',
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
  const lead = isWord(tokens[at], 'in', 'de', 'por', 'at', 'en') ? at + 1 : at
  const skip = lead > at && isWord(tokens[lead], 'the', 'la') ? lead + 1 : lead
  const key = tokens[skip]?.key ?? ''
  const part = skip > at && Object.hasOwn(partWords, key) ? partWords[key] : undefined
  return part === undefined ? { part: null, to: at } : { part, to: skip + 1 }
}

const dotted = (tokens: readonly Token[], at: number): number =>
  tokens[at + 1]?.text === '.' && tokens[at]?.key.includes('.') ? at + 2 : at + 1

const noonAt = (tokens: readonly Token[], at: number): WhenFound | null => {
  if (isWord(tokens[at], 'noon', 'midday', 'mediodia')) return { kind: 'hour', hours: ['12:00'], from: at, to: at + 1 }
  if (isWord(tokens[at], 'medio') && isWord(tokens[at + 1], 'dia'))
    return { kind: 'hour', hours: ['12:00'], from: at, to: at + 2 }
  return null
}

const openers: readonly string[] = ['at', 'by', 'before', 'around', 'about', 'until', 'till', '@', 'after', 'past']

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
  const token = tokens[at + 2]
  const hour = token === undefined ? undefined : isNumber(token) ? Number(token.text) : hourWords[token.key]
  if (hour === undefined || hour > 23 || !isWord(tokens[at + 1], 'past', 'to')) return null
  const to = at + 3
  if (isWord(tokens[at], 'half')) return { hour, minute: 30, to, sure: true }
  if (!isWord(tokens[at], 'quarter')) return null
  const before = { hour: hour === 1 ? 12 : hour - 1, minute: 45, to, sure: true }
  return isWord(tokens[at + 1], 'to') ? before : { hour, minute: 15, to, sure: true }
}

const wordClock = (tokens: readonly Token[], at: number): Clock | null => {
  const past = pastClock(tokens, at)
  if (past !== null) return past
  const token = tokens[at]
  const hour = token?.kind === 'word' && Object.hasOwn(hourWords, token.key) ? hourWords[token.key] : undefined
  return hour === undefined ? null : { hour, minute: 0, to: at + 1, sure: false }
}

/** "y media", "y cuarto", "o'clock", "en punto", "hrs" after an hour. */
const tailOf = (tokens: readonly Token[], clock: Clock): Clock => {
  const at = clock.to
  if (isWord(tokens[at], 'y') && isWord(tokens[at + 1], 'media')) return { ...clock, minute: 30, to: at + 2 }
  if (isWord(tokens[at], 'y') && isWord(tokens[at + 1], 'cuarto')) return { ...clock, minute: 15, to: at + 2 }
  if (isWord(tokens[at], "o'clock", 'oclock', 'hrs', 'horas', 'h', 'sharp')) return { ...clock, to: at + 1, sure: true }
  if (isWord(tokens[at], 'en') && isWord(tokens[at + 1], 'punto')) return { ...clock, to: at + 2, sure: true }
  return clock
}

const notHours: readonly string[] = [
  'inch',
  'inches',
  'in',
  'cm',
  'xl',
  'x',
  't',
  'players',
  'jerseys',
  'of',
  'tees',
  'small',
  'medium',
  'large',
  'dias',
  'days',
  'weeks',
  'anos',
  'washes',
  'de',
]

/** The hour that is named at a token: with its part of the day, a colon, or a word before it that makes it an hour. */
export const hourAt = (tokens: readonly Token[], at: number, bare = false): WhenFound | null => {
  const noon = noonAt(tokens, at)
  if (noon !== null) return noon
  const plain = figureClock(tokens, at) ?? wordClock(tokens, at)
  if (plain === null || tokens[at - 1]?.text === '#') return null
  const clock = tailOf(tokens, plain)
  const { part, to } = partAt(tokens, clock.to)
  const spanish =
    isWord(tokens[at - 1], 'las', 'la') && isWord(tokens[at - 2], 'a', 'para', 'de', 'hasta', 'sobre', 'antes', 'desde')
  const opened =
    bare || spanish || (openers.includes(tokens[at - 1]?.key ?? '') && !notHours.includes(tokens[clock.to]?.key ?? ''))
  if (part === null && !clock.sure && !opened) return null
  if (part === null && tokens[clock.to]?.text === '/') return null
  const hours = hoursFor(clock.hour, clock.minute, part)
  return hours.length === 0 ? null : { kind: 'hour', hours, from: at, to }
}
