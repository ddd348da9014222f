import { listed } from '../../words/languages.ts'
import { headAhead } from './head-ahead.ts'
import type { Item } from './items.ts'
import { modify } from './modify.ts'
import type { Walk } from './walk.ts'

const articles: readonly string[] = listed.things.articles

/** "We have" without a garment behind it speaks of something else than cloth of their own. */
export const isOtherOwn = (walk: Walk, item: Item, at: number): boolean =>
  item.kind === 'own' && item.near === true && headAhead(walk, at)?.kind !== 'garment'

/** The item before, articles and adjectives that wait for this noun left out. */
export const before = (walk: Walk, at: number): Item | undefined => {
  let index = at - 1
  while (index >= 0) {
    const item = walk.items[index]
    if (item === undefined) return undefined
    const skipped = (item.kind === 'other' && articles.includes(item.key)) || item.kind === 'count' || walk.waiting.includes(item)
    if (!skipped) return item
    index -= 1
  }
  return undefined
}

export const isNegated = (walk: Walk, at: number): boolean => {
  const item = before(walk, at)
  if (item?.kind === 'no') return true
  const joined = item !== undefined && (listed.things.or.includes(item.key) || item.kind === 'and' || item.kind === 'comma')
  const link = joined ? walk.items.lastIndexOf(item, at) : -1
  const [twin, own] = [walk.items[link - 1], walk.items[at]]
  return link > 0 && twin?.kind === 'content' && own?.kind === 'content' && isNegated(walk, link - 1)
}

/** "Blanco de local y azul de visita": a colour right before the role that it is of. */
export const isRoleHue = (walk: Walk, at: number): boolean => {
  const [before, next] = [walk.items[at - 1], walk.items[at + 1]]
  return (
    walk.postfix &&
    next?.kind === 'role' &&
    listed.things.ofRole.includes(next.key.split(' ')[0] ?? '') &&
    before?.kind !== 'role'
  )
}

export const applyWaiting = (walk: Walk): void => {
  const waiting = walk.waiting
  walk.waiting = []
  for (const item of waiting) modify(walk, item)
}
