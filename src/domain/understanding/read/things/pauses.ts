import type { Item } from './items.ts'
import { flush, sentence, type Walk } from './walk.ts'

/** "Front: EAGLES": the place is that of what follows. */
const isPlaceLabel = (walk: Walk, item: Item): boolean => {
  const last = walk.waiting.at(-1)
  return item.key === ':' && last?.kind === 'place' && last === walk.items[walk.at - 1]
}

const heads: ReadonlySet<Item['kind']> = new Set([
  'garment',
  'content',
  'text',
  'word',
  'vinyl',
  'class',
  'outline',
  'place',
  'role',
])

/** "The stones smaller, SS10, and gold instead of AB": of what has stones already, a sentence that names nothing else goes on of them. */
const isOfStonesAlone = (walk: Walk): boolean => {
  const { styles, marks } = walk.was
  const had = [...Object.values(styles), ...Object.values(marks).map(({ style }) => style)].some(
    (style) => style?.stones !== undefined,
  )
  return had && !sentence(walk).some((item) => heads.has(item.kind))
}

/** What a comma and a full stop end: what waited, an outline or stones, and a full stop all that was spoken of. */
export const hearPause = (walk: Walk, item: Item): boolean => {
  if (item.kind !== 'stop' && item.kind !== 'comma') return false
  const label = isPlaceLabel(walk, item) ? walk.waiting.at(-1) : undefined
  if (label === undefined) walk.waiting = []
  else if (label.kind === 'place') {
    flush(walk)
    walk.label = label.id
  }
  walk.only = false
  if (walk.target.kind === 'part') walk.target = walk.scope === null ? { kind: 'none' } : { kind: 'garment', id: walk.scope }
  if (walk.target.kind === 'edge' || (walk.target.kind === 'stones' && !isOfStonesAlone(walk))) walk.target = { kind: 'mark' }
  if (item.kind === 'stop') {
    flush(walk)
    walk.label = null
    walk.target = { kind: 'none' }
    walk.scope = null
  }
  return true
}
