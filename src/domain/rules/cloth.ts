import { fibreLimits, ironTenthsC } from '../garment/fibre-limits.ts'
import type { JobGarment, Material } from '../press/job.ts'
import { repellenceSuspected, smallSharePercent, unnamedFibres } from '../press/suspicions.ts'
import { dropsVerdict, slowestOf } from '../press/water-drops.ts'
import { type Way, way } from '../press/way.ts'
import { type Finding, hottestOn, type Rule, type RuleFacts } from './facts.ts'

const commonPractice = 'common practice'
const drops =
  'water drops, the slowest of five: sunk in 5 s adequate, still beaded at 60 s repellent (AATCC TM79, quoted, takes their mean)'

const materialsOn = (garment: JobGarment): readonly Material[] => [
  ...new Map(garment.places.flatMap((place) => place.layers).map(({ material }) => [material.id, material])).values(),
]

const worn = (facts: RuleFacts): readonly JobGarment[] => facts.job.garments.filter((garment) => garment.places.length > 0)

const sheetOf = (material: Material): string => `${material.source.sheet}, ${material.source.date}`

/** Vinyl of the shelf that its sheet allows on a fibre or a finish, in stock first. */
const vinylThatTakes = (facts: RuleFacts, takes: (material: Material) => boolean, like: Material): readonly Way[] =>
  facts.shelf.materials
    .filter((material) => material.kind === 'vinyl' && material.colour === like.colour && takes(material))
    .filter((material) => material.kind === 'vinyl' && material.class !== 'blocker' && material.class !== 'printed')
    .map((material) => way('another-class', material.id, facts.shelf.stock[material.id] ?? 0))
    .toSorted((a, b) => (b.inStock ?? 0) - (a.inStock ?? 0))

/** Nobody has read the content label: it is read at the count-in before anything is pressed. */
export const fibresUnknown: Rule = (facts) =>
  worn(facts)
    .filter((garment) => garment.cloth.fibres === 'unknown')
    .map((garment) => ({
      code: 'fibre-unknown',
      at: `${garment.at}/fibres`,
      severity: 'needs-test',
      facts: { garment: garment.id, source: commonPractice, ways: [way('read-label'), way('test-press')] },
    }))

/** A tenth or more of a fibre that the maker's sheet does not name wants a test press. */
export const fibresOnSheet: Rule = (facts) =>
  worn(facts).flatMap((garment) =>
    materialsOn(garment).flatMap((material) =>
      unnamedFibres(garment, material.takesFibres)
        .filter((share) => share.percent >= smallSharePercent && material.refusesFibres?.includes(share.fibre) !== true)
        .map(({ fibre, percent }) => ({
          code: 'fibre-not-on-sheet',
          at: `${garment.at}/fibres`,
          severity: 'needs-test',
          facts: {
            garment: garment.id,
            material: material.id,
            fibre,
            percent,
            source: sheetOf(material),
            ways: [way('test-press'), ...vinylThatTakes(facts, (one) => one.takesFibres.includes(fibre), material)],
          },
        })),
    ),
  )

/** The maker's sheet says no to a fibre, however little of it; fibres that melt have their own refusal. */
export const fibresRefused: Rule = (facts) =>
  worn(facts).flatMap((garment) => {
    const shares = garment.cloth.fibres === 'unknown' ? [] : garment.cloth.fibres
    const pressable = shares.filter((share) => !fibreLimits.some((limit) => limit.never && limit.fibre === share.fibre))
    return materialsOn(garment).flatMap((material) =>
      pressable
        .filter((share) => material.refusesFibres?.includes(share.fibre) === true)
        .map(({ fibre, percent }) => ({
          code: 'fibre-refused',
          at: `${garment.at}/fibres`,
          severity: 'stop',
          facts: {
            garment: garment.id,
            material: material.id,
            fibre,
            percent,
            source: sheetOf(material),
            ways: [...vinylThatTakes(facts, (one) => one.takesFibres.includes(fibre), material), way('another-garment')],
          },
        })),
    )
  })

