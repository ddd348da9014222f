import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { cutAt, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { type Rows, refsIn } from '../whom/refs.ts'

const every: readonly string[] = listed.players.every
const except: readonly string[] = listed.players.exceptAlso

const isStop = (token: Token): boolean => token.kind === 'break' || ['.', ';', '!', '?'].includes(token.text)

/** "Luz, Gris y Blanca son tallas de mujer": the cut of those who are named in the sentence, else of everyone. */
const cutPatches = (
  tokens: readonly Token[],
  at: number,
  { rows, fit }: { readonly rows: Rows; readonly fit: SizeFound['fit'] },
): readonly Patch[] => {
  const from = tokens.slice(0, at).findLastIndex(isStop) + 1
  const named = refsIn(tokens.slice(from, at), rows).flatMap((ref) => (ref.keys.length === 1 ? ref.keys : []))
  if (named.length === 0) return [{ path: ['common', 'fit'], value: fit }]
  return named.map((key) => ({ path: ['rows', key, 'fit'], value: fit }))
}

/** "All sizes are womens", "todas las tallas son de niño": the word for sizes over small words before the cut. */
const isOfSizes = (tokens: readonly Token[], at: number): boolean => {
  let back = at - 1
  while (back > at - 4 && isWord(tokens[back], ...listed.players.areSized, ...every)) back -= 1
  return isWord(tokens[back], ...listed.players.sizes, ...listed.players.sizeNoun)
}

const isEdge = (token: Token | undefined): boolean =>
  token === undefined || isStop(token) || [',', '(', ')', ':'].includes(token.text)

/** Behind a cut that is told of all: the end of the clause, "please", or those who differ. */
const endsThere = (tokens: readonly Token[], to: number): boolean =>
  isEdge(tokens[to]) || isWord(tokens[to], ...listed.players.cutTail, ...except)

/** "… all womens", "todas son de dama", "todas las playeras en corte de dama", "son de dama todas": a clause of its own. */
const isOfAll = (tokens: readonly Token[], at: number, to: number): boolean => {
  if (isWord(tokens[to], ...every) && isWord(tokens[at - 1], ...listed.players.cutIs)) return isEdge(tokens[to + 1])
  let back = at - 1
  while (back > at - 6 && isWord(tokens[back], ...listed.players.cutIs)) back -= 1
  return isWord(tokens[back], ...every, ...listed.players.cutEvery) && isEdge(tokens[back - 1]) && endsThere(tokens, to)
}

/** "Son de dama", after the list and nothing else: of everyone. */
const isWhole = (tokens: readonly Token[], at: number, to: number): boolean => {
  const ahead = tokens.slice(0, at)
  return ahead.length > 0 && ahead.every((token) => isWord(token, ...listed.players.cutIs, ...every)) && endsThere(tokens, to)
}

/** "… menos la de Chela", "except Moe": who keeps what they have. */
const differing = (tokens: readonly Token[], to: number, rows: Rows): readonly Patch[] => {
  if (!isWord(tokens[to], ...except) && !isWord(tokens[to + 1], ...except)) return []
  const end = tokens.slice(to).findIndex(isStop)
  return refsIn(tokens.slice(to, end < 0 ? tokens.length : to + end), rows).flatMap(({ keys }) =>
    keys.map((key): Patch => ({ path: ['rows', key, 'fit'], value: rows[key]?.fit ?? 'men' })),
  )
}

/** "youth sizes", "tallas de niño", "all adults": the cut of everyone, without a size. */
export const commonCut = (tokens: readonly Token[], rows: Rows): readonly Patch[] => {
  for (const at of tokens.keys()) {
    const cut = cutAt(tokens, at)
    if (cut === null || sizeAt(tokens, at) !== null) continue
    const sized = isWord(tokens[cut.to], ...listed.players.sizing)
    const tailed =
      isWord(tokens[at - 1], ...listed.players.sizeNoun) ||
      (isWord(tokens[at - 1], ...listed.players.sizeOf) && isWord(tokens[at - 2], ...listed.players.sizeNoun)) ||
      isOfSizes(tokens, at) ||
      isOfAll(tokens, at, cut.to) ||
      isWhole(tokens, at, cut.to)
    if (sized || tailed) return [...cutPatches(tokens, at, { rows, fit: cut.fit }), ...differing(tokens, cut.to, rows)]
  }
  return []
}
