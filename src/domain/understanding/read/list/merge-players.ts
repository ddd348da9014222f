import { canonical } from '../../content-hash.ts'
import type { Draft, Player } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { fold } from '../text/tokens.ts'
import { addPlayers } from './table.ts'

/** The row that a pasted line repeats: the same name with the same number or none, or the same number where one has no name. */
const sameRow = (draft: Draft, player: Player): string | undefined =>
  Object.entries(draft.rows).find(([, row]) => {
    const named = player.name !== undefined && row.name !== undefined
    if (named && fold(player.name ?? '') !== fold(row.name ?? '')) return false
    if (player.number !== undefined && row.number !== undefined && player.number !== row.number) return false
    return named || (player.number !== undefined && player.number === row.number)
  })?.[0]

const update = (key: string, player: Player): readonly Patch[] =>
  Object.entries(player).map(([field, value]): Patch => ({ path: ['rows', key, field], value }))

const nextTally = (draft: Draft): number => Math.max(0, ...Object.keys(draft.tally).map((key) => Number(key.slice(1)) || 0)) + 1

/** Patches for counted sizes: one line of the tally for each. */
export const addCounted = (draft: Draft, counted: readonly Player[]): readonly Patch[] => {
  const first = nextTally(draft)
  return counted.flatMap((entry, index): readonly Patch[] =>
    entry.size === undefined
      ? []
      : [
          {
            path: ['tally', `t${first + index}`],
            value: {
              size: entry.size,
              quantity: entry.quantity ?? 1,
              ...(entry.fit === undefined ? {} : { fit: entry.fit }),
              ...(entry.garment === undefined ? {} : { garment: entry.garment }),
            },
          },
        ],
  )
}

/** A list pasted twice in one message: the same name with the same number, and nothing that differs, is the same player. */
const withoutRepeated = (players: readonly Player[]): readonly Player[] => {
  const seen = new Set<string>()
  return players.filter((player) => {
    if (player.name === undefined || player.number === undefined) return true
    const key = canonical(player)
    const again = seen.has(key)
    seen.add(key)
    return !again
  })
}

/** Pasted lines: those that repeat a row complete it, the others are added in their order. */
export const mergePlayers = (
  draft: Draft,
  { players, counted }: { readonly players: readonly Player[]; readonly counted: readonly Player[] },
): readonly Patch[] => {
  const updates: Patch[] = []
  const fresh: Player[] = []
  for (const player of withoutRepeated(players)) {
    const key = sameRow(draft, player)
    if (key === undefined) fresh.push(player)
    else updates.push(...update(key, player))
  }
  return [...updates, ...addPlayers(draft.rows, fresh), ...addCounted(draft, counted)]
}