/** Every transfer is hotter than one dot of the iron: over the label is a caution, an unread label is said. */
export const careLabel: Rule = (facts) =>
  worn(facts).flatMap((garment): ReturnType<Rule> => {
    const dots = garment.cloth.careDots
    const source = 'iron of one, two, three dots: 110, 150, 200 °C (ISO 3758, 2012 edition, quoted)'
    const at = garment.at
    if (dots === null) {
      return [
        { code: 'care-label-unread', at, severity: 'note', facts: { garment: garment.id, source, ways: [way('read-label')] } },
      ]
    }
    const heat = hottestOn(facts, garment)
    if (heat.upToTenthsC <= ironTenthsC[dots]) return []
    const over = { garment: garment.id, dots, ironTenthsC: ironTenthsC[dots], ...heat, source }
    return [
      {
        code: 'over-care-label',
        at,
        severity: 'caution',
        facts: { ...over, ways: [way('test-press'), way('low-temperature-vinyl')] },
      },
    ]
  })

const isRepellentSafe = (material: Material): boolean => material.takesFinishes.includes('repellent')

/** Instead of a material that does not hold on a repellent finish. */
const waysAround = (facts: RuleFacts, material: Material): readonly Way[] => [
  ...(material.kind === 'stone' ? [way('no-stones')] : vinylThatTakes(facts, isRepellentSafe, material)),
  way('another-garment'),
]

/** A finish known to repel: a material whose sheet does not take it is refused, one that does wants a test press. */
export const finishRepels: Rule = (facts) =>
  worn(facts)
    .filter((garment) => garment.cloth.finish === 'repellent')
    .flatMap((garment) =>
      materialsOn(garment).map((material) => {
        const base = { garment: garment.id, material: material.id, source: drops }
        const at = `${garment.at}/finish`
        if (isRepellentSafe(material)) {
          return { code: 'finish-needs-test', at, severity: 'needs-test', facts: { ...base, ways: [way('test-press')] } }
        }
        const ways = waysAround(facts, material)
        return { code: 'finish-repels', at, severity: 'stop', facts: { ...base, ways } }
      }),
    )

/** Seconds of the slowest drop on a garment, null while nobody has tried. */
const slowestDrop = (findings: readonly Finding[], garment: JobGarment): number | null => {
  const tried = findings.flatMap((one) => (one.garment === garment.id && one.seconds !== 'not-done' ? one.seconds : []))
  return tried.length === 0 ? null : slowestOf(tried)
}

const afterDrops = (facts: RuleFacts, garment: JobGarment, slowest: number): ReturnType<Rule> => {
  const at = `${garment.at}/finish`
  const base = { garment: garment.id, seconds: slowest, source: drops }
  const verdict = dropsVerdict(slowest)
  if (verdict === 'sunk') return []
  if (verdict === 'doubtful')
    return [{ code: 'drops-doubtful', at, severity: 'needs-test', facts: { ...base, ways: [way('test-press')] } }]
  return materialsOn(garment).map((material) => {
    if (isRepellentSafe(material)) {
      const tested = { garment: garment.id, material: material.id, source: drops, ways: [way('test-press')] }
      return { code: 'finish-needs-test', at, severity: 'needs-test', facts: tested }
    }
    const ways = waysAround(facts, material)
    return { code: 'drops-beaded', at, severity: 'stop', facts: { ...base, material: material.id, ways } }
  })
}

/** Water drops: not done, sunk in 5 s, doubtful up to 60 s, or still beaded. */
export const waterDrops: Rule = (facts) =>
  worn(facts).flatMap((garment): ReturnType<Rule> => {
    const slowest = slowestDrop(facts.findings, garment)
    if (slowest !== null) return afterDrops(facts, garment, slowest)
    if (garment.cloth.finish !== 'unknown') return []
    const open = { garment: garment.id, source: drops, ways: [way('water-drops')] }
    return [{ code: 'finish-unknown', at: `${garment.at}/finish`, severity: 'needs-test', facts: open }]
  })

/** Nylon and red polyester are tried with drops although nobody called them repellent. */
export const repellence: Rule = (facts) =>
  worn(facts).flatMap((garment): ReturnType<Rule> => {
    const because = repellenceSuspected(garment.cloth)
    const tried = slowestDrop(facts.findings, garment) !== null
    if (because === null || tried || garment.cloth.finish === 'repellent') return []
    const suspected = { garment: garment.id, because, source: commonPractice, ways: [way('water-drops'), way('test-press')] }
    return [{ code: 'repellence-suspected', at: garment.at, severity: 'caution', facts: suspected }]
  })
