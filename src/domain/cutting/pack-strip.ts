import { item } from '../geometry/point.ts'
import { type Level, raise, type Size, type Spot } from './skyline.ts'

export type Packing = { readonly height: number; readonly spots: readonly Spot[] }

type Gap = { readonly level: Level; readonly leftWall: number; readonly rightWall: number }

const lowestGap = (levels: readonly Level[]): Gap => {
  const index = levels.reduce((best, level, at) => (level.y < item(levels, best).y ? at : best), 0)
  const level = item(levels, index)
  const wall = (neighbour: Level | undefined): number => (neighbour === undefined ? Infinity : neighbour.y - level.y)
  return { level, leftWall: wall(levels[index - 1]), rightWall: wall(levels[index + 1]) }
}

/** How well a rectangle fits a gap: filling its width counts most, then ending level with a wall. */
const fitness = ({ level, leftWall, rightWall }: Gap, { width, height }: Size): number => {
  if (width > level.width) return -1
  const levelled = height === leftWall || height === rightWall
  if (width === level.width) return levelled ? 4 : height < Math.min(leftWall, rightWall) ? 2 : 3
  return levelled ? 1 : 0
}

/** Best fit on the skyline; among equally good rectangles the earlier in `order` goes first. All may be turned. */
const decode = (sizes: readonly Size[], order: readonly number[], width: number): Packing => {
  const levels: Level[] = [{ x: 0, y: 0, width }]
  const spots: Spot[] = sizes.map(() => ({ x: 0, y: 0, turned: false }))
  const left = [...order]
  while (left.length > 0) {
    const gap = lowestGap(levels)
    let best = { score: -1, place: -1, turned: false }
    for (let place = 0; place < left.length && best.score < 4; place += 1) {
      const size = item(sizes, item(left, place))
      for (const turned of [false, true]) {
        const score = fitness(gap, turned ? { width: size.height, height: size.width } : size)
        if (score > best.score) best = { score, place, turned }
      }
    }
    if (best.score < 0) {
      raise(levels, gap.level, { width: gap.level.width, height: Math.min(gap.leftWall, gap.rightWall) })
      continue
    }
    const [index = 0] = left.splice(best.place, 1)
    const size = item(sizes, index)
    const laid = best.turned ? { width: size.height, height: size.width } : size
    const { x, y } = gap.level
    const atRight = gap.rightWall > gap.leftWall && gap.rightWall !== Infinity
    const spot = { x: atRight ? x + gap.level.width - laid.width : x, y }
    raise(levels, spot, laid)
    spots[index] = { ...spot, turned: best.turned }
  }
  return { height: Math.max(0, ...levels.map(({ y }) => y)), spots }
}

/** Whole numbers from 0 to below `most`, the same for the same seed (Park & Miller 1988). */
const numbers = (seed: number): ((most: number) => number) => {
  let state = (seed % 2147483646) + 1
  return (most) => {
    state = (state * 16807) % 2147483647
    return state % most
  }
}

/**
 * Rectangles packed into a strip of the given width as low as a best-fit skyline and `rounds` of a seeded local search over
 * the order find; each may be turned by 90°. Every rectangle must fit the strip one way.
 */
export const packStrip = (sizes: readonly Size[], width: number, rounds: number, seed = 1): Packing => {
  const area = sizes.reduce((sum, size) => sum + size.width * size.height, 0)
  const least = Math.ceil(area / width)
  const next = numbers(seed)
  const order = sizes.map((_, index) => index)
  order.sort((a, b) => item(sizes, b).width * item(sizes, b).height - item(sizes, a).width * item(sizes, a).height || a - b)
  let best = decode(sizes, order, width)
  for (let round = 0; round < rounds && best.height > least && order.length > 1; round += 1) {
    const [one, two] = [next(order.length), next(order.length)]
    const swap = (): void => {
      const kept = item(order, one)
      order[one] = item(order, two)
      order[two] = kept
    }
    swap()
    const tried = decode(sizes, order, width)
    if (tried.height <= best.height) best = tried
    else swap()
  }
  return best
}
