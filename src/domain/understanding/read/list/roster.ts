import type { Player } from '../../draft.ts'
import { listed, spoken } from '../../words/languages.ts'
import { isMonth } from '../calendar/day-parts.ts'
import { fold, isCapital, tokensOf } from '../text/tokens.ts'
import { withAgesBehind } from './ages-among.ts'
import { readHeaded } from './headed-rows.ts'
import { type RowLine, readRowLine } from './row-line.ts'

/** Roster lines found in a message; `rest` is the message without them, its lines kept. `counted` lines are sizes with quantities. */
export type RosterFound = {
  readonly players: readonly Player[]
  readonly counted: readonly Player[]
  /** Lines of a figure and a size that may be jersey numbers or quantities. */
  readonly doubtful: readonly RowLine[]
  readonly rest: string
  /** Lines without a heading whose name stood in two cells: which of them is the given name? */
  readonly halved: readonly RowLine[]
  /** Lines among or beside the roster's that begin like a player and could not be read. */
  readonly unread: readonly string[]
  /** Which lines of the message were read as roster. */
  readonly lines: readonly number[]
}

type Block = { readonly from: number; readonly rows: readonly RowLine[] }

/** Runs of lines that look like roster lines; empty lines inside a run do not end it. */
const blocksOf = (lines: readonly string[], read: readonly (RowLine | null)[]): readonly Block[] => {
  const blocks: { from: number; rows: RowLine[] }[] = []
  let open = false
  for (const [index, row] of read.entries()) {
    if (row === null && (lines[index] ?? '').trim() === '') continue
    if (row === null) open = false
    else if (open) blocks.at(-1)?.rows.push(row)
    else {
      blocks.push({ from: index, rows: [row] })
      open = true
    }
  }
  return blocks
}

const shapeOf = ({ number, name, size }: RowLine): string =>
  [number, name, size].map((part) => (part === undefined ? '-' : '+')).join('')

/** Never names of players, even in capitals on a list. */
const heads = new RegExp(`^${spoken.rosters.neverNames}$`, 'i')

/** "XL Polo", "12 Price M": a line whose name is a word of orders in capitals. */
const readLoose = (line: string): RowLine | null => {
  const row = readRowLine(line, true)
  return row?.name === undefined || parts(row) < 2 || wordsIn(row) > 2 || heads.test(fold(row.name)) ? null : row
}

/** "6 Sky L libero, hers is black": number, name and size with words behind them, which are kept as a note. */
const readNoted = (line: string): RowLine | null => {
  const found = noted.exec(line)
  const row = found === null ? null : readRowLine(found[1] ?? '')
  return row === null || parts(row) < 3 || row.note !== undefined ? null : { ...row, note: (found?.[2] ?? '').trim() }
}

/** Lines one by one; in a run with two or more sure ones of the same shape a word of orders in capitals is a name. */
const readLines = (lines: readonly string[]): readonly (RowLine | null)[] => {
  const read = lines.map((line) => readRowLine(line))
  const loose = lines.map((line, at) => (read[at] === null ? (readLoose(line) ?? readNoted(line)) : null))
  const isIn = (at: number): boolean => (read[at] ?? loose[at] ?? null) !== null
  const alike = (at: number, row: RowLine): boolean => {
    let [from, to] = [at, at + 1]
    while (isIn(from - 1)) from -= 1
    while (isIn(to)) to += 1
    return read.slice(from, to).filter((other) => other !== null && shapeOf(other) === shapeOf(row)).length > 1
  }
  const isDated = (at: number, { name }: RowLine): boolean => {
    const dated = tokensOf(name ?? '').some(isMonth)
    return dated && ((read[at - 1] ?? null) === null || (read[at + 1] ?? null) === null)
  }
  return read.map((row, at) => {
    const named = loose[at] ?? null
    return named !== null && alike(at, named) && !isDated(at, named) ? named : row
  })
}

