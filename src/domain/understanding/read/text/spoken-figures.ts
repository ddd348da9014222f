import { listed, wordValues } from '../../words/languages.ts'
import { isWord, type Token } from './tokens.ts'

/** A number as it is spoken, written in figures: "oh seven" is 07, "treinta y uno" 31. */
export type SpokenFigure = { readonly figure: string; readonly to: number }

const said = listed.dictation
const values: Readonly<Record<string, number>> = wordValues.figures

const amountOf = (key: string | undefined): number | null =>
  key !== undefined && Object.hasOwn(values, key) ? (values[key] ?? null) : null

const digitAt = (tokens: readonly Token[], at: number): number | null => {
  const value = amountOf(tokens[at]?.key)
  return value !== null && value < 10 ? value : isWord(tokens[at], ...said.nought) ? 0 : null
}

/** "Oh seven", "double zero", "cero cero", "doble siete". */
const digitPair = (tokens: readonly Token[], at: number): SpokenFigure | null => {
  const next = digitAt(tokens, at + 1)
  if (next === null) return null
  if (isWord(tokens[at], ...said.twice)) return { figure: `${next}${next}`, to: at + 2 }
  return isWord(tokens[at], ...said.nought) ? { figure: `0${next}`, to: at + 2 } : null
}

/** "Twenty three", "twenty-three", "setenta y uno". */
const tensAt = (tokens: readonly Token[], at: number): SpokenFigure | null => {
  const [first = '', joined, ...more] = (tokens[at]?.key ?? '').split('-')
  const tens = amountOf(first)
  if (tens === null || tens < 20 || tens % 10 !== 0 || more.length > 0) return null
  const ones = (key: string | undefined): number | null => {
    const value = amountOf(key)
    return value !== null && value > 0 && value < 10 ? value : null
  }
  if (joined !== undefined) return ones(joined) === null ? null : { figure: String(tens + (ones(joined) ?? 0)), to: at + 1 }
  const next = isWord(tokens[at + 1], ...said.tensJoin) ? at + 2 : at + 1
  const one = ones(tokens[next]?.key)
  return one === null ? { figure: String(tens), to: at + 1 } : { figure: String(tens + one), to: next + 1 }
}

/** The jersey number from 0 to 99 that is spoken at a token. */
export const spokenAt = (tokens: readonly Token[], at: number): SpokenFigure | null => {
  if (tokens[at]?.kind !== 'word') return null
  const value = amountOf(tokens[at]?.key)
  return digitPair(tokens, at) ?? tensAt(tokens, at) ?? (value === null ? null : { figure: String(value), to: at + 1 })
}
