import { edgesOf } from '../press/edges.ts'
import type { Extent, JobPlace } from '../press/job.ts'
import { way } from '../press/way.ts'
import { zoneOf } from '../press/zones.ts'
import { decorationsOf, placesOf, type Rule } from './facts.ts'

const tooWide = (extent: Extent): boolean =>
  extent.freeWidthMicrometres !== null && extent.widthMicrometres > extent.freeWidthMicrometres

const excess = (extent: Extent): number => extent.widthMicrometres - (extent.freeWidthMicrometres ?? 0)

/** Wider than the flat cloth between the seams: one finding a decoration, for the text that sticks out most. */
export const freeWidth: Rule = (facts) =>
  decorationsOf(facts.order).flatMap(({ decoration, at }): ReturnType<Rule> => {
    const wide = facts.extents.filter((extent) => extent.decoration === decoration.id && tooWide(extent))
    const [worst] = wide.toSorted((a, b) => excess(b) - excess(a))
    if (worst === undefined || worst.freeWidthMicrometres === null) return []
    const { text, widthMicrometres, freeWidthMicrometres } = worst
    const ways = [way('smaller'), way('other-face'), way('another-place')]
    const found = {
      decoration: decoration.id,
      text,
      widthMicrometres,
      freeWidthMicrometres,
      source: 'the places of the shop, by size cut',
      ways,
    }
    return [{ code: 'wider-than-free', at: `${at}/height`, severity: 'stop', facts: found }]
  })

const overlapOf = (a: JobPlace, b: JobPlace): number => {
  const [one, other] = [edgesOf(a), edgesOf(b)]
  if (one === null || other === null) return 0
  return Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top)
}

const sideways: readonly string[] = ['left-chest', 'right-chest', 'left-shoulder', 'right-shoulder', 'other']

/** Marks beside the middle can only run into each other on the same place. */
const mayMeet = (a: JobPlace, b: JobPlace): boolean =>
  a.place === b.place || !(sideways.includes(a.place) || sideways.includes(b.place))

/** Two decorations of one side that run into each other at their usual places, a name and a number as a rule. */
export const collisions: Rule = (facts) => {
  const all = placesOf(facts)
  return all.flatMap(({ garment, place }, index) =>
    all
      .slice(index + 1)
      .filter((other) => other.garment.id === garment.id && zoneOf(other.place) === zoneOf(place) && mayMeet(place, other.place))
      .filter((other) => other.place.lines.some((line) => place.lines.includes(line)) && overlapOf(place, other.place) > 0)
      .map((other) => ({
        code: 'places-collide',
        at: other.place.at,
        severity: 'caution',
        facts: {
          first: place.decoration,
          second: other.place.decoration,
          overlapMicrometres: overlapOf(place, other.place),
          source: 'the places of the shop',
          ways: [way('smaller'), way('another-place')],
        },
      })),
  )
}
