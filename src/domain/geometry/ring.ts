import { distance, item, type Point } from './point.ts'

/** A closed line with the way along it to each vertex; `way` ends with the whole length. */
export type Ring = { readonly points: readonly Point[]; readonly way: Float64Array; readonly length: number }

/** The ring through the points; `first` becomes the start. */
export const ringOf = (points: readonly Point[], first = 0): Ring => {
  const count = points.length
  const turned = first === 0 ? points : [...points.slice(first), ...points.slice(0, first)]
  const way = new Float64Array(count + 1)
  let along = 0
  for (let index = 0; index < count; index += 1) {
    along += distance(item(turned, index), item(turned, (index + 1) % count))
    way[index + 1] = along
  }
  return { points: turned, way, length: along }
}

const stretchAt = (way: Float64Array, along: number): number => {
  let [low, high] = [0, way.length - 2]
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (item(way, middle) <= along) low = middle
    else high = middle - 1
  }
  return low
}

/** The way along the ring, brought into one round. */
export const onRing = (ring: Ring, along: number): number => {
  const rest = along % ring.length
  return rest < 0 ? rest + ring.length : rest
}

export const pointOn = (ring: Ring, along: number): Point => {
  const rest = onRing(ring, along)
  const index = stretchAt(ring.way, rest)
  const from = item(ring.points, index)
  const to = item(ring.points, (index + 1) % ring.points.length)
  const start = item(ring.way, index)
  const long = item(ring.way, index + 1) - start
  const share = long === 0 ? 0 : (rest - start) / long
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
}

/** Where a stretch leaves the circle round `centre`, as a share of the stretch; above 1 when it does not. */
const leaves = (from: Point, to: Point, centre: Point, radius: number): number => {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const [fx, fy] = [from.x - centre.x, from.y - centre.y]
  const a = dx * dx + dy * dy
  const b = fx * dx + fy * dy
  const c = fx * fx + fy * fy - radius * radius
  const under = b * b - a * c
  return a === 0 || under < 0 ? 2 : (-b + Math.sqrt(under)) / a
}

/**
 * The first way beyond `from` at which the straight distance from there is `chord`, looking no farther than `limit`;
 * Infinity when there is none. Ways may run past the ring's length.
 */
export const chordStep = (ring: Ring, from: number, chord: number, limit: number): number => {
  const count = ring.points.length
  const rest = onRing(ring, from)
  const centre = pointOn(ring, rest)
  const base = from - rest
  let index = stretchAt(ring.way, rest)
  let start: Point = centre
  let done = from
  while (done < limit) {
    const to = item(ring.points, (index + 1) % count)
    const end = base + Math.floor(index / count) * ring.length + item(ring.way, (index % count) + 1)
    const square = (to.x - centre.x) * (to.x - centre.x) + (to.y - centre.y) * (to.y - centre.y)
    if (square >= chord * chord) {
      const share = leaves(start, to, centre, chord)
      if (share <= 1) return done + Math.max(0, share) * (end - done)
    }
    start = to
    done = end
    index += 1
  }
  return Infinity
}

/** An open line as a ring that goes out and comes back the same way; the line's far end lies at half its length. */
export const thereAndBack = (line: readonly Point[]): Ring => ringOf([...line, ...line.slice(1, -1).reverse()])
