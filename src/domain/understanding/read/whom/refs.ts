import type { Draft, Player } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { fold, isCapital, isNumber, isWord, type Token } from '../text/tokens.ts'

/** Rows that words point at, by number or by name, with the place in the message. */
export type Ref = { readonly keys: readonly string[]; readonly from: number; readonly to: number; readonly by: 'number' | 'name' }

export type Rows = Draft['rows']

const particles: readonly string[] = listed.changes.particles
const articles: readonly string[] = listed.told.article

const entries = (rows: Rows): readonly (readonly [string, Player])[] => Object.entries(rows)

export const rowsByNumber = (rows: Rows, number: string): readonly string[] =>
  entries(rows).flatMap(([key, row]) => (row.number === number ? [key] : []))

const words = (name: string): readonly string[] => fold(name).split(/[\s]+/)

/** Rows whose name is this, or has this as one of its words ("Lena", "Birch"; no "La" of "De la Rosa", no "the" of "The Hammer"). */
export const rowsByName = (rows: Rows, name: string): readonly string[] => {
  const wanted = fold(name)
  const whole = entries(rows).flatMap(([key, row]) => (row.name !== undefined && fold(row.name) === wanted ? [key] : []))
  if (whole.length > 0) return whole
  if (particles.includes(wanted) || articles.includes(wanted)) return []
  return entries(rows).flatMap(([key, row]) => (row.name !== undefined && words(row.name).includes(wanted) ? [key] : []))
}

/** "Ana P. is 6": the stop belongs to the initial where the sentence goes on. */
const pastInitial = (tokens: readonly Token[], to: number): number => {
  const [last, stop, next] = [tokens[to - 1], tokens[to], tokens[to + 1]]
  const joined = stop?.text === '.' && stop.start === last?.end && /^\p{Lu}$/u.test(last.text)
  return joined && next?.kind === 'word' && !isCapital(next) ? to + 1 : to
}

const nameRef = (tokens: readonly Token[], at: number, rows: Rows): Ref | null => {
  for (let length = Math.min(5, tokens.length - at); length > 0; length -= 1) {
    const part = tokens.slice(at, at + length)
    if (!part.every((token) => token.kind === 'word')) continue
    const to = pastInitial(tokens, at + length)
    const text = `${part.map((token) => token.text.replace(/'s$/, '')).join(' ')}${to > at + length ? '.' : ''}`
    const keys = rowsByName(rows, text)
    if (keys.length > 0 && (length > 1 || text.length > 2 || (text.length === 2 && isCapital(part[0]))))
      return { keys, from: at, to, by: 'name' }
  }
  return null
}

/** What one player wears, as people call it. */
export const pieces: readonly string[] = listed.changes.pieces
export const severalPieces: readonly string[] = pieces.map((piece) => `${piece}s`)

const isPossessive = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === "'" && tokens[at + 1]?.key === 's' && tokens[at + 1]?.start === tokens[at]?.end

/** "9's", "the 9 jersey", "9's name": the reference ends behind what is called theirs. */
const withPiece = (tokens: readonly Token[], ref: Ref): Ref => {
  const to = isPossessive(tokens, ref.to) ? ref.to + 2 : ref.to
  return { ...ref, to: isWord(tokens[to], ...pieces) ? to + 1 : to }
}

/** "2 jerseys", "2 coach polos": pieces behind a figure, with at most two words between them. */
const countsPieces = (tokens: readonly Token[], from: number): boolean => {
  const words = tokens.slice(from, from + 3)
  const end = words.findIndex((token) => token.kind !== 'word' || isCapital(token))
  return (end < 0 ? words : words.slice(0, end)).some((token) => isWord(token, ...severalPieces))
}

const numberRef = (tokens: readonly Token[], at: number, rows: Rows): Ref | null => {
  const [token, next] = [tokens[at], tokens[at + 1]]
  if (token === undefined || !/^\d{1,3}$/.test(token.text)) return null
  const joined = next?.kind === 'word' && next.start === token.end
  const counted = countsPieces(tokens, at + 1) && tokens[at - 1]?.text !== '#'
  const keys = joined || counted ? [] : rowsByNumber(rows, token.text)
  return keys.length === 0 ? null : { keys, from: at, to: at + 1, by: 'number' }
}

/** A reference to rows at a token: "#9", "the 9", "el 8", "9 jersey", "number 14", or a name of the roster; "9 jerseys" counts. */
export const refAt = (tokens: readonly Token[], at: number, rows: Rows): Ref | null => {
  const token = tokens[at]
  const ref = isNumber(token) ? numberRef(tokens, at, rows) : token?.kind === 'word' ? nameRef(tokens, at, rows) : null
  return ref === null ? null : withPiece(tokens, ref)
}

/** All references in a stretch of tokens, in order. */
export const refsIn = (tokens: readonly Token[], rows: Rows): readonly Ref[] => {
  const refs: Ref[] = []
  let at = 0
  while (at < tokens.length) {
    const ref = refAt(tokens, at, rows)
    if (ref !== null) refs.push(ref)
    at = ref === null ? at + 1 : ref.to
  }
  return refs
}

const isSize = (tokens: readonly Token[], at: number): boolean => sizeAt(tokens, at)?.size !== undefined

/** A name that begins at a token: capitalised words, particles between them, Jr. and III at the end. */
export const nameAt = (
  tokens: readonly Token[],
  at: number,
  isOther: (token: Token) => boolean,
): { readonly name: string; readonly to: number } | null => {
  const first = tokens[at]
  if (first === undefined || !isCapital(first) || isOther(first) || isSize(tokens, at)) return null
  let to = at + 1
  for (;;) {
    let next = to
    while (isWord(tokens[next], ...particles) && !isCapital(tokens[next])) next += 1
    const token = tokens[next]
    if (token === undefined || !isCapital(token) || isOther(token) || isSize(tokens, next) || to - at > 4) break
    to = next + 1
  }
  return {
    name: tokens
      .slice(at, to)
      .map((token) => token.text)
      .join(' '),
    to,
  }
}

const joints: readonly string[] = [...listed.changes.through, ...listed.again.joins]

/** "5 and 6 men's L", "#9 and the 12", "1-4": the last figure of a list or a range speaks for all of them. */
export const isListed = (tokens: readonly Token[], ref: Ref): boolean => {
  let at = ref.from - 1
  while (at > ref.from - 5 && (isWord(tokens[at], ...joints) || [',', '-', '&', '#'].includes(tokens[at]?.text ?? ''))) at -= 1
  return ref.by === 'number' && at < ref.from - 1 && isNumber(tokens[at])
}
