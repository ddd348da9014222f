import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import type { Item } from './items.ts'

type Place = Extract<Item, { kind: 'place' }>

/** A height as it is written; `unit` is null where only a figure stands. */
type Measure = { readonly value: number; readonly unit: number | null }

/** Places that stand together ("fronts and backs 10 in") are one mark. */
type Mark = { readonly from: number; readonly to: number } & (
  | { readonly places: readonly number[] }
  | { readonly measure: Measure }
)

/** Words that may stand between a height and the side that it is of, or between two such pairs. */
const between: ReadonlySet<Item['kind']> = new Set(['and', 'in', 'of', 'other', 'comma', 'colour', 'class'])
const farthest = 5

const isFigure = (item: Item): item is Extract<Item, { kind: 'figure' }> =>
  item.kind === 'figure' && /^\d{1,2}(?:\.\d+)?$/.test(item.text)

const isSide = (item: Item): item is Place => item.kind === 'place' && !['both-sides', 'above', 'below'].includes(item.id)

const placeAt = (items: readonly Item[], at: number): Place | null => {
  const item = items[at]
  return item !== undefined && isSide(item) ? item : null
}

const isNumber = (item: Item): boolean => item.kind === 'content' && item.id === 'number'

const markAt = (items: readonly Item[], at: number): Mark | null => {
  const item = items[at]
  if (item === undefined) return null
  const here = { from: at, to: at + 1 }
  if (isSide(item)) return { ...here, places: [at] }
  if (item.kind === 'length') return { ...here, measure: { value: item.micrometres / item.unit, unit: item.unit } }
  return isFigure(item) ? { ...here, measure: { value: Number(item.text), unit: null } } : null
}

/** "Fronts and backs": two places with nothing but "and" between them. */
const together = (items: readonly Item[], last: Mark | undefined, mark: Mark): Mark | null => {
  if (last === undefined || !('places' in last) || !('places' in mark)) return null
  const joined = items.slice(last.to, mark.from).every((item) => item.kind === 'and')
  return joined && mark.from > last.to ? { from: last.from, to: mark.to, places: [...last.places, ...mark.places] } : null
}

/** Sides and heights that follow one another with nothing else of matter between them. */
const chainsIn = (items: readonly Item[]): readonly (readonly Mark[])[] => {
  const chains: Mark[][] = [[]]
  for (const [at, item] of items.entries()) {
    const mark = markAt(items, at)
    const chain = chains.at(-1)
    const last = chain?.at(-1)
    if (mark !== null && chain !== undefined) {
      const both = together(items, last, mark)
      if (both !== null) chain.splice(-1, 1, both)
      else if (last === undefined || mark.from - last.to <= farthest) chain.push(mark)
      else chains.push([mark])
    } else if (!between.has(item.kind) && !isNumber(item)) chains.push([])
  }
  return chains
}

type Placed = Extract<Mark, { readonly places: readonly number[] }>
type Measured = Extract<Mark, { readonly measure: Measure }>
type Pair = { readonly place: Placed; readonly measure: Measured; readonly placeFirst: boolean }

const pairOf = (a: Mark | undefined, b: Mark | undefined): Pair | null => {
  if (a === undefined || b === undefined) return null
  if ('places' in a && 'measure' in b) return { place: a, measure: b, placeFirst: true }
  return 'measure' in a && 'places' in b ? { place: b, measure: a, placeFirst: false } : null
}

/** The last pairs of a chain, all in one order: "back 8, front 4" or "8 back, 4 front". */
const pairsOf = (chain: readonly Mark[]): readonly Pair[] => {
  const pairs: Pair[] = []
  for (let at = chain.length - 2; at >= 0; at -= 2) {
    const pair = pairOf(chain[at], chain[at + 1])
    if (pair === null || pairs.some(({ placeFirst }) => placeFirst !== pair.placeFirst)) break
    pairs.unshift(pair)
  }
  return pairs
}

