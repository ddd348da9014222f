import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { makeAllAlike } from './all-alike.ts'
import { isSeveral, type Start } from './garments-named.ts'
import { hearGarment, hearRole } from './hear-garment.ts'
import { hearContent, hearOutline, hearShadow, hearStones, hearText, hearWord, takeMake } from './hear-mark.ts'
import { hearOff } from './hear-off.ts'
import { heightsBySide } from './heights-by-side.ts'
import { withoutPassing } from './in-passing.ts'
import type { Item } from './items.ts'
import { withLeftOff } from './left-off.ts'
import { withLeftOut } from './left-out.ts'
import { applyWaiting, isNegated, isOtherOwn } from './look-around.ts'
import { modify } from './modify.ts'
import { turnedGarment } from './other-garment.ts'
import { hearPause } from './pauses.ts'
import { usesOf } from './recolour.ts'
import { negatedPlace } from './refused-place.ts'
import { withoutBackAgain } from './restored.ts'
import { withoutSpared } from './spared-places.ts'
import { split, splitsAt } from './split-makes.ts'
import { spreadPlaces } from './spread-places.ts'
import { textsInstead } from './texts-instead.ts'
import { isPlaceOf, waits } from './waiting.ts'
import { currentGroups, flush, garmentOf, put, type Walk } from './walk.ts'
export type ThingsFound = {
  readonly draft: Draft
  readonly patches: readonly Patch[]
  readonly open: readonly Open[]
  readonly negated: readonly string[]
  readonly loose: readonly Extract<Item, { kind: 'colour' }>[]
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
    case 'off':
      hearOff(walk, item, at)
      return true
    case 'text':
      hearText(walk, item.text)
      return true
    case 'word':
      hearWord(walk, at)
      return true
    case 'outline':
      hearOutline(walk, at)
      return true
    case 'shadow':
      hearShadow(walk, at)
      return true
    case 'stones':
      hearStones(walk, at)
      return true
    case 'part':
      hearPart(walk)
      return true
    case 'blocker':
      for (const group of currentGroups(walk)) group.style.blocker = true
      return true
    default:
      return false
  }
}

