import type { Fit, Size } from '../../../garment/garment.ts'
import { faceWords, listed, wordValues } from '../../words/languages.ts'
import type { Meaning, Spot } from '../../words/word-list.ts'
import { cutAt, sizeAt } from '../sizes/sizes.ts'
import type { Term } from '../text/lexicon.ts'
import { spokenAt } from '../text/spoken-figures.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'
import { countedAt, isToldText, quoteAt, shoutAt, titleAt, yearAt } from './written.ts'

/** What is of every player. */
export type Content = Extract<Meaning, { kind: 'content' }>['id']

/** What the reader of garments and decorations walks along: meanings, quoted or shouted words, lengths, figures, pauses. */
export type Item = (
  | Meaning
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'length'; readonly micrometres: number; readonly unit: number }
  | { readonly kind: 'figure'; readonly text: string }
  /** A place with the height that was said of it. */
  | (Extract<Meaning, { kind: 'place' }> & { readonly micrometres: number })
  | { readonly kind: 'cut'; readonly fit: Fit }
  | { readonly kind: 'size'; readonly size: Size; readonly fit: Fit | undefined }
  /** What is not to be pressed: these things, at these places where any are said, or on none of the garments (`both`); no thing is everything there. */
  | { readonly kind: 'off'; readonly contents: readonly Content[]; readonly spots: readonly Spot[]; readonly both?: boolean }
  | { readonly kind: 'of' }
  | { readonly kind: 'other'; readonly key: string }
  | { readonly kind: 'comma' }
  | { readonly kind: 'stop' }
) & { readonly from: number; readonly to: number; readonly key: string }

const perUnit: Readonly<Record<'in' | 'cm' | 'mm', number>> = { in: 25_400, cm: 10_000, mm: 1_000 }
const fractions = wordValues.lengths

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

type Termed = { readonly tokens: readonly Token[]; readonly terms: ReadonlyMap<number, Term> }

/** "4 in front 8 in back", "8 front 12 back inches": a figure before a place has the unit that is part of the place's words or stands behind it. */
const unitBeyond = ({ tokens, terms }: Termed, at: number): { readonly unit: 'in' | 'cm' | 'mm'; readonly to: number } | null => {
  const place = terms.get(at + 1)
  if (place?.meaning.kind !== 'place' || !/^(?:[2-9]|1\d)(?:\.\d)?$/.test(tokens[at]?.text ?? '')) return null
  if (isWord(tokens[at + 1], ...listed.things.unitAhead)) return { unit: 'in', to: at + 1 }
  const behind = unitAt(terms, place.to) ?? (isNumber(tokens[place.to]) ? unitBeyond({ tokens, terms }, place.to) : null)
  return behind === null ? null : { unit: behind.unit, to: at + 1 }
}

/** "and a half", "y media": a part of a unit that is joined to whole ones. */
const fractionAt = (tokens: readonly Token[], at: number): { readonly value: number; readonly to: number } | null => {
  if (!isWord(tokens[at], ...listed.again.and)) return null
  const to = isWord(tokens[at + 1], ...listed.things.ofUnit) ? at + 2 : at + 1
  const value = fractions[tokens[to]?.key ?? ''] ?? 1
  return value < 1 ? { value, to: to + 1 } : null
}

/** "Dieciocho centímetros", "twenty five cm": an amount that is told in words, as jersey numbers are. */
const spokenAmount = (tokens: readonly Token[], at: number) => {
  const spoken = spokenAt(tokens, at)
  return spoken === null ? null : { value: Number(spoken.figure), to: spoken.to, whole: true }
}

/** What a figure counts of a unit, with where the unit is to stand: "8 1/2", "two and a half", "10-". */
const amountAt = (
  tokens: readonly Token[],
  at: number,
): { readonly value: number; readonly to: number; readonly whole: boolean } | null => {
  const token = tokens[at]
  const value = token === undefined ? null : isNumber(token) ? figureOf(token.text) : (fractions[token.key] ?? null)
  if (value === null) return spokenAmount(tokens, at)
  const next = tokens[at + 1]
  const part = next !== undefined && isNumber(next) && next.text.includes('/') ? figureOf(next.text) : null
  if (part !== null) return { value: value + part, to: at + 2, whole: false }
  const joined = fractionAt(tokens, at + 1)
  return joined === null ? { value, to: at + 1, whole: true } : { value: value + joined.value, to: joined.to, whole: false }
}

