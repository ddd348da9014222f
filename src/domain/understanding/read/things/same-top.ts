import type { GarmentKind } from '../../draft.ts'
import type { Item } from './items.ts'
import type { Walk } from './walk.ts'

type Garment = Extract<Item, { kind: 'garment' }>

const isTop = (kind: GarmentKind | undefined): boolean => kind === 'jersey' || kind === 't-shirt'

const counting: ReadonlySet<Item['kind']> = new Set(['count', 'figure'])
const joining: ReadonlySet<Item['kind']> = new Set(['and', 'with'])

/** Named beside another thing in the sentence, or counted apart, it is one of its own. */
const isApart = (walk: Walk, at: number): boolean => {
  const near = walk.items.slice(Math.max(0, at - 4), at)
  const own = near.slice(near.findLastIndex((one) => one.kind === 'stop') + 1)
  return own.some((one) => joining.has(one.kind)) || walk.waiting.some((one) => counting.has(one.kind))
}

/** "Rugby shirts for the Otters, 5 of them. Jersey navy": a top that this message only named, by a word for any top or to be called so now. */
const namedHere = (walk: Walk, item: Garment, at: number): string | null => {
  const [old, ...more] = [...walk.fresh]
  const named = walk.items.slice(0, at).findLast((one) => one.kind === 'garment')
  const any = item.loose === true || (named?.kind === 'garment' && named.loose === true)
  return old !== undefined && more.length === 0 && any && walk.was.garments[old] === undefined ? old : null
}

/** The only garment of the order: "shirts" of which nothing was said yet, or jerseys that are called shirts now. */
const namedBefore = (walk: Walk, item: Garment): string | null => {
  const [old, ...more] = Object.keys(walk.draft.garments)
  const wish = old === undefined ? undefined : walk.was.garments[old]
  if (old === undefined || wish === undefined || more.length > 0) return null
  const untold = wish.kind === 't-shirt' && Object.keys(wish).length === 1
  const coloured = walk.waiting.some((one) => one.kind === 'colour')
  return untold || (wish.kind === 'jersey' && item.loose === true && !coloured) ? old : null
}

/** The top that goes on under another name; null where a garment of its own is named. */
export const topBefore = (walk: Walk, item: Garment, at: number): string | null => {
  const old = namedHere(walk, item, at) ?? namedBefore(walk, item)
  const wish = walk.draft.garments[old ?? '']
  const plain = old === 'jersey' || old === 'tee'
  if (!plain || !isTop(wish?.kind) || !isTop(item.id) || wish?.kind === item.id || isApart(walk, at)) return null
  return walk.fresh.has(old) && wish?.colour !== undefined ? null : old
}
