import { listed } from '../../words/languages.ts'
import type { Item } from './items.ts'

const { going, goingObjects, doers, deeds } = listed.things

const key = (item: Item | undefined): string => item?.key ?? ''

const said: ReadonlySet<Item['kind']> = new Set(['garment', 'content', 'colour', 'and', 'in'])

/** "He moved away", "take them home": whither somebody or something goes is no set of jerseys. */
const isWhither = (items: readonly Item[], at: number): boolean => {
  const [before, next] = [items[at - 1], items[at + 1]]
  if (items[at]?.kind !== 'role' || before === undefined || (next !== undefined && said.has(next.kind))) return false
  return going.includes(key(before)) || (goingObjects.includes(key(before)) && going.includes(key(items[at - 2])))
}

const ends: ReadonlySet<Item['kind']> = new Set(['stop', 'comma', 'colour'])

/** "You did our jackets back in October": what the shop made before is no garment of this order. */
const isEarlier = (items: readonly Item[], at: number): boolean => {
  if (items[at]?.kind !== 'garment' || items[at + 1]?.kind === 'colour') return false
  for (let back = at - 1; back > at - 5; back -= 1) {
    const item = items[back]
    if (item === undefined || ends.has(item.kind)) return false
    if (deeds.includes(key(item))) return doers.includes(key(items[back - 1]))
  }
  return false
}

/** The items without homes, aways and garments that are named only in passing. */
export const withoutPassing = (items: readonly Item[]): readonly Item[] =>
  items.map((item, at) =>
    isWhither(items, at) || isEarlier(items, at) ? { kind: 'other', from: item.from, to: item.to, key: item.key } : item,
  )