/** "A red collar", "cuello rojo": its colour is not the garment's. */
const hearPart = (walk: Walk): void => {
  walk.waiting = walk.waiting.filter((item) => item.kind !== 'colour')
  if (walk.postfix) walk.target = { kind: 'part' }
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

const isMere = (item: Item | undefined): boolean =>
  ['in', 'only'].includes(item?.kind ?? '') ||
  (item?.kind === 'class' && item.id === 'standard') ||
  (item?.kind === 'other' && listed.things.notIn.includes(item.key))

/** "not silver", "no en blanco", "not just plain silver". */
const isNot = (walk: Walk, at: number): boolean => {
  let before = at - 1
  while (before > at - 4 && isMere(walk.items[before])) before -= 1
  return walk.items[before]?.kind === 'no'
}

const theWords: readonly string[] = listed.things.theThing

/** "Silver glitter please, the gold looks cheap": the colour that was there, spoken of while another is wanted. */
const isOldHue = (walk: Walk, item: Item, at: number): boolean => {
  const [before, next] = [walk.items[at - 1], walk.items[at + 1]]
  if (item.kind !== 'colour' || !theWords.includes(before?.key ?? '') || !['other', 'no'].includes(next?.kind ?? '')) return false
  const another = walk.items.some((one) => one.kind === 'colour' && one.id !== item.id)
  const { garments, styles, marks } = walk.was
  return another && usesOf({ garments, styles, marks }, item.id).length > 0
}

/** What a "no" before an adjective takes back; true when there is nothing more to it. */
const takenBack = (walk: Walk, item: Item, at: number): boolean => {
  if (isOldHue(walk, item, at)) return true
  if (item.kind === 'colour' && isNot(walk, at)) {
    walk.negated.push(item.id)
    return true
  }
  if ((item.kind === 'class' || item.kind === 'stone-size' || item.kind === 'style') && isNot(walk, at)) return true
  if (item.kind === 'place') return negatedPlace(walk, item, at)
  if (item.kind !== 'vinyl' || !isNegated(walk, at)) return false
  for (const group of currentGroups(walk)) group.style.vinyl = false
  return true
}

/** "… atrás y adelante el nombre": the second side is that of the thing that follows. */
const divides = (walk: Walk, item: Item, at: number): boolean => {
  if (item.kind !== 'place' || item.id !== 'both-sides' || walk.groups.length === 0 || !isPlaceOf(walk, at)) return false
  const back = listed.things.back.includes(item.key)
  modify(walk, { ...item, id: back ? 'back' : 'front' })
  walk.waiting.push({ ...item, id: back ? 'front' : 'back' })
  return true
}

/** "Navy jerseys with gold glitter and crystals on the numbers": a colour right before its class is vinyl's where the garment has its own. */
const isMakesHue = (walk: Walk, item: Item, at: number): boolean => {
  const next = walk.items[at + 1]
  const vinyl = next?.kind === 'vinyl' || (next?.kind === 'class' && next.id !== 'standard')
  const { target } = walk
  return item.kind === 'colour' && vinyl && target.kind === 'garment' && walk.draft.garments[target.id]?.colour !== undefined
}

const describe = (walk: Walk, item: Item, at: number): void => {
  if (item.kind === 'only') walk.only = true
  if (divides(walk, item, at)) return
  if (waits(walk, item, at)) {
    walk.waiting.push(item)
    return
  }
  if (item.kind === 'vinyl' || isMakesHue(walk, item, at) || (item.kind === 'class' && walk.target.kind === 'garment'))
    startMake(walk)
  modify(walk, item)
}

/** "Gold on navy", "dorado sobre azul": the first colour is that of all that is put on. */
const isPrintedOn = (walk: Walk, item: Item, at: number): boolean => {
  const [link, next] = [walk.items[at + 1], walk.items[at + 2]]
  if (item.kind !== 'colour' || item.readings !== undefined || next?.kind !== 'colour' || walk.groups.length > 0) return false
  if (link?.kind !== 'other' || !listed.things.over.includes(link.key) || walk.target.kind !== 'none') return false
  put(walk, [{ path: ['styles', 'all', 'colour'], value: item.id }])
  return true
}

const step = (walk: Walk, item: Item, at: number): void => {
  walk.at = at
  comeBack(walk, item)
  if (splitsAt(walk, item, at)) split(walk, item)
  if (hearPause(walk, item) || hearHead(walk, item, at) || takenBack(walk, item, at) || isOtherOwn(walk, item, at)) return
  if (isPrintedOn(walk, item, at) || makeAllAlike(walk, item, at)) return
  describe(walk, item, at)
}

/** Reads garments and what goes on them out of a message: which thing each colour, place, height and stone is meant for. */
export const readThings = (told: Start): ThingsFound => {
  const turned = turnedGarment(told.draft, told.items)
  const reworded = textsInstead(told.draft, turned.items)
  const before = [...turned.patches, ...reworded.patches]
  const given = { ...told, items: reworded.items, draft: preview(told.draft, before) }
  const items = withLeftOff(
    withLeftOut(heightsBySide(withoutSpared(withoutBackAgain(withoutPassing(given.items), told.draft), told.draft), given.draft)),
  )
  const start = { ...given, items }
  const walk: Walk = {
    ...start,
    index: new Map(start.items.map((item, at) => [item, at])),
    at: 0,
    was: start.draft,
    patches: before,
    open: [],
    negated: [],
    loose: [],
    target: { kind: 'none' },
    scope: null,
    groups: [],
    waiting: [],
    fresh: new Set(),
    several: isSeveral(start),
    lastPlaces: [],
    label: null,
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
  spreadPlaces(walk)
  return { draft: walk.draft, patches: walk.patches, open: walk.open, negated: walk.negated, loose: walk.loose }
}
