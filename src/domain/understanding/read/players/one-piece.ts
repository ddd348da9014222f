import type { Draft, Player } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { type Change, nothing, span } from '../list/change.ts'
import { isOtherThan } from '../list/players.ts'
import { addPlayers } from '../list/table.ts'
import { isPlainSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { fold, isCapital, isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { nameAt } from '../whom/refs.ts'

/** `alone`: one piece is ordered again, so that a number or a name by itself is that of its wearer. */
export type PieceScene = { readonly draft: Draft; readonly lexicon: Lexicon; readonly alone: boolean }

type Part<Value> = { readonly value: Value; readonly from: number; readonly to: number }

const said = listed.players
const labels = phrasesOf(said.nameLabels)
const onBack = phrasesOf(said.onBack)
const wearing = phrasesOf(said.wearsNumber)

const skipLinks = (tokens: readonly Token[], from: number): number => {
  let at = from
  const isLink = (token: Token | undefined): boolean => isWord(token, ...said.nameLinks) && !isCapital(token)
  while (at < from + 7 && (isLink(tokens[at]) || [':', '-', '"'].includes(tokens[at]?.text ?? ''))) at += 1
  return at
}

/** "number 8, name PATEL, …": the word alone opens its stretch between two pauses, and no second size tells of somebody else. */
const nounEnd = (tokens: readonly Token[], at: number): number | null => {
  const opens = tokens[at - 1] === undefined || tokens[at - 1]?.kind !== 'word'
  const sizes = tokens.flatMap((_, index) => sizeAt(tokens, index)?.size ?? [])
  return opens && new Set(sizes).size < 2 && isWord(tokens[at], ...listed.changes.nameNoun) && isCapital(tokens[at + 1])
    ? at + 1
    : null
}

/** "last name Ruhl", "the name on the back is Hale": a name by the words for what is printed; "my last name" is the writer's. */
const labelledAt = (tokens: readonly Token[], at: number, isOther: (token: Token) => boolean): Part<string> | null => {
  const label = phraseEnd(tokens, at, labels) ?? nounEnd(tokens, at)
  if (label === null || isWord(tokens[at - 1], ...said.notTheirs)) return null
  const from = skipLinks(tokens, label)
  const named = nameAt(tokens, from, isOther)
  const start = isWord(tokens[label - 1], ...said.saysName) ? at : from
  return named === null ? null : { value: named.name, from: start, to: named.to }
}

/** "it says Hale on the back". */
const worn = (tokens: readonly Token[], at: number, isOther: (token: Token) => boolean): Part<string> | null => {
  const from = skipLinks(tokens, at + 1)
  const named = isWord(tokens[at], ...said.saysName) ? nameAt(tokens, from, isOther) : null
  const end = named === null ? null : phraseEnd(tokens, tokens[named.to]?.text === '"' ? named.to + 1 : named.to, onBack)
  return named === null || end === null ? null : { value: named.name, from, to: named.to }
}

/** Where what leads to a number ends: "number", "#", "es el", "wears". */
const leadEnd = (tokens: readonly Token[], at: number): number | null =>
  tokens[at]?.text === '#' || isWord(tokens[at], ...said.numbered) ? at + 1 : phraseEnd(tokens, at, wearing)

/** "number 14", "Number: 27", "#5", "es el 18"; no height, no day, and no number of anything that is counted. */
const numberAt = (tokens: readonly Token[], at: number): Part<string> | null => {
  const lead = leadEnd(tokens, at)
  if (lead === null) return null
  let from = lead
  while (from < lead + 3 && (isWord(tokens[from], ...said.nameLinks) || ['#', ':'].includes(tokens[from]?.text ?? ''))) from += 1
  const [token, next] = [tokens[from], tokens[from + 1]]
  if (!isNumber(token) || !/^\d{1,3}$/.test(token?.text ?? '')) return null
  const joined = next?.kind === 'word' && next.start === token?.end
  return joined || isWord(next, ...said.isLength, ...said.upTo, ...said.and, ...listed.told.of)
    ? null
    : { value: token?.text ?? '', from, to: from + 1 }
}

const sizePart = (tokens: readonly Token[], at: number): Part<SizeFound> | null => {
  const size = sizeAt(tokens, at)
  return size?.size === undefined || !isPlainSize(tokens, at, size) ? null : { value: size, from: at, to: size.to }
}

const all = <Value>(tokens: readonly Token[], read: (at: number) => Part<Value> | null): readonly Part<Value>[] => {
  const found: Part<Value>[] = []
  for (const at of tokens.keys()) {
    const part = at < (found.at(-1)?.to ?? 0) ? null : read(at)
    if (part !== null) found.push(part)
  }
  return found
}

/** The one value that is said, however often; null where two are. */
const only = <Value>(parts: readonly Part<Value>[], keyOf: (value: Value) => string): Part<Value> | null =>
  new Set(parts.map(({ value }) => keyOf(value))).size === 1 ? (parts[0] ?? null) : null

const playerOf = (number: string | undefined, name: string | undefined, size: SizeFound | undefined): Player => ({
  ...(number === undefined ? {} : { number }),
  ...(name === undefined ? {} : { name }),
  ...(size?.size === undefined ? {} : { size: size.size }),
  ...(size?.fit === undefined ? {} : { fit: size.fit }),
})

/** What the only line of the list lacks yet. */
const completed = (key: string, had: Player, player: Player): Change['patches'] => {
  const clash = (['number', 'name'] as const).some(
    (field) => had[field] !== undefined && player[field] !== undefined && fold(had[field]) !== fold(player[field]),
  )
  if (clash) return []
  return Object.entries(player)
    .filter(([field]) => Reflect.get(had, field) === undefined)
    .map(([field, value]) => ({ path: ['rows', key, field], value }))
}

/** A number by itself: "number 3", "she's #7". */
const fewWords = 6

/**
 * The wearer of a single piece, told by the words for what is printed on it, in one message or several: "number 14, the name on the back
 * is Hale, youth large". Nothing where a list is there, or two numbers or names are told.
 */
export const readOnePiece = (tokens: readonly Token[], { draft, lexicon, alone }: PieceScene): Change => {
  const [entry, ...more] = Object.entries(draft.rows)
  if (more.length > 0 || Object.keys(draft.tally).length > 0) return nothing
  const isStranger = isOtherThan(lexicon)
  const isOther = (token: Token): boolean =>
    isStranger(token) && !(isCapital(token) && isWord(token, ...listed.changes.particles))
  const name = only(
    all(tokens, (at) => labelledAt(tokens, at, isOther) ?? worn(tokens, at, isOther)),
    fold,
  )
  const number = only(
    all(tokens, (at) => numberAt(tokens, at)),
    (value) => value,
  )
  const size = only(
    all(tokens, (at) => sizePart(tokens, at)),
    ({ size, fit }) => `${fit} ${size}`,
  )
  const figures = tokens.some(({ text }) => /^\d{1,3}$/.test(text))
  const told = (name !== null && (number !== null || !figures)) || (number !== null && tokens.length <= fewWords)
  const enough = entry === undefined ? (name !== null && number !== null) || (alone && told) : alone || name !== null
  if (!enough) return nothing
  const player = playerOf(number?.value, name?.value, size?.value)
  const patches = entry === undefined ? addPlayers(draft.rows, [player]) : completed(entry[0], entry[1], player)
  const places = [name, number, size].flatMap((part) => (part === null ? [] : [...span(part.from, part.to)]))
  return patches.length === 0 ? nothing : { ...nothing, patches, taken: new Set(places) }
}
