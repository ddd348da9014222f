import type { Player } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { isAdd, span } from '../list/change.ts'
import { isOtherThan, type PlayersFound } from '../list/players.ts'
import { sizeAt } from '../sizes/sizes.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { fold, isCapital, isNumber, isWord, type Token } from '../text/tokens.ts'
import { nameAt, type Rows, rowsByName, rowsByNumber } from '../whom/refs.ts'

type Scene = { readonly rows: Rows; readonly lexicon: Lexicon }

const small: readonly string[] = [...listed.players.fillers, ...listed.players.numbered]
const particles: readonly string[] = listed.changes.particles

/** Past the small words and signs between the parts of a player. */
const past = (tokens: readonly Token[], at: number): number => {
  let next = at
  while (
    next < at + 5 &&
    ((isWord(tokens[next], ...small) && !isCapital(tokens[next])) || ['#', ',', ':', '-'].includes(tokens[next]?.text ?? '')) &&
    sizeAt(tokens, next) === null
  )
    next += 1
  return next
}

/** A name with all its words: "Ñúñez de la Peña y Guzmán", "De la Cruz y Soto". */
const wholeName = (
  tokens: readonly Token[],
  at: number,
  lexicon: Lexicon,
): { readonly name: string; readonly to: number } | null => {
  let first = at
  while (isWord(tokens[first], ...particles) && (first > at || isCapital(tokens[first]))) first += 1
  const named = nameAt(tokens, first, isOtherThan(lexicon))
  const lead = tokens.slice(at, first).map(({ text }) => text)
  return named === null ? null : { name: [...lead, named.name].join(' '), to: named.to }
}

/** "add number 3, Ñúñez de la Peña y Guzmán, size L": a number that nobody has, a name and a size behind a word that adds. */
const addedAt = (
  tokens: readonly Token[],
  at: number,
  { rows, lexicon }: Scene,
): { readonly player: Player; readonly to: number } | null => {
  const start = past(tokens, at + 1)
  const number = tokens[start]?.text ?? ''
  if (!isNumber(tokens[start]) || !/^\d{1,3}$/.test(number) || rowsByNumber(rows, number).length > 0) return null
  const named = wholeName(tokens, past(tokens, start + 1), lexicon)
  const size = named === null ? null : sizeAt(tokens, past(tokens, named.to))
  if (named === null || size?.size === undefined) return null
  if (rowsByName(rows, named.name).some((key) => fold(rows[key]?.name ?? '') === fold(named.name))) return null
  const fit = size.fit === undefined ? {} : { fit: size.fit }
  return { player: { number, name: named.name, size: size.size, ...fit }, to: size.to }
}

type Added = { readonly player: Player; readonly from: number; readonly to: number }

/** "add 9 Noa M, 10 Kit L and 11 Lu S": one after the other. */
const chainAt = (tokens: readonly Token[], at: number, scene: Scene): readonly Added[] => {
  const first = addedAt(tokens, at, scene)
  return first === null
    ? []
    : [{ ...first, from: at }, ...chainAt(tokens, first.to - 1, scene).map((one) => ({ ...one, from: first.to }))]
}

/** Players who are added whole, so that a part of their name or their size is nobody else's. */
export const readAdded = (tokens: readonly Token[], scene: Scene): PlayersFound => {
  const found = [...tokens.keys()].flatMap((at) => (isAdd(tokens[at]) ? chainAt(tokens, at, scene) : []))
  return {
    players: found.map(({ player }) => player),
    taken: new Set(found.flatMap(({ from, to }) => [...span(from, to)])),
  }
}
