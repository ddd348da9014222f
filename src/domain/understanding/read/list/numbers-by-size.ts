import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isCapital, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { rowsByNumber } from '../whom/refs.ts'
import { aheadOf } from './line-ahead.ts'
import { numberListAt } from './number-lists.ts'

/** Jersey numbers of one size, with the places of their words; `marked` where a sign says that they are numbers. */
type Group = {
  readonly numbers: readonly string[]
  readonly size: string
  readonly from: number
  readonly to: number
  readonly marked: boolean
  /** The size stands before its numbers, with a sign between them. */
  readonly headed: boolean
}

const said = listed.players
const signs: readonly string[] = [':', '-', '–', '=', '→']

const isSign = (token: Token | undefined, ...texts: readonly string[]): boolean => texts.includes(token?.text ?? '')

type Numbers = Pick<Group, 'numbers' | 'to' | 'marked'> & { readonly ranged: boolean }

/** The list of figures at a token, none of which counts a size or measures anything. */
const numbersAt = (tokens: readonly Token[], from: number): Numbers | null => {
  let at = from
  while (
    isSign(tokens[at], '#', '(') ||
    isWord(tokens[at], ...said.leftOutLead, ...said.intro, ...said.rangeFrom, ...said.ofMany)
  )
    at += 1
  const list = sizeAt(tokens, at) === null ? numberListAt(tokens, at) : null
  if (list === null || sizeAt(tokens, list.to)?.size !== undefined) return null
  const next = tokens[list.to]
  const glued = next?.kind === 'word' && next.start === tokens[list.to - 1]?.end
  const measured = isWord(next, ...said.isLength) && sizeAt(tokens, list.to + 1) === null
  if (glued || measured || isWord(next, ...said.years, 'x') || isSign(next, '"', '%', ':', '×')) return null
  const marked = tokens.slice(from, list.to).some((token) => isSign(token, '#') || isWord(token, ...said.intro, ...said.numbered))
  return { numbers: list.numbers, to: isSign(next, ')') ? list.to + 1 : list.to, marked, ranged: list.ranged }
}

/** "mens M: 1, 17, 44", "mediums are 7 and 9"; "Ann M #4" is Ann. */
const headFirst = (line: string, tokens: readonly Token[], at: number): Group | null => {
  const strict = sizeAt(tokens, at)
  const size = strict ?? sizeAt(tokens, at, true)
  const headed = isSign(tokens[size?.to ?? -1], ...signs)
  if (size?.size === undefined || isNumber(tokens[at - 1]) || isCapital(tokens[at - 1]) || (strict === null && !headed))
    return null
  let next = size.to
  while (next < size.to + 3 && (isSign(tokens[next], ...signs) || isWord(tokens[next], ...listed.dictation.sizeHolds))) next += 1
  const found = numbersAt(tokens, next)
  if (found === null || (found.ranged && !headed)) return null
  return { ...found, from: at, size: line.slice(tokens[at]?.start, tokens[size.to - 1]?.end), headed }
}

/** "7, 9 and 11 in medium". */
const numbersFirst = (line: string, tokens: readonly Token[], at: number): Group | null => {
  const lead =
    isNumber(tokens[at]) || isSign(tokens[at], '#') || isWord(tokens[at], ...said.leftOutLead, ...said.intro, ...said.ofMany)
  const found = lead ? numbersAt(tokens, at) : null
  if (found === null) return null
  let next = found.to
  while (next < found.to + 3 && isWord(tokens[next], ...listed.dictation.sizeHolds, ...said.sizeLink)) next += 1
  const size = next > found.to ? sizeAt(tokens, next) : null
  if (size?.size === undefined) return null
  return { ...found, from: at, to: size.to, size: line.slice(tokens[next]?.start, tokens[size.to - 1]?.end), headed: false }
}

/** "All XL except 3 and 7": behind such a word they are of another list. */
const excepting: readonly string[] = [...said.except, ...said.exceptAlso, ...said.leftOut, ...listed.dictation.off]

type Reader = typeof headFirst

const joints: readonly string[] = ['.', ',', ';', '/', '|', '&']

/** Groups that stand one behind another from a token on, with nothing but pauses between them. */
const groupsFrom = (line: string, tokens: readonly Token[], { at, read }: { at: number; read: Reader }): readonly Group[] => {
  const groups: Group[] = []
  for (let next = at; ; ) {
    const group = read(line, tokens, next)
    if (group === null) return groups
    groups.push(group)
    next = group.to
    while (isSign(tokens[next], ...joints) || isWord(tokens[next], ...said.and, ...listed.dictation.behind)) next += 1
  }
}

/** Several figures of one size are numbers, and then so are those that stand alone beside them. Whoever is on the list is told anew behind their size only. */
const areNumbers = (groups: readonly Group[], { rows, tally }: Draft): boolean =>
  (Object.keys(tally).length === 0 || groups.every(({ marked, headed }) => marked || headed)) &&
  groups.some(({ numbers, marked }) => numbers.length > 1 || marked) &&
  groups.every(({ numbers, headed }) => headed || numbers.every((number) => rowsByNumber(rows, number).length === 0))

const spread = (line: string, draft: Draft): string => {
  const tokens = tokensOf(line)
  for (const at of tokens.keys()) {
    const groups = [headFirst, numbersFirst]
      .map((read) => groupsFrom(line, tokens, { at, read }))
      .find((some) => areNumbers(some, draft))
    const [first, last] = [groups?.[0], groups?.at(-1)]
    if (groups === undefined || first === undefined || last === undefined) continue
    if (isWord(tokens[first.from - 1], ...excepting)) return line
    const rows = groups.flatMap(({ numbers, size }) => numbers.map((number) => `#${number}, ${size}`))
    const ahead = aheadOf(line.slice(0, tokens[first.from]?.start))
    const rest = line.slice(tokens[last.to - 1]?.end).replace(/^[\s,;./|]+/, '')
    return [ahead, ...rows, ...(rest === '' ? [] : [spread(rest, draft)])]
      .filter((part, index) => part !== '' || index > 0)
      .join('\n')
  }
  return line
}

/** "mens M: 1, 17, 44. womens S: 3 and 90", "3 and 5 in small, 7 in medium": numbers told by their size, a line for each of them. */
export const spreadNumbers = (text: string, draft: Draft): string =>
  text
    .split('\n')
    .map((line) => (line.length > 600 ? line : spread(line, draft)))
    .join('\n')
