import { item, type Point } from '../geometry/point.ts'

/** Pairs that crowd each other: those of stone `n` of the first fill are `others[starts[n]]` up to `others[starts[n + 1]]`. */
type Pairs = { readonly starts: Int32Array; readonly others: Int32Array }

/** No place is nearer than the pitch, rounding included, to more than this many of a fill: six on a circle and one within. */
const MOST = 7

const byColumns = (fill: readonly Point[], pitch: number): ReadonlyMap<number, readonly number[]> => {
  const columns = new Map<number, number[]>()
  for (const [index, { x }] of fill.entries()) {
    const key = Math.floor(x / pitch)
    const column = columns.get(key)
    if (column === undefined) columns.set(key, [index])
    else column.push(index)
  }
  for (const column of columns.values()) column.sort((a, b) => item(fill, a).y - item(fill, b).y)
  return columns
}

const firstAbove = (fill: readonly Point[], column: readonly number[], y: number): number => {
  let [low, high] = [0, column.length]
  while (low < high) {
    const half = (low + high) >> 1
    if (item(fill, item(column, half)).y <= y) low = half + 1
    else high = half
  }
  return low
}

const crowdedPairs = (one: readonly Point[], two: readonly Point[], pitch: number): Pairs => {
  const columns = byColumns(two, pitch)
  const starts = new Int32Array(one.length + 1)
  const others = new Int32Array(one.length * MOST)
  let count = 0
  for (const [stone, { x, y }] of one.entries()) {
    const middle = Math.floor(x / pitch)
    for (let key = middle - 1; key <= middle + 1; key += 1) {
      const column = columns.get(key) ?? []
      for (let at = firstAbove(two, column, y - pitch); at < column.length; at += 1) {
        const index = item(column, at)
        const [dx, dy] = [item(two, index).x - x, item(two, index).y - y]
        if (dy >= pitch) break
        if (dx * dx + dy * dy >= pitch * pitch) continue
        others[count] = index
        count += 1
      }
    }
    starts[stone + 1] = count
  }
  return { starts, others }
}

/** Two fills matched stone by stone, each pair one that cannot both stand; -1 where a stone has none. */
type Matching = { readonly ofOne: Int32Array; readonly ofTwo: Int32Array }

/** The largest matching, by augmenting paths. */
const matched = ({ starts, others }: Pairs, ones: number, twos: number): Matching => {
  const ofOne = new Int32Array(ones).fill(-1)
  const ofTwo = new Int32Array(twos).fill(-1)
  const asked = new Int32Array(twos).fill(-1)
  const pair = (stone: number, other: number): true => {
    ofOne[stone] = other
    ofTwo[other] = stone
    return true
  }
  const augment = (stone: number, round: number): boolean => {
    const end = item(starts, stone + 1)
    for (let at = item(starts, stone); at < end; at += 1) {
      const other = item(others, at)
      if (ofTwo[other] === -1) return pair(stone, other)
    }
    for (let at = item(starts, stone); at < end; at += 1) {
      const other = item(others, at)
      if (asked[other] === round) continue
      asked[other] = round
      if (augment(item(ofTwo, other), round)) return pair(stone, other)
    }
    return false
  }
  for (let stone = 0; stone < ones; stone += 1) augment(stone, stone)
  return { ofOne, ofTwo }
}

/**
 * The most stones of two fills that can stand together: what crowds is always one of the first against one of the second, so
 * the largest set without a crowded pair is what a largest matching leaves uncovered (Kőnig 1931).
 */
export const joinFills = (one: readonly Point[], two: readonly Point[], pitch: number): readonly Point[] => {
  const pairs = crowdedPairs(one, two, pitch)
  const { ofOne, ofTwo } = matched(pairs, one.length, two.length)
  const kept = new Uint8Array(one.length)
  const gone = new Uint8Array(two.length)
  const open = [...one.keys()].filter((stone) => ofOne[stone] === -1)
  for (const stone of open) kept[stone] = 1
  for (let stone = open.pop(); stone !== undefined; stone = open.pop()) {
    for (let at = item(pairs.starts, stone); at < item(pairs.starts, stone + 1); at += 1) {
      const other = item(pairs.others, at)
      if (gone[other] === 1) continue
      gone[other] = 1
      const rival = item(ofTwo, other)
      if (kept[rival] === 1) continue
      kept[rival] = 1
      open.push(rival)
    }
  }
  return [...one.filter((_, stone) => kept[stone] === 1), ...two.filter((_, stone) => gone[stone] === 0)]
}
