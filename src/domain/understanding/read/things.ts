import type { Open } from '../conversation.ts'
import type { Draft, GarmentKind } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { newGroup, placesAt, refusal, stonesOf } from './groups.ts'
import type { Item } from './items.ts'
import { modify } from './modify.ts'
import { currentGroups, flush, garmentOf, put, putGarment, startEdge, type Walk } from './walk.ts'

export type ThingsFound = {
  readonly draft: Draft
  readonly patches: readonly Patch[]
  readonly open: readonly Open[]
  readonly negated: readonly string[]
  readonly loose: readonly Extract<Item, { kind: 'colour' }>[]
}

export const garmentIds: Readonly<Record<GarmentKind, string>> = {
  jersey: 'jersey',
  't-shirt': 'tee',
  hoodie: 'hoodie',
  polo: 'polo',
  shorts: 'shorts',
  jacket: 'jacket',
  bodysuit: 'bodysuit',
}

const glue: ReadonlySet<Item['kind']> = new Set([
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
])
const heads: ReadonlySet<Item['kind']> = new Set(['garment', 'role', 'content', 'text', 'outline', 'shadow', 'stones', 'blocker'])
const cuts: readonly string[] = [
  'adult',
  'youth',
  'kids',
  "women's",
  'womens',
  "men's",
  'mens',
  'ladies',
  'girls',
  'boys',
  'size',
  '-',
  'long',
  'short',
  'new',
  'big',
  'small',
  'nice',
  'game',
]

/** The noun that an adjective stands right before, with nothing but adjectives between. */
const headAhead = (walk: Walk, from: number): Item | null => {
  for (const item of walk.items.slice(from + 1, from + 9)) {
    if (heads.has(item.kind)) return item
    if (!glue.has(item.kind) && !(item.kind === 'other' && cuts.includes(item.key))) return null
  }
  return null
}

const articles: readonly string[] = [
  'the',
  'our',
  'my',
  'your',
  'los',
  'las',
  'el',
  'la',
  'nuestros',
  'nuestras',
  'mis',
  'all',
  'any',
  'a',
  'an',
  'un',
  'una',
  'of',
  'them',
]