/** Up to four words and the rest of the line without a figure. */
const noted = /^(\W*#?\d{1,3}\b(?:[\s,;-]+[\p{L}\p{M}\d'.-]+){2,4}?)[\s,;(-]+(\p{Ll}[^\d\n]{3,60})$/u

const parts = (row: RowLine): number => [row.number, row.name, row.size].filter((part) => part !== undefined).length

const wordsIn = (row: RowLine): number => (row.name ?? '').split(' ').length

/** A first line of several words without number and size is the team's, not a player's. */
const beheaded = (block: Block): Block => {
  const [first, ...others] = block.rows
  if (first === undefined || others.length === 0 || parts(first) > 1 || first.name === undefined) return block
  const rows = others.filter((row) => parts(row) > 1)
  const longest = Math.max(0, ...rows.map(wordsIn))
  return rows.length > 0 && wordsIn(first) > Math.max(1, longest) ? { ...block, from: block.from + 1, rows: others } : block
}

/** "Plus Ulises", "she wears Ortega": in a line alone words in small letters beside a name are a sentence's, particles left out. */
const isPlainlyNamed = ({ name }: RowLine): boolean => {
  const words = tokensOf(name ?? '').filter(({ kind, key }) => kind === 'word' && !listed.changes.particles.includes(key))
  return !words.some(isCapital) || words.every((token) => isCapital(token))
}

/** A run is a roster when it has two lines or more and most of them say two things, or are all bare numbers. */
const isRoster = ({ rows }: Block, expected: boolean): boolean => {
  const full = rows.filter((row) => parts(row) > 1).length
  const [only, ...others] = rows
  if (only !== undefined && others.length === 0) return full === 1 && isPlainlyNamed(only) && (parts(only) === 3 || expected)
  if (full * 2 >= rows.length) return true
  const numbers = rows.every((row) => row.number !== undefined && row.name === undefined)
  return numbers || (expected && rows.every((row) => row.name !== undefined))
}

const allDifferent = (values: readonly string[]): boolean => new Set(values).size === values.length

/** Size lines without names: quantities when the sizes are spelled out or each stands once, else the figures are numbers. */
const isCounted = (rows: readonly RowLine[], numbered: boolean): boolean => {
  if (!rows.every((row) => row.name === undefined && row.size !== undefined)) return false
  if (rows.some((row) => row.marked || /^0/.test(row.number ?? ''))) return false
  if (rows.some((row) => row.spelled)) return true
  return !numbered && allDifferent(rows.map((row) => `${row.fit ?? ''}${row.size ?? ''}`))
}

/** "1." to "n." before marked numbers, or a first figure that only counts the lines, is no jersey number. */
const withoutIndex = (rows: readonly RowLine[]): readonly RowLine[] => {
  const counting = rows.length > 1 && rows.every((row, index) => row.index !== undefined && row.number === String(index + 1))
  return counting ? rows.map((row) => (row.index === undefined ? row : { ...row, number: row.index })) : rows
}

/** Where some are women's, the letter M between a name and a size is no initial: "Beck M L". */
const menBeside = (rows: readonly RowLine[]): readonly RowLine[] =>
  rows.some((row) => row.fit === 'women')
    ? rows.map((row) =>
        row.size !== undefined && row.fit === undefined && / M$/.test(row.name ?? '')
          ? { ...row, name: row.name?.slice(0, -2) ?? '', fit: 'men' as const }
          : row,
      )
    : rows

/** Bare sizes that each stand once, beside figures: numbers of players or how many of each? */
const isDoubtful = (rows: readonly RowLine[], numbered: boolean): boolean =>
  numbered &&
  rows.length > 1 &&
  !rows.some((row) => row.marked) &&
  rows.every((row) => row.name === undefined && row.size !== undefined && /^[1-9]/.test(row.number ?? '')) &&
  allDifferent(rows.map((row) => `${row.fit ?? ''}${row.size ?? ''}`))

export const playerFrom = ({ number, name, size, fit, note, age }: RowLine): Player => ({
  ...(number === undefined ? {} : { number }),
  ...(name === undefined ? {} : { name: name.slice(0, 60) }),
  ...(size === undefined ? {} : { size }),
  ...(fit === undefined ? {} : { fit }),
  ...(note === undefined ? {} : { note }),
  ...(age === undefined ? {} : { age }),
})

export const countedFrom = ({ number, size, fit }: RowLine): Player => ({
  ...(size === undefined ? {} : { size }),
  ...(fit === undefined ? {} : { fit }),
  quantity: Math.min(500, Math.max(1, Number(number ?? 1))),
})

const likePlayer = /^\W*#?\d{1,3}\b[^\n]*\p{L}{2}/u

const unreadBeside = (lines: readonly string[], taken: ReadonlySet<number>): readonly string[] =>
  lines.flatMap((line, index) => {
    const near = taken.has(index - 1) || taken.has(index + 1)
    return near && !taken.has(index) && line.length < 90 && likePlayer.test(line) ? [line.trim()] : []
  })

type Expect = { readonly expected: boolean; readonly numbered: boolean }

const restOf = (lines: readonly string[], taken: ReadonlySet<number>): string =>
  lines.map((line, index) => (taken.has(index) ? '' : line)).join('\n')

/** The roster lines of a message, in any order of columns, with a heading or without one. `expected`: a roster was asked for. */
export const readRoster = (text: string, { expected, numbered }: Expect): RosterFound => {
  const lines = text.split('\n').slice(0, 600)
  const headed = readHeaded(lines)
  if (headed.players.length > 0) {
    return {
      players: headed.players,
      counted: [],
      doubtful: [],
      halved: [],
      unread: unreadBeside(lines, new Set(headed.lines)),
      rest: restOf(lines, new Set(headed.lines)),
      lines: headed.lines,
    }
  }
  const read = readLines(withAgesBehind(lines))
  const blocks = blocksOf(lines, read)
    .map(beheaded)
    .filter((block) => isRoster(block, expected))
  const taken = new Set<number>()
  const players: Player[] = []
  const counted: Player[] = []
  const doubtful: RowLine[] = []
  for (const block of blocks) {
    const rows = menBeside(withoutIndex(block.rows))
    if (isDoubtful(rows, numbered) && !isCounted(rows, numbered)) doubtful.push(...rows)
    else if (isCounted(rows, numbered)) counted.push(...rows.map(countedFrom))
    else players.push(...rows.map(playerFrom))
    for (let index = block.from, left = rows.length; left > 0; index += 1) {
      if (read[index] !== null) left -= 1
      taken.add(index)
    }
  }
  const halved = blocks.flatMap((block) => block.rows.filter((row) => row.halves !== undefined))
  const unread = unreadBeside(lines, taken)
  return { players, counted, doubtful, halved, unread, rest: restOf(lines, taken), lines: [...taken] }
}
