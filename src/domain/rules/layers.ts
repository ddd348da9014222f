import { oddEntries } from '../material/plausible.ts'
import { type Bleed, bleedsFromTenthsC, bleedsUnder } from '../press/bleed.ts'
import type { JobGarment, JobLayer, JobPlace } from '../press/job.ts'
import { way } from '../press/way.ts'
import { decorationsOf, hottestOf, placesOf, type Rule, type RuleFacts } from './facts.ts'

const commonPractice = 'common practice'

const bleedSource =
  'dye migration on polyester from 138 °C / 280 °F, may show up to 72 h later; sublimation dyes let go around 177 °C / 350 °F (quoted)'

const bleedWays = (facts: RuleFacts, { layer }: Bleed) => {
  const { colour } = layer.material
  const low = facts.shelf.materials.find(
    (one) => one.kind === 'vinyl' && one.class === 'low-temperature' && one.colour === colour,
  )
  const blocker = facts.shelf.materials.find((one) => one.kind === 'vinyl' && one.class === 'blocker')
  return [
    way('bleed-test'),
    ...(blocker === undefined ? [] : [way('blocker', blocker.id, facts.shelf.stock[blocker.id] ?? 0)]),
    ...(low === undefined ? [] : [way('low-temperature-vinyl', low.id, facts.shelf.stock[low.id] ?? 0)]),
    way('customer-signs'),
  ]
}

/** Dye that wanders into vinyl: one finding a garment, for the layer that gets hottest. Never a stop. */
export const bleedRisk: Rule = (facts) =>
  facts.job.garments.flatMap((garment): ReturnType<Rule> => {
    const risks = bleedsUnder(garment)
      .map((bleed) => ({ bleed, heat: hottestOf(facts, garment, bleed.layer) }))
      .filter(({ heat }) => heat.upToTenthsC >= bleedsFromTenthsC)
      .toSorted((a, b) => b.heat.upToTenthsC - a.heat.upToTenthsC)
    const [worst] = risks
    if (worst === undefined) return []
    const { bleed, heat } = worst
    return [
      {
        code: 'bleed-risk',
        at: garment.at,
        severity: bleed.dye === 'sublimated' ? 'needs-test' : 'caution',
        facts: {
          garment: garment.id,
          dye: bleed.dye,
          colour: garment.cloth.colour,
          material: bleed.layer.material.id,
          fromTenthsC: bleedsFromTenthsC,
          ...heat,
          source: bleedSource,
          ways: bleedWays(facts, bleed),
        },
      },
    ]
  })

/** From here a cloth counts as stretch (common practice). */
const stretchPercent = 10

const elastaneOf = (garment: JobGarment): number =>
  garment.cloth.fibres === 'unknown' ? 0 : (garment.cloth.fibres.find((share) => share.fibre === 'elastane')?.percent ?? 0)

/** Stretch cloth wants stretch vinyl, and no solid fields of stones. */
export const stretchCloth: Rule = (facts) =>
  placesOf(facts).flatMap(({ garment, place }): ReturnType<Rule> => {
    const percent = elastaneOf(garment)
    if (percent < stretchPercent) return []
    const stiff = place.layers.filter(
      ({ material }) => material.kind === 'vinyl' && material.class !== 'stretch' && !material.takesFibres.includes('elastane'),
    )
    return stiff.map((layer) => ({
      code: 'stretch-needs-stretch',
      at: layer.at,
      severity: 'caution',
      facts: {
        garment: garment.id,
        material: layer.material.id,
        percent,
        source: commonPractice,
        ways: stretchWays(facts, layer),
      },
    }))
  })

const stretchWays = (facts: RuleFacts, layer: JobLayer) => {
  const stretch = facts.shelf.materials.filter(
    (one) => one.kind === 'vinyl' && one.class === 'stretch' && one.colour === layer.material.colour,
  )
  const named = stretch.map((one) => way('stretch-vinyl', one.id, facts.shelf.stock[one.id] ?? 0))
  return [...(named.length > 0 ? named : [way('stretch-vinyl')]), way('test-press')]
}

