import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { isMonth } from '../calendar/day-parts.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isGivenName } from '../text/given-names.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { isCapital, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { nameAt, rowsByNumber } from '../whom/refs.ts'
import { ageEnd } from './ages-among.ts'
import { isAdd } from './change.ts'
import { aheadOf } from './line-ahead.ts'
import { isOtherThan } from './players.ts'

/** A player told in a stretch of a sentence; `sure` where something beside the figure says that it is a number and counts nothing. */
type SpokenRow = {
  readonly number: string
  readonly name: string | undefined
  readonly size: { readonly from: number; readonly to: number } | undefined
  /** "8 años", "18 months": how old the player is. */
  readonly age: { readonly from: number; readonly to: number } | undefined
  readonly sure: boolean
  readonly to: number
}

const said = listed.dictation

/** The words of a line, and what of them is nobody's name. */
type Line = { readonly tokens: readonly Token[]; readonly isOther: (token: Token) => boolean }

/** "5 Black L, 4 White M": colours and whatever else the trade has a word for count pieces. */
const otherIn = (lexicon: Lexicon): Line['isOther'] => {
  const isOther = isOtherThan(lexicon)
  return (token) =>
    (isOther(token) && !(isMonth(token) && isCapital(token))) ||
    (!isGivenName(token) && lexicon.entries.get(token.key)?.kind === 'colour')
}

const isSign = (token: Token | undefined, ...signs: readonly string[]): boolean => signs.includes(token?.text ?? '')

const isFigure = (tokens: readonly Token[], at: number): boolean => {
  const [token, next] = [tokens[at], tokens[at + 1]]
  if (!isNumber(token) || !/^\d{1,3}$/.test(token?.text ?? '') || sizeAt(tokens, at) !== null) return false
  const glued = next?.start === token?.end && next?.kind === 'word'
  return !glued && !isSign(next, '/', ':', '%', '"') && !isWord(next, ...listed.players.isLength, ...listed.players.years)
}

const isLead = (token: Token | undefined): boolean => isSign(token, '#') || isWord(token, ...said.lead, ...said.article)

/** A figure that begins a player's stretch: behind a pause, a joining word, or a word that leads to it. */
const startsRow = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens[at - 1]
  const free = before === undefined || before.kind !== 'word' || isWord(before, ...said.behind) || isLead(before) || isAdd(before)
  return isFigure(tokens, at) && free && !isWord(tokens[at + 1], ...listed.things.makeFor)
}

/** "his brother": who it is beside another. */
const kinEnd = (tokens: readonly Token[], at: number): number | null =>
  isWord(tokens[at], ...said.owner) && isWord(tokens[at + 1], ...said.kin) ? at + 2 : null

type Mutable = { -readonly [K in keyof SpokenRow]: SpokenRow[K] }

/** Takes what stands at a token into the row; where the next token is, or null where it is of no player. */
const takeAt = ({ tokens, isOther }: Line, at: number, row: Mutable): number | null => {
  const size = sizeAt(tokens, at)
  if (size?.size !== undefined) {
    if (row.size !== undefined) return null
    row.size = { from: at, to: size.to }
    row.to = size.to
    return size.to
  }
  const aged = row.name === undefined ? null : ageEnd(tokens, at)
  if (aged !== null) {
    if (row.age !== undefined) return null
    row.age = { from: at, to: aged }
    row.to = aged
    return aged
  }
  const calm = row.size === undefined || row.size.to === at
  const named = row.name === undefined && calm ? nameAt(tokens, at, isOther) : null
  if (named !== null) {
    row.name = named.name
    row.to = named.to
    return named.to
  }
  const kin = kinEnd(tokens, at)
  if (kin !== null) return kin
  const plain =
    isSign(tokens[at], ',', '-', '–', ';', '(', ')') || (isWord(tokens[at], ...said.between) && !isCapital(tokens[at]))
  return plain ? at + 1 : null
}

/** The player's stretch that begins at a figure; null where words stand in it that are of no player. */
const rowAt = (line: Line, from: number): SpokenRow | null => {
  const { tokens } = line
  const led = isLead(tokens[from - 1]) || isWord(tokens[from + 1], ...said.being) || /^0/.test(tokens[from]?.text ?? '')
  const row: Mutable = {
    number: tokens[from]?.text ?? '',
    name: undefined,
    size: undefined,
    age: undefined,
    sure: led,
    to: from + 1,
  }
  let at = from + 1
  while (at < tokens.length && tokens[at]?.kind !== 'break' && !isSign(tokens[at], '.', '!') && !startsRow(tokens, at)) {
    const next = takeAt(line, at, row)
    if (next === null && row.size !== undefined && at > row.to && isSign(tokens[row.to], ',', ';')) break
    if (next === null) return null
    at = next
  }
  if (row.name === undefined && row.size === undefined) return null
  return { ...row, sure: row.sure || row.name !== undefined }
}

/** Where the next player's figure stands, over pauses and joining words; null where something else comes first. */
const nextStart = (tokens: readonly Token[], from: number): number | null => {
  let at = from
  while (
    at < tokens.length &&
    !startsRow(tokens, at) &&
    (isSign(tokens[at], ',', ';', '.', '-', '!', '&', ')') ||
      isLead(tokens[at]) ||
      isWord(tokens[at], ...said.behind, ...said.between) ||
      kinEnd(tokens, at) !== null)
  )
    at = kinEnd(tokens, at) ?? at + 1
  return startsRow(tokens, at) ? at : null
}

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

