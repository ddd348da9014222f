import type { PlaceId } from '../../../garment/place.ts'
import { listed } from '../../words/languages.ts'
import { colourTarget } from './colour-target.ts'
import { type Group, placesAt, stonesOf } from './groups.ts'
import { figureBehind, modifyLength } from './heights.ts'
import type { Item } from './items.ts'
import { isAmongSizes } from './sizes-among.ts'
import { hearUse } from './use-told.ts'
import { currentGroups, garmentOf, placeOf, putGarment, speakOf, type Walk } from './walk.ts'

/** Cloth words speak of a garment, named or not. */
const clothGarment = (walk: Walk): string => {
  const id = garmentOf(walk) ?? Object.keys(walk.draft.garments)[0] ?? 'jersey'
  const loose = walk.loose
  walk.loose = []
  if (walk.groups.length === 0) walk.target = { kind: 'garment', id }
  const [colour] = loose
  if (colour !== undefined && walk.draft.garments[id]?.colour === undefined) putGarment(walk, id, { colour: colour.id })
  return id
}

const modifyCloth = (walk: Walk, item: Item): boolean => {
  switch (item.kind) {
    case 'knit':
      putGarment(walk, clothGarment(walk), { knit: item.id })
      return true
    case 'dye':
      putGarment(walk, clothGarment(walk), { dye: item.id })
      return true
    case 'finish':
      putGarment(walk, clothGarment(walk), { finish: item.id })
      return true
    case 'own':
      putGarment(walk, clothGarment(walk), { from: 'customer' })
      return true
    case 'fibre':
      return true
    case 'feature': {
      const id = clothGarment(walk)
      const had = walk.draft.garments[id]?.features ?? []
      putGarment(walk, id, { features: [...new Set([...had, item.id])] })
      return true
    }
    default:
      return false
  }
}

/** The figure or number word right before an item. */
const countBefore = (walk: Walk, item: Item): number | undefined => {
  const index = placeOf(walk, item)
  for (const one of walk.items.slice(Math.max(0, index - 2), index).reverse()) {
    if (one.kind === 'count') return one.id
    if (one.kind === 'figure') return Number(one.text)
  }
  return undefined
}

/** "Rellena de piedra", "solid stones". */
const isOfStones = (walk: Walk, item: Item): boolean => {
  const at = placeOf(walk, item)
  const next = walk.items[at + 1]?.kind === 'in' ? walk.items[at + 2] : walk.items[at + 1]
  return next?.kind === 'stones'
}

const modifyStones = (walk: Walk, item: Item): boolean => {
  const each = (set: (stones: ReturnType<typeof stonesOf>) => void) => {
    speakOf(walk, 'stones')
    for (const group of currentGroups(walk)) set(stonesOf(group))
    walk.target = { kind: 'stones' }
    walk.waiting = walk.waiting.filter((one) => one.kind === 'colour')
    return true
  }
  const stony =
    walk.target.kind === 'stones' ||
    listed.things.all.includes(item.key) ||
    walk.groups.some((group) => group.style.stones !== undefined || group.style.vinyl === false)
  switch (item.kind) {
    case 'stone-size':
      return each((stones) => {
        stones.size = item.id
      })
    case 'rows': {
      const rows = countBefore(walk, item) ?? 1
      return each((stones) => {
        if (rows >= 1 && rows <= 12) stones.rows = rows
      })
    }
    case 'style':
      return stony || item.id === 'single-line' || isOfStones(walk, item)
        ? each((stones) => {
            stones.style = item.id
          })
        : true
    case 'contours':
      return each((stones) => {
        stones.contours = item.id
        stones.style = 'outline'
      })
    case 'around':
      return stony
        ? each((stones) => {
            stones.style = 'outline'
          })
        : true
    default:
      return false
  }
}

const addPlaces = (group: Group, places: readonly PlaceId[], height: number | null): readonly PlaceId[] => {
  for (const place of places) {
    if (place === 'below-number') group.places.delete('name')
    group.places.add(place)
    if (height !== null) group.heights.set(place, height)
  }
  return places
}

/** "The sleeve number should be 3 inches": "the sleeve" is the one where such a thing stands already. */
const sleevesOf = ({ was }: Walk, { content }: Group): readonly PlaceId[] =>
  (['left-sleeve', 'right-sleeve'] as const).filter((place) =>
    Object.values(was.marks).some((mark) => mark.place === place && mark.content === content && mark.wanted !== false),
  )

/** "Underneath the number, in back": the back is where the number is, and no second place of the name. */
const sidesOf = (walk: Walk, group: Group, { id: spot, key }: Extract<Item, { kind: 'place' }>): readonly PlaceId[] => {
  const own = listed.things.oneSleeve.includes(key) ? sleevesOf(walk, group) : []
  if (own.length > 0) return own
  const under = (spot === 'below' || spot === 'above') && group.content === 'number'
  if (under && walk.last?.places.has('full-front')) return ['front-number']
  return spot === 'back' && group.content === 'name' && group.places.has('below-number') ? [] : placesAt(group.content, spot)
}