/** A solid field of stones cannot follow cloth that stretches. */
export const solidOnStretch: Rule = (facts) =>
  decorationsOf(facts.order).flatMap(({ decoration, at }) => {
    const solid = decoration.layers.some((layer) => layer.kind === 'stones' && layer.layout.style === 'solid')
    if (!solid) return []
    const stretchy = facts.job.garments.filter(
      (garment) => elastaneOf(garment) >= stretchPercent && garment.places.some((place) => place.decoration === decoration.id),
    )
    return stretchy.map((garment) => ({
      code: 'solid-stones-on-stretch',
      at,
      severity: 'caution',
      facts: {
        garment: garment.id,
        decoration: decoration.id,
        percent: elastaneOf(garment),
        source: commonPractice,
        ways: [way('outline-instead')],
      },
    }))
  })

/** Glue passes through holes: a pad goes inside, with a sheet between it and each layer; so it does while nobody has said that there are none. */
export const perforation: Rule = (facts) =>
  facts.job.garments
    .filter((garment) => garment.cloth.perforated && garment.places.length > 0)
    .map((garment) => ({
      code: 'perforated-cloth',
      at: garment.at,
      severity: 'note',
      facts: {
        garment: garment.id,
        isKnown: garment.cloth.knit !== 'unknown',
        source: commonPractice,
        ways: [way('pad-inside')],
      },
    }))

/** Fleece is crushed, and some cloth shines, where the platen has stood. */
export const pressMarks: Rule = (facts) =>
  facts.job.garments
    .filter((garment) => garment.cloth.marks && garment.places.length > 0)
    .map((garment) => ({
      code: 'press-marks',
      at: garment.at,
      severity: 'caution',
      facts: { garment: garment.id, because: garment.cloth.knit, source: commonPractice, ways: [way('test-press')] },
    }))

const onTop = (place: JobPlace, index: number): ReturnType<Rule> => {
  const [layer, below] = [place.layers[index], place.layers[index - 1]]
  if (layer === undefined || below === undefined || layer.lies === 'on-cloth' || below.material.kind === 'stone') return []
  const wanted = layer.material.kind === 'stone' ? 'stones' : layer.material.class
  if (below.material.takesOnTop.includes(wanted)) return []
  const ways =
    wanted === 'stones'
      ? [way('outline-instead'), way('no-stones')]
      : [way('swap-layers'), way('another-class'), way('knock-out-below')]
  const source = `${below.material.source.sheet}, ${below.material.source.date}; nothing goes on glitter, flock, puff, foil or reflective unless its sheet says so (common practice)`
  const stacked = { decoration: place.decoration, above: layer.material.id, below: below.material.id, source, ways }
  return [{ code: 'not-on-top', at: layer.at, severity: 'stop', facts: stacked }]
}

/** What sticks on what: a vinyl takes on its face only what its sheet names. */
export const onTopOf: Rule = (facts) => {
  const places = new Map(placesOf(facts).map(({ place }) => [place.decoration, place]))
  return [...places.values()].flatMap((place) => place.layers.flatMap((_, index) => onTop(place, index)))
}

/** At most three layers of vinyl on one piece (common practice). */
const layersMost = 3

export const layersInPiece: Rule = (facts) =>
  decorationsOf(facts.order).flatMap(({ decoration, at }): ReturnType<Rule> => {
    const layers = decoration.layers.filter((layer) => layer.kind === 'vinyl').length
    if (layers <= layersMost) return []
    const stacked = { decoration: decoration.id, layers, most: layersMost, source: commonPractice, ways: [way('another-class')] }
    return [{ code: 'too-many-layers', at, severity: 'caution', facts: stacked }]
  })

/** Records of the materials used that lie outside what makers of their class publish. */
export const plausibleRecords: Rule = (facts) => {
  const used = placesOf(facts).flatMap(({ place }) => place.layers)
  const materials = new Map(used.map((layer) => [layer.material.id, layer]))
  return [...materials.values()].flatMap(({ material, at }) =>
    oddEntries(material).map(({ field, value, least, most, source }) => ({
      code: 'implausible-record',
      at,
      severity: 'caution',
      facts: { material: material.id, field, value, least, most, source, ways: [way('ask-owner')] },
    })),
  )
}
