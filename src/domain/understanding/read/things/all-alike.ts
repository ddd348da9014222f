import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import type { Item } from './items.ts'
import { flush, put, type Walk } from './walk.ts'

type Make = Extract<Item, { kind: 'colour' | 'class' }>

const between: ReadonlySet<Item['kind']> = new Set(['in', 'colour', 'class', 'vinyl', 'word'])
const ends: ReadonlySet<Item['kind']> = new Set(['stop', 'comma', 'vinyl', 'class', 'and'])

/** "…, all in gold glitter", "todo en blanco": a make of everything that was named, with no noun behind it. */
const isOfAll = (walk: Walk, at: number): boolean => {
  const next = walk.items[at + 1]
  if (next !== undefined && !ends.has(next.kind)) return false
  if (listed.things.over.includes(walk.items[at - 1]?.key ?? '')) return false
  let back = at - 1
  while (back > at - 8 && isBetween(walk.items[back])) back -= 1
  const word = walk.items[back]
  return word?.kind === 'both' || (word?.kind === 'other' && listed.things.everything.includes(word.key))
}

/** "everything on it in", "todo lo impreso en". */
const isBetween = (item: Item | undefined): boolean =>
  item !== undefined && (between.has(item.kind) || listed.things.everythingOn.includes(item.key))

type Key = 'colour' | 'class'

const isStyle = ({ path }: Patch, key: Key): boolean => path.at(-1) === key && (path[0] === 'marks' || path[0] === 'styles')

/** The marks meant: those that this message named and gave no such make, or all where it named none. */
const meant = (walk: Walk, key: Key): readonly string[] => {
  const wanted = Object.entries(walk.draft.marks).flatMap(([id, mark]) => (mark.wanted === false ? [] : [id]))
  const named = new Set(walk.patches.flatMap(({ path }) => (path[0] === 'marks' ? [path[1] ?? ''] : [])))
  const made = walk.patches.filter((patch) => isStyle(patch, key))
  const has = (id: string): boolean => made.some(({ path }) => path[1] === id || path[1] === walk.draft.marks[id]?.content)
  return named.size === 0 ? wanted : wanted.filter((id) => named.has(id) && !has(id))
}

/** Gives a colour or a class that was said of everything to all of it; false where it was said of something else. */
export const makeAllAlike = (walk: Walk, item: Item, at: number): boolean => {
  if (item.kind !== 'colour' && item.kind !== 'class') return false
  if (walk.waiting.some((one) => one.kind === 'colour') || !isOfAll(walk, at)) return false
  return alike(walk, item)
}

const alike = (walk: Walk, item: Make): boolean => {
  if (item.kind === 'colour' && item.readings !== undefined) return false
  flush(walk)
  const ids = meant(walk, item.kind)
  const id = walk.target.kind === 'garment' ? walk.target.id : null
  if (ids.length === 0 && (id === null || walk.draft.garments[id]?.colour === undefined)) return false
  const marks = ids.map((one): Patch => ({ path: ['marks', one, 'style', item.kind], value: item.id }))
  put(walk, ids.length === 0 ? [{ path: ['styles', 'all', item.kind], value: item.id }] : marks)
  walk.target = { kind: 'mark' }
  return true
}
