import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { placesAt } from './groups.ts'
import type { Item } from './items.ts'

const said = listed.parts

const changes: ReadonlySet<Item['kind']> = new Set(['length', 'colour', 'class', 'stone-size'])
const inside: ReadonlySet<Item['kind']> = new Set(['place', 'no', 'other', 'content', 'in', 'of', 'and'])

const stops = (item: Item | undefined): boolean => item === undefined || item.kind === 'stop' || item.kind === 'comma'

/** Something is there that may be spared. */
const isThere = ({ marks }: Draft, item: Item): boolean =>
  item.kind === 'place' &&
  Object.values(marks).some(
    ({ wanted, content, place }) => wanted !== false && place !== undefined && placesAt(content, item.id).includes(place),
  )

/** "Reflective silver like the front": a place that what stands elsewhere is to look like. */
const isCompared = (items: readonly Item[], item: Item, at: number): boolean => {
  const back = items.slice(Math.max(0, at - 3), at).reverse()
  const link = back.find((one) => !(one.kind === 'other' && listed.things.articles.includes(one.key)))
  const made = items.slice(Math.max(0, at - 6), at).some(({ kind }) => kind === 'colour' || kind === 'class')
  return item.kind === 'place' && made && link?.kind === 'other' && said.likewise.includes(link.key)
}

const isSparing = (item: Item | undefined): boolean => item !== undefined && said.sparing.includes(item.key)

const isSpared = (clause: readonly Item[], draft: Draft): boolean => {
  const bare = clause.filter(({ kind, key }) => kind !== 'and' && !said.parting.includes(key))
  const refuses = isSparing(bare[0]) || isSparing(bare.at(-1))
  const ones = bare.some(({ key }) => said.ones.includes(key)) || bare.some(({ kind }) => kind === 'content')
  const places = bare.filter(({ kind }) => kind === 'place')
  const plain = bare.every((item) => inside.has(item.kind) && (item.kind !== 'other' || said.beside.includes(item.key)))
  return refuses && ones && plain && places.length === 1 && places.every((item) => isThere(draft, item))
}

/**
 * "Raise the back ones to 20 cm, not the front ones", "los de adelante no": behind a change, what it does not touch. What is there stays
 * as it is, and is not taken off.
 */
export const withoutSpared = (given: readonly Item[], draft: Draft): readonly Item[] => {
  const items = given.filter((item, at) => !isCompared(given, item, at))
  const kept: Item[] = []
  let clause: Item[] = []
  let changed = false
  for (const item of [...items, undefined]) {
    if (item !== undefined && !stops(item)) {
      clause.push(item)
      continue
    }
    if (!(changed && isSpared(clause, draft))) kept.push(...clause)
    changed = item?.kind !== 'stop' && (changed || clause.some(({ kind }) => changes.has(kind)))
    clause = []
    if (item !== undefined) kept.push(item)
  }
  return kept
}