/** A place after a length takes that length; a place alone is one more place. */
const modifyPlace = (walk: Walk, item: Extract<Item, { kind: 'place' }>): void => {
  const garment = walk.target.kind === 'garment' && walk.groups.length === 0
  if (garment && !hasMarks(walk)) return
  if (isOfNothing(walk, item)) return
  const length = walk.waiting.find((one) => one.kind === 'length')
  const own = 'micrometres' in item ? item.micrometres : null
  const height = own ?? figureBehind(walk, item) ?? (length?.kind === 'length' ? length.micrometres : null)
  const found = new Set(currentGroups(walk).flatMap((group) => addPlaces(group, sidesOf(walk, group, item), height)))
  if (walk.only) for (const group of walk.groups) group.only = true
  walk.waiting = walk.waiting.filter((one) => one !== length)
  const turned = item.id === 'both-sides' && listed.things.back.includes(item.key)
  walk.lastPlaces = turned ? [...found].reverse() : [...found]
  if (walk.target.kind === 'none') walk.target = { kind: 'mark' }
}

const wholeSides: readonly string[] = ['front', 'back', 'both-sides']

/** A chest or a sleeve where nothing to put there was ever named is a captain's letter's, a label's, anything's. */
const isOfNothing = (walk: Walk, item: Extract<Item, { kind: 'place' }>): boolean =>
  !wholeSides.includes(item.id) &&
  walk.groups.length === 0 &&
  walk.last === null &&
  !hasMarks(walk) &&
  !walk.items.some((one) => ['content', 'text', 'word', 'outline', 'stones'].includes(one.kind))

const hasMarks = (walk: Walk): boolean => Object.keys(walk.draft.marks).length > 0

const modifyMake = (walk: Walk, item: Item): void => {
  if (walk.target.kind === 'make' && walk.make !== null) {
    if (item.kind === 'class') walk.make.class = item.id
    return
  }
  const groups = currentGroups(walk)
  for (const group of groups) {
    if (item.kind === 'class') group.style.class = item.id
    if (item.kind === 'arc') group.style.line = 'arc'
  }
  if (walk.target.kind === 'none') walk.target = { kind: 'mark' }
}

/** "Thin" narrows the outline that is being said. */
const modifyEdge = (walk: Walk): void => {
  if (walk.target.kind === 'edge') walk.target.edge.micrometres = 3_175
}

/** "polos negras, dos de hombre": so many of a garment that was not counted yet. */
const countInWords = (walk: Walk, item: Item, id: string): { readonly count?: number } => {
  const at = placeOf(walk, item)
  const before = walk.items[at - 1]?.kind === 'in' ? walk.items[at - 2] : walk.items[at - 1]
  return before?.kind === 'count' && walk.draft.garments[id]?.count === undefined ? { count: before.id } : {}
}

/** ", de dama,": a cut in a clause of its own is that of the garment, whatever was spoken of last. */
const isApart = (walk: Walk, item: Item): boolean => {
  const at = placeOf(walk, item)
  const before = walk.items[at - 1]?.kind === 'in' ? walk.items[at - 2] : walk.items[at - 1]
  const pause = (one: Item | undefined): boolean => one === undefined || one.kind === 'comma' || one.kind === 'stop'
  return walk.groups.length > 0 && before?.kind === 'comma' && pause(walk.items[at + 1])
}

/** A size right after a garment, or in a clause of its own behind it, is the size of all of them. */
const modifySize = (walk: Walk, item: Extract<Item, { kind: 'size' }>): void => {
  const id = garmentOf(walk)
  const apart = id !== null && isApart(walk, item) && walk.fresh.has(id) && walk.draft.garments[id]?.size === undefined
  if (id === null || !(walk.target.kind === 'garment' || apart)) return
  if (isAmongSizes(walk, item)) {
    if (item.fit === 'toddler') putGarment(walk, id, { fit: item.fit })
    return
  }
  putGarment(walk, id, { size: item.size, ...(item.fit === undefined ? {} : { fit: item.fit }) })
}

const everywhere = (walk: Walk): void => {
  for (const group of walk.groups) group.everywhere = true
}

/** Lets one adjective say what it says of the thing being spoken of. */
export const modify = (walk: Walk, item: Item): void => {
  if (modifyCloth(walk, item) || modifyStones(walk, item)) return
  switch (item.kind) {
    case 'colour':
      colourTarget(walk, item)
      return
    case 'place':
      modifyPlace(walk, item)
      return
    case 'length':
      modifyLength(walk, item)
      return
    case 'class':
    case 'arc':
      if (walk.target.kind !== 'garment' || walk.groups.length > 0) modifyMake(walk, item)
      return
    case 'cut': {
      const id = garmentOf(walk)
      if (id === null || !(walk.target.kind === 'garment' || isApart(walk, item))) return
      putGarment(walk, id, { fit: item.fit, ...countInWords(walk, item, id) })
      return
    }
    case 'size':
      modifySize(walk, item)
      return
    case 'thin':
      modifyEdge(walk)
      return
    case 'both':
      everywhere(walk)
      return
    case 'use':
      hearUse(walk, item)
      return
    default:
  }
}
