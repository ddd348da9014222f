import type { Stone } from '../material/material.ts'
import { isChild, looksYoung, mayBeChild } from '../order/child.ts'
import type { Row } from '../order/order.ts'
import type { JobGarment, JobPlace } from '../press/job.ts'
import { way } from '../press/way.ts'
import { placesOf, type Rule, type RuleFacts } from './facts.ts'
import { lawLimits } from './law.ts'

const leadSource =
  '15 U.S.C. 1278a: at most 100 ppm lead in accessible parts (read); exclusion for crystal denied 16 July 2009 (quoted)'
const smallSource =
  "the shop's rule: every SS6-SS48 stone fits the small-parts cylinder of 16 CFR 1501 (computed), clothing is exempt by 1501.3(d) (quoted)"

type Worn = {
  readonly row: Row
  readonly at: string
  readonly garment: JobGarment
  readonly place: JobPlace
  readonly stones: readonly Stone[]
}

/** Every stoned decoration on every roster line that wears it. */
const stonedRows = (facts: RuleFacts): readonly Worn[] =>
  placesOf(facts).flatMap(({ garment, place }) => {
    const stones = place.layers.flatMap(({ material }) => (material.kind === 'stone' ? [material] : []))
    if (stones.length === 0) return []
    return facts.order.roster.flatMap((row, index) =>
      row.garment === garment.id && place.lines.includes(row.line)
        ? [{ row, at: `/roster/${index}`, garment, place, stones }]
        : [],
    )
  })

/** Under three years: no stones, whatever the size of the shirt. */
export const stonesUnderThree: Rule = (facts) =>
  stonedRows(facts)
    .filter(({ row }) => row.age === 'under-3')
    .map(({ row, at, place }) => ({
      code: 'stones-under-three',
      at,
      severity: 'stop',
      facts: {
        line: row.line,
        decoration: place.decoration,
        smallPartsMicrometres: lawLimits.smallPartsMicrometres,
        source: smallSource,
        ways: [way('no-stones')],
      },
    }))

const leadFreeWays = (facts: RuleFacts, stone: Stone) => {
  const others = facts.shelf.materials.filter(
    (one) => one.kind === 'stone' && one.glass === 'lead-free' && one.size === stone.size && one.colour === stone.colour,
  )
  const named = others.map((one) => way('lead-free-stones', one.id, facts.shelf.stock[one.id] ?? 0))
  return [...(named.length > 0 ? named : [way('lead-free-stones')]), way('no-stones')]
}

/** Twelve years or younger: no leaded crystal. */
export const leadedStones: Rule = (facts) =>
  stonedRows(facts)
    .filter(({ row }) => isChild(row))
    .flatMap(({ row, at, stones }) =>
      stones
        .filter((stone) => stone.glass === 'leaded')
        .map((stone) => ({
          code: 'leaded-stones-child',
          at,
          severity: 'stop',
          facts: {
            line: row.line,
            material: stone.id,
            lot: stone.lot,
            leadPpmMost: lawLimits.leadPpmMost,
            source: leadSource,
            ways: leadFreeWays(facts, stone),
          },
        })),
    )

/** Lead-free stones on children's wear want the certificate of their lot. */
export const certificates: Rule = (facts) => {
  const worn = stonedRows(facts).filter(({ row }) => isChild(row))
  const stones = new Map(worn.flatMap((one) => one.stones).map((stone) => [stone.id, stone]))
  return [...stones.values()]
    .filter((stone) => stone.glass === 'lead-free' && stone.leadFreeCertificate === null)
    .map((stone) => ({
      code: 'certificate-missing',
      at: '/roster',
      severity: 'needs-test',
      facts: {
        material: stone.id,
        lot: stone.lot,
        lines: linesOf(worn.filter((one) => one.stones.includes(stone))),
        leadPpmMost: lawLimits.leadPpmMost,
        nickelNanogramsMost: lawLimits.nickelNanogramsMost,
        leadInMouthablePpmMost: lawLimits.leadInMouthablePpmMost,
        source: leadSource,
        ways: [way('certificate', stone.lot), way('no-stones')],
      },
    }))
}

const linesOf = (worn: readonly { readonly row: Row }[]): readonly number[] =>
  [...new Set(worn.map(({ row }) => row.line))].toSorted((a, b) => a - b)

/** The age is asked, not guessed from the size; leaded stones or a child's cut make the question one that must be answered first. */
export const agesUnknown: Rule = (facts) => {
  const stoned = stonedRows(facts).filter(({ row }) => row.age === 'unknown')
  const young = facts.order.roster.filter((row) => row.age === 'unknown' && looksYoung(row)).map((row) => ({ row }))
  const lines = linesOf([...stoned, ...young])
  if (lines.length === 0) return []
  const grave = stoned.some(({ row, stones }) => looksYoung(row) || stones.some((stone) => stone.glass === 'leaded'))
  const severity = grave ? 'needs-test' : 'caution'
  return [{ code: 'age-unknown', at: '/roster', severity, facts: { lines, source: leadSource, ways: [way('ask-age')] } }]
}

/** Children's wear: third-party test, certificate and tracking label are the seller's to see to. */
export const childrensWear: Rule = (facts) => {
  const lines = linesOf(facts.order.roster.filter(isChild).map((row) => ({ row })))
  if (lines.length === 0) return []
  const source =
    "16 CFR 1107 and 1110: third-party test and Children's Product Certificate (read); 80 FR 61729: transfers are not exempt (quoted); tracking label 15 U.S.C. 2063(a)(5)"
  return [{ code: 'childrens-wear', at: '/roster', severity: 'note', facts: { lines, source, ways: [way('certificate')] } }]
}

/**
 * Neck or hood strings on a child's outerwear: tell the owner, do not press, ask. A hood nobody has looked into is looked at first, and so
 * is a child's cut of which nobody said the age.
 */
export const strings: Rule = (facts) =>
  facts.job.garments.flatMap((garment): ReturnType<Rule> => {
    const worn = facts.order.roster.filter((row) => row.garment === garment.id && mayBeChild(row))
    const lines = linesOf(worn.map((row) => ({ row })))
    const tied = garment.features.includes('strings')
    if (lines.length === 0 || !(tied || garment.features.includes('hood'))) return []
    const source = '16 CFR 1120: strings at hood and neck of children’s outerwear (quoted)'
    const found = { garment: garment.id, lines, source, ways: [way('remove-strings'), way('another-garment'), way('ask-owner')] }
    return [
      { code: 'strings-on-child', at: garment.at, severity: tied && worn.some(isChild) ? 'stop' : 'needs-test', facts: found },
    ]
  })
