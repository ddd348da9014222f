import type { Draft, Player } from '../../draft.ts'
import { faceWords, listed } from '../../words/languages.ts'
import { classOf } from '../ages/age-answer.ts'
import { isAdd, span } from '../list/change.ts'
import { isOtherThan, type PlayersFound } from '../list/players.ts'
import { isPlainSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isGivenName } from '../text/given-names.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { isNear } from '../text/near-names.ts'
import { sentencesOf, stated } from '../text/statements.ts'
import { fold, isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { nameAt, refsIn } from '../whom/refs.ts'
import { isDrop } from './drops.ts'

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

type Placed = { readonly from: number; readonly to: number }
type Part = Placed &
  (
    | { readonly kind: 'number'; readonly number: string }
    | { readonly kind: 'name'; readonly name: string }
    | { readonly kind: 'size'; readonly size: SizeFound }
  )

/** Terms that stand beside a player too: what is numbered and named, the piece that is worn, small words. */
const besides: readonly string[] = [
  'and',
  'in',
  'with',
  'no',
  'only',
  'content',
  'garment',
  'word',
  'own',
  'place',
  'count',
  'unit',
]

const missing = phrasesOf(listed.clauses.missing)

const opening = [...listed.again.and, ...listed.clauses.newcomer]

/** "And Clement, mens L": opens with a word that adds, and says nothing but a name and a size. */
const isOpened = (tokens: readonly Token[], parts: readonly Part[]): boolean =>
  isWord(tokens[0], ...opening) &&
  tokens.every(
    (token, at) =>
      token.kind !== 'word' ||
      isWord(token, ...opening, ...listed.things.politely) ||
      parts.some(({ from, to }) => at >= from && at < to),
  )

/** Somebody is put on the list, or was left out of it. */
const isNewcomer = (tokens: readonly Token[]): boolean =>
  [...tokens.keys()].some((at) => isAdd(tokens[at]) || phraseEnd(tokens, at, missing) !== null)

/** A figure that counts nothing and measures nothing: "14 jerseys", "8 inch", "$20" are no player's. */
const isPlayersNumber = (tokens: readonly Token[], at: number, lexicon: Lexicon): boolean => {
  const [before, token, next] = [tokens[at - 1], tokens[at], tokens[at + 1]]
  if (token === undefined || !isNumber(token) || !/^\d{1,3}$/.test(token.text) || before?.text === '$') return false
  if (isNumber(next) && sizeAt(tokens, at + 1) === null) return false
  if (next?.kind === 'word' && (next.start === token.end || isWord(next, ...listed.players.isLength, ...listed.players.years)))
    return false
  const counted = termsOf(lexicon, tokens.slice(at + 1, at + 2)).some(({ meaning }) => meaning.kind === 'garment')
  const marked = before?.text === '#' || isWord(before, ...listed.players.numbered) || faceWords.numbers.has(before?.key ?? '')
  return marked || !(counted || isWord(next, ...listed.clauses.more, ...listed.told.of))
}

const notNames = new Set([...listed.clauses.closing, ...listed.clauses.newcomer, ...listed.clauses.missing, ...listed.clauses.he])

const partAt = (tokens: readonly Token[], at: number, { draft, lexicon }: Scene): Part | null => {
  const size = sizeAt(tokens, at)
  if (size?.size !== undefined) return isPlainSize(tokens, at, size) ? { kind: 'size', size, from: at, to: size.to } : null
  if (isPlayersNumber(tokens, at, lexicon)) return { kind: 'number', number: tokens[at]?.text ?? '', from: at, to: at + 1 }
  const isOther = isOtherThan(lexicon)
  const named = nameAt(tokens, at, (token) => isOther(token) || (notNames.has(token.key) && !isGivenName(token)))
  const people = [draft.team, draft.orders, draft.collects, draft.pays, draft.signsOff].map((one) => fold(one ?? ''))
  return named === null || people.includes(fold(named.name)) ? null : { kind: 'name', name: named.name, from: at, to: named.to }
}

const partsOf = (tokens: readonly Token[], scene: Scene): readonly Part[] => {
  const parts: Part[] = []
  let at = 0
  while (at < tokens.length) {
    const part = partAt(tokens, at, scene)
    if (part !== null) parts.push(part)
    at = part?.to ?? at + 1
  }
  return parts
}

/** A figure that is no part of the player. */
const isStray = (tokens: readonly Token[], at: number, parts: readonly Part[]): boolean =>
  isNumber(tokens[at]) && !isWord(tokens[at + 1], ...listed.players.years) && !parts.some(({ from, to }) => at >= from && at < to)

const mostBetween = 6

/** Number, name and size, with a few small words at most between each two of them. */
const isWhole = (parts: readonly Part[]): boolean =>
  parts.length === 3 && parts.every(({ from }, index) => index === 0 || from - (parts[index - 1]?.to ?? 0) <= mostBetween)

const one = <Kind extends Part['kind']>(parts: readonly Part[], kind: Kind): Extract<Part, { kind: Kind }> | null => {
  const found = parts.filter((part): part is Extract<Part, { kind: Kind }> => part.kind === kind)
  return found.length === 1 ? (found[0] ?? null) : null
}

/** "Tiene 2 años", "she's 2 years old". */
const ageIn = (tokens: readonly Token[]): Pick<Player, 'age'> => {
  const years = tokens.find((token, at) => isNumber(token) && isWord(tokens[at + 1], ...listed.players.years))?.text
  return years === undefined || !/^\d{1,2}$/.test(years) ? {} : { age: classOf(Number(years)) }
}

const playerOf = (parts: readonly Part[], draft: Draft): Player | null => {
  const [number, name, size] = [one(parts, 'number'), one(parts, 'name'), one(parts, 'size')]
  const known = [number, name, size].filter((part) => part !== null).length
  if (known < parts.length || name === null || size === null) return null
  const unnamed = Object.values(draft.rows).length > 0 && Object.values(draft.rows).every((row) => row.name === undefined)
  return {
    ...(number === null ? {} : { number: number.number }),
    ...(unnamed && number !== null ? {} : { name: name.name }),
    ...(size.size.size === undefined ? {} : { size: size.size.size }),
    ...(size.size.fit === undefined ? {} : { fit: size.size.fit }),
  }
}

/** Sentences of cloth and print, of somebody on the list or off it, of a question or a doubt, tell of no new player. */
const isElsewhere = (tokens: readonly Token[], { draft, lexicon }: Scene): boolean =>
  tokens.some(isDrop) ||
  refsIn(tokens, draft.rows).length > 0 ||
  termsOf(lexicon, tokens).some(({ meaning }) => !besides.includes(meaning.kind)) ||
  stated(tokens).some((token, at) => token.kind !== tokens[at]?.kind)

/** Near to a name of the list: said of whoever that is, and nobody new. */
const isNearSomebody = ({ name }: Player, { rows }: Draft): boolean =>
  name !== undefined &&
  Object.values(rows).some((row) =>
    (row.name ?? '').split(' ').some((word) => name.split(' ').some((own) => isNear(fold(word), fold(own)))),
  )

type Told = { readonly player: Player; readonly taken: ReadonlySet<number>; readonly newcomer: boolean }

const told = (
  tokens: readonly Token[],
  scene: Scene,
  awaited: boolean,
): (Omit<Told, 'taken'> & { readonly parts: readonly Part[] }) | null => {
  const parts = partsOf(tokens, scene)
  const named = playerOf(parts, scene.draft)
  const player = named === null ? null : { ...named, ...ageIn(tokens) }
  if (player === null || isElsewhere(tokens, scene) || isNearSomebody(player, scene.draft)) return null
  const found = { player, parts, newcomer: awaited || isNewcomer(tokens) || isOpened(tokens, parts) }
  const counted = Object.keys(scene.draft.tally).length > Object.keys(scene.draft.rows).length
  const enough = found.newcomer ? parts.length === 3 || !tokens.some((_, at) => isStray(tokens, at, parts)) : isWhole(parts)
  return enough && (found.newcomer || !counted) ? found : null
}

/** "I forgot my own dad. Clement, mens L": somebody is missing, and who it is comes in the sentence behind. */
const isAwaited = (tokens: readonly Token[], scene: Scene): boolean =>
  isNewcomer(tokens) && partsOf(tokens, scene).length === 0 && refsIn(tokens, scene.draft.rows).length === 0

const toldIn = (tokens: readonly Token[], scene: Scene): readonly Told[] =>
  sentencesOf(tokens).flatMap(({ from, to }, index, all) => {
    const before = all[index - 1]
    const awaited = before !== undefined && isAwaited(tokens.slice(before.from, before.to), scene)
    const found = told(tokens.slice(from, to), scene, awaited)
    const places = found?.parts.flatMap((part) => [...span(from + part.from, from + part.to)]) ?? []
    return found === null ? [] : [{ player: found.player, newcomer: found.newcomer, taken: new Set(places) }]
  })

const taken = (found: readonly Told[]): ReadonlySet<number> => new Set(found.flatMap((one) => [...one.taken]))

/**
 * The one player whom a sentence tells of, in any order and words: "it was 14, Ortega, a women's M", "my brother Ulises was left out, XL".
 * Number, name and size stand close together, or somebody is said to be missing and has a name and a size; nobody else is named.
 */
export const readToldPlayers = (tokens: readonly Token[], scene: Scene): PlayersFound => {
  const found = toldIn(tokens, scene)
  return { players: found.map(({ player }) => player), taken: taken(found) }
}

/** "se les olvidó Ulises, el 8, XG": the words of somebody who is put on the list, whose number is no day. */
export const wordsOfNewcomers = (tokens: readonly Token[], scene: Scene): ReadonlySet<number> =>
  taken(toldIn(tokens, scene).filter(({ newcomer: added }) => added))
