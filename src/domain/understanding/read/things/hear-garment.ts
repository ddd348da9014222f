import type { GarmentKind } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { whichHue } from './colour-target.ts'
import { newGroup } from './groups.ts'
import type { Item } from './items.ts'
import { applyWaiting, before } from './look-around.ts'
import { topBefore } from './same-top.ts'
import { flush, placeOf, put, putGarment, type Walk } from './walk.ts'

export const garmentIds: Readonly<Record<GarmentKind, string>> = {
  jersey: 'jersey',
  't-shirt': 'tee',
  hoodie: 'hoodie',
  polo: 'polo',
  shorts: 'shorts',
  jacket: 'jacket',
  bodysuit: 'bodysuit',
}

/** A garment of a kind that is there already, in another colour and counted apart, is a second one. */
const garmentId = (walk: Walk, item: GarmentItem, kind: GarmentKind): string => {
  const id = garmentIds[kind]
  const there = walk.draft.garments[id]
  if (item.another === true && there !== undefined) return `${id}-2`
  const colour = walk.waiting.find((item) => item.kind === 'colour')
  const counted = walk.waiting.some((item) => item.kind === 'figure' || item.kind === 'count')
  const differs = there?.colour !== undefined && colour?.kind === 'colour' && colour.id !== there.colour
  return walk.fresh.has(id) && differs && counted ? `${id}-2` : id
}

/** "#22 hoodie", "number 22's jersey": the figure is somebody's number. */
const isMarked = (walk: Walk, item: Item): boolean => {
  const before = walk.items[placeOf(walk, item) - 1]
  return before?.key === '#' || (before?.kind === 'content' && before.id === 'number')
}

const countWaiting = (walk: Walk): number | undefined => {
  if (walk.waiting.filter((one) => one.kind === 'figure' || one.kind === 'count').length > 1) return undefined
  const item = walk.waiting.find((one) => (one.kind === 'figure' || one.kind === 'count') && !isMarked(walk, one))
  const count = item?.kind === 'count' ? item.id : item?.kind === 'figure' ? Number(item.text) : undefined
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= 500 ? count : undefined
}

const isOf = (walk: Walk, at: number): boolean => {
  const item = before(walk, at)
  return item !== undefined && (item.kind === 'of' || listed.things.onGarment.includes(item.key)) && walk.groups.length > 0
}

const restrict = (walk: Walk, id: string): void => {
  for (const group of walk.groups) {
    if (walk.only) {
      group.on.clear()
      group.only = true
    }
    if (group.inherited) group.on.clear()
    group.inherited = false
    group.on.add(id)
  }
}

/** "Every girl gets one home one away": the figure counts for each of them, not in all. */
const isPerHead = (walk: Walk, at: number): boolean => {
  const near = walk.items.slice(Math.max(0, at - 40), at)
  const stop = Math.max(0, at - 40) + near.findLastIndex((item) => item.kind === 'stop')
  return walk.items.slice(stop + 1, at + 3).some((item) => listed.things.each.includes(item.key))
}

/** Two colours wait for one garment: which is the cloth's? */
const askColours = (walk: Walk, id: string): void => {
  const hues = walk.waiting.filter((item): item is Extract<Item, { kind: 'colour' }> => item.kind === 'colour')
  if (new Set(hues.map((hue) => hue.id)).size < 2) return
  walk.waiting = walk.waiting.filter((item) => item.kind !== 'colour')
  whichHue(walk, id, hues)
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
  if (count !== undefined && !isPerHead(walk, at)) putGarment(walk, id, { count })
  askColours(walk, id)
  applyWaiting(walk)
  if (aside) walk.aside = target
}

type GarmentItem = Extract<Item, { kind: 'garment' }>

const isNumberedSport = (sport: string): boolean => !['other', 'cheer', 'running'].includes(sport)

const isNumber = (item: Item, before: Item | undefined): boolean =>
  item.kind === 'content' && item.id === 'number' && before?.kind !== 'no'

const isNumbered = (walk: Walk): boolean =>
  walk.items.some(
    (item, index) => isNumber(item, walk.items[index - 1]) || (item.kind === 'sport' && isNumberedSport(item.id)),
  ) ||
  Object.values(walk.draft.marks).some((mark) => mark.content === 'number' && mark.wanted !== false) ||
  (walk.draft.sport !== undefined && isNumberedSport(walk.draft.sport))

/** A word that names a jersey where a team plays in numbers, and an everyday garment else. */
const kindOf = (walk: Walk, item: GarmentItem): GarmentKind =>
  item.unnumbered === undefined || isNumbered(walk) ? item.id : item.unnumbered

/** "Two shirts per kid: home white …": a word for both sets, of which home and away are said apart in the same message. */
const isBothSets = (walk: Walk, kind: GarmentKind, at: number): boolean => {
  if (kind !== 'jersey' && kind !== 't-shirt') return false
  const roles = walk.items.flatMap((item, index) => (item.kind === 'role' && index > at ? [item.id] : []))
  const coloured = walk.waiting.some((item) => item.kind === 'colour')
  return (walk.setsTold || new Set(roles).size === 2) && !coloured && walk.draft.garments[garmentIds[kind]] === undefined
}

