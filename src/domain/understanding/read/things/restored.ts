import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import type { Item } from './items.ts'

const parts: ReadonlySet<Item['kind']> = new Set(['stones', 'outline', 'shadow'])

/** Stones or a shadow that were refused before, here or of a whole kind. */
const isRefused = ({ marks, styles }: Draft): boolean =>
  [...Object.values(styles), ...Object.values(marks).map(({ style }) => style)].some(
    (style) => style?.stones?.wanted === false || style?.shadow === false || style?.outlines?.length === 0,
  )

/** "Stones back on, please": where they were taken off, "back" is no place of theirs. */
export const withoutBackAgain = (items: readonly Item[], draft: Draft): readonly Item[] =>
  isRefused(draft)
    ? items.filter((item, at) => {
        const behind = parts.has(items[at - 1]?.kind ?? 'stop') || listed.leftOff.bringing.includes(items[at - 1]?.key ?? '')
        return !(item.kind === 'place' && item.id === 'back' && item.to === item.from + 1 && behind)
      })
    : items
