import { between, cyclic, distance, item, type Point } from './point.ts'
import type { Region } from './region.ts'
import { type Graph, skeleton } from './skeleton.ts'

/** An open line, or a loop whose last point leads back to its first. Ends are shared with other lines where they meet. */
export type Line = { readonly points: readonly Point[]; readonly closed: boolean }

const follow = ({ links }: Graph, from: number, first: number): readonly number[] => {
  const trail = [from, first]
  for (;;) {
    const [before, here] = [item(trail, trail.length - 2), item(trail, trail.length - 1)]
    const around = item(links, here)
    if (around.size !== 2 || here === from) return trail
    const next = [...around].find((node) => node !== before)
    if (next === undefined) return trail
    trail.push(next)
  }
}

const lengthOf = (graph: Graph, trail: readonly number[]): number =>
  trail.slice(1).reduce((sum, node, index) => sum + distance(item(graph.places, node), item(graph.places, item(trail, index))), 0)

const branches = (graph: Graph): readonly (readonly number[])[] => {
  const found: (readonly number[])[] = []
  const seen = new Set<string>()
  for (const [node, around] of graph.links.entries()) {
    if (around.size === 2 || around.size === 0) continue
    for (const next of around) {
      const trail = follow(graph, node, next)
      const back = `${trail.at(-1)} ${trail.at(-2)}`
      if (seen.has(back)) continue
      seen.add(`${node} ${next}`)
      found.push(trail)
    }
  }
  const visited = new Set(found.flat())
  for (const [node, around] of graph.links.entries()) {
    const [next] = around
    if (visited.has(node) || around.size !== 2 || next === undefined) continue
    const trail = follow(graph, node, next)
    for (const passed of trail) visited.add(passed)
    found.push(trail)
  }
  return found
}

const isJunction = ({ links }: Graph, node: number): boolean => item(links, node).size > 2

/** Cuts off dead ends shorter than `least`, at each meeting point the shortest first, until none is left. */
const prune = (graph: Graph, least: number): void => {
  for (;;) {
    const short = branches(graph)
      .map((trail) => (isJunction(graph, item(trail, 0)) ? trail : trail.toReversed()))
      .filter((trail) => isJunction(graph, item(trail, 0)) && item(graph.links, item(trail, trail.length - 1)).size === 1)
      .map((trail) => ({ trail, long: lengthOf(graph, trail) }))
      .filter(({ long }) => long < least)
      .sort((a, b) => a.long - b.long)
    if (short.length === 0) return
    const touched = new Set<number>()
    for (const { trail } of short) {
      if (touched.has(item(trail, 0))) continue
      touched.add(item(trail, 0))
      for (const [index, node] of trail.entries()) {
        const next = trail[index + 1]
        if (next === undefined) continue
        graph.links[node]?.delete(next)
        graph.links[next]?.delete(node)
      }
    }
  }
}

const melt = (graph: Graph, bridge: readonly number[]): void => {
  const [start, end] = [item(bridge, 0), item(bridge, bridge.length - 1)]
  for (const node of bridge.slice(1)) {
    for (const next of item(graph.links, node)) {
      graph.links[next]?.delete(node)
      if (bridge.includes(next)) continue
      graph.links[next]?.add(start)
      graph.links[start]?.add(next)
    }
    graph.links[node]?.clear()
  }
  graph.places[start] = between(item(graph.places, start), item(graph.places, end), 0.5)
}

/** Meeting points nearer than `reach` become one, so that lines can go straight through both. */
const contract = (graph: Graph, reach: number): void => {
  for (;;) {
    const bridges = branches(graph).filter((trail) => {
      const [start, end] = [item(trail, 0), item(trail, trail.length - 1)]
      return isJunction(graph, start) && isJunction(graph, end) && start !== end && lengthOf(graph, trail) < reach
    })
    if (bridges.length === 0) return
    const touched = new Set<number>()
    for (const bridge of bridges) {
      const ends = [item(bridge, 0), item(bridge, bridge.length - 1)]
      if (ends.some((end) => touched.has(end))) continue
      for (const end of ends) touched.add(end)
      melt(graph, bridge)
    }
  }
}

