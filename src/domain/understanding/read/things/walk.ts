import type { PlaceId } from '../../../garment/place.ts'
import type { VinylClass } from '../../../material/material.ts'
import type { Open } from '../../conversation.ts'
import type { Draft, Edge, GarmentWish } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import type { Spot } from '../../words/word-list.ts'
import { type Group, groupPatches, newGroup, placesAt } from './groups.ts'
import { having, type Part, refusedStones } from './having.ts'
import type { Item } from './items.ts'

/** What adjectives are being said of. */
export type Target =
  | { readonly kind: 'none' }
  | { readonly kind: 'garment'; readonly id: string }
  | { readonly kind: 'mark' }
  | { readonly kind: 'make' }
  | { readonly kind: 'edge'; readonly edge: { -readonly [K in keyof Edge]: Edge[K] }; readonly shadow: boolean }
  | { readonly kind: 'stones' }
  /** A collar, a stripe: the maker's, whose colour is nothing that is pressed. */
  | { readonly kind: 'part' }

/** The state of a walk along a message: the things being spoken of, and the changes found so far. */
export type Walk = {
  readonly items: readonly Item[]
  /** Where each item stands among them. */
  readonly index: ReadonlyMap<Item, number>
  /** Where the walk stands. */
  at: number
  /** Adjectives follow their noun, as in Spanish. */
  readonly postfix: boolean
  draft: Draft
  /** The draft before this message. */
  readonly was: Draft
  readonly patches: Patch[]
  readonly open: Open[]
  /** Colours that were said not to be. */
  readonly negated: string[]
  /** Colours of nothing in particular. */
  loose: Extract<Item, { kind: 'colour' }>[]
  target: Target
  scope: string | null
  groups: Group[]
  /** Adjectives before their noun. */
  waiting: Item[]
  /** Garments that this message named first. */
  readonly fresh: Set<string>
  readonly several: boolean
  /** Home and away were told apart in this message before the walk. */
  readonly setsTold: boolean
  lastPlaces: readonly PlaceId[]
  /** "On the back: …": the side of what is listed behind it. */
  label: Spot | null
  only: boolean
  /** The thing spoken of before the last pause. */
  last: Group | null
  /** A make said before its thing is named: "in stretchy white vinyl, the word LYNX". */
  make: { colour?: string; class?: VinylClass } | null
  /** A garment named only in passing: "on the back of the black jerseys". */
  aside: Target | null
}

/** Where an item stands in the message. */
export const placeOf = ({ index }: Walk, item: Item): number => index.get(item) ?? -1

/** "On the back: last name on top, number under it": what has no place of its own is on the side that heads the list. */
const addLabelled = (walk: Walk, group: Group): void => {
  const fits = walk.label === 'back' || (walk.label === 'front' && group.content !== 'name')
  if (walk.label === null || !fits || group.makeOnly) return
  for (const place of placesAt(group.content, walk.label)) group.places.add(place)
}

/** Makes the changes of the groups that are finished, so that what follows sees them. */
export const flush = (walk: Walk): void => {
  for (const group of walk.groups) if (group.places.size === 0) addLabelled(walk, group)
  for (const group of walk.groups) put(walk, groupPatches(walk.draft, group, walk.several))
  walk.last = walk.groups.at(-1) ?? walk.last
  walk.groups = []
}

export const put = (walk: Walk, patches: readonly Patch[]): void => {
  walk.patches.push(...patches)
  walk.draft = preview(walk.draft, patches)
}

export const putGarment = (walk: Walk, id: string, wish: GarmentWish): void =>
  put(
    walk,
    Object.entries(wish).map(([key, value]): Patch => ({ path: ['garments', id, key], value })),
  )

const sides: readonly string[] = ['front', 'both-sides', 'chest']

/** The items of the sentence in which the walk stands. */
export const sentence = (walk: Walk): readonly Item[] => {
  const from = walk.items.slice(0, walk.at).findLastIndex((item) => item.kind === 'stop') + 1
  const to = walk.items.findIndex((item, index) => index > walk.at && item.kind === 'stop')
  return walk.items.slice(from, to < 0 ? walk.items.length : to)
}

/** "… last names above. 4 inches on the front, 8 on the back": names stand on one side, so a height for the front is the numbers'. */
const turnsToNumbers = (walk: Walk): boolean => {
  if (walk.last?.content !== 'name') return false
  const numbers = Object.values(walk.draft.marks).some((mark) => mark.content === 'number' && mark.wanted !== false)
  const said = sentence(walk)
  const sided = said.some((item) => item.kind === 'place' && sides.includes(item.id))
  return numbers && sided && said.some((item) => 'micrometres' in item) && !said.some((item) => item.kind === 'content')
}

/** What this message speaks of putting on where nothing is known yet: words or names if it names no numbers. */
const contentSaid = (walk: Walk): 'number' | 'name' | 'text' => {
  const said = new Set(walk.items.flatMap((item) => (item.kind === 'content' ? [item.id] : [])))
  if (said.has('number')) return 'number'
  if (walk.items.some((item) => item.kind === 'text' || item.kind === 'word')) return 'text'
  return said.has('name') ? 'name' : 'number'
}

/** The groups being spoken of; when none is, the numbers are. */
export const currentGroups = (walk: Walk): readonly Group[] => {
  if (walk.groups.length > 0) return walk.groups
  if (walk.last !== null && !turnsToNumbers(walk)) {
    const group = newGroup(walk.last.content, walk.scope)
    group.text = walk.last.text
    if (group.content === 'text') for (const place of walk.last.places) group.places.add(place)
    walk.groups = [group]
    return walk.groups
  }
  const marks = Object.values(walk.draft.marks).filter((mark) => mark.wanted !== false)
  const only = new Set(marks.map((mark) => mark.content))
  const content = only.size === 1 ? (marks[0]?.content ?? 'number') : only.size === 0 ? contentSaid(walk) : 'number'
  const text = content === 'text' && marks.length === 1 ? marks[0] : undefined
  const group = newGroup(content, walk.scope)
  group.text = text?.text
  if (text?.place !== undefined) group.places.add(text.place)
  walk.groups = [group]
  return walk.groups
}

export const garmentOf = (walk: Walk): string | null => {
  if (walk.target.kind === 'garment') return walk.target.id
  if (walk.scope !== null) return walk.scope
  const ids = Object.keys(walk.draft.garments)
  return ids.length === 1 ? (ids[0] ?? null) : null
}

/** "Make the shadow silver": where nothing was named yet, what has one is spoken of. */
export const speakOf = (walk: Walk, part: Part): void => {
  if (walk.groups.length > 0 || walk.last !== null || walk.items.slice(0, walk.at).some((item) => item.kind === 'content')) return
  const had = having(walk.was, part)
  walk.groups = [...(had.length === 0 && part === 'stones' ? refusedStones(walk.was) : had)]
}

/** An outline or a shadow begins: what is said next is said of it. */
export const startEdge = (walk: Walk, shadow: boolean): void => {
  speakOf(walk, shadow ? 'shadow' : 'outlines')
  const edge: Edge = {}
  for (const group of currentGroups(walk)) {
    if (shadow) group.style.shadow = edge
    else group.style.outlines = [...(group.style.outlines ?? []), edge]
  }
  walk.target = { kind: 'edge', edge, shadow }
}
