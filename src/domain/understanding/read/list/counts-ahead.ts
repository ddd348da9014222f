import { listed } from '../../words/languages.ts'
import { cutAt, sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { isSentence } from './sentence-words.ts'

/**
 * A size with its amount behind it; `sure` where a sign says that the figure counts, `dense` where the next size follows without a pause.
 * `cut` is the cut in front of it, in its words.
 */
type Pair = {
  readonly from: number
  readonly to: number
  readonly amount: string
  readonly size: string
  readonly sure: boolean
  readonly dense: boolean
  readonly cut: string | null
}

const isJoint = (token: Token | undefined): boolean =>
  token === undefined || [',', ';', '/', '|', '&', '.'].includes(token.text) || isWord(token, ...listed.again.and)

const times: readonly string[] = ['x', '×', '(']

type Line = { readonly text: string; readonly tokens: readonly Token[]; readonly loose: boolean }

/** `loose`: other words may follow. */
const pairAt = ({ text, tokens, loose }: Line, at: number): Pair | null => {
  const size = isNumber(tokens[at]) && !isNumber(tokens[at + 1]) && sizeAt(tokens, at) === null ? null : sizeAt(tokens, at, true)
  if (size?.size === undefined) return null
  const sign = tokens[size.to]
  const signed = [':', '-', '–', '=', ...times].includes(sign?.key ?? '')
  const figure = signed ? size.to + 1 : size.to
  const amount = tokens[figure]
  const to = sign?.text === '(' ? figure + 2 : figure + 1
  const dense = sizeAt(tokens, to, true)?.size !== undefined
  const ends = dense || isNumber(tokens[to]) || isJoint(tokens[to]) || (loose && !isWord(tokens[to], ...listed.players.isLength))
  if (!/^[1-9]\d{0,2}$/.test(amount?.text ?? '') || sizeAt(tokens, figure) !== null || !ends) return null
  const words = (until: number): string => text.slice(tokens[at]?.start, tokens[until - 1]?.end)
  const cut = cutAt(tokens, at)
  const sure = times.includes(sign?.key ?? '')
  return { from: at, to, amount: amount?.text ?? '', size: words(size.to), sure, dense, cut: cut === null ? null : words(cut.to) }
}

/** A cut that heads what follows: "womens: s 6, m 5". */
const headAt = (tokens: readonly Token[], at: number): number | null => {
  const cut = cutAt(tokens, at)
  return cut !== null && tokens[cut.to]?.text === ':' ? cut.to + 1 : null
}

/** "…, all womens", "…, de hombre": a cut that closes a list, behind a pause or a word for all of them. */
const tailAt = (tokens: readonly Token[], at: number): number | null => {
  const cut = cutAt(tokens, isWord(tokens[at], ...listed.players.all) ? at + 1 : at)
  return cut !== null && isJoint(tokens[cut.to]) ? cut.to : null
}

/** "… and 1 XXL": one more whose amount stands in front, behind a pause or another figure. */
const aheadAt = (tokens: readonly Token[], at: number): number | null => {
  const counts = isNumber(tokens[at]) || isWord(tokens[at], ...listed.players.one)
  const size = counts ? sizeAt(tokens, at + 1, true) : null
  return size?.size !== undefined && sizeAt(tokens, at) === null && isJoint(tokens[size.to]) ? size.to : null
}

const isNamed = (token: Token | undefined): boolean => /^\p{Lu}\p{Ll}/u.test(token?.text ?? '')

const isFree = (before: Token | undefined): boolean =>
  before === undefined || !(isNumber(before) || (isNamed(before) && !isSentence(before)))

const runAt = (line: Line, at: number): readonly Pair[] => {
  const run: Pair[] = []
  let pair = isFree(line.tokens[at - 1]) ? pairAt(line, at) : null
  while (pair !== null) {
    run.push(pair)
    pair = pair.dense ? pairAt(line, pair.to) : null
  }
  return run.length > 1 && run.at(-1)?.dense === false ? run : []
}

/** "Sizes S 8 M 12 L 9 thanks!": sizes and figures in turn, from a size to a figure, whatever stands around them. */
const runsOf = (text: string): readonly Pair[] => {
  const line = { text, tokens: tokensOf(text), loose: true }
  const pairs: Pair[] = []
  let at = 0
  while (at < line.tokens.length) {
    const run = runAt(line, at)
    pairs.push(...run)
    at = run.at(-1)?.to ?? at + 1
  }
  return pairs
}

/** All pairs of a list that has nothing else in it from its first size on; none where names or other figures stand between. */
const pairsOf = (text: string): readonly Pair[] => {
  const tokens = tokensOf(text)
  const line = { text, tokens, loose: false }
  const first = [...tokens.keys()].findIndex((at) => pairAt(line, at) !== null)
  if (first < 0 || isNumber(tokens[first - 1]) || isNamed(tokens[first - 1])) return []
  const pairs: Pair[] = []
  let at = first
  while (at < tokens.length) {
    const pair = pairAt(line, at)
    const other = pair === null && pairs.length > 0 ? (tailAt(tokens, at) ?? aheadAt(tokens, at)) : null
    const next = pair?.to ?? headAt(tokens, at) ?? other ?? (isJoint(tokens[at]) ? at + 1 : null)
    if (next === null) return []
    if (pair !== null) pairs.push(pair)
    at = next
  }
  return pairs
}

/** "mens S 2 M 3": a cut holds for the sizes that follow without a pause. */
const withCuts = (pairs: readonly Pair[]): readonly Pair[] => {
  let cut: string | null = null
  return pairs.map((pair, at) => {
    cut = pairs[at - 1]?.dense === true ? (pair.cut ?? cut) : pair.cut
    return cut === null || pair.cut !== null ? pair : { ...pair, size: `${cut} ${pair.size}` }
  })
}

/** Where players have numbers, a row of sizes and figures in turn is a line for each, so that it is asked what the figures are. */
const inLines = (line: string, tokens: readonly Token[], pairs: readonly Pair[]): string => {
  const [first, last] = [pairs[0], pairs.at(-1)]
  const listed = pairs.map(({ amount, size }) => `${amount} ${size}`).join('\n')
  return `${line.slice(0, tokens[first?.from ?? 0]?.start)}\n${listed}\n${line.slice(tokens[(last?.to ?? 1) - 1]?.end)}`
}

const listedIn = (line: string): readonly Pair[] => {
  const pairs = pairsOf(line)
  return pairs.length > 1 ? pairs : runsOf(line)
}

const spread = (line: string, numbered: boolean): string => {
  const pairs = line.length > 400 ? [] : withCuts(listedIn(line))
  const tokens = tokensOf(line)
  if (pairs.length < 2) return line
  if (numbered && !pairs.every(({ sure }) => sure))
    return pairs.slice(0, -1).every(({ dense }) => dense) ? inLines(line, tokens, pairs) : line
  return pairs.reduceRight((left, { from, to, amount, size, dense }) => {
    const [start, end] = [tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0]
    return `${left.slice(0, start)}${amount} ${size}${dense ? ',' : ''}${left.slice(end)}`
  }, line)
}

/**
 * "womens s 6, womens m 5", "S 6 M 14 L 11", "adult s: 4 / adult m: 6": sizes listed with their amounts behind them, told as "6 womens s, 5 womens m". Where
 * players have numbers a bare figure may be one, so that only "x6" and "(6)" count.
 */
export const withCountsAhead = (text: string, numbered: boolean): string =>
  text
    .split('\n')
    .map((line) => spread(line, numbered))
    .join('\n')
