import { listed } from '../../words/languages.ts'
import { cutAt, sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'

/** A size with its amount behind it; `sure` where a sign says that the figure counts. */
type Pair = { readonly from: number; readonly to: number; readonly amount: string; readonly size: string; readonly sure: boolean }

const isJoint = (token: Token | undefined): boolean =>
  token === undefined || [',', ';', '/', '|', '&', '.'].includes(token.text) || isWord(token, ...listed.again.and)

const times: readonly string[] = ['x', '×', '(']

const pairAt = (line: string, tokens: readonly Token[], at: number): Pair | null => {
  const size = isNumber(tokens[at]) && !isNumber(tokens[at + 1]) && sizeAt(tokens, at) === null ? null : sizeAt(tokens, at, true)
  if (size?.size === undefined) return null
  const sign = tokens[size.to]
  const signed = [':', '-', '–', '=', ...times].includes(sign?.key ?? '')
  const figure = signed ? size.to + 1 : size.to
  const amount = tokens[figure]
  const to = sign?.text === '(' ? figure + 2 : figure + 1
  if (!/^[1-9]\d{0,2}$/.test(amount?.text ?? '') || sizeAt(tokens, figure) !== null || !isJoint(tokens[to])) return null
  const words = line.slice(tokens[at]?.start, tokens[size.to - 1]?.end)
  return { from: at, to, amount: amount?.text ?? '', size: words, sure: times.includes(sign?.key ?? '') }
}

/** A cut that heads what follows: "womens: s 6, m 5". */
const headAt = (tokens: readonly Token[], at: number): number | null => {
  const cut = cutAt(tokens, at)
  return cut !== null && tokens[cut.to]?.text === ':' ? cut.to + 1 : null
}

/** All pairs of a list that has nothing else in it from its first size on; none where names or other figures stand between. */
const pairsOf = (line: string): readonly Pair[] => {
  const tokens = tokensOf(line)
  const first = [...tokens.keys()].findIndex((at) => pairAt(line, tokens, at) !== null)
  if (first < 0 || isNumber(tokens[first - 1]) || /^\p{Lu}\p{Ll}/u.test(tokens[first - 1]?.text ?? '')) return []
  const pairs: Pair[] = []
  let at = first
  while (at < tokens.length) {
    const pair = pairAt(line, tokens, at)
    const next = pair?.to ?? headAt(tokens, at) ?? (isJoint(tokens[at]) ? at + 1 : null)
    if (next === null) return []
    if (pair !== null) pairs.push(pair)
    at = next
  }
  return pairs
}

const spread = (line: string, numbered: boolean): string => {
  const pairs = line.length > 400 ? [] : pairsOf(line)
  if (pairs.length < 2 || (numbered && !pairs.every(({ sure }) => sure))) return line
  const tokens = tokensOf(line)
  return pairs.reduceRight((left, { from, to, amount, size }) => {
    const [start, end] = [tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0]
    return `${left.slice(0, start)}${amount} ${size}${left.slice(end)}`
  }, line)
}

/**
 * "womens s 6, womens m 5", "adult s: 4 / adult m: 6": sizes listed with their amounts behind them, told as "6 womens s, 5 womens m". Where
 * players have numbers a bare figure may be one, so that only "x6" and "(6)" count.
 */
export const withCountsAhead = (text: string, numbered: boolean): string =>
  text
    .split('\n')
    .map((line) => spread(line, numbered))
    .join('\n')