const direction = (graph: Graph, trail: readonly number[], reach: number): Point => {
  const start = item(graph.places, item(trail, 0))
  const far = trail.find((node) => distance(item(graph.places, node), start) >= reach) ?? item(trail, trail.length - 1)
  const end = item(graph.places, far)
  const long = distance(start, end) || 1
  return { x: (end.x - start.x) / long, y: (end.y - start.y) / long }
}

type Joint = { readonly one: number[]; readonly two: number[]; readonly bend: number }

/** The pair of lines that go straightest on through a meeting point; undefined when none goes on. */
const straightest = (graph: Graph, lines: readonly number[][], node: number, reach: number): Joint | undefined => {
  const meeting = lines.filter((line) => line.length > 1 && (line[0] === node || line.at(-1) === node))
  const outward = meeting.map((line) => direction(graph, line[0] === node ? line : [...line].reverse(), reach))
  let best: Joint | undefined
  for (const [index, one] of meeting.entries()) {
    for (let other = index + 1; other < meeting.length; other += 1) {
      const [a, b] = [item(outward, index), item(outward, other)]
      const bend = a.x * b.x + a.y * b.y
      if (bend < -0.5 && (best === undefined || bend < best.bend)) best = { one, two: item(meeting, other), bend }
    }
  }
  return best
}

/** Joins branches that go straight on through a meeting point, the straightest pair first. */
const joinStraight = (graph: Graph, trails: readonly (readonly number[])[], reach: number): readonly (readonly number[])[] => {
  const lines = trails.map((trail) => [...trail])
  for (const node of graph.links.keys()) {
    if (item(graph.links, node).size < 3) continue
    for (
      let joint = straightest(graph, lines, node, reach);
      joint !== undefined;
      joint = straightest(graph, lines, node, reach)
    ) {
      const { one, two } = joint
      if (one[0] === node) one.reverse()
      if (two[0] !== node) two.reverse()
      one.push(...two.slice(1))
      two.length = 0
    }
  }
  return lines.filter((line) => line.length > 1)
}

const smooth = ({ points, closed }: Line, rounds: number): Line => {
  let line = points
  for (let round = 0; round < rounds; round += 1) {
    line = line.map((point, index) => {
      const before = closed ? cyclic(line, index - 1) : line[index - 1]
      const after = closed ? cyclic(line, index + 1) : line[index + 1]
      if (before === undefined || after === undefined) return point
      return { x: (before.x + 2 * point.x + after.x) / 4, y: (before.y + 2 * point.y + after.y) / 4 }
    })
  }
  return { points: line, closed }
}

/** Where a stroke tapers to a tip, its line ends at this share of its usual room. */
const TIP = 0.6

/** The nodes of a line that lie before and behind its tips. */
const withoutTips = ({ rooms }: Graph, trail: readonly number[]): readonly number[] => {
  const along = trail.map((node) => item(rooms, node))
  const usual = item(
    [...along].sort((a, b) => a - b),
    Math.floor(along.length / 2),
  )
  const isWide = (room: number): boolean => room >= TIP * usual
  return trail.slice(along.findIndex(isWide), along.findLastIndex(isWide) + 1)
}

const lineAlong = (graph: Graph, trail: readonly number[]): Line => {
  const closed = trail.length > 3 && trail[0] === trail.at(-1)
  const nodes = closed ? trail.slice(1) : withoutTips(graph, trail)
  return { points: nodes.map((node) => item(graph.places, node)), closed }
}

/** The inner point farthest from the edges, of those the Voronoi diagram offers; undefined for a region without any. */
const deepest = ({ places, rooms }: Graph): Point | undefined => {
  const most = Math.max(0, ...rooms)
  return most > 0 ? places[rooms.indexOf(most)] : undefined
}

/**
 * The lines in the middle of one part of a region, dead ends under `least` cut off, straight ways joined through crossings.
 * A dot, which has no line, gives its deepest point alone.
 */
export const centreLines = (region: Region, step: number, least: number): readonly Line[] => {
  const graph = skeleton(region, step)
  prune(graph, least)
  contract(graph, least / 2)
  const trails = joinStraight(graph, branches(graph), least * 2)
  if (trails.length === 0) {
    const dot = deepest(graph)
    return dot === undefined ? [] : [{ points: [dot], closed: false }]
  }
  return trails
    .filter((trail) => lengthOf(graph, trail) >= step)
    .map((trail) => smooth(lineAlong(graph, trail), 6))
    .sort((a, b) => b.points.length - a.points.length)
}
