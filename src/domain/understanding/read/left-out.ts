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

/** The items with garments put in where their noun is left out between counted colours. */
export const withLeftOut = (items: readonly Item[]): readonly Item[] =>
  items.flatMap((item, at) => {
    const garment = isCountedHue(items, at) ? sharedGarment(items, at) : null
    return garment === null ? [item] : [item, { ...garment, from: item.to, to: item.to }]
  })
