import { pointer } from '../result/result.ts'
import type { ShopProblem } from './problems.ts'
import { type Shop, shopFiles } from './shop.ts'

type Reference = { readonly id: string; readonly at: string; readonly part: keyof Shop }

/** Every reference of one kind must name a record of that kind. */
const dangling = (
  references: readonly Reference[],
  known: readonly { readonly id: string }[],
  wanted: string,
): readonly ShopProblem[] => {
  const ids = new Set(known.map((record) => record.id))
  return references
    .filter((reference) => !ids.has(reference.id))
    .map(({ id, at, part }) => ({
      code: 'shop-reference',
      at: `${shopFiles[part].file}#${at}`,
      severity: 'stop',
      facts: { id, wanted, file: shopFiles[part].file },
    }))
}

const colourReferences = (shop: Shop): readonly Reference[] => [
  ...shop.garments.flatMap((garment, index) =>
    garment.colours.map((id, place) => ({ id, at: pointer(index, 'colours', place), part: 'garments' as const })),
  ),
  ...shop.vinyl.map(({ colour }, index) => ({ id: colour, at: pointer(index, 'colour'), part: 'vinyl' as const })),
  ...shop.stones.map(({ colour }, index) => ({ id: colour, at: pointer(index, 'colour'), part: 'stones' as const })),
  ...shop.rulebooks.flatMap((book, index) =>
    book.failingPairs.flatMap((pair, place) =>
      pair.map((id, side) => ({ id, at: pointer(index, 'failingPairs', place, side), part: 'rulebooks' as const })),
    ),
  ),
  { id: shop.profile.usual.stoneColour, at: pointer('usual', 'stoneColour'), part: 'profile' },
]

const garmentReferences = (shop: Shop): readonly Reference[] => [
  ...shop.prices.garment.map(({ garment }, index) => ({ id: garment, at: pointer('garment', index), part: 'prices' as const })),
  ...shop.stock.garments.map(({ garment }, index) => ({ id: garment, at: pointer('garments', index), part: 'stock' as const })),
  { id: shop.profile.usual.garment, at: pointer('usual', 'garment'), part: 'profile' },
]

const faceReferences = (shop: Shop): readonly Reference[] =>
  (['numberFace', 'nameFace', 'scriptFace'] as const).map((key) => ({
    id: shop.profile.usual[key],
    at: pointer('usual', key),
    part: 'profile',
  }))

/** That the records of a shop fit together: every id that one file uses stands in the file that defines it. */
export const checkShop = (shop: Shop): readonly ShopProblem[] => [
  ...dangling(
    shop.garments.map(({ fabric }, index) => ({ id: fabric, at: pointer(index, 'fabric'), part: 'garments' })),
    shop.fabrics,
    'fabric',
  ),
  ...dangling(colourReferences(shop), shop.colours, 'colour'),
  ...dangling(garmentReferences(shop), shop.garments, 'garment'),
  ...dangling(faceReferences(shop), shop.faces, 'face'),
  ...dangling(
    shop.stock.vinyl.map(({ material }, index) => ({ id: material, at: pointer('vinyl', index), part: 'stock' })),
    shop.vinyl,
    'vinyl',
  ),
  ...dangling(
    shop.stock.stones.map(({ material }, index) => ({ id: material, at: pointer('stones', index), part: 'stock' })),
    shop.stones,
    'stones',
  ),
  ...dangling(
    shop.presses.map(({ id }, index) => ({ id, at: pointer(index, 'id'), part: 'presses' })),
    shop.stations.filter((station) => station.kind === 'press'),
    'press station',
  ),
  ...(shop.profile.zone === shop.hours.zone
    ? []
    : [
        {
          code: 'shop-zone-differs',
          at: 'hours.json#/zone',
          severity: 'stop',
          facts: { profile: shop.profile.zone, hours: shop.hours.zone },
        } as const,
      ]),
]
