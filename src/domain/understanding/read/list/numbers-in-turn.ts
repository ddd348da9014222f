import { listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { type SpokenFigure, spokenAt } from '../text/spoken-figures.ts'
import { isEnd, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'

/** A number and the size behind it; `led` by an article or a word for numbers. */
type Pair = { readonly from: number; readonly to: number; readonly number: string; readonly size: string; readonly led: boolean }

const fewest = 3
const mostBetween = 3
const leads: readonly string[] = [...listed.players.leftOutLead, ...listed.dictation.lead, ...listed.changes.the]

const isJoint = (token: Token | undefined): boolean => token?.text === ',' || isWord(token, ...listed.again.and)

const numberAt = (tokens: readonly Token[], at: number): SpokenFigure | null => {
  if (!isNumber(tokens[at])) return spokenAt(tokens, at)
  const figure = tokens[at]?.text ?? ''
  return /^\d{1,3}$/.test(figure) && sizeAt(tokens, at) === null ? { figure, to: at + 1 } : null
}

/** "el setenta y uno ese ya es mediana": small words between a number and its size. */
const isBetween = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...listed.players.areSized, ...listed.likeOthers.inTurn) && sizeAt(tokens, at)?.size === undefined

const pairAt = (text: string, tokens: readonly Token[], at: number): Pair | null => {
  let start = at
  while (start < at + 2 && isJoint(tokens[start])) start += 1
  const from = start
  while (start < from + 2 && (isWord(tokens[start], ...leads) || tokens[start]?.text === '#')) start += 1
  const number = numberAt(tokens, start)
  let being = number?.to ?? at
  while (number !== null && being < number.to + mostBetween && isBetween(tokens, being)) being += 1
  const size = number === null ? null : sizeAt(tokens, being)
  if (number === null || size?.size === undefined) return null
  const words = text.slice(tokens[being]?.start, tokens[size.to - 1]?.end)
  return { from, to: size.to, number: number.figure, size: words, led: start > from }
}

const runAt = (text: string, tokens: readonly Token[], at: number): readonly Pair[] => {
  const run: Pair[] = []
  let pair = isJoint(tokens[at]) ? null : pairAt(text, tokens, at)
  while (pair !== null) {
    run.push(pair)
    pair = pairAt(text, tokens, pair.to)
  }
  return run
}

/** Nobody counts pieces with a nought, or with an article before the figure. */
const areNumbers = (run: readonly Pair[]): boolean =>
  run.length >= fewest && (run.some(({ number }) => number.startsWith('0')) || run.slice(1).every(({ led }) => led))

/** Another number behind the run, in the same sentence, says that it was not read to its end. */
const goesOn = (tokens: readonly Token[], from: number): boolean => {
  const end = tokens.findIndex((token, at) => at >= from && isEnd(token))
  const rest = [...tokens.keys()].filter((at) => at >= from && (end < 0 || at < end))
  return rest.some((at) => numberAt(tokens, at) !== null && sizeAt(tokens, at) === null)
}

/**
 * "el 7 mediana el 12 chica el 14 grande", "7 medium 11 small and 00 extra small": numbers and sizes in turn, as they are dictated, a line
 * for each.
 */
export const withNumbersInTurn = (text: string): string => {
  const tokens = tokensOf(text)
  const runs: (readonly Pair[])[] = []
  for (let at = 0; at < tokens.length; at += 1) {
    const run = runAt(text, tokens, at)
    if (!areNumbers(run) || goesOn(tokens, run.at(-1)?.to ?? at)) continue
    runs.push(run)
    at = (run.at(-1)?.to ?? at + 1) - 1
  }
  return runs.reduceRight((left, run) => {
    const [start, end] = [tokens[run[0]?.from ?? 0]?.start ?? 0, tokens[(run.at(-1)?.to ?? 1) - 1]?.end ?? 0]
    const rest = left.slice(end).replace(/^[\s,;]+/, '')
    const head = left.slice(0, start).trimEnd()
    const stop = /[\p{L}\d]$/u.test(head) ? ':' : ''
    return `${head}${stop}\n${run.map(({ number, size }) => `#${number} ${size}`).join('\n')}\n${rest}`
  }, text)
}
