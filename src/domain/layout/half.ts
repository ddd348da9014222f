import type { Corner } from '../geometry/corners.ts'
import { item } from '../geometry/point.ts'
import type { Ring } from '../geometry/ring.ts'
import { type Anchor, anchorPrice, type Step, unevenness } from './anchors.ts'
import { longestSection, type Section } from './section.ts'

/** A ring that is its own mirror image: way 0 and half its length lie on the axis. */
export type HalfChoice = {
  readonly ring: Ring
  readonly pitch: number
  readonly corners: readonly Corner[]
  readonly anchors: readonly Anchor[]
}

const ON_AXIS = 1

const bald = (choice: HalfChoice, low: number, high: number, serves: readonly number[]): number =>
  choice.corners.reduce((sum, corner, index) => {
    const inside = corner.along > low + ON_AXIS && corner.along < high - ON_AXIS
    return inside && !serves.includes(index) ? sum + anchorPrice(corner) : sum
  }, 0)

/** The section that runs over the axis from an anchor's mirror image to itself; undefined when there is no room for it. */
const overAxis = (choice: HalfChoice, centre: number, way: number): Section | undefined =>
  longestSection(choice.ring, centre - way, centre + way, choice.pitch)

type State = {
  readonly cost: number
  readonly before: number
  readonly section: Section | undefined
  readonly over: Section | undefined
}

const firstState = (choice: HalfChoice, anchor: Anchor): State => {
  const missed = bald(choice, -ON_AXIS - 1, anchor.along, anchor.serves) + anchor.cost
  if (anchor.along <= ON_AXIS) return { cost: missed, before: -1, section: undefined, over: undefined }
  const over = overAxis(choice, 0, anchor.along)
  if (over === undefined) return { cost: Infinity, before: -1, section: undefined, over }
  return { cost: missed + unevenness(over, choice.pitch) / 2, before: -1, section: undefined, over }
}

const lastCost = (choice: HalfChoice, anchor: Anchor): { cost: number; over: Section | undefined } => {
  const middle = choice.ring.length / 2
  const missed = bald(choice, anchor.along, middle + ON_AXIS + 1, anchor.serves)
  if (anchor.along >= middle - ON_AXIS) return { cost: missed, over: undefined }
  const over = overAxis(choice, middle, middle - anchor.along)
  if (over === undefined) return { cost: Infinity, over }
  return { cost: missed + unevenness(over, choice.pitch) / 2, over }
}

/** Like `chooseSteps` on one half: what is chosen left of the axis stands right of it too. */
export const chooseHalf = (choice: HalfChoice): readonly Step[] => {
  const middle = choice.ring.length / 2
  const nodes = choice.anchors.filter(({ along }) => along <= middle + ON_AXIS)
  const states: State[] = []
  for (const [to, b] of nodes.entries()) {
    let best = firstState(choice, b)
    for (let from = to - 1; from >= 0; from -= 1) {
      const a = item(nodes, from)
      const base = item(states, from).cost + bald(choice, a.along, b.along, [...a.serves, ...b.serves])
      if (base >= best.cost) continue
      const section = longestSection(choice.ring, a.along, b.along, choice.pitch)
      if (section === undefined) continue
      const cost = base + unevenness(section, choice.pitch) + b.cost
      if (cost < best.cost) best = { cost, before: from, section, over: undefined }
    }
    states.push(best)
  }
  const ends = nodes.map((node, index) => item(states, index).cost + lastCost(choice, node).cost)
  const least = Math.min(...ends)
  if (!(least < Infinity)) return []
  return traced(choice, nodes, states, ends.indexOf(least))
}

const traced = (choice: HalfChoice, nodes: readonly Anchor[], states: readonly State[], last: number): readonly Step[] => {
  const middle = choice.ring.length / 2
  const steps: Step[] = []
  const end = item(nodes, last)
  const { over } = lastCost(choice, end)
  if (over !== undefined) steps.push({ from: end.along, to: 2 * middle - end.along, section: over })
  let at = last
  for (;;) {
    const { before, section, over: top } = item(states, at)
    const here = item(nodes, at).along
    if (section === undefined || before < 0) {
      if (top !== undefined) steps.push({ from: -here, to: here, section: top })
      break
    }
    steps.push({ from: item(nodes, before).along, to: here, section })
    at = before
  }
  if (over === undefined) steps.push({ from: end.along, to: end.along, section: { chords: 1, chord: 0 } })
  return steps.reverse()
}
