import type { Draft, Player } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { type Change, isAdd, nothing } from '../list/change.ts'
import { addPlayers } from '../list/table.ts'
import { isWord } from '../text/tokens.ts'
import { rowsByName } from '../whom/refs.ts'
import { speaksOfThings } from './left-rows.ts'
import type { Telling } from './telling.ts'

/** "Oh also add a 10, youth small": somebody who is nobody of the list and is told with all that its lines have. */
export const toldOfNewcomer = (telling: Telling, draft: Draft): Change => {
  const { tokens, refs, sizes, figures, names, unsure } = telling
  const asked = tokens.some((token) => isAdd(token) || isWord(token, ...listed.clauses.newcomer))
  const rows = Object.values(draft.rows)
  const has = (field: keyof Player): boolean => rows.some((row) => row[field] !== undefined)
  const [size, ...sizesMore] = sizes
  const [figure, ...figuresMore] = figures
  const [name, ...namesMore] = names
  const several = sizesMore.length + figuresMore.length + namesMore.length > 0
  if (!asked || several || unsure || rows.length === 0 || refs.length > 0 || speaksOfThings(telling)) return nothing
  if (size?.value.size === undefined || size.old || figure?.old || (figure === undefined && name === undefined)) return nothing
  if (figure === undefined && has('number')) return nothing
  if (name !== undefined && rowsByName(draft.rows, name.value).length > 0) return nothing
  const player: Player = {
    ...(figure === undefined ? {} : { number: figure.value }),
    ...(name === undefined || !has('name') ? {} : { name: name.value }),
    size: size.value.size,
    ...(size.value.fit === undefined ? {} : { fit: size.value.fit }),
  }
  return { ...nothing, patches: addPlayers(draft.rows, [player]) }
}
