import type { Player } from '../../draft.ts'
import { givenFirst, headedCells } from './cells.ts'
import { type Column, columnsOf, playerOf } from './columns.ts'

/** Cells too many under a heading with one column for names: "4, Smith, John, M", or "8 Van Horn L" where only blanks part them. */
const joinName = (columns: readonly Column[], cells: readonly string[], parted: boolean): readonly string[] => {
  const at = columns.indexOf('name')
  const more = cells.length - columns.length
  const whole = more > 0 && at >= 0 && !columns.includes('first')
  const [surname = '', given = ''] = cells.slice(at, at + 2)
  if (!whole || !/\p{L}{2}/u.test(given)) return cells
  const name = parted ? givenFirst(`${surname},${given}`) : cells.slice(at, at + more + 1).join(' ')
  return [...cells.slice(0, at), name, ...cells.slice(at + more + 1)]
}

/** A line under a heading: two things or more, or all the heading's cells filled. */
const headedPlayer = (columns: readonly Column[], line: string): Player | null => {
  const cells = headedCells(line, columns.length)
  const parted = /[,;\t|]/.test(line)
  const most = columns.length + (parted ? 1 : 3)
  const player = cells.length > 1 && cells.length <= most ? playerOf(columns, joinName(columns, cells, parted)) : null
  const whole = cells.length === columns.length && cells.every((cell) => cell.trim() !== '')
  return player === null || (Object.keys(player).length < 2 && !whole) ? null : player
}

/** What parts the cells of a table; blanks alone part the words of a sentence too. */
const signs = /[\t;|,]| [/–-] |\S {2,}\S/

/** "|---|---|": a line that is drawn under a heading. */
const isRule = (line: string): boolean => /^[\s|:+=–-]*(?:--|==|––)[\s|:+=–-]*$/.test(line)

/** Lines under a heading ("Number,Name,Size") are read by their columns. */
export const readHeaded = (
  lines: readonly string[],
): { readonly players: readonly Player[]; readonly lines: readonly number[] } => {
  const cells = lines.map((line) => headedCells(line))
  const under = (at: number) =>
    columnsOf(
      cells[at] ?? [],
      cells.slice(at + 1, at + 60).filter((_, index) => !isRule(lines[at + 1 + index] ?? '')),
      signs.test(lines[at] ?? ''),
    )
  const head = lines.findIndex((_, at) => under(at) !== null)
  const columns = under(head)
  if (head < 0 || columns === null) return { players: [], lines: [] }
  const players: Player[] = []
  const taken = [head]
  for (const [index, line] of lines.entries()) {
    if (index <= head || line.trim() === '') continue
    if (isRule(line)) {
      taken.push(index)
      continue
    }
    const player = headedPlayer(columns, line)
    if (player === null) break
    players.push(player)
    taken.push(index)
  }
  return players.length === 0 ? { players: [], lines: [] } : { players, lines: taken }
}
