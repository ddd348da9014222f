import type { Conversation } from '../../conversation.ts'
import type { Player } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { columnsOf, playerOf } from './columns.ts'
import { readRoster } from './roster.ts'

const mostLines = 500

/** The key for the next row of a draft: r1, r2, … never used twice. */
const nextRowNumber = (rows: { readonly [key: string]: unknown }): number =>
  Math.max(0, ...Object.keys(rows).map((key) => Number(key.slice(1)) || 0)) + 1

/** Patches that put players on the roster after those that are there. */
export const addPlayers = (rows: { readonly [key: string]: unknown }, players: readonly Player[]): readonly Patch[] => {
  const first = nextRowNumber(rows)
  return players.map((player, index) => ({ path: ['rows', `r${first + index}`], value: player }))
}

const clean = (cell: string): string => cell.replace(/[\p{Cc}\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff]/gu, ' ').trim()

/** A table of cells, as a spreadsheet or a CSV file gives it, as roster rows: by its headings, or line by line without them. */
export const readTable = (
  table: readonly (readonly string[])[],
  { draft }: Pick<Conversation, 'draft'>,
): { readonly patches: readonly Patch[]; readonly pasted: number } => {
  const lines = table.slice(0, mostLines + 20).map((cells) => cells.map(clean))
  const under = (at: number) => columnsOf(lines[at] ?? [], lines.slice(at + 1), true)
  const head = lines.findIndex((_, at) => under(at) !== null)
  const columns = under(head)
  const players =
    columns === null
      ? readRoster(lines.map((cells) => cells.join('\t')).join('\n'), { expected: true, numbered: true }).players
      : lines.slice(head + 1).flatMap((cells) => playerOf(columns, cells) ?? [])
  const taken = players.slice(0, mostLines)
  return { patches: addPlayers(draft.rows, taken), pasted: taken.length }
}
