import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { fold } from '../text/tokens.ts'
import type { Item } from './items.ts'

type Text = Extract<Item, { kind: 'text' }>
type Turned = { readonly items: readonly Item[]; readonly patches: readonly Patch[] }

const isText = (item: Item | undefined): item is Text => item?.kind === 'text'

const marksOf = ({ marks }: Draft, { text }: Text): readonly string[] =>
  Object.entries(marks).flatMap(([id, mark]) =>
    mark.wanted !== false && mark.text !== undefined && fold(mark.text) === fold(text) ? [id] : [],
  )

const isSmall = (item: Item | undefined): boolean =>
  item?.kind === 'word' || (item?.kind === 'other' && listed.things.articles.includes(item.key))

/** What stands before a text, small words left out. */
const linkAt = (items: readonly Item[], at: number): number => {
  let link = at - 1
  while (link > at - 4 && isSmall(items[link])) link -= 1
  return link
}

const sentenceOf = (items: readonly Item[], at: number): { readonly from: number; readonly to: number } => {
  const end = items.findIndex((item, index) => index >= at && item.kind === 'stop')
  return { from: items.slice(0, at).findLastIndex(({ kind }) => kind === 'stop') + 1, to: end < 0 ? items.length : end }
}

type Pair = { readonly old: number; readonly fresh: number }

/** "HELPER instead of VOLUNTEER", "not VOLUNTEER, HELPER", "change VOLUNTEER to HELPER": the text that gives way and the one that comes. */
const pairAt = (items: readonly Item[], at: number): Pair | null => {
  const { from, to } = sentenceOf(items, at)
  const others = [...items.keys()].filter((index) => index >= from && index < to && index !== at && isText(items[index]))
  const [other, ...more] = others
  const link = items[linkAt(items, at)]
  if (other === undefined || more.length > 0) return null
  if (link?.kind === 'no') return { old: at, fresh: other }
  const into = link?.kind === 'other' && listed.things.into.includes(link.key)
  return into && other < at ? { old: other, fresh: at } : null
}

const made: ReadonlySet<Item['kind']> = new Set([
  'colour',
  'class',
  'length',
  'outline',
  'shadow',
  'stones',
  'content',
  'garment',
])
const carrying: ReadonlySet<Item['kind']> = new Set(['text', 'place', 'word', 'no'])

/**
 * "Can the sleeve say HELPER instead of VOLUNTEER?": one text takes the place of another that is there, and stands nowhere else. What
 * else is said of it in the same sentence is read as always.
 */
export const textsInstead = (draft: Draft, items: readonly Item[]): Turned => {
  for (const at of items.keys()) {
    const pair = isText(items[at]) ? pairAt(items, at) : null
    const [old, fresh] = [items[pair?.old ?? -1], items[pair?.fresh ?? -1]]
    if (pair === null || !isText(old) || !isText(fresh) || marksOf(draft, fresh).length > 0) continue
    const { from, to } = sentenceOf(items, at)
    const more = items.slice(from, to).some(({ kind }) => made.has(kind))
    const gone = (item: Item, index: number): boolean =>
      more
        ? index === pair.old || (index === linkAt(items, at) && item.kind === 'no')
        : index >= from && index < to && carrying.has(item.kind)
    const ids = marksOf(draft, old)
    if (ids.length === 0) continue
    return {
      items: items.filter((item, index) => !gone(item, index)),
      patches: ids.map((id) => ({ path: ['marks', id, 'text'], value: fresh.text })),
    }
  }
  return { items, patches: [] }
}
