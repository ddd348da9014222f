import { item } from '../geometry/point.ts'

/** A level stretch of what is packed so far: from `x`, `width` wide, at height `y`. */
export type Level = { x: number; y: number; width: number }

export type Size = { readonly width: number; readonly height: number }

export type Spot = { readonly x: number; readonly y: number; readonly turned: boolean }

/** Raises the skyline by a rectangle and joins equal neighbours. */
export const raise = (levels: Level[], { x, y }: { x: number; y: number }, { width, height }: Size): void => {
  const [left, right] = [x, x + width]
  const kept: Level[] = []
  let placed = false
  for (const level of levels) {
    const end = level.x + level.width
    if (end <= left || level.x >= right) {
      if (level.x >= right && !placed) {
        kept.push({ x: left, y: y + height, width })
        placed = true
      }
      kept.push(level)
      continue
    }
    if (level.x < left) kept.push({ x: level.x, y: level.y, width: left - level.x })
    if (!placed) kept.push({ x: left, y: y + height, width })
    placed = true
    if (end > right) kept.push({ x: right, y: level.y, width: end - right })
  }
  levels.length = 0
  for (const level of kept) {
    const last = levels.at(-1)
    if (last !== undefined && last.y === level.y) last.width += level.width
    else levels.push({ ...level })
  }
}

const floorUnder = (levels: readonly Level[], from: number, width: number): number | undefined => {
  let [room, y] = [width, 0]
  for (let index = from; room > 0; index += 1) {
    const level = levels[index]
    if (level === undefined) return undefined
    y = Math.max(y, level.y)
    room -= level.width
  }
  return y
}

/** The lowest, then leftmost spot for a rectangle; undefined when it is wider than the strip. */
const lowestSpot = (levels: readonly Level[], size: Size): { x: number; y: number } | undefined => {
  let best: { x: number; y: number } | undefined
  for (const index of levels.keys()) {
    const y = floorUnder(levels, index, size.width)
    if (y !== undefined && (best === undefined || y < best.y)) best = { x: item(levels, index).x, y }
  }
  return best
}

/** A strip that is filled in the order in which its rectangles come. */
export type Strip = { readonly levels: Level[] }

export const emptyStrip = (width: number): Strip => ({ levels: [{ x: 0, y: 0, width }] })

/** Places the next rectangle where its top comes lowest, below `most`; turns it by 90° only when it may and gains by it. */
export const placeNext = (strip: Strip, size: Size, mayTurn: boolean, most: number): Spot | undefined => {
  const turned = { width: size.height, height: size.width }
  const options = [
    { size, turned: false, spot: lowestSpot(strip.levels, size) },
    ...(mayTurn ? [{ size: turned, turned: true, spot: lowestSpot(strip.levels, turned) }] : []),
  ]
  let best: { size: Size; turned: boolean; spot: { x: number; y: number } } | undefined
  for (const { size: taken, turned: isTurned, spot } of options) {
    if (spot === undefined || spot.y + taken.height > most) continue
    if (best === undefined || spot.y + taken.height < best.spot.y + best.size.height)
      best = { size: taken, turned: isTurned, spot }
  }
  if (best === undefined) return undefined
  raise(strip.levels, best.spot, best.size)
  return { ...best.spot, turned: best.turned }
}

export const heightOf = ({ levels }: Strip): number => Math.max(...levels.map(({ y }) => y))