/** "Local: playera roja", "Home: white shirts": the garment of the role right before it. */
const isOfRole = (walk: Walk, kind: GarmentKind, at: number): boolean => {
  if (kind !== 'jersey' && kind !== 't-shirt') return false
  const from = walk.items.slice(0, at).findLastIndex((item) => item.kind === 'role')
  const between = walk.items.slice(from + 1, at)
  const quiet = between.every(
    (item) => ['comma', 'other', 'in', 'count', 'figure'].includes(item.kind) || walk.waiting.includes(item),
  )
  return from >= 0 && quiet && between.length <= 4
}

const isPause = (item: Item | undefined): boolean => item === undefined || item.kind === 'comma' || item.kind === 'stop'

/** "Cancele las sudaderas", "ya no queremos las sudaderas", "las sudaderas siempre no": one of several garments is called off. */
const isCalledOff = (walk: Walk, at: number): boolean => {
  if (Object.keys(walk.draft.garments).length < 2) return false
  let back = at - 1
  while (listed.things.articles.includes(walk.items[back]?.key ?? '')) back -= 1
  const ahead = walk.items.slice(Math.max(0, back - 2), back + 1)
  const verb = listed.things.callingOff.includes(ahead.at(-1)?.key ?? '')
  const refused = ahead.some(({ kind }, index) => kind === 'no' && listed.things.noLonger.includes(ahead[index - 1]?.key ?? ''))
  const wanted = ahead.at(-1)?.kind === 'no' || listed.things.wanting.includes(ahead.at(-1)?.key ?? '')
  if ((verb || (refused && wanted)) && isPause(walk.items[at + 1])) return true
  const [first, second] = walk.items.slice(at + 1, at + 3)
  return listed.things.noLonger.includes(first?.key ?? '') && second?.kind === 'no' && isPause(walk.items[at + 3])
}

/** "Chamarras no, …", "no jackets": a garment that is not wanted. */
const isRefused = (walk: Walk, at: number): boolean => {
  if (isCalledOff(walk, at)) return true
  const next = walk.items[at + 1]
  const pause = walk.items[at + 2]
  if (walk.postfix && next?.kind === 'no' && (pause === undefined || pause.kind === 'comma' || pause.kind === 'stop')) return true
  return walk.items[at - 1]?.kind === 'no' && walk.waiting.length === 0 && walk.groups.length === 0
}

const takeBack = (walk: Walk, id: string): void => {
  walk.waiting = []
  if (walk.draft.garments[id] !== undefined) put(walk, [{ path: ['garments', id], value: null }])
}

/** Goes on with the one top that is there, which takes its name of a jersey where it had none. */
const renamed = (walk: Walk, item: GarmentItem, at: number): boolean => {
  const old = topBefore(walk, item, at)
  const wish = old === null ? undefined : walk.draft.garments[old]
  if (old === null || wish === undefined) return false
  if (wish.kind === 't-shirt') {
    flush(walk)
    put(walk, [
      { path: ['garments', old], value: null },
      { path: ['garments', 'jersey'], value: { ...wish, kind: 'jersey' } },
    ])
    walk.fresh.delete(old)
  }
  startGarment(walk, 'jersey', at)
  return true
}

/** "Both say KNIGHTS across the front, hoodies in white, tees in black": the colour of it on a garment that has its own already. */
const isOnGarment = (walk: Walk, id: string, at: number): boolean => {
  const [group, ...more] = walk.groups
  const [link, hue] = walk.items.slice(at + 1, at + 3)
  const said = link?.kind === 'colour' ? link : hue
  const linked = link?.kind === 'colour' || link?.kind === 'in' || listed.things.notIn.includes(link?.key ?? '')
  if (group === undefined || more.length > 0 || walk.waiting.length > 0 || said?.kind !== 'colour' || !linked) return false
  return walk.draft.garments[id]?.colour !== undefined
}

const goOnFor = (walk: Walk, id: string): void => {
  const [group] = walk.groups
  if (group === undefined) return
  const own = newGroup(group.content, id)
  own.text = group.text
  own.inherited = false
  for (const place of group.places) own.places.add(place)
  flush(walk)
  walk.groups = [own]
  walk.target = { kind: 'mark' }
}

export const hearGarment = (walk: Walk, item: GarmentItem, at: number): void => {
  if (isOnGarment(walk, garmentIds[item.id], at)) {
    goOnFor(walk, garmentIds[item.id])
    return
  }
  if (renamed(walk, item, at)) return
  const kind = kindOf(walk, item)
  if (isRefused(walk, at)) {
    takeBack(walk, garmentIds[kind])
    return
  }
  const roles = Object.keys(walk.draft.garments).filter((id) => id === 'home' || id === 'away')
  if ((kind === 'jersey' && roles.length > 0) || isOfRole(walk, kind, at) || isBothSets(walk, kind, at)) {
    applyWaiting(walk)
    return
  }
  const id = garmentId(walk, item, kind)
  if (item.another === true) putGarment(walk, id, { ...walk.draft.garments[garmentIds[kind]] })
  putGarment(walk, id, { kind, ...(item.catalogue === undefined ? {} : { catalogue: item.catalogue }) })
  startGarment(walk, id, at)
}

export const hearRole = (walk: Walk, id: 'home' | 'away', at: number): void => {
  const plain = walk.draft.garments['jersey']
  if (plain !== undefined && walk.draft.garments[id] === undefined) put(walk, [{ path: ['garments', 'jersey'], value: null }])
  putGarment(walk, id, { kind: 'jersey' })
  startGarment(walk, id, at)
}
