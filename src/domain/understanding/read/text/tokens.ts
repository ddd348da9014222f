import { cutWords, listed, spoken, whole } from '../../words/languages.ts'
/** A word, a number, a sign or a line break, with its place in the text and its form for looking up. */
export type Token = {
  readonly kind: 'word' | 'number' | 'sign' | 'break'
  readonly text: string
  readonly key: string
  readonly start: number
  readonly end: number
}

const foldSign = (sign: string): string => {
  const base = sign.normalize('NFD')[0] ?? sign
  const lower = base.toLowerCase()
  return lower.length === sign.length ? lower : sign
}

/** Lower case without accents, sign by sign, so that places in the folded text are places in the text. */
export const fold = (text: string): string => text.replace(/[^a-z0-9\s]/g, foldSign)

const pattern = /\n|[\p{L}\p{M}]+(?:['&.-][\p{L}\p{M}]+)*\.?|\d+(?:\.\d+|(?:\/\d+)+)?|[^\s]/gu

const kindOf = (text: string): Token['kind'] => {
  if (text === '\n') return 'break'
  if (/^\d/.test(text)) return 'number'
  return /^[\p{L}\p{M}]/u.test(text) ? 'word' : 'sign'
}

const shortened = new RegExp(`^(?:[js]r|${spoken.players.shortened})\\.$`, 'iu')
/** Words that begin a sentence, not a surname after an initial. */
const openers = new Set(listed.players.openers)
const initial = /^\p{L}\.$/u
const cut = new RegExp(`(?:^|[\\s(])${spoken.players.cutWords}$`, 'iu')

/** "1 L. De hombre: 3 M", "4 M. Women: 2": a cut begins what follows. */
const isCut = (next: string, behind: string | undefined): boolean => {
  const word = listed.players.cutLead.includes(fold(next)) ? behind : next
  return word !== undefined && Object.hasOwn(cutWords, fold(word))
}

/** "YM." at the end of a sentence is YM and a full stop; "Jr." keeps its own, and "J." where a name follows: "4 M. Hombre: 5 L" has none. */
const keepsStop = (text: string, all: string, start: number): boolean => {
  if (shortened.test(text)) return true
  if (!initial.test(text)) return false
  const [next, behind] =
    all
      .slice(start + 2, start + 40)
      .match(/^ (\p{Lu}[\p{L}']*)(?: (\p{L}+))?/u)
      ?.slice(1) ?? []
  const follows = next !== undefined && !openers.has(next.toLowerCase()) && !isCut(next, behind)
  return follows && !cut.test(all.slice(Math.max(0, start - 10), start).trimEnd())
}

const split = (text: string, start: number, all: string): readonly Token[] => {
  const make = (part: string, at: number): Token => ({
    kind: kindOf(part),
    text: part,
    key: whole(fold(part)),
    start: at,
    end: at + part.length,
  })
  if (text.length > 1 && text.endsWith('.') && !keepsStop(text, all, start)) {
    const word = text.slice(0, -1)
    return [make(word, start), make('.', start + word.length)]
  }
  return [make(text, start)]
}

/** The tokens of a text, in order; linear in its length. */
export const tokensOf = (text: string): readonly Token[] =>
  [...text.matchAll(pattern)].flatMap((match) => split(match[0], match.index, text))

/** Any of these, as whole words. */
export const anyOf = (...sources: readonly string[]): RegExp => new RegExp(`\\b(?:${sources.join('|')})\\b`)

/** The text with a stretch of it blanked out; all other places stay what they were. */
export const blanked = (text: string, from: number, to: number): string =>
  `${text.slice(0, from)}${' '.repeat(Math.max(0, to - from))}${text.slice(to)}`

export const isNumber = (token: Token | undefined): boolean => token?.kind === 'number'
export const isWord = (token: Token | undefined, ...keys: readonly string[]): boolean =>
  token !== undefined && keys.includes(token.key)

/** Phrases of several words, longest first, as the keys that their tokens have. */
export const phrasesOf = (phrases: readonly string[]): readonly (readonly string[])[] =>
  phrases.map((phrase) => phrase.split(' ')).toSorted((a, b) => b.length - a.length)

/** Where the first of these phrases that stands at a token ends; null when none does. */
export const phraseEnd = (tokens: readonly Token[], at: number, phrases: readonly (readonly string[])[]): number | null => {
  const found = phrases.find((keys) => keys.every((key, index) => tokens[at + index]?.key === key))
  return found === undefined ? null : at + found.length
}

/** A word that starts with a capital. */
export const isCapital = (token: Token | undefined): boolean => token?.kind === 'word' && /^\p{Lu}/u.test(token.text)

/** A pause in the place of a token that was understood already, or that states nothing. */
export const paused = (token: Token): Token => ({ ...token, kind: 'sign', text: ',', key: ',' })

/** Where a sentence ends. */
export const isEnd = (token: Token): boolean => token.kind === 'break' || ['.', ';', '!'].includes(token.text)
