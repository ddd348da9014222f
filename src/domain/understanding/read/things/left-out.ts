import type { Item } from './items.ts'

type Garment = Extract<Item, { kind: 'garment' }>

const isAmount = (item: Item | undefined): boolean => item?.kind === 'figure' || item?.kind === 'count'

/** "15 red": a colour right behind an amount. */
const isCountedHue = (items: readonly Item[], at: number): boolean => isAmount(items[at - 1]) && items[at]?.kind === 'colour'

const isLink = (item: Item | undefined): boolean => item?.kind === 'and' || item?.kind === 'comma'

/** The garment that two counted colours share: said behind the second ("15 red and 15 white jerseys") or before it ("10 red jerseys and 5 white"). */
const sharedGarment = (items: readonly Item[], at: number): Garment | null => {
  const ahead = isLink(items[at + 1]) && isCountedHue(items, at + 3) ? items[at + 4] : undefined
  if (ahead?.kind === 'garment') return ahead
  const next = items[at + 1]
  const ends = next === undefined || next.kind === 'comma' || next.kind === 'stop'
  const before = ends && isLink(items[at - 2]) && isCountedHue(items, at - 4) ? items[at - 3] : undefined
  return before?.kind === 'garment' ? before : null
}

/** "20 cm atrás y de 10 adelante", "6 inches in front, 8 in back": a figure before a place has the unit of the length before the place before. */
const withUnits = (items: readonly Item[]): readonly Item[] =>
  items.map((item, at) => {
    if (item.kind !== 'figure' || items[at + 1]?.kind !== 'place' || !/^\d{1,2}(?:\.\d+)?$/.test(item.text)) return item
    const join = ['of', 'in', 'other'].includes(items[at - 1]?.kind ?? '') ? at - 2 : at - 1
    const [length, place] = [items[join - 2], items[join - 1]]
    if (!['and', 'comma'].includes(items[join]?.kind ?? '') || place?.kind !== 'place' || length?.kind !== 'length') return item
    return { ...item, kind: 'length', micrometres: Math.round(Number(item.text) * length.unit), unit: length.unit }
  })

const amountIn = (item: Item | undefined): number =>
  item?.kind === 'count' ? item.id : item?.kind === 'figure' ? Number(item.text) : 0

/** "25 tees, 15 black and 10 white": the hues that share out all of them, from where the list begins; none where they are not as many. */
const sharedOut = (items: readonly Item[], at: number): readonly number[] => {
  const garment = items[at]
  if (garment?.kind !== 'garment' || items[at + 1]?.kind !== 'comma' || !isAmount(items[at - 1])) return []
  const hues: number[] = []
  for (let hue = at + 3; isCountedHue(items, hue); hue += 3) {
    hues.push(hue)
    if (!isLink(items[hue + 1])) break
  }
  const sum = hues.reduce((all, hue) => all + amountIn(items[hue - 1]), 0)
  return hues.length > 1 && sum === amountIn(items[at - 1]) ? hues : []
}

/** The items of a shared-out garment: named behind each of its hues instead of before them. */
const withShares = (items: readonly Item[]): readonly Item[] => {
  const at = items.findIndex((_, index) => sharedOut(items, index).length > 0)
  const garment = items[at]
  if (garment?.kind !== 'garment') return items
  const hues = sharedOut(items, at)
  return items.flatMap((item, index) => {
    if (index === at || index === at - 1) return []
    return hues.includes(index) ? [item, { ...garment, from: item.to, to: item.to }] : [item]
  })
}

const printed: ReadonlySet<Item['kind']> = new Set(['content', 'text', 'word'])

/** What is put on a batch behind a "with": a colour and what has it. */
const isMadeWith = (items: readonly Item[], at: number): boolean => {
  const ahead = items.slice(at + 1, at + 8)
  const end = ahead.findIndex((item) => item.kind === 'comma' || item.kind === 'stop')
  const own = end < 0 ? ahead : ahead.slice(0, end)
  return items[at]?.kind === 'with' && own.some((item) => printed.has(item.kind)) && own.some((item) => item.kind === 'colour')
}

/** "9 tees with a blue number and 9 with a red number": the garment of the batch before, for another batch of it. */
const batchOf = (items: readonly Item[], at: number): Garment | null => {
  if (!isAmount(items[at]) || !isLink(items[at - 1]) || !isMadeWith(items, at + 1)) return null
  const from = items.slice(0, at).findLastIndex((item) => item.kind === 'garment')
  const garment = items[from]
  const counted = items.slice(Math.max(0, from - 4), from).some(isAmount)
  const made = items.slice(from, at).some((_, index) => isMadeWith(items, from + index))
  return garment?.kind === 'garment' && counted && made ? garment : null
}

/** "3 navy tees with DAD on the back and 4 red with MOM": the garment of the batch before, in another colour. */
const sharedBehind = (items: readonly Item[], at: number): Garment | null => {
  if (!isCountedHue(items, at) || !isLink(items[at - 2]) || items[at + 1]?.kind !== 'with') return null
  const from = items.slice(0, at).findLastIndex((item) => item.kind === 'garment')
  const garment = items[from]
  const counted = items.slice(Math.max(0, from - 4), from).some(isAmount)
  return garment?.kind === 'garment' && counted ? garment : null
}

/** The items with garments put in where their noun is left out between counted colours. */
export const withLeftOut = (given: readonly Item[]): readonly Item[] => {
  const items = withShares(withUnits(given))
  return items.flatMap((item, at) => {
    const batch = batchOf(items, at)
    if (batch !== null) return [item, { ...batch, another: true, from: item.to, to: item.to }]
    const shared = sharedBehind(items, at)
    if (shared !== null) return [item, { ...shared, from: item.to, to: item.to }]
    const garment = isCountedHue(items, at) ? sharedGarment(items, at) : null
    return garment === null ? [item] : [item, { ...garment, from: item.to, to: item.to }]
  })
}
