import { listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import type { Term } from '../text/lexicon.ts'
import { isCapital, isNumber, isWord, type Token } from '../text/tokens.ts'

const isShouted = (token: Token | undefined): boolean =>
  token?.kind === 'word' && /^\p{Lu}[\p{Lu}\p{M}'&.-]*\p{Lu}$/u.test(token.text)

/** Capitals that are no words on a shirt. */
const notText: readonly string[] = listed.written.notText

/** Shouted, "STAFF" and "CHEER" are words to write; other words of the trade keep their meaning. */
const isWritten = (term: Term | undefined): boolean =>
  term === undefined || term.meaning.kind === 'use' || term.meaning.kind === 'sport'

const opensClause = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens[at - 1]
  return before === undefined || before.kind === 'break' || ['.', ',', ':', ';'].includes(before.text)
}

/** "SPARKLE on the front": a vinyl's word that opens its clause, shouted, with a place right behind it, is to be written. */
const isPlaced = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number): boolean => {
  if (!opensClause(tokens, at) || terms.get(at)?.meaning.kind !== 'class' || !isWord(tokens[at + 1], ...listed.written.placing))
    return false
  return [at + 1, at + 2, at + 3].some((next) => terms.get(next)?.meaning.kind === 'place')
}

/** "BLACK HAWKS", "GO BLUE", "VELVET GUTTERS", and "READ ALL NIGHT" where it opens its clause: a colour or a vinyl's word shouted beside a word that means nothing else is written with it. */
const isHueOfText = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number): boolean => {
  const beside = (next: number): boolean =>
    isShouted(tokens[next]) && !terms.has(next) && sizeAt(tokens, next) === null && !notText.includes(tokens[next]?.key ?? '')
  const kind = terms.get(at)?.meaning.kind
  if (kind === 'word' && opensClause(tokens, at) && isShouted(tokens[at + 1]) && isShouted(tokens[at + 2])) return true
  const named = kind === 'colour' || kind === 'class'
  return named && terms.get(at)?.to === at + 1 && (beside(at + 1) || beside(at - 1))
}

/** "TWO COOL on the front": an amount shouted in front of a word that means nothing else is written with it, where its clause says where. */
const isCountOfText = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number): boolean =>
  terms.get(at)?.meaning.kind === 'count' &&
  isShouted(tokens[at + 1]) &&
  !terms.has(at + 1) &&
  sizeAt(tokens, at + 1) === null &&
  !notText.includes(tokens[at + 1]?.key ?? '') &&
  isToldToWrite(tokens, terms, at)

const isText = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number): boolean =>
  isWritten(terms.get(at)) || isPlaced(tokens, terms, at) || isHueOfText(tokens, terms, at)

/** "GRACE'S 10TH BIRTHDAY": a figure between shouted words is written with them. */
const isWrittenFigure = (tokens: readonly Token[], at: number): boolean =>
  isNumber(tokens[at]) && isShouted(tokens[at + 1]) && sizeAt(tokens, at) === null && sizeAt(tokens, at + 1) === null

/** "BANDA DE GUERRA": a small word shouted between shouted words is written with them. */
const isBetween = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...small) &&
  (tokens[at]?.kind === 'sign' || tokens[at]?.text === tokens[at]?.text.toUpperCase()) &&
  isShouted(tokens[at + 1]) &&
  sizeAt(tokens, at + 1) === null

/** "que digan LLANO GRANDE", "say TEAM ONE": capitals behind a word that tells what to write are written, whatever else they mean. */
export const isToldText = (tokens: readonly Token[], at: number): boolean => {
  const told = [':', '"'].includes(tokens[at - 1]?.text ?? '') ? at - 2 : at - 1
  const lead = isWord(tokens[told], ...small, ...listed.written.leading) ? told - 1 : told
  return isShouted(tokens[at]) && [told, lead].some((place) => isWord(tokens[place], ...telling))
}

/** A word that is written where it is told to be, though it is a size or an amount elsewhere; never a size's letters. */
const isAnyWord = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number): boolean =>
  (tokens[at]?.text.length ?? 0) > 3 || (sizeAt(tokens, at) === null && terms.get(at)?.meaning.kind === 'count')

const isShout = (
  tokens: readonly Token[],
  terms: ReadonlyMap<number, Term>,
  { at, told }: { at: number; told: boolean },
): boolean => {
  const kind = terms.get(at)?.meaning.kind
  const free = (told && isAnyWord(tokens, terms, at)) || isCountOfText(tokens, terms, at)
  return (
    isShouted(tokens[at]) && (sizeAt(tokens, at) === null || free) && (isText(tokens, terms, at) || (free && kind === 'count'))
  )
}

/** A run of shouted words: what is to be written, unless everything is shouted. */
export const shoutAt = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number): number => {
  const told = isToldText(tokens, at)
  let to = at
  while ((to > at && isBetween(tokens, to)) || isShout(tokens, terms, { at: to, told })) {
    to += 1
    if (to > at && isWrittenFigure(tokens, to)) to += 1
  }
  const words = tokens.slice(at, to)
  const only = words.length === 1 ? words[0] : undefined
  if (only !== undefined && ((notText.includes(only.key) && !told) || isReference(tokens, at) || endsName(tokens, at))) return at
  if (only !== undefined && only.text.length <= 3 && !isToldToWrite(tokens, terms, at)) return at
  if (words.length === 0) return to
  if (isYear(tokens[to])) return to + 1
  return to + tailOf(tokens, to)
}

