import type { Corner } from '../geometry/corners.ts'
import { distance, item } from '../geometry/point.ts'
import { onRing, pointOn, type Ring } from '../geometry/ring.ts'
import { longestSection, type Section } from './section.ts'

/** A place a stone may be fixed to; it serves the corners whose numbers it names, at a cost when it stands off them. */
export type Anchor = { readonly along: number; readonly serves: readonly number[]; readonly cost: number }

/** Corners served by a stone are at most half a pitch from it. */
const SERVED = 0.5

const anchorAt = (ring: Ring, corners: readonly Corner[], along: number, pitch: number): Anchor => {
  const place = pointOn(ring, along)
  const serves: number[] = []
  let cost = 0
  for (const [index, corner] of corners.entries()) {
    const way = onRing(ring, corner.along - along)
    if (Math.min(way, ring.length - way) > pitch) continue
    const off = distance(place, pointOn(ring, corner.along)) / pitch
    if (off > SERVED) continue
    serves.push(index)
    cost += off * off
  }
  return { along: onRing(ring, along), serves, cost }
}

/** Corners, and the middles of corners nearer to each other than a pitch, which can share one stone. */
export const anchorsFor = (ring: Ring, corners: readonly Corner[], pitch: number): readonly Anchor[] => {
  const anchors = corners.map(({ along }) => anchorAt(ring, corners, along, pitch))
  for (const [index, { along }] of corners.entries()) {
    for (let next = index + 1; next < Math.min(index + 4, index + corners.length); next += 1) {
      const way = onRing(ring, item(corners, next % corners.length).along - along)
      if (way <= 0 || way >= 1.2 * pitch) break
      if (distance(pointOn(ring, along), pointOn(ring, along + way)) < pitch)
        anchors.push(anchorAt(ring, corners, along + way / 2, pitch))
    }
  }
  return anchors.sort((a, b) => a.along - b.along)
}

/** A bald corner costs more than any unevenness, the sharper the more. */
export const anchorPrice = (corner: Corner): number => 4 + Math.min(2, Math.abs(corner.turn))

export type Step = { readonly from: number; readonly to: number; readonly section: Section }

/** Squared excess of the chords over the pitch. */
export const unevenness = ({ chords, chord }: Section, pitch: number): number =>
  chords * (chord / pitch - 1) * (chord / pitch - 1)

export type Choice = {
  readonly ring: Ring
  readonly pitch: number
  readonly corners: readonly Corner[]
  /** In order, from `start` to at most `end`. */
  readonly anchors: readonly Anchor[]
  readonly start: Anchor
  readonly end: Anchor
}

const skipped = (choice: Choice, from: Anchor, to: Anchor): number => {
  let sum = 0
  for (const [index, corner] of choice.corners.entries()) {
    if (from.serves.includes(index) || to.serves.includes(index)) continue
    const way = corner.along < choice.start.along ? corner.along + choice.ring.length : corner.along
    if (way > from.along && way < to.along) sum += anchorPrice(corner)
  }
  return sum
}

type State = { readonly cost: number; readonly before: number; readonly section: Section | undefined }

/** Farther back than this many anchors a section is not looked for: it would skip more corners than any other choice. */
const REACH = 8

/**
 * Chooses by dynamic programming the anchors between start and end for which unevenness and bald corners cost least;
 * two anchors are never nearer than the pitch. Returns the sections in order, none when the two ends are too near.
 */
export const chooseSteps = (choice: Choice): readonly Step[] => {
  const nodes = [choice.start, ...choice.anchors, choice.end]
  const states: State[] = [{ cost: 0, before: -1, section: undefined }]
  for (let to = 1; to < nodes.length; to += 1) {
    let best: State = { cost: Infinity, before: -1, section: undefined }
    for (let from = to - 1; from >= 0; from -= 1) {
      const [a, b] = [item(nodes, from), item(nodes, to)]
      const base = item(states, from).cost + skipped(choice, a, b)
      if (base >= best.cost) continue
      if (to - from > REACH && best.cost < Infinity) break
      const section = longestSection(choice.ring, a.along, b.along, choice.pitch)
      if (section === undefined) continue
      const cost = base + unevenness(section, choice.pitch) + b.cost
      if (cost < best.cost) best = { cost, before: from, section }
    }
    states.push(best)
  }
  const steps: Step[] = []
  for (let at = nodes.length - 1; at > 0; ) {
    const { before, section } = item(states, at)
    if (section === undefined || before < 0) return []
    steps.push({ from: item(nodes, before).along, to: item(nodes, at).along, section })
    at = before
  }
  return steps.reverse()
}