/** The item before, articles and adjectives that wait for this noun left out. */
const before = (walk: Walk, at: number): Item | undefined => {
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

const isNegated = (walk: Walk, at: number): boolean => {
  const item = before(walk, at)
  if (item?.kind === 'no') return true
  const joined = item !== undefined && (item.key === 'or' || item.key === 'nor' || item.kind === 'and' || item.kind === 'comma')
  const twin = joined ? walk.items[at - 2] : undefined
  return twin?.kind === 'content' && walk.items[at - 3]?.kind === 'no' && walk.items[at]?.kind === 'content'
}

const applyWaiting = (walk: Walk): void => {
  const waiting = walk.waiting
  walk.waiting = []
  for (const item of waiting) modify(walk, item)
}

/** A garment of a kind that is there already, in another colour and counted apart, is a second one. */
const garmentId = (walk: Walk, kind: GarmentKind): string => {
  const id = garmentIds[kind]
  const there = walk.draft.garments[id]
  const colour = walk.waiting.find((item) => item.kind === 'colour')
  const counted = walk.waiting.some((item) => item.kind === 'figure' || item.kind === 'count')
  const differs = there?.colour !== undefined && colour?.kind === 'colour' && colour.id !== there.colour
  return walk.fresh.has(id) && differs && counted ? `${id}-2` : id
}

const countWaiting = (walk: Walk): number | undefined => {
  const item = walk.waiting.find((one) => one.kind === 'figure' || one.kind === 'count')
  const count = item?.kind === 'count' ? item.id : item?.kind === 'figure' ? Number(item.text) : undefined
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= 500 ? count : undefined
}

const isOf = (walk: Walk, at: number): boolean => {
  const item = before(walk, at)
  return (
    item !== undefined && (item.kind === 'of' || ['on', 'for', 'de', 'en', 'para'].includes(item.key)) && walk.groups.length > 0
  )
}

const restrict = (walk: Walk, id: string): void => {
  for (const group of walk.groups) {
    if (walk.only) {
      group.on.clear()
      group.only = true
    }
    group.on.add(id)
  }
}

const startGarment = (walk: Walk, id: string, at: number): void => {
  const aside = isOf(walk, at)
  const target = walk.target
  if (aside) restrict(walk, id)
  else flush(walk)
  walk.scope = id
  walk.target = { kind: 'garment', id }
  walk.fresh.add(id)
  const count = countWaiting(walk)
  if (count !== undefined) putGarment(walk, id, { count })
  applyWaiting(walk)
  if (aside) walk.aside = target
}

const hearGarment = (walk: Walk, item: Extract<Item, { kind: 'garment' }>, at: number): void => {
  const roles = Object.keys(walk.draft.garments).filter((id) => id === 'home' || id === 'away')
  if (item.id === 'jersey' && roles.length > 0) {
    applyWaiting(walk)
    return
  }
  const id = garmentId(walk, item.id)
  putGarment(walk, id, { kind: item.id, ...(item.catalogue === undefined ? {} : { catalogue: item.catalogue }) })
  startGarment(walk, id, at)
}

const hearRole = (walk: Walk, id: 'home' | 'away', at: number): void => {
  const plain = walk.draft.garments['jersey']
  if (plain !== undefined && walk.draft.garments[id] === undefined) put(walk, [{ path: ['garments', 'jersey'], value: null }])
  putGarment(walk, id, { kind: 'jersey' })
  startGarment(walk, id, at)
}

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
  const next = walk.items[at + 1]
  if (next?.kind === 'figure' || (next?.kind === 'other' && ['is', 'es', 'are', '#'].includes(next.key))) return true
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

const hearContent = (walk: Walk, content: 'number' | 'name', at: number): void => {
  if (isNegated(walk, at)) return refuse(walk, content)
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

const hearText = (walk: Walk, text: string | undefined): void => {
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

const hearOutline = (walk: Walk, at: number): void => {
  if (isNegated(walk, at)) {
    for (const group of currentGroups(walk)) group.style.outlines = []
    return
  }
  if (isStony(walk)) {
    for (const group of currentGroups(walk)) stonesOf(group).style = 'outline'
    walk.target = { kind: 'stones' }
  } else startEdge(walk, false)
  applyWaiting(walk)
}

const hearStones = (walk: Walk, at: number): void => {
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
const negatedPlace = (walk: Walk, item: Extract<Item, { kind: 'place' }>, at: number): boolean => {
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

const hearHead = (walk: Walk, item: Item, at: number): boolean => {
  switch (item.kind) {
    case 'garment':
      hearGarment(walk, item, at)
      return true
    case 'role':
      hearRole(walk, item.id, at)
      return true
    case 'content':
      hearContent(walk, item.id, at)
      return true
    case 'text':
      hearText(walk, item.text)
      return true
    case 'word':
      hearText(walk, undefined)
      return true
    case 'outline':
      hearOutline(walk, at)
      return true
    case 'shadow':
      startEdge(walk, true)
      applyWaiting(walk)
      return true
    case 'stones':
      hearStones(walk, at)
      return true
    case 'blocker':
      for (const group of currentGroups(walk)) group.style.blocker = true
      return true
    default:
      return false
  }
}

const hearPause = (walk: Walk, item: Item): boolean => {
  if (item.kind !== 'stop' && item.kind !== 'comma') return false
  walk.waiting = []
  walk.only = false
  if (walk.target.kind === 'edge' || walk.target.kind === 'stones') walk.target = { kind: 'mark' }
  if (item.kind === 'stop') {
    flush(walk)
    walk.target = { kind: 'none' }
    walk.scope = null
  }
  return true
}

/** "on the right sleeve the number", "en la manga derecha el número": the place is said before its thing. */
const isPlaceOf = (walk: Walk, at: number): boolean => {
  const article = walk.items[at + 1]
  const next = walk.items[at + 2]
  return article?.kind === 'other' && ['the', 'el', 'la', 'los', 'las'].includes(article.key) && next?.kind === 'content'
}

/** An adjective waits for the noun it stands before; in Spanish it belongs to the noun before it, where there is one. */
const waits = (walk: Walk, item: Item, at: number): boolean => {
  if (!glue.has(item.kind)) return false
  if (item.kind === 'figure' || item.kind === 'count') return true
  if (item.kind === 'place' && isPlaceOf(walk, at)) return true
  if (walk.postfix && walk.target.kind !== 'none') return false
  return headAhead(walk, at) !== null
}

/** After a garment named in passing, the thing spoken of before comes back. */
const comeBack = (walk: Walk, item: Item): void => {
  if (walk.aside === null || (walk.postfix && ['colour', 'knit', 'fibre', 'dye'].includes(item.kind))) return
  walk.target = walk.aside
  walk.aside = null
}

const startMake = (walk: Walk): void => {
  if (walk.groups.length > 0 || (walk.target.kind !== 'garment' && walk.target.kind !== 'none')) return
  walk.target = { kind: 'make' }
  walk.make = walk.make ?? {}
}

const takeMake = (walk: Walk): void => {
  if (walk.make === null) return
  for (const group of walk.groups) Object.assign(group.style, walk.make)
  walk.make = null
}

/** "…, el de adelante plateado", "red on the back and white on the front": another place with a make of its own is said apart. */
const splitsAt = (walk: Walk, item: Item, at: number): boolean => {
  const [group] = walk.groups
  if (
    group === undefined ||
    walk.groups.length > 1 ||
    group.places.size === 0 ||
    group.style.colour === undefined ||
    group.content === 'text'
  )
    return false
  if (item.kind === 'place') {
    const ahead = walk.items.slice(at + 1, at + 4)
    const pause = ahead.findIndex(
      (one) => one.kind === 'comma' || one.kind === 'stop' || one.kind === 'and' || one.kind === 'with',
    )
    return (
      ahead.slice(0, pause < 0 ? 3 : pause).some((one) => one.kind === 'colour' || (one.kind === 'class' && walk.postfix)) &&
      walk.waiting.length === 0 &&
      walk.target.kind === 'mark'
    )
  }
  const next = walk.items
    .slice(at + 1, at + 3)
    .find((one) => one.kind !== 'other' && one.kind !== 'class' && one.kind !== 'vinyl')
  return item.kind === 'colour' && walk.target.kind === 'mark' && next?.kind === 'place' && !walk.postfix
}

const split = (walk: Walk): void => {
  const [group] = walk.groups
  if (group === undefined) return
  const fresh = newGroup(group.content, walk.scope)
  flush(walk)
  walk.groups = [fresh]
}

const step = (walk: Walk, item: Item, at: number): void => {
  comeBack(walk, item)
  if (splitsAt(walk, item, at)) split(walk)
  if (hearPause(walk, item) || hearHead(walk, item, at)) return
  if (item.kind === 'colour' && walk.items[at - 1]?.kind === 'no') {
    walk.negated.push(item.id)
    return
  }
  if (item.kind === 'place' && negatedPlace(walk, item, at)) return
  if (item.kind === 'vinyl' && isNegated(walk, at)) {
    for (const group of currentGroups(walk)) group.style.vinyl = false
    return
  }
  if (item.kind === 'only') walk.only = true
  if (item.kind === 'vinyl' || (item.kind === 'class' && walk.target.kind === 'garment')) {
    if (!waits(walk, item, at)) startMake(walk)
  }
  if (waits(walk, item, at)) walk.waiting.push(item)
  else modify(walk, item)
}

type Start = { readonly draft: Draft; readonly items: readonly Item[]; readonly postfix: boolean }

const garmentsNamed = ({ draft, items }: Start): number => {
  const roles = new Set(items.flatMap((item) => (item.kind === 'role' ? [item.id] : [])))
  const kinds = new Set(items.flatMap((item) => (item.kind === 'garment' ? [garmentIds[item.id]] : [])))
  if (roles.size > 0) kinds.delete('jersey')
  return new Set([...Object.keys(draft.garments), ...roles, ...kinds]).size
}

const twoOfAKind = ({ items }: Start): boolean => {
  const colours = (kind: string) =>
    items.flatMap((item, at) =>
      item.kind === 'garment' && item.id === kind
        ? [items.slice(Math.max(0, at - 3), at).find((one) => one.kind === 'colour')?.key]
        : [],
    )
  return Object.keys(garmentIds).some((kind) => new Set(colours(kind).filter((colour) => colour !== undefined)).size > 1)
}

/** Reads garments and what goes on them out of a message: which thing each colour, place, height and stone is meant for. */
export const readThings = (start: Start): ThingsFound => {
  const walk: Walk = {
    items: start.items,
    postfix: start.postfix,
    draft: start.draft,
    patches: [],
    open: [],
    negated: [],
    loose: [],
    target: { kind: 'none' },
    scope: null,
    groups: [],
    waiting: [],
    fresh: new Set(),
    several: garmentsNamed(start) > 1 || twoOfAKind(start),
    lastPlaces: [],
    only: false,
    last: null,
    make: null,
    aside: null,
  }
  for (const [at, item] of start.items.entries()) step(walk, item, at)
  if (walk.make !== null) {
    currentGroups(walk)
    takeMake(walk)
  }
  if (garmentOf(walk) !== null) applyWaiting(walk)
  flush(walk)
  return { draft: walk.draft, patches: walk.patches, open: walk.open, negated: walk.negated, loose: walk.loose }
}
