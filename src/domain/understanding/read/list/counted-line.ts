import { sizeWords } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isNumber, type Token, tokensOf } from '../text/tokens.ts'

/** "S x 8", "women's M (3)": a size with its amount behind it and nothing else. */
const isTimes = (tokens: readonly Token[]): boolean => {
  const size = sizeAt(tokens, 0, true)
  const [sign, amount] = size?.size === undefined ? [] : tokens.slice(size.to)
  const end = sign?.text === '(' ? 3 : 2
  return ['x', '×', '('].includes(sign?.key ?? '') && isNumber(amount) && tokens.length === (size?.to ?? 0) + end
}

/** "Y 4 chicas de dama", "and 3 mediums": behind a small word an amount and a size in the plural that ends the line. */
const endsInSeveral = (tokens: readonly Token[], at: number): boolean =>
  at > 1 &&
  tokens[0]?.kind === 'word' &&
  (tokens[at]?.key ?? '').endsWith('s') &&
  Object.hasOwn(sizeWords, tokens[at]?.key ?? '') &&
  sizeAt(tokens, at)?.to === tokens.length

/** "5x medium", "12 mediums 6 larges": so many of a size, no player. */
export const countsSizes = (line: string): boolean => {
  const tokens = tokensOf(line)
  const pairs = [...tokens.keys()].filter(
    (at) => isNumber(tokens[at]) && sizeAt(tokens, at) === null && sizeAt(tokens, at + 1)?.size !== undefined,
  )
  if (pairs.length > 1 || isTimes(tokens) || pairs.some((at) => endsInSeveral(tokens, at + 1))) return true
  return tokens.some(
    (token, at) =>
      isNumber(token) && ['x', '×'].includes(tokens[at + 1]?.text ?? '') && sizeAt(tokens, at + 2, true)?.size !== undefined,
  )
}
