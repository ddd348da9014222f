import { listed } from '../../words/languages.ts'
import type { Item } from './items.ts'
import type { Walk } from './walk.ts'

export const glue: ReadonlySet<Item['kind']> = new Set([
  'colour',
  'class',
  'knit',
  'fibre',
  'dye',
  'finish',
  'feature',
  'vinyl',
  'place',
  'thin',
  'stone-size',
  'count',
  'figure',
  'script',
  'use',
  'sport',
  'own',
  'length',
  'cut',
  'size',
])
const heads: ReadonlySet<Item['kind']> = new Set([
  'garment',
  'role',
  'content',
  'text',
  'word',
  'outline',
  'shadow',
  'stones',
  'blocker',
  'part',
])
const cuts: readonly string[] = listed.things.nounWords

const articles: readonly string[] = listed.things.articles

/** The noun that an adjective stands right before, with nothing but adjectives between. */
export const headAhead = (walk: Walk, from: number): Item | null => {
  for (const item of walk.items.slice(from + 1, from + 9)) {
    if (heads.has(item.kind)) return item
    const owned = walk.items[from]?.kind === 'own' && articles.includes(item.key)
    const skipped = owned || item.kind === 'sleeve-length' || (item.kind === 'other' && cuts.includes(item.key))
    if (!glue.has(item.kind) && !skipped) return null
  }
  return null
}