type Run = { readonly rows: readonly SpokenRow[]; readonly from: number; readonly to: number }

const runAt = (line: Line, from: number): Run => {
  const rows: SpokenRow[] = []
  for (let at: number | null = from; at !== null; ) {
    const row: SpokenRow | null = rowAt(line, at)
    if (row === null) break
    rows.push(row)
    at = nextStart(line.tokens, row.to)
  }
  return { rows, from, to: rows.at(-1)?.to ?? from }
}

/** Where the words begin that lead to the first figure. */
const leadStart = (tokens: readonly Token[], from: number): number => {
  let at = from
  while (at > 0 && isLead(tokens[at - 1])) at -= 1
  return at
}

/** "Ann, number 1, medium. 4 Bo large": the name of the first stands before the number. */
const isNamedBefore = (tokens: readonly Token[], from: number): boolean => {
  let at = leadStart(tokens, from) - 1
  while (isSign(tokens[at], ',', ':', '-') || isWord(tokens[at], ...said.being)) at -= 1
  return isCapital(tokens[at]) && at > 0 && sizeAt(tokens, at) === null
}

const fewestNamed = 3

/** "5 Leo, 6 Marc, 7 Hugo": three or more with a name each; names that all end in s may be what is counted ("12 Tigers, 9 Lions"). */
const areNamed = (rows: readonly SpokenRow[]): boolean =>
  rows.length >= fewestNamed &&
  rows.every(({ name }) => name !== undefined && /^\p{Lu}/u.test(name)) &&
  rows.some(({ name }) => !/s$/.test(name ?? ''))

/** "11 Jan": among players somebody is called so, at either end of them it is a day. */
const isDay = ({ name, size }: SpokenRow): boolean => size === undefined && tokensOf(name ?? '').some(isMonth)

/** Two or more, most of them with a size or all with names, all of them players beyond doubt; nobody of the list, nobody who is taken off or asked about. */
const isList = (tokens: readonly Token[], { rows, from, to }: Run, draft: Draft): boolean => {
  const sized = rows.filter(({ size }) => size !== undefined).length
  const told = sized > 1 && sized * 2 >= rows.length
  if (rows.length < 2 || !(told || areNamed(rows)) || !rows.every(({ sure }) => sure)) return false
  if (rows.some((row, at) => isDay(row) && (at === 0 || at === rows.length - 1))) return false
  if (rows.filter(isDay).length > 1 || rows.some(({ number }) => rowsByNumber(draft.rows, number).length > 0)) return false
  if (rows.some((row, at) => rows.some((other, index) => index < at && other.number === row.number && other.name === row.name)))
    return false
  const start = tokens.slice(0, from).findLastIndex((token) => token.kind === 'break' || isSign(token, '.', ';', '!', '?')) + 1
  const ahead = tokens.slice(start, from)
  if (rows[0]?.name === undefined && isNamedBefore(tokens, from)) return false
  const asked = isSign(
    tokens.slice(to).find((token) => token.kind === 'break' || isSign(token, '.', '!', '?')),
    '?',
  )
  return !asked && !ahead.some((token) => isWord(token, ...said.off, ...listed.changes.drop))
}

/** The first stretch that is such a list; one that is none hides no shorter one. */
const firstRun = (line: Line, { draft }: Scene): Run | undefined => {
  let to = 0
  for (const at of line.tokens.keys()) {
    const run = at >= to && startsRow(line.tokens, at) ? runAt(line, at) : undefined
    if (run !== undefined && isList(line.tokens, run, draft)) return run
    to = Math.max(to, run?.to ?? 0)
  }
  return undefined
}

const lineOf = (line: string, tokens: readonly Token[], { number, name, size, age }: SpokenRow): string => {
  const words = (of: SpokenRow['size']): string =>
    of === undefined ? '' : line.slice(tokens[of.from]?.start, tokens[of.to - 1]?.end)
  const sized = words(size)
  const player = [`#${number} ${name ?? ''}`.trim(), sized].filter((part) => part !== '').join(/^\d/.test(sized) ? ' ' : ', ')
  return age === undefined ? player : `${player}, ${words(age)}`
}

const spread = (line: string, scene: Scene): readonly string[] => {
  const tokens = tokensOf(line)
  const run = firstRun({ tokens, isOther: otherIn(scene.lexicon) }, scene)
  if (run === undefined) return [line]
  const [from, to] = [tokens[leadStart(tokens, run.from)]?.start ?? 0, tokens[run.to - 1]?.end ?? 0]
  const rest = line.slice(to).replace(/^[\s,;.]+/, '')
  const ahead = aheadOf(line.slice(0, from))
  return [ahead, ...run.rows.map((row) => lineOf(line, tokens, row)), ...(rest === '' ? [] : spread(rest, scene))].filter(
    (part, at) => part !== '' || at > 0,
  )
}

/** "23 is Okafor, large. 07 is Baer and 4 is Quill too, his brother, youth M": players told one behind another, a line for each. */
export const spreadSpoken = (text: string, scene: Scene): string =>
  text
    .split('\n')
    .flatMap((line) => (line.length > 1500 ? [line] : spread(line, scene)))
    .join('\n')
