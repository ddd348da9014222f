import { listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { spokenAt } from '../text/spoken-figures.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'

/** A stretch of tokens, its end not counted in. */
type Stretch = { readonly from: number; readonly to: number }
type Amount = Stretch & { readonly amount: string }
type Sizes = Stretch & { readonly words: readonly string[] }

const ofEach = phrasesOf(listed.rosters.ofEach)
const links: readonly string[] = [...listed.told.of, ...listed.again.and, ...listed.rosters.sizesLead]

/** Over commas, colons and small words between amount and sizes. */
const pastLinks = (tokens: readonly Token[], from: number): number => {
  let at = from
  while (at < from + 4 && ([',', ':', '-'].includes(tokens[at]?.text ?? '') || isWord(tokens[at], ...links))) at += 1
  return at
}

/** "5 each", "five of each", "5 de cada una". */
const amountAt = (tokens: readonly Token[], from: number): Amount | null => {
  const figure = isNumber(tokens[from]) ? { figure: tokens[from]?.text ?? '', to: from + 1 } : spokenAt(tokens, from)
  const to = figure === null ? null : phraseEnd(tokens, figure.to, ofEach)
  return figure === null || to === null || !/^[1-9]\d?$/.test(figure.figure) ? null : { from, to, amount: figure.figure }
}

/** Sizes one after the other, two at least: "S, M, L and XL". */
const sizesAt = (text: string, tokens: readonly Token[], from: number): Sizes | null => {
  const words: string[] = []
  let [at, to] = [from, from]
  for (let size = sizeAt(tokens, at, true); size?.size !== undefined; size = sizeAt(tokens, at, true)) {
    words.push(text.slice(tokens[at]?.start, tokens[size.to - 1]?.end))
    to = size.to
    at = pastLinks(tokens, to)
  }
  return words.length < 2 ? null : { from, to, words }
}

type Told = Stretch & { readonly words: string }

const told = ({ amount }: Amount, { words }: Sizes, { from, to }: Stretch): Told => ({
  from,
  to,
  words: words.map((size) => `${amount} ${size}`).join(', '),
})

const toldAt = (text: string, tokens: readonly Token[], at: number): Told | null => {
  const ahead = amountAt(tokens, at)
  const behind = ahead === null ? null : sizesAt(text, tokens, pastLinks(tokens, ahead.to))
  if (ahead !== null && behind !== null) return told(ahead, behind, { from: at, to: behind.to })
  const sizes = isNumber(tokens[at - 1]) ? null : sizesAt(text, tokens, at)
  const amount = sizes === null ? null : amountAt(tokens, pastLinks(tokens, sizes.to))
  return sizes === null || amount === null ? null : told(amount, sizes, { from: at, to: amount.to })
}

/** "5 each S M L XL", "CH, M y G, 4 de cada una": the amount is written before each of the sizes. */
export const withEachSize = (text: string): string => {
  const tokens = tokensOf(text)
  const found: Told[] = []
  for (const at of tokens.keys()) {
    const one = at < (found.at(-1)?.to ?? 0) ? null : toldAt(text, tokens, at)
    if (one !== null) found.push(one)
  }
  return found.reduceRight(
    (left, { from, to, words }) => `${left.slice(0, tokens[from]?.start)}${words}${left.slice(tokens[to - 1]?.end)}`,
    text,
  )
}
