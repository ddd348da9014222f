import type { Player } from '../../draft.ts'
import type { Scene } from '../list/change.ts'
import type { Token } from '../text/tokens.ts'
import type { Group } from '../whom/whom.ts'

/** A sentence, and those of the list whom it speaks of. */
export type Told = { readonly tokens: readonly Token[]; readonly group: Group; readonly scene: Scene }

const keysOf = ({ group }: Told): readonly string[] => [...new Set(group.refs.flatMap(({ keys }) => keys))]

export const playersOf = (told: Told): readonly Player[] => keysOf(told).flatMap((key) => told.scene.draft.rows[key] ?? [])

/** The only one whom a sentence speaks of; null where there are several. */
export const onlyKey = (told: Told): string | null => {
  const [key, ...more] = keysOf(told)
  return key === undefined || more.length > 0 || told.scene.draft.rows[key] === undefined ? null : key
}

/** Places of the words that name nobody of the list. */
export const outside = ({ tokens, group }: Told): readonly number[] =>
  [...tokens.keys()].filter((at) => group.places.every(({ from, to }) => at < from || at >= to))