/** "8 1/2 inch", "2 pulgadas y media", "20 cm", "a quarter inch", '8"', "10-inch": longer than 24 in is no length on a garment ("44 in gold"). */
const lengthAt = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number) => {
  const amount = amountAt(tokens, at)
  if (amount === null) return null
  const linked = tokens[amount.to]?.text === '-' || isWord(tokens[amount.to], ...listed.things.ofUnit)
  const unit = unitAt(terms, linked ? amount.to + 1 : amount.to) ?? unitBeyond({ tokens, terms }, at)
  if (unit === null) return null
  const behind = amount.whole ? fractionAt(tokens, unit.to) : null
  const micrometres = Math.round((amount.value + (behind?.value ?? 0)) * perUnit[unit.unit])
  return micrometres > 0 && micrometres <= 610_000 ? { micrometres, unit: perUnit[unit.unit], to: behind?.to ?? unit.to } : null
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
  if (isWord(token, ...listed.things.of)) return { kind: 'of', ...place }
  return { kind: 'other', ...place }
}

const textItem = ({ text, tokens }: Sentence, at: number, to: number): Item => {
  const raw = text.slice(tokens[at]?.start, tokens[to - 1]?.end).replace(/^"|"$/g, '')
  return { kind: 'text', text: raw.trim().replace(/\s+/g, ' ').slice(0, 60), from: at, to, key: '' }
}

/** Words that are said of a garment's cut, not of the players. */
const isCut = (token: Token): boolean => listed.things.cuts.includes(token.key)

/** A length, a quotation or shouted words at a token. */
const longItem = (sentence: Sentence, terms: ReadonlyMap<number, Term>, at: number): Item | null => {
  const { tokens, shouted } = sentence
  const length = lengthAt(tokens, terms, at)
  if (length !== null)
    return { kind: 'length', micrometres: length.micrometres, unit: length.unit, from: at, to: length.to, key: '' }
  const titled = titleAt(tokens, terms, at)
  if (titled > at) return textItem(sentence, at, titled)
  const quoted = quoteAt(tokens, at)
  if (quoted > at + 2) return textItem(sentence, at, quoted)
  const year = yearAt(tokens, terms, at)
  if (year !== null) return { ...textItem(sentence, year.from, year.to), from: at }
  if (shouted) return null
  const to = shoutAt(tokens, terms, countedAt(tokens, at) ?? at)
  return to > (countedAt(tokens, at) ?? at) ? textItem(sentence, at, to) : null
}

/** A size or a cut at a token, where it is not the name of a colour. */
const sizeItem = (tokens: readonly Token[], term: Term | undefined, at: number): Item | null => {
  const token = tokens[at]
  if (token === undefined) return null
  const size = term?.meaning.kind === 'colour' ? null : sizeAt(tokens, at)
  if (size?.size !== undefined) return { kind: 'size', size: size.size, fit: size.fit, from: at, to: size.to, key: token.key }
  const cut = term === undefined && isCut(token) ? cutAt(tokens, at) : null
  return cut === null ? null : { kind: 'cut', fit: cut.fit, from: at, to: cut.to, key: token.key }
}

/** A colour keeps all of its words: they are what is asked about. */
const termItem = (tokens: readonly Token[], term: Term | undefined): Item | null => {
  if (term === undefined || term.meaning.kind === 'unit') return null
  const to = term.meaning.kind === 'colour' ? term.to : term.from + 1
  const words = tokens.slice(term.from, to).map(({ key }) => key)
  return { ...term.meaning, from: term.from, to: term.to, key: words.join(' ') }
}

/** "El nombre arriba del número café": a number with a make right behind it is spoken of and not only a place. */
const withItsNumber = ({ tokens }: Sentence, terms: ReadonlyMap<number, Term>, item: Item): readonly Item[] => {
  const made = ['colour', 'class'].includes(terms.get(item.to)?.meaning.kind ?? '')
  const last = tokens[item.to - 1]
  const beside = item.kind === 'place' && (item.id === 'above' || item.id === 'below') && item.to - item.from > 2
  if (!made || !beside || last === undefined || !faceWords.numbers.has(last.key)) return [item]
  const number: Item = { kind: 'content', id: 'number', from: item.to - 1, to: item.to, key: last.key }
  return [{ ...item, to: item.to - 1 }, number]
}

/** The items of a piece of prose in their order. `shouted`: all of it is in capitals, so that capitals mean nothing. */
export const itemsOf = (sentence: Sentence): readonly Item[] => {
  const { tokens } = sentence
  const terms = new Map(sentence.terms.map((term) => [term.from, term]))
  const items: Item[] = []
  let next = 0
  for (const [at, token] of tokens.entries()) {
    if (at < next) continue
    const term = terms.get(at)
    const told = !sentence.shouted && isToldText(tokens, at) ? longItem(sentence, terms, at) : null
    const own = told ?? sizeItem(tokens, term, at) ?? longItem(sentence, terms, at)
    const item = own ?? termItem(tokens, term) ?? plainItem(token, at)
    const parts = withItsNumber(sentence, terms, item)
    items.push(...parts)
    next = item.to
  }
  return items
}