/** Only small words and no pause stand between a bare figure and its side. */
const isClose = (items: readonly Item[], { place, measure, placeFirst }: Pair): boolean =>
  (placeFirst ? items.slice(place.to, measure.from) : items.slice(measure.to, place.from)).every(
    ({ kind, key }) => kind === 'in' || kind === 'of' || [':', '('].includes(key) || listed.things.bySide.includes(key),
  )

const sidesOf = (items: readonly Item[], pairs: readonly Pair[]): ReadonlySet<string> =>
  new Set(pairs.flatMap(({ place }) => place.places.flatMap((at) => placeAt(items, at)?.id ?? [])))

const wearsNumbers = (items: readonly Item[], { marks }: Draft): boolean =>
  items.some(isNumber) || Object.values(marks).some(({ content, wanted }) => content === 'number' && wanted !== false)

const [inch, centimetre] = [25_400, 10_000]
/** A number on a back is 15 cm or more, and never 15 in: common practice. */
const leastInCentimetres = 15

/** The unit of the figures that stand alone: the one that is said with another, else the one in which the largest can be a number's height. */
const unitOf = (items: readonly Item[], pairs: readonly Pair[], draft: Draft): number | null => {
  const said = pairs.map(({ measure }) => measure.measure.unit).find((unit) => unit !== null)
  if (said !== undefined) return said
  const values = pairs.map(({ measure }) => measure.measure.value)
  const sides = sidesOf(items, pairs)
  const both = ['front', 'back'].every((side) => sides.has(side))
  if (!both || !wearsNumbers(items, draft) || Math.min(...values) < 2) return null
  return Math.max(...values) < leastInCentimetres ? inch : centimetre
}

const highest = 610_000

/** "10 cm in front and 20 cm behind": a side only where a height stands before it. */
const sideBehind = (item: Item, before: Item | undefined): Item => {
  const told = item.kind === 'other' && before?.kind === 'length' && listed.parts.behind.includes(item.key)
  return told ? { kind: 'place', id: 'back', from: item.from, to: item.to, key: item.key } : item
}

type Height = { readonly pair: Pair; readonly micrometres: number }

const heightsOf = (items: readonly Item[], chain: readonly Mark[], draft: Draft): readonly Height[] => {
  const pairs = pairsOf(chain)
  const loose = pairs.filter(({ measure }) => measure.measure.unit === null)
  const unit = unitOf(items, pairs, draft)
  if (pairs.length < 2 || sidesOf(items, pairs).size < 2 || unit === null || !loose.every((pair) => isClose(items, pair)))
    return []
  const heights = pairs.map((pair) => {
    const { value, unit: own } = pair.measure.measure
    return { pair, micrometres: Math.round(value * (own ?? unit)) }
  })
  return heights.every(({ micrometres }) => micrometres > 0 && micrometres <= highest) ? heights : []
}

/**
 * Heights told of several sides in one breath, in either order of words: "back ones 10 in, front ones 8 in", "8 on the back and 4 on the
 * front". Each side keeps its own, in µm, and the measure says nothing else.
 */
export const heightsBySide = (given: readonly Item[], draft: Draft): readonly Item[] => {
  const items = given.map((item, at) => sideBehind(item, given[at - 1]))
  const heights = chainsIn(items).flatMap((chain) => heightsOf(items, chain, draft))
  if (heights.length === 0) return items
  const tall = new Map(heights.flatMap(({ pair, micrometres }) => pair.place.places.map((at) => [at, micrometres] as const)))
  const measures = new Set(heights.map(({ pair }) => pair.measure.from))
  return items.flatMap((item, at) => {
    const [place, micrometres] = [placeAt(items, at), tall.get(at)]
    if (place !== null && micrometres !== undefined) return [{ ...place, micrometres }]
    return measures.has(at) ? [] : [item]
  })
}
