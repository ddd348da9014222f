import type { Draft, Player } from '../../draft.ts'
import { cutWords, listed } from '../../words/languages.ts'
import { isMonth, isWeekday } from '../calendar/day-parts.ts'
import { type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { ageBefore, sizeAfter, sizeBefore, sizeRight } from '../sizes/sizes-near.ts'
import { isGivenName } from '../text/given-names.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { isCapital, isEnd, isNumber, isWord, type Token } from '../text/tokens.ts'
import { nameAt, rowsByName, rowsByNumber } from '../whom/refs.ts'
import { isAdd } from './change.ts'
import { sentenceWords } from './sentence-words.ts'

export type PlayersFound = { readonly players: readonly Player[]; readonly taken: ReadonlySet<number> }

type Scene = {
  readonly tokens: readonly Token[]
  readonly draft: Draft
  readonly lexicon: Lexicon
  readonly taken: ReadonlySet<number>
}

/** `since`: where the player before ends. */
type Here = Scene & { readonly since: number }

const opening = new Set(listed.players.opening)

/** "Youth - 3 S": a cut, but for those that people are called ("Junior"). */
const isCut = ({ key }: Token): boolean => Object.hasOwn(cutWords, key) && !listed.players.cutNames.includes(key)

/** Words that are nobody's name where players are named. */
export const isOtherThan =
  (lexicon: Lexicon) =>
  (token: Token): boolean =>
    opening.has(token.key) ||
    isCut(token) ||
    (sentenceWords.has(token.key) && !isGivenName(token)) ||
    (isMonth(token) && !isGivenName(token)) ||
    isWeekday(token) ||
    (!isGivenName(token) &&
      ['garment', 'content', 'place', 'sport', 'role', 'outline', 'stones'].includes(lexicon.entries.get(token.key)?.kind ?? ''))

const fillers: readonly string[] = listed.players.fillers

const skip = (tokens: readonly Token[], at: number): number => {
  let next = at
  while (
    next < at + 5 &&
    ((isWord(tokens[next], ...fillers) && !(next > at && /^\p{Lu}\p{Ll}/u.test(tokens[next]?.text ?? ''))) ||
      ['#', ',', '-', '(', ')', '.'].includes(tokens[next]?.text ?? '')) &&
    sizeAt(tokens, next) === null
  )
    next += 1
  return next
}

const numberAt = ({ tokens, taken }: Scene, at: number): string | null => {
  const token = tokens[at]
  if (token === undefined || !isNumber(token) || taken.has(at) || !/^\d{1,3}$/.test(token.text)) return null
  const joined = tokens[at + 1]?.kind === 'word' && tokens[at + 1]?.start === token.end
  const tall = isWord(tokens[at + 1], ...listed.players.isLength) && !isWord(tokens[at + 1], ...fillers)
  return joined || tall ? null : token.text
}

type Found = { readonly player: Player; readonly from: number; readonly to: number }

const withSize = (
  tokens: readonly Token[],
  player: Player,
  at: number,
): { readonly player: Player; readonly to: number; readonly sized: boolean } => {
  const next = skip(tokens, at)
  const size = sizeAt(tokens, next, false)
  if (size?.size === undefined) return { player, to: at, sized: false }
  return {
    player: { ...player, size: size.size, ...(size.fit === undefined ? {} : { fit: size.fit }) },
    to: size.to,
    sized: true,
  }
}

/** The size that heads a line: "Large: Smith 12, Jones 7". */
const headSize = (tokens: readonly Token[], at: number): SizeFound | null => {
  let start = at
  while (start > 0 && tokens[start - 1]?.kind !== 'break') start -= 1
  const size = sizeAt(tokens, start)
  return size?.size !== undefined && tokens[size.to]?.text === ':' ? size : null
}

const headed = (tokens: readonly Token[], at: number, player: Player): Player => {
  const size = player.size === undefined ? headSize(tokens, at) : null
  return size?.size === undefined ? player : { ...player, size: size.size, ...(size.fit === undefined ? {} : { fit: size.fit }) }
}

/** "Mack 21 youth L and Jojo 2": named right behind another player. */
const isNextOf = ({ tokens, since }: Here, at: number): boolean =>
  since > 0 &&
  since < at &&
  tokens.slice(since, at).every((token) => isWord(token, ...listed.again.and) || [',', '&', ';'].includes(token.text))

/** "Rosa, 3 M tees": behind the figure and its size stands what is counted. */
const countsPieces = ({ tokens, lexicon }: Here, at: number): boolean => {
  const size = sizeAt(tokens, at)
  return size?.size !== undefined && lexicon.entries.get(tokens[size.to]?.key ?? '')?.kind === 'garment'
}

/** "Red, number 8, size L, name PATEL": where the name is told by its own words, a colour in front is the garment's. */
const isColourAhead = ({ tokens, lexicon }: Scene, at: number): boolean => {
  if (lexicon.entries.get(tokens[at]?.key ?? '')?.kind !== 'colour' || tokens[at + 1]?.text !== ',') return false
  const end = tokens.findIndex((token, index) => index > at && isEnd(token))
  const until = end < 0 ? tokens.length : end
  return tokens.some(
    (_, index) =>
      index > at && index < until && isWord(tokens[index], ...listed.changes.nameNoun) && isCapital(tokens[index + 1]),
  )
}

/** "Ida 18 YM", "Noé con el 15 talla CH", "Hattie 11 YL". */
const nameFirst = (scene: Here, at: number): Found | null => {
  const before = scene.tokens[at - 1]
  const glued = isNumber(before) && before?.end === scene.tokens[at]?.start
  const named = glued || isWord(before, ...listed.players.ofMany) ? null : nameAt(scene.tokens, at, isOtherThan(scene.lexicon))
  if (named === null || isColourAhead(scene, at)) return null
  const next = skip(scene.tokens, named.to)
  const number = numberAt(scene, next)
  if (number === null || countsPieces(scene, next + 1)) return null
  const { player, to, sized } = withSize(scene.tokens, { name: named.name, number }, next + 1)
  const joined = isWord(scene.tokens[at - 1], ...listed.players.added)
  const added = joined || isAdd(scene.tokens[at - 1]) || isAdd(scene.tokens[at - 2])
  const inList = headSize(scene.tokens, at) !== null || isNextOf(scene, at)
  return sized || added || inList ? { player, from: at, to: Math.max(to, next + 1) } : null
}

const parts: readonly string[] = [',', ';', '.', ':']
const isEdge = (token: Token | undefined): boolean => token === undefined || token.kind === 'break' || parts.includes(token.text)

/** "9 Big Tony XL" between two pauses: number, name and size with nothing between them. */
const bareLine = (scene: Scene, at: number): Found | null => {
  const { tokens, lexicon } = scene
  const number = isEdge(tokens[at - 1]) ? numberAt(scene, at) : null
  const named = number === null ? null : nameAt(tokens, at + 1, isOtherThan(lexicon))
  const size = named === null ? null : sizeAt(tokens, named.to, false)
  if (number === null || named === null || size?.size === undefined || !isEdge(tokens[size.to])) return null
  const fit = size.fit === undefined ? {} : { fit: size.fit }
  return { player: { number, name: named.name, size: size.size, ...fit }, from: at, to: size.to }
}

/** "… on the back. 9 Big Tony XL, 7 Ines M, 10 Kay L": two or more such lines in a sentence, whose names are no words of the trade. */
const bareLines = (scene: Scene): ReadonlyMap<number, Found> => {
  const found = [...scene.tokens.keys()].flatMap((at) => bareLine(scene, at) ?? [])
  const named = found.filter(({ from }) => scene.lexicon.entries.get(scene.tokens[from + 1]?.key ?? '') === undefined)
  return new Map(named.length < 2 ? [] : found.map((one) => [one.from, one]))
}

/** "add Nia, small", "agrega a Noel M": somebody who is put on the list with a size and no number. */
const addedName = (scene: Here, at: number): Found | null => {
  const { tokens } = scene
  const added = isAdd(tokens[at - 1]) || (isWord(tokens[at - 1], ...listed.players.added) && isAdd(tokens[at - 2]))
  const named = added ? nameAt(tokens, at, isOtherThan(scene.lexicon)) : null
  if (named === null || rowsByName(scene.draft.rows, named.name).length > 0) return null
  const { player, to, sized } = withSize(tokens, { name: named.name }, named.to)
  const goesOn = isNumber(tokens[to]) || isWord(tokens[to], ...listed.players.numbered)
  return sized && !goesOn ? { player, from: at, to } : null
}

/** "add a 10, youth small", "agrega a 17 Julieta YM": a figure behind a word that puts somebody on the list. */
const isAddedNumber = (tokens: readonly Token[], at: number): boolean =>
  isNumber(tokens[at]) &&
  sizeAt(tokens, at + 1)?.size === undefined &&
  (isAdd(tokens[at - 1]) || (isAdd(tokens[at - 2]) && isWord(tokens[at - 1], ...listed.again.addedNumber)))

/** "la 2 es Yaretzi M", "#30 Haddad", "number 1, name Benji". */
const numberFirst = (scene: Here, at: number): Found | null => {
  const { tokens } = scene
  const marked = tokens[at]?.text === '#' || isWord(tokens[at], ...listed.players.loose) || isAddedNumber(tokens, at)
  const start = marked ? skip(tokens, at) : at
  const number = numberAt(scene, start)
  if (number === null || !marked || /^\p{Lu}{4,}$/u.test(tokens[at]?.text ?? '')) return null
  const named = nameAt(tokens, skip(tokens, start + 1), isOtherThan(scene.lexicon))
  if (named === null) return nameless(scene, { at, start, number })
  const { player, to, sized } = withSize(tokens, { name: named.name, number }, named.to)
  return sized || tokens[at]?.text === '#' || isWord(tokens[at], ...listed.players.sure)
    ? { player, from: at, to: Math.max(to, named.to) }
    : null
}

/** "adult L, number 44": a number alone is a player where a size stands with it in the sentence. */
const nameless = (
  { tokens, draft, since }: Here,
  { at, start, number }: { at: number; start: number; number: string },
): Found | null => {
  const marked =
    tokens[at]?.text === '#' ||
    isWord(tokens[at], ...listed.players.numbered) ||
    isAdd(tokens[at - 1]) ||
    isAddedNumber(tokens, at)
  if (
    !marked ||
    rowsByNumber(draft.rows, number).length > 0 ||
    isWord(tokens[start + 1], ...through) ||
    tokens[start + 1]?.text === '-'
  )
    return null
  const player = sizeAfter(tokens, start + 1, sizeBefore(tokens, { at, since }, sizeRight(tokens, start + 1, { number })))
  return player.size === undefined ? null : { player, from: at, to: start + 1 }
}

const through: readonly string[] = listed.players.upTo

const isThere = (draft: Draft, player: Player): boolean => {
  const byNumber = player.number === undefined ? [] : rowsByNumber(draft.rows, player.number)
  const byName = player.name === undefined ? [] : rowsByName(draft.rows, player.name)
  return byNumber.some((key) => byName.includes(key))
}

/** Players named inside a sentence with their number and, mostly, their size. */
export const readPlayers = (scene: Scene): PlayersFound => {
  const players: Player[] = []
  const taken = new Set<number>()
  const bare = bareLines(scene)
  let since = 0
  let at = 0
  while (at < scene.tokens.length) {
    const found =
      bare.get(at) ??
      numberFirst({ ...scene, since }, at) ??
      nameFirst({ ...scene, since }, at) ??
      addedName({ ...scene, since }, at)
    if (found === null || isThere(scene.draft, found.player)) {
      at += 1
      continue
    }
    const right = sizeRight(scene.tokens, found.to, headed(scene.tokens, found.from, found.player))
    const sized = sizeAfter(scene.tokens, found.to, sizeBefore(scene.tokens, { at: found.from, since }, right))
    const age = ageBefore(scene.tokens, found.from)
    players.push(age === undefined ? sized : { ...sized, age })
    for (let index = found.from; index < found.to; index += 1) taken.add(index)
    at = found.to
    since = found.to
  }
  return { players, taken }
}
