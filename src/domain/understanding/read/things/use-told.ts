import { listed } from '../../words/languages.ts'
import type { Item } from './items.ts'
import { placeOf, put, sentence, type Walk } from './walk.ts'

type Use = Extract<Item, { kind: 'use' }>

/** So few words say nothing but what they are for: "staff polos", "it's for volunteers". */
const few = 5

/** "The teachers had a chat": where garments are ordered already, who is only spoken of is not who wears them. */
const isOnlySpokenOf = (walk: Walk, item: Use): boolean => {
  const at = placeOf(walk, item)
  const led = walk.items.slice(Math.max(0, at - 3), at).some(({ key }) => listed.things.makeFor.includes(key))
  const beside = sentence(walk).some(({ kind }) => kind === 'garment') || sentence(walk).length <= few
  return Object.keys(walk.was.garments).length > 0 && item.to === item.from + 1 && !led && !beside
}

/** What the garments are for. */
export const hearUse = (walk: Walk, item: Use): void => {
  if (!isOnlySpokenOf(walk, item)) put(walk, [{ path: ['use'], value: item.id }])
}
