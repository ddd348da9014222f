import type { Fit, Size } from '../../garment/garment.ts'
import type { Meaning } from '../words/word-list.ts'
import type { Term } from './lexicon.ts'
import { cutAt, sizeAt } from './sizes.ts'
import { isNumber, isWord, type Token } from './tokens.ts'

/** What the reader of garments and decorations walks along: meanings, quoted or shouted words, lengths, figures, pauses. */
export type Item = (
  | Meaning
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'length'; readonly micrometres: number }
  | { readonly kind: 'figure'; readonly text: string }
  | { readonly kind: 'cut'; readonly fit: Fit }
  | { readonly kind: 'size'; readonly size: Size; readonly fit: Fit | undefined }
  | { readonly kind: 'of' }
  | { readonly kind: 'other'; readonly key: string }
  | { readonly kind: 'comma' }
  | { readonly kind: 'stop' }
) & { readonly from: number; readonly to: number; readonly key: string }

const perUnit: Readonly<Record<'in' | 'cm' | 'mm', number>> = { in: 25_400, cm: 10_000, mm: 1_000 }
const fractions: Readonly<Record<string, number>> = {
  quarter: 0.25,
  half: 0.5,
  cuarto: 0.25,
  media: 0.5,
  medio: 0.5,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  eight: 8,
  ten: 10,
  twelve: 12,
  una: 1,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  seis: 6,
  ocho: 8,
  diez: 10,
  doce: 12,
}

const figureOf = (text: string): number | null => {
  const [over, under] = text.split('/')
  if (under !== undefined) return Number(under) > 0 ? Number(over) / Number(under) : null
  return Number.isFinite(Number(text)) ? Number(text) : null
}

const unitAt = (
  terms: ReadonlyMap<number, Term>,
  at: number,
): { readonly unit: 'in' | 'cm' | 'mm'; readonly to: number } | null => {
  const term = terms.get(at)
  return term?.meaning.kind === 'unit' ? { unit: term.meaning.id, to: term.to } : null
}

/** "8 1/2 inch", "20 cm", "a quarter inch", '8"', "10-inch": longer than 24 in is no length on a garment ("44 in gold"). */
const lengthAt = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number) => {
  const token = tokens[at]
  if (token === undefined) return null
  const whole = isNumber(token) ? figureOf(token.text) : (fractions[token.key] ?? null)
  if (whole === null) return null
  const next = tokens[at + 1]
  const part = next !== undefined && isNumber(next) && next.text.includes('/') ? figureOf(next.text) : null
  let to = part === null ? at + 1 : at + 2
  if (tokens[to]?.text === '-' || isWord(tokens[to], 'de', 'an', 'a', 'of')) to += 1
  const unit = unitAt(terms, to)
  if (unit === null) return null
  const micrometres = Math.round((whole + (part ?? 0)) * perUnit[unit.unit])
  return micrometres > 0 && micrometres <= 610_000 ? { micrometres, to: unit.to } : null
}

const isShouted = (token: Token | undefined): boolean =>
  token?.kind === 'word' && /^\p{Lu}[\p{Lu}\p{M}'&.-]*\p{Lu}$/u.test(token.text)

/** Capitals that are no words on a shirt. */
const notText: readonly string[] = [
  'fc',
  'rfc',
  'sc',
  'cf',
  'ss',
  'po',
  'ok',
  'asap',
  'usa',
  'u',
  'ab',
  'htv',
  'csv',
  'pdf',
  'his',
  'her',
  'both',
  'all',
  'exactly',
  'not',
  'please',
  'and',
  'xv',
]

/** A run of shouted words: what is to be written, unless everything is shouted. */
const shoutAt = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number): number => {
  let to = at
  while (isShouted(tokens[to]) && sizeAt(tokens, to) === null && terms.get(to) === undefined) to += 1
  const words = tokens.slice(at, to)
  const only = words.length === 1 ? words[0] : undefined
  if (only !== undefined && notText.includes(only.key)) return at
  return to
}

const quoteAt = (tokens: readonly Token[], at: number): number => {
  if (tokens[at]?.text !== '"' || isNumber(tokens[at - 1])) return at
  for (let to = at + 1; to < tokens.length && to < at + 12; to += 1) {
    if (tokens[to]?.kind === 'break') return at
    if (tokens[to]?.text === '"' && to > at + 1) return to + 1
  }
  return at
}

const pauses: Readonly<Record<string, 'comma' | 'stop'>> = {
  ',': 'comma',
  ';': 'comma',
  ':': 'comma',
  '(': 'comma',
  ')': 'comma',
  '.': 'stop',
  '!': 'stop',
  '?': 'comma',
}

type Sentence = {
  readonly text: string
  readonly tokens: readonly Token[]
  readonly terms: readonly Term[]
  readonly shouted: boolean
}

const plainItem = (token: Token, at: number): Item => {
  const place = { from: at, to: at + 1, key: token.key }
  if (token.kind === 'break') return { kind: 'stop', ...place }
  if (token.kind === 'number') return { kind: 'figure', text: token.text, ...place }
  const pause = pauses[token.text]
  if (pause !== undefined) return { kind: pause, ...place }
  if (isWord(token, 'of', 'del')) return { kind: 'of', ...place }
  return { kind: 'other', ...place }
}

const textItem = ({ text, tokens }: Sentence, at: number, to: number): Item => {
  const raw = text.slice(tokens[at]?.start, tokens[to - 1]?.end).replace(/^"|"$/g, '')
  return { kind: 'text', text: raw.trim().replace(/\s+/g, ' ').slice(0, 60), from: at, to, key: '' }
}

/** Words that are said of a garment's cut, not of the players. */
const isCut = (token: Token): boolean =>
  /^(?:youth|adult|adults|women'?s|womens|ladies|men'?s|mens|unisex|toddler|juvenil|juveniles|dama|caballero|adulto)$/.test(
    token.key,
  )

/** The items of a piece of prose in their order. `shouted`: all of it is in capitals, so that capitals mean nothing. */
export const itemsOf = (sentence: Sentence): readonly Item[] => {
  const { tokens, shouted } = sentence
  const terms = new Map(sentence.terms.map((term) => [term.from, term]))
  const items: Item[] = []
  let at = 0
  while (at < tokens.length) {
    const token = tokens[at]
    if (token === undefined) break
    const length = lengthAt(tokens, terms, at)
    const quoted = quoteAt(tokens, at)
    const shout = shouted ? at : shoutAt(tokens, terms, at)
    const term = terms.get(at)
    const size = sizeAt(tokens, at)
    const cut = size === null && term === undefined && isCut(token) ? cutAt(tokens, at) : null
    if (size?.size !== undefined && term?.meaning.kind !== 'colour')
      items.push({ kind: 'size', size: size.size, fit: size.fit, from: at, to: size.to, key: token.key })
    else if (cut !== null) items.push({ kind: 'cut', fit: cut.fit, from: at, to: cut.to, key: token.key })
    else if (length !== null) items.push({ kind: 'length', micrometres: length.micrometres, from: at, to: length.to, key: '' })
    else if (quoted > at + 2) items.push(textItem(sentence, at, quoted))
    else if (shout > at) items.push(textItem(sentence, at, shout))
    else if (term !== undefined && term.meaning.kind !== 'unit')
      items.push({ ...term.meaning, from: at, to: term.to, key: token.key })
    else items.push(plainItem(token, at))
    at = items.at(-1)?.to ?? at + 1
  }
  return items
}
