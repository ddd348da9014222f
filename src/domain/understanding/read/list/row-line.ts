import type { Fit, Size } from '../../../garment/garment.ts'
import type { Player } from '../../draft.ts'
import { listed, spoken } from '../../words/languages.ts'
import { isMonth, isWeekday } from '../calendar/day-parts.ts'
import { type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isGivenName } from '../text/given-names.ts'
import { isCapital, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { ageBehind } from './ages-among.ts'
import { cellsOf } from './cells.ts'
import { countsSizes } from './counted-line.ts'
import { endsInSize, letteredLine } from './lettered-line.ts'
import { withoutPosition } from './positions.ts'
import { beforeSizeLater, remarkedLine } from './row-remarks.ts'
import { isSentence } from './sentence-words.ts'

/** One pasted line taken apart. `index` is a running number that stands before a marked one ("3. Cutter #41"). */
export type RowLine = {
  readonly number?: string
  readonly index?: string
  readonly name?: string
  readonly size?: Size
  readonly fit?: Fit
  readonly quantity?: number
  /** The number bears a sign: "#8", "nº 13". */
  readonly marked?: true
  readonly note?: string
  readonly age?: NonNullable<Player['age']>
  /** The name stood in two cells beside each other, in this order. */
  readonly halves?: readonly [string, string]
  /** The size was written out in words or with its cut, as sizes are counted. */
  readonly spelled: boolean
}

const said = spoken.rosters
const { skipped, and } = listed.rosters

/** What stands beside a player and is no part of the name: "- captain", "(goalie, long sleeve)". */
const beside = new RegExp(
  [
    `\\s*(?:[-,;]\\s*|\\(\\s*)?${said.besides}\\b(?:[,\\s]+(?:${said.joins} )?${said.besidesMore})?`,
    `(?:,? ${said.please})?\\s*\\)?\\s*$`,
  ].join(''),
  'iu',
)

const noNumber = new RegExp(`\\b${said.noNumber}\\b`, 'iu')

/** A name keeps every sign it was written with, but no separators round it. */
export const trimName = (text: string): string => text.replace(/^[\s,;:#\-–.*•()]+|[\s,;:#\-–*•()]+$/g, '').replace(/\s+/g, ' ')

/** `loose`: in capitals a word of orders may be a name too ("XL Polo" on a list of names). */
const isName = (words: readonly Token[], loose: boolean): boolean => {
  const letters = words.filter((token) => token.kind === 'word')
  if (letters.length === 0 || letters.length > 5 || words.some((token) => token.kind === 'number')) return false
  return (
    !letters.some((token) => isSentence(token) && !isGivenName(token) && !(loose && isCapital(token))) &&
    words.every((token) => token.kind === 'word' || `'-."`.includes(token.text))
  )
}

type Found = {
  sizeText?: string
  /** What looked like a size stood behind a name in the same cell. */
  sizeBehind?: boolean
  number?: string
  index?: string
  name?: string
  halves?: readonly string[]
  size?: Size
  fit?: Fit
  spelled: boolean
  bad: boolean
  readonly loose: boolean
}

const takeNumber = (found: Found, text: string, marked: boolean): void => {
  if (!/^\d{1,3}$/.test(text)) found.bad = true
  else if (found.number === undefined) found.number = text
  else if (marked && found.index === undefined) {
    found.index = found.number
    found.number = text
  } else if (found.index === undefined) found.index = text
  else found.bad = true
}

const takeName = (found: Found, text: string): void => {
  const name = trimName(text)
  if (name === '') return
  if (found.name !== undefined && found.index !== undefined) found.bad = true
  found.halves = [...(found.halves ?? []), name]
  found.name = found.name === undefined ? name : `${found.name} ${name}`
}

/** Of two that look like sizes the last is the size and the first a name or an initial: "7 Small M". */
const takeSize = (found: Found, size: SizeFound, text: string): void => {
  const { sizeText, name, sizeBehind } = found
  if (sizeText !== undefined)
    found.name = name === undefined ? sizeText : sizeBehind === true ? `${name} ${sizeText}` : `${sizeText} ${name}`
  found.sizeText = text
  if (size.size !== undefined) found.size = size.size
  if (size.fit !== undefined) found.fit = size.fit
}

/** `initialTo`: where a letter ends that looked like a size and stood behind the name. */
type Cell = { readonly text: string; readonly tokens: readonly Token[]; nameFrom: number; nameTo: number; initialTo: number }

/** A size ends a cell, stands before the name, or before a figure; in the midst of a name it is part of the name. */
const sizeIn = (cell: Cell, at: number): SizeFound | null => {
  const { tokens } = cell
  const size = sizeAt(tokens, at, tokens.length === 1)
  if (size === null) return null
  const apart = cell.nameFrom < 0 || size.to === tokens.length || isNumber(tokens[size.to]) || tokens[size.to]?.kind === 'sign'
  return apart ? size : null
}

const numberIn = (found: Found, { tokens }: Cell, at: number): number => {
  takeNumber(found, tokens[at]?.text ?? '', tokens[at - 1]?.text === '#')
  const stop = tokens[at + 1]?.text
  return stop === '.' || stop === ')' ? at + 2 : at + 1
}

const wordIn = (found: Found, cell: Cell, token: Token): void => {
  if (token.kind !== 'word' || (cell.tokens.length > 1 && skipped.includes(token.key))) return
  const broken = cell.tokens.some((other) => isNumber(other) && other.start > cell.nameFrom && other.start < token.start)
  if (cell.nameFrom >= 0 && broken) found.bad = true
  if (cell.nameFrom < 0) cell.nameFrom = token.start
  const stop = cell.tokens[cell.tokens.indexOf(token) + 1]
  cell.nameTo = stop?.text === '.' && token.text.length === 1 && stop.start === token.end ? stop.end : token.end
}

/** "Ava M. 4 S": of two that look like sizes the first is the initial of the name before it. */
const takeInitial = (found: Found, cell: Cell): void => {
  delete found.sizeText
  cell.nameTo = cell.initialTo
  cell.initialTo = -1
}

const takeToken = (found: Found, cell: Cell, at: number): number => {
  const token = cell.tokens[at]
  if (token === undefined) return at + 1
  const size = sizeIn(cell, at)
  if (size !== null) {
    const to = cell.tokens[size.to]?.text === '.' && token.text.length === 1 ? size.to + 1 : size.to
    const text = cell.text.slice(token.start, cell.tokens[to - 1]?.end)
    if (cell.initialTo >= 0) takeInitial(found, cell)
    else if (cell.nameFrom >= 0) cell.initialTo = token.start + text.length
    takeSize(found, size, text)
    found.sizeBehind = cell.nameFrom >= 0
    found.spelled ||= (size.to - at > 1 && !isNumber(token)) || (token.kind === 'word' && token.text.length > 3)
    return to
  }
  if (isNumber(token)) return numberIn(found, cell, at)
  wordIn(found, cell, token)
  return at + 1
}

/** Reads one cell: figures and sizes at its ends are taken off, what is left is the name. */
const takeCell = (found: Found, text: string): void => {
  const cell: Cell = { text, tokens: tokensOf(text), nameFrom: -1, nameTo: -1, initialTo: -1 }
  let at = 0
  while (at < cell.tokens.length) at = takeToken(found, cell, at)
  if (cell.nameFrom < 0) return
  if (
    !isName(
      cell.tokens.filter((token) => token.start >= cell.nameFrom && token.end <= cell.nameTo),
      found.loose,
    )
  )
    found.bad = true
  takeName(found, text.slice(cell.nameFrom, cell.nameTo))
}

const finished = (found: Found): RowLine => {
  const { bad: _bad, loose: _loose, sizeText: _size, sizeBehind: _behind, halves = [], ...row } = found
  const [first, second, ...more] = halves
  const whole = second !== undefined && more.length === 0 && row.name === `${first} ${second}`
  return whole && first !== undefined ? { ...row, halves: [first, second] } : row
}

const roleBeside = (line: string): RegExpExecArray | null => {
  const found = beside.exec(line)
  return found !== null && (/\d/.test(line) || endsInSize(line.slice(0, found.index))) ? found : null
}

/** "#11 Jan": people are called as some months are. */
const isCalledAs = (words: readonly Token[], number: string | undefined): boolean =>
  number !== undefined && words.length === 1 && isCapital(words[0])

/** Whether what a line gave is a player's: no date, no "and Lena", no "Will call" or "Una talla". */
const isPlayer = ({ number, name, size, loose }: Found, marked: boolean): boolean => {
  const parts = [number, name, size].filter((part) => part !== undefined).length
  const words = tokensOf(name ?? '')
  if (parts === 0 || (parts < 3 && isGivenName(words[0]) && !(isMonth(words[0]) && size !== undefined && number === undefined)))
    return false
  const dated = words.some((token) => isWeekday(token) || (isMonth(token) && !((loose || marked) && isCalledAs(words, number))))
  if (size === undefined && dated) return false
  return !(isWord(words[0], ...and) && (parts === 1 || (words.length === 1 && !isCapital(words[0]))))
}

const isSizeWord = (word: string): boolean => sizeAt(tokensOf(word), 0, true)?.size !== undefined

const markedNumber = /#\s?\d|\bn[º°o.]{1,2}\s?\d/iu

/** "Van:", "Lista:": words with a colon behind them head a list. */
const isTitle = (text: string): boolean => /:\s*$/.test(text) && !/\d/.test(text)

/** "21 - Carys - size tbd", "15 Sáenz ???": a player whose size comes later. */
const sizedLater = (line: string, loose: boolean): RowLine | null => {
  const before = beforeSizeLater(line)
  const row = before === null ? null : readPlainLine(before.line, loose)
  const sure = row?.number !== undefined || before?.says === true
  return row?.name === undefined || row.size !== undefined || !sure ? null : { ...row, size: 'later' }
}

/** "Theo youth M, he's 8", "Posy 2T (20 months)": a player with a size, and what is said of them behind it. */
const remarked = (line: string, loose: boolean): RowLine | null => {
  const said = remarkedLine(ageBehind(line))
  const row = said === null ? null : readPlainLine(said.line, loose)
  const told = row?.size !== undefined || (row?.number !== undefined && said?.age !== undefined)
  if (row?.name === undefined || !told || !/^\W*(?:\d+\W+)?\p{Lu}/u.test(line)) return null
  const { line: _line, ...beside } = said ?? {}
  return { ...row, ...beside }
}

/** A pasted line as a roster line, or null when it is a sentence. */
export const readRowLine = (line: string, loose = false): RowLine | null =>
  sizedLater(line, loose) ??
  remarked(line, loose) ??
  letteredLine(line, (text) => readPlainLine(text, loose)) ??
  readPlainLine(line, loose)

const readPlainLine = (line: string, loose: boolean): RowLine | null => {
  if (countsSizes(line)) return null
  const role = roleBeside(line)
  const note =
    role?.[0]
      .replace(/[()]/g, '')
      .replace(/^[\s,;-]+/, '')
      .trim() ?? noNumber.exec(line)?.[0]
  const text = role === null ? line.replace(noNumber, '') : line.slice(0, role.index)
  if (text.trim() === '' || text.length > 90 || /[?!]\s*$/.test(text) || isTitle(text)) return null
  const cells = withoutPosition(cellsOf(text.trim(), isSizeWord).filter((cell) => cell.trim() !== ''))
  if (cells.length > 6) return null
  const row: Found = { spelled: false, bad: false, loose }
  for (const cell of cells) takeCell(row, cell)
  const isMarked = markedNumber.test(line)
  if (row.bad || !isPlayer(row, isMarked)) return null
  const marked = isMarked ? ({ marked: true } as const) : {}
  return { ...finished(row), ...marked, ...(note === undefined ? {} : { note }) }
}
