import { distance } from '../geometry/point.ts'
import { chordStep, pointOn, type Ring } from '../geometry/ring.ts'

/** Equal chords between two anchors of a ring. */
export type Section = { readonly chords: number; readonly chord: number }

/** Ways along a ring from one anchor to the next. */
type Stretch = readonly [from: number, to: number]

const NEAR_ENOUGH = 0.05

/** The way reached after so many chords; Infinity when they lead beyond the limit. */
const reach = (ring: Ring, from: number, { chords, chord }: Section, limit: number): number => {
  let along = from
  for (let step = 0; step < chords; step += 1) {
    along = chordStep(ring, along, chord, limit)
    if (along === Infinity) return Infinity
  }
  return along
}

/** The chord with which exactly so many of them lead from one anchor to the other; undefined when it is under the pitch. */
const equalChord = (ring: Ring, [from, to]: Stretch, chords: number, pitch: number): number | undefined => {
  const long = to - from
  const limit = to + long / chords + pitch
  let [low, high] = [0, long / chords]
  let chord = high
  for (let round = 0; round < 60; round += 1) {
    const reached = reach(ring, from, { chords, chord }, limit)
    if (Math.abs(reached - to) < NEAR_ENOUGH) return chord >= pitch ? chord : undefined
    if (reached > to) high = chord
    else low = chord
    if (high < pitch) return undefined
    const guess = reached === Infinity ? 0 : (chord * long) / (reached - from)
    chord = guess > low && guess < high ? guess : (low + high) / 2
    if (high - low < 1e-3) break
  }
  return chord >= pitch ? chord : undefined
}

/** The largest number of equal chords, none under the pitch, from one anchor to the next; undefined when not even one fits. */
export const longestSection = (ring: Ring, from: number, to: number, pitch: number): Section | undefined => {
  const closed = Math.abs(to - from - ring.length) < NEAR_ENOUGH
  const straight = closed ? Infinity : distance(pointOn(ring, from), pointOn(ring, to))
  if (straight < pitch) return undefined
  if (Math.abs(straight - (to - from)) < NEAR_ENOUGH) {
    const chords = Math.floor(straight / pitch)
    return { chords, chord: straight / chords }
  }
  const least = closed ? 2 : 1
  for (let chords = Math.floor((to - from) / pitch + 1e-9); chords >= least; chords -= 1) {
    const chord = equalChord(ring, [from, to], chords, pitch)
    if (chord !== undefined) return { chords, chord }
  }
  return undefined
}

/** Ways of the stones of a section, both anchors included. */
export const stonesOf = (ring: Ring, from: number, to: number, section: Section): readonly number[] => {
  const ways = [from]
  const limit = to + section.chord
  let along = from
  for (let step = 1; step < section.chords; step += 1) {
    along = chordStep(ring, along, section.chord, limit)
    if (along === Infinity) break
    ways.push(along)
  }
  ways.push(to)
  return ways
}