const writing: readonly string[] = listed.written.writing

/** A short word in capitals ("JV", "PE") is written only where its clause says where, or to write it. */
const isToldToWrite = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number): boolean => {
  const stops = (token: Token): boolean => token.kind === 'break' || ['.', ';', '!', '?'].includes(token.text)
  const from = tokens.slice(0, at).findLastIndex(stops) + 1
  const next = tokens.findIndex((token, index) => index > at && stops(token))
  const to = next < 0 ? tokens.length : next
  for (let index = from; index < to; index += 1) {
    const kind = terms.get(index)?.meaning.kind
    if (
      kind === 'place' ||
      kind === 'word' ||
      isWord(tokens[at + 1], ...listed.written.isIn) ||
      writing.includes(tokens[index]?.key ?? '')
    )
      return true
  }
  return false
}

/** "Copper Creek XC", "Granite FC": short capitals right behind a name belong to it. */
const endsName = (tokens: readonly Token[], at: number): boolean => {
  const [before, own] = [tokens[at - 1], tokens[at]]
  return isCapital(before) && !isShouted(before) && (own?.text.length ?? 0) <= 3
}

/** "EST 1994", "CLASS OF 2027": a year after shouted words is written with them. */
const isYear = (token: Token | undefined): boolean => token?.kind === 'number' && /^(?:19|20)\d\d$/.test(token.text)

/** "LA-20718", "PO 4411": letters joined to a figure are a number of somebody's papers. */
const isReference = (tokens: readonly Token[], at: number): boolean =>
  tokens[at + 1]?.text === '-' && tokens[at + 1]?.start === tokens[at]?.end && isNumber(tokens[at + 2])

/** "CLASS OF 27", "GENERACION '27": a year cut short behind what has one. */
const isOfYear = (tokens: readonly Token[], at: number): boolean => {
  const figure = ["'", '’'].includes(tokens[at]?.text ?? '') ? tokens[at + 1] : tokens[at]
  const led = [1, 2].some((back) => isShouted(tokens[at - back]) && isWord(tokens[at - back], ...listed.written.yearly))
  return led && figure?.kind === 'number' && /^\d\d$/.test(figure.text)
}

/** "OPEN 27,", "SPRING 5K": how many tokens of a short figure or a distance behind shouted words are written with them. */
const tailOf = (tokens: readonly Token[], at: number): number => {
  const [figure, next] = [tokens[at], tokens[at + 1]]
  if (isOfYear(tokens, at)) return isNumber(figure) ? 1 : 2
  if (figure === undefined || !/^\d{1,2}$/.test(figure.text)) return 0
  if (next?.text === 'K' && next.start === figure.end) return 2
  const ends = next === undefined || next.kind === 'break' || [',', '.', ';'].includes(next.text)
  return ends && figure.text.length === 2 ? 1 : 0
}

const telling: readonly string[] = listed.written.telling
const small: readonly string[] = listed.written.small

/** "it should say Rebels", "que diga Las Reinas": capitals right behind a word that tells what to write. */
export const titleAt = (tokens: readonly Token[], terms: ReadonlyMap<number, Term>, at: number): number => {
  const told = tokens[at - 1]?.text === ':' ? at - 2 : at - 1
  if (!isWord(tokens[told], ...telling) || !isCapital(tokens[at]) || isShouted(tokens[at]) || tokens[at]?.key === 'i') return at
  let to = at
  for (let next = at; isCapital(tokens[next]) || (isWord(tokens[next], ...small) && isCapital(tokens[next + 1])); next += 1) {
    if (next > at && terms.get(next)?.meaning.kind === 'garment') break
    if (isCapital(tokens[next])) to = next + 1
  }
  return to
}

export const quoteAt = (tokens: readonly Token[], at: number): number => {
  if (tokens[at]?.text !== '"' || isNumber(tokens[at - 1])) return at
  for (let to = at + 1; to < tokens.length && to < at + 12; to += 1) {
    if (tokens[to]?.kind === 'break') return at
    if (tokens[to]?.text === '"' && to > at + 1) return to + 1
  }
  return at
}

/** "25 AÑOS", "10TH ANNIVERSARY", "5K RUN": where what a shouted word counts, or makes an ordinal of, begins a text; else null. */
export const countedAt = (tokens: readonly Token[], at: number): number | null => {
  const [figure, next] = [tokens[at], tokens[at + 1]]
  if (figure === undefined || next === undefined || !/^\d{1,4}$/.test(figure.text) || !isShouted(next)) return null
  const joins = next.start === figure.end && isWord(next, ...listed.written.ordinals)
  const counts = isWord(next, ...listed.written.counted)
  return joins || counts ? at + 1 : null
}

/** "The year, 2027", "el año 2027": where a year that is to be written ends; else null. */
export const yearAt = (
  tokens: readonly Token[],
  terms: ReadonlyMap<number, Term>,
  at: number,
): { readonly from: number; readonly to: number } | null => {
  if (!isWord(tokens[at], ...listed.written.year) || !isToldToWrite(tokens, terms, at)) return null
  const from = [',', ':', '"', '('].includes(tokens[at + 1]?.text ?? '') ? at + 2 : at + 1
  return isYear(tokens[from]) ? { from, to: from + 1 } : null
}
