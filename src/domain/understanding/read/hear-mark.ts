import type { Patch } from '../patch.ts'
import { newGroup, placesAt, refusal, stonesOf } from './groups.ts'
import type { Item } from './items.ts'
import { applyWaiting, isNegated } from './look-around.ts'
import { currentGroups, flush, put, startEdge, type Walk } from './walk.ts'

/** Words after which names and numbers are a list, not a thing to press. */
const listWords: readonly string[] = [
  'here',
  'heres',
  "here's",
  'send',
  'list',
  'roster',
  'lista',
  'spell',
  'spelling',
  'my',
  'mi',
  'their',
  'phone',
  'order',
  'po',
  'mal',
  'wrong',
]

const isListed = (walk: Walk, at: number): boolean => {
  const [next, after] = walk.items.slice(at + 1, at + 3)
  const linked = next?.kind === 'other' && ['is', 'es', 'are', 'son', '#'].includes(next.key)
  if (next?.kind === 'figure' || (linked && (after?.kind === 'figure' || after?.kind === 'other' || after?.kind === 'count')))
    return true
  return walk.items.slice(Math.max(0, at - 3), at).some((item) => item.kind === 'other' && listWords.includes(item.key))
}

const refuse = (walk: Walk, content: 'number' | 'name'): void => {
  flush(walk)
  const places = content === 'number' ? (['front-number', 'back-number'] as const) : (['name'] as const)
  const marks = Object.entries(walk.draft.marks).filter(([, mark]) => mark.content === content && mark.wanted !== false)
  const scope = walk.scope
  if (scope !== null && marks.length > 0 && walk.several) {
    const others = (on: readonly string[] | undefined) => (on ?? Object.keys(walk.draft.garments)).filter((id) => id !== scope)
    put(
      walk,
      marks.flatMap(([id, mark]): readonly Patch[] => [{ path: ['marks', id, 'on'], value: others(mark.on) }]),
    )
    return
  }
  put(walk, [
    ...marks.map(([id]): Patch => ({ path: ['marks', id, 'wanted'], value: false })),
    ...places.flatMap((place) => refusal(place, content)),
  ])
}

/** "The coach: COACH on the chest, no number": where the others wear one, a single "no number" speaks of one of them. */
const isOfOne = (walk: Walk, content: 'number' | 'name', at: number): boolean => {
  const single = ['number', 'name', 'numero', 'nombre', 'dorsal', 'apellido'].includes(walk.items[at]?.key ?? '')
  const worn = Object.values(walk.draft.marks).some((mark) => mark.content === content && mark.wanted !== false)
  return single && worn && walk.scope === null && Object.keys(walk.draft.rows).length > 0
}

export const hearContent = (walk: Walk, content: 'number' | 'name', at: number): void => {
  if (isNegated(walk, at)) {
    if (!isOfOne(walk, content, at)) refuse(walk, content)
    return
  }
  if (isListed(walk, at)) {
    walk.waiting = []
    return
  }
  const joined = walk.items[at - 1]?.kind === 'and' && walk.items[at - 2]?.kind === 'content' && walk.groups.length === 1
  if (!joined) flush(walk)
  const group = newGroup(content, walk.scope)
  const first = walk.groups[0]
  if (joined && first !== undefined) Object.assign(group.style, first.style)
  walk.groups = joined ? [...walk.groups, group] : [group]
  walk.target = { kind: 'mark' }
  takeMake(walk)
  applyWaiting(walk)
}

export const hearText = (walk: Walk, text: string | undefined): void => {
  const [only] = walk.groups
  if (text !== undefined && only?.content === 'text' && only.text === undefined) only.text = text
  else {
    flush(walk)
    const group = newGroup('text', walk.scope)
    group.text = text
    walk.groups = [group]
  }
  walk.target = { kind: 'mark' }
  takeMake(walk)
  applyWaiting(walk)
}

const isStony = (walk: Walk): boolean =>
  walk.target.kind === 'stones' || walk.waiting.some((item) => item.kind === 'stone-size' || item.kind === 'stones')

export const hearOutline = (walk: Walk, at: number): void => {
  if (isNegated(walk, at)) {
    for (const group of currentGroups(walk)) group.style.outlines = []
    return
  }
  if (walk.target.kind === 'garment' && walk.groups.length === 0 && !isStony(walk)) {
    walk.waiting = []
    return
  }
  if (isStony(walk)) {
    for (const group of currentGroups(walk)) stonesOf(group).style = 'outline'
    walk.target = { kind: 'stones' }
  } else startEdge(walk, false)
  applyWaiting(walk)
}

export const hearStones = (walk: Walk, at: number): void => {
  const negated = isNegated(walk, at)
  for (const group of currentGroups(walk)) stonesOf(group).wanted = !negated
  if (negated) return
  if (walk.target.kind === 'edge' && isMadeOf(walk, at)) {
    for (const group of currentGroups(walk)) {
      group.style.outlines = (group.style.outlines ?? []).slice(0, -1)
      stonesOf(group).style = 'outline'
    }
  }
  walk.target = { kind: 'stones' }
  applyWaiting(walk)
}

/** "contorno de piedra", "outline of stones": the outline is made of stones. */
const isMadeOf = (walk: Walk, at: number): boolean => {
  const of = walk.items[at - 1]
  return walk.items[at - 2]?.kind === 'outline' && (of?.kind === 'in' || of?.kind === 'of' || of?.key === 'in')
}

/** "On the back? no, on the front": the last place was meant otherwise. "Nothing on front": that place stays free. */
export const negatedPlace = (walk: Walk, item: Extract<Item, { kind: 'place' }>, at: number): boolean => {
  const no = [at - 1, at - 2, at - 3].find((index) => walk.items[index]?.kind === 'no')
  if (no === undefined) return false
  const word = walk.items[no]?.key ?? ''
  const group = walk.groups[0]
  if (['nothing', 'nada'].includes(word) || group === undefined || group.places.size === 0) {
    if (no < at - 2) return false
    const content = group?.content ?? 'number'
    flush(walk)
    put(
      walk,
      placesAt(content, item.id).flatMap((place) => refusal(place, content)),
    )
    return true
  }
  for (const one of walk.groups) {
    for (const place of walk.lastPlaces) one.places.delete(place)
  }
  return false
}

/** A make that was said before its thing was named is the thing's. */
export const takeMake = (walk: Walk): void => {
  if (walk.make === null) return
  for (const group of walk.groups) Object.assign(group.style, walk.make)
  walk.make = null
}
