import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isEnd, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { nameAt, rowsByName } from '../whom/refs.ts'

type Pair = { readonly name: string; readonly number: string; readonly to: number }
type List = { readonly pairs: readonly Pair[]; readonly from: number; readonly to: number }

const isOther = (token: Token): boolean => isWord(token, ...listed.players.opening)

const isJoint = (token: Token | undefined): boolean =>
  [',', ';', '&'].includes(token?.text ?? '') || isWord(token, ...listed.players.and)

const pairAt = (tokens: readonly Token[], at: number): Pair | null => {
  const named = nameAt(tokens, at, isOther)
  const figure =
    named === null ? undefined : tokens[[':', '-', '#'].includes(tokens[named.to]?.text ?? '') ? named.to + 1 : named.to]
  if (named === null || figure === undefined || !isNumber(figure) || !/^\d{1,3}$/.test(figure.text)) return null
  return { name: named.name, number: figure.text, to: tokens.indexOf(figure) + 1 }
}

/** "Numbers: Ann 4, Bo 7": names with their numbers and nothing else in the sentence. */
const listAt = (tokens: readonly Token[], from: number): List | null => {
  if (!isWord(tokens[from], ...listed.players.intro) || tokens[from + 1]?.text !== ':') return null
  const pairs: Pair[] = []
  let at = from + 2
  for (let pair = pairAt(tokens, at); pair !== null; pair = pairAt(tokens, at)) {
    pairs.push(pair)
    at = pair.to
    while (isJoint(tokens[at])) at += 1
  }
  const next = tokens[at]
  const closed = next === undefined || isEnd(next)
  return pairs.length > 1 && closed ? { pairs, from, to: at } : null
}

/** Whether a size stands there, one that ends its sentence ("Bo L. Numbers: …") too. */
const isSize = (tokens: readonly Token[], at: number): boolean => {
  const [token, next] = [tokens[at], tokens[at + 1]]
  const plain = token === undefined ? [] : tokensOf(token.text.replace(/\.$/, ''))
  return sizeAt(tokens, at)?.size !== undefined || (next?.kind === 'word' && sizeAt(plain, 0)?.size !== undefined)
}

/** Where a name stands with its size behind it outside of that list. */
const sizedAt = (tokens: readonly Token[], { name }: Pair, { from, to }: List): number | null => {
  const words = tokensOf(name)
  const isThere = (at: number): boolean => words.every(({ text }, index) => tokens[at + index]?.text === text)
  const at = [...tokens.keys()].find((one) => (one < from || one >= to) && isThere(one) && isSize(tokens, one + words.length))
  return at ?? null
}

/** "Sizes: Ann M, Bo L. Numbers: Ann 4, Bo 7": a number told by the name goes to where the name has its size, or to the list that is there. */
export const withNumbersByName = (text: string, { rows }: Draft): string => {
  const tokens = tokensOf(text)
  const list = tokens.flatMap((_, at) => listAt(tokens, at) ?? [])[0]
  if (list === undefined) return text
  const places = list.pairs.map((pair) => ({ pair, at: sizedAt(tokens, pair, list) }))
  if (!places.every(({ pair, at }) => at !== null || rowsByName(rows, pair.name).length === 1)) return text
  const changes = places.flatMap(({ pair, at }) => (at === null ? [`${pair.name} # ${pair.number}`] : []))
  const [start, end] = [tokens[list.from]?.start ?? 0, tokens[list.to - 1]?.end ?? 0]
  const inserts = places.flatMap(({ pair, at }) =>
    at === null ? [] : [{ at: tokens[at]?.start ?? 0, words: `#${pair.number} ` }],
  )
  const all = [...inserts.map((one) => ({ ...one, end: one.at })), { at: start, end, words: changes.join('. ') }]
  return all
    .toSorted((a, b) => b.at - a.at)
    .reduce((left, { at, end: to, words }) => `${left.slice(0, at)}${words}${left.slice(to)}`, text)
}
