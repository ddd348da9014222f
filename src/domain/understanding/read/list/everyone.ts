import type { Draft, Player } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { nameAt, type Rows, refAt } from '../whom/refs.ts'
import { commonCut } from './common-cut.ts'

export type EveryoneFound = {
  readonly patches: readonly Patch[]
  readonly taken: ReadonlySet<number>
  readonly size: SizeFound | null
  /** Players named apart who are not on the list yet. */
  readonly players: readonly Player[]
}

const every: readonly string[] = listed.players.every
const except: readonly string[] = listed.players.exceptAlso
const between: readonly string[] = listed.players.between
const everySeveral = phrasesOf(listed.players.everySeveral)
const sameSize = phrasesOf(listed.players.sameSize)

const sizeAfter = (tokens: readonly Token[], at: number): SizeFound | null => {
  let next = at
  while (next < at + 5 && isWord(tokens[next], ...between) && sizeAt(tokens, next) === null) next += 1
  return sizeAt(tokens, next)
}

/** "11 12 13 14 all M": all of the numbers in front of it, and not everybody, where the list has others too. */
const isOfListed = (tokens: readonly Token[], at: number, rows: Rows): boolean => {
  let back = at - 1
  while (
    back >= 0 &&
    (isNumber(tokens[back]) ||
      ['#', ',', '&', '-', ':'].includes(tokens[back]?.text ?? '') ||
      isWord(tokens[back], ...listed.again.and))
  )
    back -= 1
  const numbers = tokens.slice(back + 1, at).filter(isNumber)
  const isListed = ({ number }: Player): boolean => numbers.some(({ text }) => text === number)
  return numbers.length > 1 && !Object.values(rows).every(isListed)
}

type Common = { readonly size: SizeFound; readonly from: number; readonly to: number }

/** "same size for all please, womens M": what may stand between such words and the size. */
const leadsOn = (token: Token | undefined): boolean =>
  isWord(token, ...between, ...every, ...listed.changes.hands, ...listed.things.politely) ||
  [',', ':', '-'].includes(token?.text ?? '')

const sameAt = (tokens: readonly Token[], at: number): Common | null => {
  const to = phraseEnd(tokens, at, sameSize)
  if (to === null) return null
  let next = to
  while (next < to + 7 && leadsOn(tokens[next]) && sizeAt(tokens, next) === null) next += 1
  const size = sizeAt(tokens, next)
  return size?.size === undefined ? null : { size, from: at, to: size.to }
}

/** The size right before "for all", "across the board", where nothing else is said of them. */
const sizeBefore = (tokens: readonly Token[], at: number, to: number): Common | null => {
  const ends = tokens[to]?.kind !== 'word' || isWord(tokens[to], ...except, ...listed.things.politely)
  const until = isWord(tokens[at - 1], ...listed.changes.hands) ? at - 1 : at
  const found = [4, 3, 2, 1].flatMap((back) => {
    const size = until - back >= 0 ? sizeAt(tokens, until - back) : null
    return size?.size !== undefined && size.to === until ? [{ size, from: until - back, to }] : []
  })
  return until === at || ends ? (found[0] ?? null) : null
}

/** "Everybody is a large", "all youth M", "adult L all", "todos talla M de niño", "men's XL each", "womens M for the lot". */
const commonAt = (tokens: readonly Token[], at: number, rows: Rows): Common | null => {
  const same = sameAt(tokens, at)
  if (same !== null) return same
  const several = phraseEnd(tokens, at, everySeveral)
  const to = several ?? (isWord(tokens[at], ...every) ? at + 1 : null)
  if (to === null || isOfListed(tokens, at, rows)) return null
  const after = sizeAfter(tokens, to)
  return after?.size === undefined ? sizeBefore(tokens, at, to) : { size: after, from: at, to: after.to }
}

const set = (key: string, size: SizeFound): readonly Patch[] => [
  ...(size.size === undefined ? [] : [{ path: ['rows', key, 'size'], value: size.size }]),
  ...(size.fit === undefined ? [] : [{ path: ['rows', key, 'fit'], value: size.fit }]),
]

