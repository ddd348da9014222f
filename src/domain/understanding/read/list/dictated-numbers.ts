import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { isMonth, isWeekday } from '../calendar/day-parts.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { spokenAt } from '../text/spoken-figures.ts'
import { isCapital, isEnd, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { rowsByNumber } from '../whom/refs.ts'

type Spoken = { readonly figure: string; readonly from: number; readonly to: number }
type Scene = { readonly tokens: readonly Token[]; readonly draft: Draft }

const said = listed.dictation

const endOf = (tokens: readonly Token[], from: number): number => {
  const end = tokens.findIndex((token, at) => at >= from && (isEnd(token) || token.text === '?'))
  return end < 0 ? tokens.length : end
}

/** A name may stand in capitals behind the number; the first word of a sentence is written so, too. */
const isNameLike = (token: Token | undefined): boolean => isCapital(token) && !isMonth(token) && !isWeekday(token)

/** A player stands behind the number: with a size in the sentence, or with a name right behind. */
const hasPlayer = (tokens: readonly Token[], { figure, to }: Spoken): boolean => {
  const rest = tokens.slice(to, Math.min(endOf(tokens, to), to + 14))
  if (rest.some((_, index) => sizeAt(tokens, to + index)?.size !== undefined)) return true
  const first = rest.findIndex((token) => !isWord(token, ...said.being))
  return figure.length + Number(figure) > 2 && isNameLike(rest[first])
}

const isListed = (figure: string, { rows }: Draft): boolean => rowsByNumber(rows, figure).length > 0

/** Those behind which words of a day, of a length or of pieces stand are no player's number: "el cinco de enero", "four inches". */
const isOther = (tokens: readonly Token[], { from, to }: Spoken): boolean => {
  const next = isWord(tokens[to], ...listed.days.ofMonth) ? to + 1 : to
  if (isMonth(tokens[next]) || isMonth(tokens[from - 1]) || isWeekday(tokens[from - 1]) || isWeekday(tokens[from - 2]))
    return true
  return isWord(tokens[to], ...listed.players.isLength, ...listed.days.notDays, ...listed.hours.sharp)
}

const leadsTo = (tokens: readonly Token[], from: number): boolean => {
  const being = isWord(tokens[from - 1], ...said.being) ? from - 2 : from - 1
  return isWord(tokens[being], ...said.lead) || isWord(tokens[from - 1], ...said.lead)
}

/** "Number twenty three is Okafor", "el cero nueve grande", "the seven is a medium": a word leads to the number, and a player follows or has it. */
const isLed = ({ tokens, draft }: Scene, found: Spoken): boolean => {
  const { figure, from, to } = found
  const known = isListed(figure, draft)
  if (leadsTo(tokens, from)) return known || hasPlayer(tokens, found)
  if (!isWord(tokens[from - 1], ...said.article)) return false
  if (isWord(tokens[from - 1], ...listed.players.leftOutLead)) return known || hasPlayer(tokens, found)
  return isWord(tokens[to], ...said.being) && (known || hasPlayer(tokens, found))
}

const opensClause = (tokens: readonly Token[], at: number): boolean =>
  at === 0 || tokens[at - 1]?.kind === 'sign' || tokens[at - 1]?.kind === 'break' || isWord(tokens[at - 1], ...said.behind)

/** "Twenty three Okafor large": at the beginning of a clause, with a name and a size behind it. */
const isBare = (tokens: readonly Token[], found: Spoken): boolean => {
  const next = isWord(tokens[found.to], ...said.being) ? found.to + 1 : found.to
  const named = isNameLike(tokens[next]) && sizeAt(tokens, next)?.size === undefined
  return opensClause(tokens, found.from) && named && hasPlayer(tokens, found)
}

/** "Baer oh seven medium": with a nought before it a figure counts nothing. */
const isWithNought = (tokens: readonly Token[], found: Spoken): boolean =>
  /^0\d/.test(found.figure) && (hasPlayer(tokens, found) || isNameLike(tokens[found.from - 1]))

const spokenIn = (tokens: readonly Token[]): readonly Spoken[] => {
  const found: Spoken[] = []
  for (const at of tokens.keys()) {
    const one = at < (found.at(-1)?.to ?? 0) ? null : spokenAt(tokens, at)
    if (one !== null) found.push({ ...one, from: at })
  }
  return found.filter((one) => !isOther(tokens, one))
}

/** "The numbers are four, seven and twenty two": two or more that a word for numbers leads to. */
const isOfList = (tokens: readonly Token[], all: readonly Spoken[], at: number): boolean => {
  const isJoint = (token: Token): boolean => token.text === ',' || isWord(token, ...listed.players.and)
  let first = at
  while (first > 0 && tokens.slice(all[first - 1]?.to, all[first]?.from).every(isJoint)) first -= 1
  const next = all[at + 1]
  const several = first < at || (next !== undefined && tokens.slice(all[at]?.to, next.from).every(isJoint))
  const from = all[first]?.from ?? 0
  const lead = isWord(tokens[from - 1], ...listed.players.areSized) || tokens[from - 1]?.text === ':' ? from - 2 : from - 1
  return several && isWord(tokens[lead], ...listed.players.intro) && !isNumber(tokens[from])
}

const quoted = /["“”«»„]/u

/** "Twenty three larges", "treinta y dos playeras": beyond the dozen, which is counted in words; no hour, no decade, nothing that is to be printed. */
const isMany = (tokens: readonly Token[], all: readonly Spoken[], one: Spoken): boolean => {
  const words = tokens.slice(one.from, one.to)
  if (Number(one.figure) < 13 || words.some((token) => isCapital(token))) return false
  const back = isWord(tokens[one.from - 1], ...listed.players.and, ...listed.hours.to, ...listed.hours.past)
    ? one.from - 1
    : one.from
  if (all.some(({ from, to }) => to === back || from === one.to) || isNumber(tokens[back - 1])) return false
  const start = tokens.slice(0, one.from).findLastIndex((token) => isEnd(token) || token.text === '?') + 1
  const ahead = tokens.slice(start, one.from)
  if (ahead.some((token) => isWord(token, ...said.writing) || quoted.test(token.text))) return false
  return !isWord(tokens[one.from - 1], ...said.manyOf)
}

/** Numbers of players that are spoken in words, written in figures: "number oh seven is Baer medium", "el cinco es mediana". */
export const withDictatedNumbers = (text: string, draft: Draft): string => {
  const tokens = tokensOf(text)
  const all = spokenIn(tokens)
  if (all.length === 0 || tokens.length > 2000) return text
  const bare = all.filter((one) => isBare(tokens, one))
  const told = all.filter(
    (one, at) =>
      isLed({ tokens, draft }, one) ||
      isWithNought(tokens, one) ||
      (bare.length > 1 && bare.includes(one)) ||
      isOfList(tokens, all, at) ||
      isMany(tokens, all, one),
  )
  return told.reduceRight((left, { figure, from, to }) => {
    const [start, end] = [tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0]
    return `${left.slice(0, start)}${figure}${left.slice(end)}`
  }, text)
}
