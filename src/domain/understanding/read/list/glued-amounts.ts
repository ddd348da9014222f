import type { Draft } from '../../draft.ts'
import { sizeAt } from '../sizes/sizes.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { isNumber, type Token, tokensOf } from '../text/tokens.ts'

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

const touches = (tokens: readonly Token[], at: number): boolean =>
  isNumber(tokens[at]) && tokens[at + 1]?.kind === 'word' && tokens[at]?.end === tokens[at + 1]?.start

/** "5M": so many of a size, glued to it. */
const isAmount = (tokens: readonly Token[], at: number): boolean =>
  touches(tokens, at) && sizeAt(tokens, at) === null && sizeAt(tokens, at + 1, true)?.size !== undefined

/** "3XL", which may be three of XL as well; not with an amount before it. */
const isEither = (tokens: readonly Token[], at: number): boolean => {
  const free = !isNumber(tokens[at - 1]) && !['x', '×'].includes(tokens[at - 1]?.key ?? '')
  return free && touches(tokens, at) && sizeAt(tokens, at)?.size?.endsWith('XL') === true
}

/** How many pieces there are by what was said before or in the same message: "14 black tees". */
const totalsIn = (tokens: readonly Token[], { draft, lexicon }: Scene): readonly number[] => {
  const said = [...tokens.keys()].filter((at) => {
    const ahead = tokens.slice(at + 1, at + 4)
    const isGarment = ahead.some(({ key }) => lexicon.entries.get(key)?.kind === 'garment')
    return isNumber(tokens[at]) && !touches(tokens, at) && isGarment && ahead[0]?.kind === 'word'
  })
  const told = [draft.count, ...Object.values(draft.garments).map(({ count }) => count)]
  return [...told, ...said.map((at) => Number(tokens[at]?.text))].flatMap((count) => count ?? [])
}

/**
 * "2S 5M 4L 3XL" of fourteen: amounts glued to their sizes that make up the whole only where the last is three of XL. Where nobody told the
 * whole, it is one amount among the others, and read back as such.
 */
export const withGluedAmounts = (text: string, scene: Scene): string => {
  const tokens = tokensOf(text)
  const sumOf = (places: readonly number[]): number => places.reduce((sum, at) => sum + Number(tokens[at]?.text), 0)
  const amounts = [...tokens.keys()].filter((at) => isAmount(tokens, at))
  const either = [...tokens.keys()].filter((at) => isEither(tokens, at))
  if (amounts.length < 2 || either.length === 0) return text
  const whole = sumOf(amounts) + sumOf(either)
  const totals = totalsIn(tokens, scene)
  if (totals.length > 0 && !totals.includes(whole)) return text
  return either.reduceRight((left, at) => {
    const end = tokens[at]?.end ?? 0
    return `${left.slice(0, end)} x ${left.slice(end)}`
  }, text)
}