type Apart = { readonly patches: readonly Patch[]; readonly players: readonly Player[]; readonly to: number }

/** Somebody named apart who is no row yet: "#9", "number 4", "Paola". */
const strangerAt = (tokens: readonly Token[], at: number): { readonly player: Player; readonly to: number } | null => {
  const token = tokens[at]
  const marked = tokens[at - 1]?.text === '#' || isWord(tokens[at - 1], ...listed.players.strangerLead)
  if (isNumber(token) && marked && /^\d{1,3}$/.test(token?.text ?? '')) return { player: { number: token?.text }, to: at + 1 }
  const named = nameAt(tokens, at, () => false)
  return named === null ? null : { player: { name: named.name }, to: named.to }
}

const sized = (player: Player, { size, fit }: SizeFound): Player => ({
  ...player,
  ...(size === undefined ? {} : { size }),
  ...(fit === undefined ? {} : { fit }),
})

/** Who is named at a token: rows of the list, or somebody who is none yet. */
const personAt = (tokens: readonly Token[], at: number, rows: Rows) => {
  const ref = refAt(tokens, at, rows)
  if (ref !== null) return { keys: ref.keys, players: [], to: ref.to }
  const stranger = strangerAt(tokens, at)
  return stranger === null ? null : { keys: [], players: [stranger.player], to: stranger.to }
}

/** "… except #66 thats me im 2XL", "… except Moe (2XL) and Pat (medium)": each one named takes the next size. */
const exceptions = (tokens: readonly Token[], from: number, rows: Rows): Apart => {
  const patches: Patch[] = []
  const players: Player[] = []
  let waiting: { readonly keys: readonly string[]; readonly players: readonly Player[] } = { keys: [], players: [] }
  let to = from
  let at = from
  while (at < tokens.length && tokens[at]?.kind !== 'break') {
    const size = sizeAt(tokens, at)
    const person = size === null ? personAt(tokens, at, rows) : null
    if (tokens[at]?.text === '.' && waiting.keys.length + waiting.players.length === 0) break
    if (size?.size !== undefined) {
      patches.push(...waiting.keys.flatMap((key) => set(key, size)))
      players.push(...waiting.players.map((one) => sized(one, size)))
      if (waiting.keys.length + waiting.players.length > 0) to = size.to
      waiting = { keys: [], players: [] }
    }
    if (person !== null) waiting = { keys: [...waiting.keys, ...person.keys], players: [...waiting.players, ...person.players] }
    at = size?.to ?? person?.to ?? at + 1
  }
  return { patches, players, to }
}

const exceptAt = (tokens: readonly Token[], at: number): number | null => {
  for (const ahead of [0, 1, 2]) if (isWord(tokens[at + ahead], ...except)) return at + ahead + 1
  return null
}

/** Sizes said of everyone, with those named who differ; rows that are there take it at once, rows to come take it later. */
export const readEveryone = (tokens: readonly Token[], draft: Draft): EveryoneFound => {
  for (const at of tokens.keys()) {
    const common = commonAt(tokens, at, draft.rows)
    if (common === null) continue
    const { size } = common
    const rows = Object.keys(draft.rows)
    const other = exceptAt(tokens, common.to)
    const apart = other === null ? { patches: [], players: [], to: common.to } : exceptions(tokens, other, draft.rows)
    const taken = new Set(Array.from({ length: apart.to - common.from }, (_, index) => common.from + index))
    const everybody = rows.filter((key) => draft.rows[key]?.garment === undefined).flatMap((key) => set(key, size))
    const patches: readonly Patch[] = [
      ...(size.size === undefined ? [] : [{ path: ['common', 'size'], value: size.size }]),
      ...(size.fit === undefined ? [] : [{ path: ['common', 'fit'], value: size.fit }]),
      ...everybody,
      ...apart.patches,
    ]
    return { patches, taken, size, players: apart.players }
  }
  return { patches: commonCut(tokens, draft.rows), taken: new Set(), size: null, players: [] }
}
