import { listed } from '../../words/languages.ts'
import type { Group } from './groups.ts'
import type { Item } from './items.ts'
import { currentGroups, placeOf, type Walk } from './walk.ts'

/** "4 pulgadas adelante y atrás de 6", "front 4 inches, back 8": a figure right behind a place has the unit said before. */
export const figureBehind = (walk: Walk, item: Item): number | null => {
  const at = placeOf(walk, item)
  let skip = at + 1
  while (skip < at + 4 && isBetween(walk.items[skip])) skip += 1
  const [figure, after] = [walk.items[skip], walk.items[skip + 1]]
  const ends = after === undefined || ['comma', 'stop', 'and'].includes(after.kind)
  if (figure?.kind !== 'figure' || !ends || !/^\d{1,2}(?:\.\d+)?$/.test(figure.text)) return null
  const length = walk.items.slice(Math.max(0, at - 8), at).findLast((one) => one.kind === 'length')
  const unit = length?.kind === 'length' ? length.unit : unitBefore(walk, item)
  return unit === null ? null : Math.round(Number(figure.text) * unit)
}

const isBetween = (item: Item | undefined): boolean =>
  item !== undefined && (item.kind === 'in' || listed.things.correcting.includes(item.key))

/** "El de adelante mejor de 10": the unit in which the height at that side was said before. */
const unitBefore = ({ was }: Walk, item: Item): number | null => {
  const place = item.kind === 'place' && (item.id === 'front' || item.id === 'back') ? `${item.id}-number` : ''
  const mark = was.marks[place]
  const height = mark === undefined || mark.wanted === false ? undefined : (mark.style ?? was.styles['number'])?.micrometres
  if (height === undefined) return null
  return height % 12_700 === 0 ? 25_400 : 10_000
}

/** "front and back 4 and 6 inches": the first figure has the unit of the second. */
const figureJoined = (walk: Walk, item: Extract<Item, { kind: 'length' }>): number | null => {
  const at = placeOf(walk, item)
  const figure = walk.items[at - 2]
  const joined = walk.items[at - 1]?.kind === 'and' && figure?.kind === 'figure' && /^\d+(?:\.\d+)?$/.test(figure.text)
  return joined ? Math.round(Number(figure.text) * item.unit) : null
}

/** The height of one group: of its two places in turn, of the places named last, or of all of it. */
const setHeight = (walk: Walk, group: Group, { micrometres, first }: { micrometres: number; first: number | null }): void => {
  const [near, far, ...more] = walk.lastPlaces
  if (first !== null && near !== undefined && far !== undefined && more.length === 0) {
    group.heights.set(near, first)
    group.heights.set(far, micrometres)
    return
  }
  const places = walk.lastPlaces.filter((place) => group.places.has(place))
  if (places.length === 0 || places.length === group.places.size) group.style.micrometres = micrometres
  else for (const place of places) group.heights.set(place, micrometres)
}

/** "4 and 8 inches, front and back": two heights before the two sides they are of, in their order. */
const setSides = (walk: Walk, at: number, [first, second]: readonly [number, number]): boolean => {
  const side = walk.items.slice(at + 1, at + 5).find((item) => item.kind === 'place')
  if (walk.lastPlaces.length > 0 || side?.kind !== 'place' || side.id !== 'both-sides') return false
  const [front, back] = listed.things.back.includes(side.key) ? [second, first] : [first, second]
  for (const group of currentGroups(walk)) {
    group.heights.set('front-number', front)
    group.heights.set('back-number', back)
  }
  return true
}

/** A length right before a place waits for it; else it is the width of an outline or the height of what is being said. */
export const modifyLength = (walk: Walk, item: Extract<Item, { kind: 'length' }>): void => {
  if (walk.target.kind === 'edge' && item.micrometres <= 40_000) {
    walk.target.edge.micrometres = Math.max(500, item.micrometres)
    return
  }
  const at = placeOf(walk, item)
  if (walk.items[at - 1]?.kind === 'no') return
  const next = walk.items[at + 1]
  const tall = next?.kind === 'other' && listed.things.tall.includes(next.key)
  const place = tall ? walk.items[at + 2] : next
  if (place?.kind === 'place' && !walk.postfix) {
    walk.waiting.push(item)
    return
  }
  const first = figureJoined(walk, item)
  if (first !== null && setSides(walk, at, [first, item.micrometres])) return
  for (const group of currentGroups(walk)) setHeight(walk, group, { micrometres: item.micrometres, first })
}
