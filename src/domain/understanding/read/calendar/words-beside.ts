import { listed } from '../../words/languages.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { isMonth, isWeekday } from './day-parts.ts'

const said = listed.days
export const gameWords = new Set(said.game)
export const needWords = new Set(said.need)
const asideWords = new Set(said.aside)

const isPause = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'break' || [',', '.', ';', '!', '?', '('].includes(token.text)

/** The stretch between pauses in which a token stands. */
export const clauseAt = (tokens: readonly Token[], from: number, to: number): readonly Token[] => {
  let start = from
  while (start > 0 && !isPause(tokens[start - 1])) start -= 1
  let end = to
  while (end < tokens.length && !isPause(tokens[end])) end += 1
  return tokens.slice(start, end)
}

/** A word without the sign of whose it is. */
export const keyOf = ({ key }: Token): string => key.replace(/'s$/, '')

/** "Last week", "the shirts we got last"; "after last bell" and "the last Friday of May" are of the day itself. */
const isLately = (part: readonly Token[], at: number): boolean =>
  isWord(part[at], ...said.lately) &&
  !isWord(part[at + 1], ...said.endsTheDay) &&
  !(isWeekday(part[at + 1]) && isWord(part[at + 2], ...said.ofMonth, ...said.inMonth))

/** Whether words beside a day say that it is no day of this order. */
export const saysAside = (part: readonly Token[]): boolean =>
  part.some((token, at) => asideWords.has(keyOf(token)) || isLately(part, at))

const isTelling = (token: Token): boolean =>
  [gameWords, needWords, asideWords].some((words) => words.has(keyOf(token))) || isWord(token, ...said.lately)

/** "The game is Sat 16 Jan so Friday at 5": a day right behind such a word follows from the dated one before it, and is none of its kind. */
const isHence = (clause: readonly Token[], before: number): boolean => {
  const isDay = (token: Token): boolean => isWeekday(token) || isMonth(token) || /\d/.test(token.text)
  return (
    isWord(clause[before - 1], ...said.hence) &&
    clause.slice(0, before).some(isDay) &&
    clause.slice(before, before + 3).some(isDay)
  )
}

/** "First match is the 19th and I need the shirts by the 17th": the part of the clause at its own side of such words, where that part tells what the day is. */
export const near = (tokens: readonly Token[], from: number, to: number): readonly Token[] => {
  const clause = clauseAt(tokens, from, to)
  const start = clause.findIndex((token) => token.start === tokens[from]?.start)
  const isJoin = (token: Token): boolean => isWord(token, ...said.joins)
  const before = clause.slice(0, start).findLastIndex(isJoin) + 1
  const behind = clause.findIndex((token, index) => index >= start + to - from && isJoin(token))
  const part = clause.slice(before, behind < 0 ? clause.length : behind)
  return part.some(isTelling) || isHence(clause, before) ? part : clause
}
