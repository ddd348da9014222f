import type { Fit } from '../../../garment/garment.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { cutAt, isOfSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { blanked, isNumber, isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'

/** The cut of the pieces of some sizes, or of all the others. */
export type CutOfSizes = { readonly sizes: readonly SizeFound[] | 'rest'; readonly fit: Fit }
type Found = CutOfSizes & { readonly from: number; readonly to: number }

const rests = phrasesOf([...listed.players.rest, ...listed.players.restOfSizes])

/** "Are", "son de", "corte": what leads from the sizes to their cut; at least one of them. */
const cutBehind = (tokens: readonly Token[], from: number): { readonly fit: Fit; readonly to: number } | null => {
  let at = from
  while (at < from + 4 && isWord(tokens[at], ...listed.players.cutIs) && cutAt(tokens, at) === null) at += 1
  const cut = cutAt(tokens, at)
  const next = cut === null ? undefined : tokens[cut.to]
  const ends = next === undefined || next.kind !== 'word' || isWord(next, ...listed.again.and) || restAt(tokens, cut?.to ?? 0)
  return cut === null || !ends ? null : cut
}

const restAt = (tokens: readonly Token[], at: number): boolean => phraseEnd(tokens, at, rests) !== null

const pastArticles = (tokens: readonly Token[], from: number): number => {
  let at = from
  while (isWord(tokens[at], ...listed.things.articles, ...listed.players.every)) at += 1
  return at
}

/** "The mediums and the larges", "las M y las G". */
const sizesAt = (
  tokens: readonly Token[],
  from: number,
): { readonly sizes: readonly SizeFound[]; readonly to: number } | null => {
  const sizes: SizeFound[] = []
  let [at, to] = [from, from]
  for (;;) {
    at = pastArticles(tokens, at)
    const size = isNumber(tokens[at]) ? null : sizeAt(tokens, at)
    if (size?.size === undefined || size.fit !== undefined) return sizes.length === 0 ? null : { sizes, to }
    sizes.push(size)
    to = size.to
    at = isWord(tokens[to], ...listed.again.and) || tokens[to]?.text === ',' ? to + 1 : to
    if (at === to) return { sizes, to }
  }
}

const foundAt = (tokens: readonly Token[], from: number): Found | null => {
  const rest = phraseEnd(tokens, from, rests)
  const others = rest === null ? null : cutBehind(tokens, rest)
  if (others !== null) return { sizes: 'rest', fit: others.fit, from, to: others.to }
  const named = isNumber(tokens[from - 1]) ? null : sizesAt(tokens, from)
  const cut = named === null || !isWord(tokens[named.to], ...listed.players.cutIs) ? null : cutBehind(tokens, named.to)
  return named === null || cut === null ? null : { sizes: named.sizes, fit: cut.fit, from, to: cut.to }
}

/** "The smalls are women's, the rest men's": the text without what it says of the cut of sizes, and that. */
export const readCutOfSizes = (text: string): { readonly cuts: readonly CutOfSizes[]; readonly rest: string } => {
  const tokens = tokensOf(text)
  const found: Found[] = []
  for (const at of tokens.keys()) {
    const one = at < (found.at(-1)?.to ?? 0) ? null : foundAt(tokens, at)
    if (one !== null) found.push(one)
  }
  if (!found.some(({ sizes }) => sizes !== 'rest')) return { cuts: [], rest: text }
  const rest = found.reduce((left, { from, to }) => blanked(left, tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0), text)
  return { cuts: found, rest }
}

/** What these cuts make of the list and of the counted sizes. */
export const cutPatches = (cuts: readonly CutOfSizes[], { rows, tally }: Draft): readonly Patch[] => {
  const named = cuts.flatMap(({ sizes }) => (sizes === 'rest' ? [] : sizes))
  const lines = [
    ...Object.entries(rows).map(([key, line]) => ({ path: ['rows', key, 'fit'], line })),
    ...Object.entries(tally).map(([key, line]) => ({ path: ['tally', key, 'fit'], line })),
  ]
  return cuts.flatMap(({ sizes, fit }) =>
    lines.flatMap(({ path, line }): readonly Patch[] => {
      const isNamed = (all: readonly SizeFound[]): boolean => all.some((size) => isOfSize(size, line))
      return (sizes === 'rest' ? !isNamed(named) : isNamed(sizes)) ? [{ path, value: fit }] : []
    }),
  )
}
