import type { Vinyl } from '../material/material.ts'
import type { Bench, ClothFacts, JobGarment, JobLayer, JobPlace } from './job.ts'
import { type Failed, hasStones, setUpsOf } from './set-ups.ts'
import { type Way, type WayCode, way } from './way.ts'

const isPressable = (bench: Bench, garment: JobGarment): boolean =>
  bench.machines.some((machine) => setUpsOf(bench, garment, machine).ok)

const withPlaces = (failed: Failed, change: (place: JobPlace) => JobPlace): JobGarment => ({
  ...failed.garment,
  places: failed.garment.places
    .map((place) => (failed.places.includes(place) ? change(place) : place))
    .filter((place) => place.layers.length > 0),
})

const withoutStones = (place: JobPlace): JobPlace => ({
  ...place,
  layers: place.layers.filter((layer) => layer.material.kind !== 'stone'),
})

const onlyStones = (place: JobPlace): JobPlace => ({
  ...place,
  layers: place.layers.filter((layer) => layer.material.kind === 'stone'),
})

const takesCloth = (cloth: ClothFacts, vinyl: Vinyl): boolean => {
  const shares = cloth.fibres === 'unknown' ? [] : cloth.fibres
  const refused = shares.some((share) => vinyl.refusesFibres?.includes(share.fibre) === true)
  const repelled = cloth.finish === 'repellent' && !vinyl.takesFinishes.includes('repellent')
  return !refused && !repelled
}

/** What lies below takes the new vinyl, and the new vinyl takes what lies on it. */
const fitsStack = (place: JobPlace, index: number, vinyl: Vinyl): boolean => {
  const [layer, below, above] = [place.layers[index], place.layers[index - 1], place.layers[index + 1]]
  const under = below?.material
  const held = layer?.lies !== 'on-layer-below' || under?.kind !== 'vinyl' || under.takesOnTop.includes(vinyl.class)
  const over = above?.material
  const holds =
    above?.lies !== 'on-layer-below' ||
    over === undefined ||
    vinyl.takesOnTop.includes(over.kind === 'stone' ? 'stones' : over.class)
  return held && holds
}

const swap = (place: JobPlace, index: number, vinyl: Vinyl): JobPlace => ({
  ...place,
  layers: place.layers.map((layer, at): JobLayer => (at === index ? { ...layer, material: vinyl } : layer)),
})

/** Under-layers and printed sheets are no one's number or name instead. */
const isInstead = (vinyl: Vinyl): boolean => vinyl.class !== 'blocker' && vinyl.class !== 'printed'

const otherVinyls = (bench: Bench, failed: Failed): readonly Way[] => {
  const shelf = bench.shelf.materials.flatMap((material) => (material.kind === 'vinyl' ? [material] : []))
  const ways = failed.places.flatMap((place) =>
    place.layers.flatMap((layer, index) => {
      if (layer.material.kind !== 'vinyl') return []
      const { id, colour } = layer.material
      return shelf
        .filter((vinyl) => vinyl.id !== id && vinyl.colour === colour && isInstead(vinyl))
        .filter((vinyl) => takesCloth(failed.garment.cloth, vinyl))
        .filter((vinyl) => fitsStack(place, index, vinyl))
        .filter((vinyl) =>
          isPressable(
            bench,
            withPlaces(failed, (one) => (one === place ? swap(one, index, vinyl) : one)),
          ),
        )
        .map((vinyl) => way('another-class', vinyl.id, bench.shelf.stock[vinyl.id] ?? 0))
    }),
  )
  return [...new Map(ways.map((one) => [one.subject, one])).values()]
}

const plainCotton = (cloth: ClothFacts): ClothFacts => ({
  ...cloth,
  fibres: [{ fibre: 'cotton', percent: 100 }],
  knit: 'jersey',
  perforated: false,
  thin: false,
  capTenthsC: null,
})

const withStones = (bench: Bench, failed: Failed): readonly Way[] => {
  if (!hasStones(failed.places)) return []
  const plain = withPlaces(failed, withoutStones)
  const stones = withPlaces(failed, onlyStones)
  const mixed = failed.places.some((place) => place.layers.some((layer) => layer.material.kind === 'vinyl'))
  const plainWorks = plain.places.length > 0 && isPressable(bench, plain)
  const ways: Way[] = []
  if (mixed && plainWorks && isPressable(bench, stones)) ways.push(way('separate-places'))
  if (mixed && plainWorks) ways.push(way('no-stones'))
  return ways
}

/** A set point that was asked for and cannot be kept: the usual one instead. */
const withUsualSetting = (bench: Bench, failed: Failed): readonly Way[] => {
  if (failed.failure.code !== 'asked-over-cap') return []
  const usual = withPlaces(failed, (place) => ({ ...place, askedTenthsC: null }))
  return isPressable(bench, usual) ? [way('usual-setting')] : []
}

const cost: Partial<Readonly<Record<WayCode, number>>> = {
  'usual-setting': 0,
  'another-class': 1,
  'separate-places': 2,
  'no-stones': 3,
  smaller: 3,
  'another-garment': 4,
}

/** Nothing to fetch first: what lies on the shelf, or asks for no material at all; then the smaller change, then the fuller shelf. */
const byShelf = (a: Way, b: Way): number =>
  Number(a.inStock === 0) - Number(b.inStock === 0) ||
  (cost[a.way] ?? 9) - (cost[b.way] ?? 9) ||
  (b.inStock ?? 0) - (a.inStock ?? 0) ||
  (a.subject ?? '').localeCompare(b.subject ?? '')

/**
 * What could be done instead of a set-up that cannot be pressed: each way was tried on the shop's own machines and works.
 * Ranked by what is in stock, then by how small the change is; empty when nothing was found.
 */
export const waysOut = (bench: Bench, failed: Failed): readonly Way[] => {
  if (failed.failure.code === 'platen-too-small') return [way('smaller')]
  const other = { ...failed.garment, cloth: plainCotton(failed.garment.cloth) }
  const garment = isPressable(bench, other) ? [way('another-garment')] : []
  const ways = [...withUsualSetting(bench, failed), ...otherVinyls(bench, failed), ...withStones(bench, failed), ...garment]
  return ways.toSorted(byShelf)
}
