import type { Fit } from '../../../garment/garment.ts'
import { ages } from '../../../order/order.ts'
import type { Player } from '../../draft.ts'
import { spoken } from '../../words/languages.ts'
import { cutAt, sizeAt } from '../sizes/sizes.ts'
import { anyOf, fold, tokensOf } from '../text/tokens.ts'
import { givenFirst } from './cells.ts'
import { trimName } from './row-line.ts'

export type Column = 'number' | 'name' | 'first' | 'size' | 'fit' | 'quantity' | 'age' | 'skip'

const said = spoken.rosters

const heading = (...sources: readonly string[]): RegExp => new RegExp(`^(?:${sources.join('|')})$`)

const headings: readonly (readonly [Column, RegExp])[] = [
  ['number', heading('#', 'n[º°o]\\.?', said.number)],
  ['first', heading(said.first)],
  ['name', heading(said.name)],
  ['size', heading(said.size)],
  ['fit', heading(said.fit)],
  ['quantity', heading(said.quantity)],
  ['age', heading(said.age)],
  ['skip', heading(said.skip)],
]

const worn = heading(said.wornHeading)

/** "Shirt", "Jersey": a heading of sizes or of numbers, as its cells say. */
type Headed = Column | 'worn'

const columnOf = (heading: string): Headed | null => {
  const key = fold(heading.trim().replace(/:$/, ''))
  if (worn.test(key)) return 'worn'
  return headings.find(([, pattern]) => pattern.test(key))?.[0] ?? null
}

type Cells = readonly string[]

/** Short words without a figure and no size, as a heading that we have no use for. */
const isHeading = (cell: string): boolean => {
  const tokens = tokensOf(cell)
  return !/\d/.test(cell) && tokens.length > 0 && tokens.length < 5 && sizeAt(tokens, 0)?.to !== tokens.length
}

/** A line of a table has as many cells as its heading: headings that nobody knows are columns too. */
const fitsBelow = (cells: Cells, below: readonly Cells[]): boolean => {
  const first = below.find((line) => line.some((cell) => cell.trim() !== ''))
  return cells.length > 2 && first?.length === cells.length && first.some((cell) => /\d/.test(cell) || isSizeCell(cell))
}

const isSizeCell = (cell: string): boolean => {
  const tokens = tokensOf(cell)
  return tokens.length > 0 && sizeAt(tokens, 0, true)?.to === tokens.length
}

/** What a column named after a garment holds; nothing where such a column is there already. */
const heldBy = (columns: readonly (Headed | null)[], at: number, below: readonly Cells[]): Column => {
  const cells = below.map((line) => line[at]?.trim() ?? '').filter((cell) => cell !== '')
  const sizes = cells.filter(isSizeCell).length
  const figures = cells.filter((cell) => /^#?\d{1,3}$/.test(cell)).length
  if (sizes * 2 > cells.length) return columns.includes('size') ? 'skip' : 'size'
  return figures * 2 > cells.length && !columns.includes('number') ? 'number' : 'skip'
}

/** The columns that a first line names, when every cell of it is a heading and at least two say what we want; `below` are the lines under it, and only where signs part the cells (`parted`) may several say what nobody knows. */
export const columnsOf = (cells: Cells, below: readonly Cells[], parted: boolean): readonly Column[] | null => {
  const columns = cells.map(columnOf)
  const known = columns.filter((column) => column !== null && column !== 'skip')
  const strangers = cells.filter((cell, index) => columns[index] === null && cell.trim() !== '')
  if (known.length < 2) return null
  if (strangers.length > 1 && !(parted && strangers.every(isHeading) && fitsBelow(cells, below))) return null
  return columns.map((column, index) => (column === 'worn' ? heldBy(columns, index, below) : (column ?? 'skip')))
}

const ageOf = (cell: string): Player['age'] => {
  const years = /^\d{1,2}$/.exec(cell.trim())?.[0]
  if (years === undefined) return ages.find((age) => age === cell.trim()) ?? 'unknown'
  if (Number(years) < 3) return 'under-3'
  return Number(years) < 13 ? '3-12' : '13-up'
}

type Mutable = { -readonly [K in keyof Player]: Player[K] }

/** "W M", "W-M", "Y/L": the cut as a letter before the size. */
const letterCuts: Readonly<Record<string, Fit>> = { w: 'women', y: 'youth', m: 'men' }
const letterBefore = new RegExp(`^\\s*([wym])[\\s./-]+(?=(?:x*[sml]|[2-4]xl?|${said.letterSized})\\s*$)`, 'i')

const saidLater = anyOf(said.later)

const takeSize = (player: Mutable, cell: string): void => {
  const letter = letterBefore.exec(cell)
  const tokens = tokensOf(cell.slice(letter?.[0].length ?? 0))
  const found = sizeAt(tokens, 0, true)
  const cut = cutAt(tokens, 0)
  if (found?.size !== undefined) player.size = found.size
  else if (saidLater.test(fold(cell))) player.size = 'later'
  const fit = letterCuts[letter?.[1]?.toLowerCase() ?? ''] ?? found?.fit ?? cut?.fit
  if (fit !== undefined) player.fit = fit
}

const takeNumber = (player: Mutable, cell: string): void => {
  const number = /^#?\s*(\d{1,3})(?:\.0)?$/.exec(cell.trim())?.[1]
  if (number !== undefined) player.number = number
}

const takeQuantity = (player: Mutable, cell: string): void => {
  const quantity = Number(/^\d{1,3}$/.exec(cell.trim())?.[0] ?? 0)
  if (quantity > 1 && quantity <= 500) player.quantity = quantity
}

/** A sheet's cell that begins like a formula is text like any other: nothing of it is ever computed. */
const plain = (cell: string): string => cell.replace(/^[=+@\t\r]+/, '')

const takeCell = (player: Mutable, column: Column, cell: string): void => {
  if (column === 'number') takeNumber(player, cell)
  if (column === 'size' || column === 'fit') takeSize(player, cell)
  if (column === 'quantity') takeQuantity(player, cell)
  if (column === 'age' && cell.trim() !== '') player.age = ageOf(cell)
  const name = trimName(givenFirst(plain(cell))).slice(0, 60)
  if (column === 'name' && name !== '') player.name = name
  if (column === 'first' && name !== '' && player.name === undefined) player.note = name
}

/** A line of a table with known columns as a player; null when nothing of it is known. */
export const playerOf = (columns: readonly Column[], cells: readonly string[]): Player | null => {
  const player: Mutable = {}
  for (const [index, column] of columns.entries()) takeCell(player, column, cells[index] ?? '')
  if (player.name === undefined && player.note !== undefined) player.name = player.note
  delete player.note
  return Object.keys(player).length === 0 ? null : player
}
