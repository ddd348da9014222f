import Delaunator from 'delaunator'
import { between, cyclic, distance, item, type Point } from './point.ts'
import { insideTest, type Region } from './region.ts'

type Sample = { readonly at: Point; readonly polygon: number; readonly along: number }

/** Places inside a region and the links between them. */
export type Graph = {
  readonly places: Point[]
  /** Distance to the edge; 0 for places that are not inside. */
  readonly rooms: readonly number[]
  readonly links: readonly Set<number>[]
}

/** A link of the centre line parts edge places that lie at least this much farther apart along the edge than across. */
const DEPTH = 1.8

const sampleEdges = (region: Region, step: number): { samples: Sample[]; lengths: readonly number[] } => {
  const samples: Sample[] = []
  const lengths = region.map((polygon, index) => {
    let along = 0
    for (const [place, from] of polygon.entries()) {
      const to = cyclic(polygon, place + 1)
      const long = distance(from, to)
      const parts = Math.max(1, Math.ceil(long / step))
      for (let part = 0; part < parts; part += 1)
        samples.push({ at: between(from, to, part / parts), polygon: index, along: along + (long * part) / parts })
      along += long
    }
    return along
  })
  return { samples, lengths }
}

const circumcentre = (a: Point, b: Point, c: Point): Point | undefined => {
  const [bx, by, cx, cy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y]
  const twice = 2 * (bx * cy - by * cx)
  if (Math.abs(twice) < 1e-6) return undefined
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy]
  return { x: a.x + (cy * bb - by * cc) / twice, y: a.y + (bx * cc - cx * bb) / twice }
}

/** The part of the Voronoi diagram of the edge that lies inside and does not run into a corner. */
export const skeleton = (region: Region, step: number): Graph => {
  const { samples, lengths } = sampleEdges(region, step)
  const { triangles, halfedges } = Delaunator.from(
    samples,
    ({ at }) => at.x,
    ({ at }) => at.y,
  )
  const corner = (triangle: number, index: number): Sample => item(samples, item(triangles, 3 * triangle + index))
  const count = triangles.length / 3
  const isInside = insideTest(region)
  const places: (Point | undefined)[] = []
  for (let triangle = 0; triangle < count; triangle += 1) {
    const centre = circumcentre(corner(triangle, 0).at, corner(triangle, 1).at, corner(triangle, 2).at)
    places.push(centre !== undefined && isInside(centre) ? centre : undefined)
  }
  const isDeep = (a: Sample, b: Sample): boolean => {
    if (a.polygon !== b.polygon) return true
    const apart = Math.abs(a.along - b.along)
    const around = Math.min(apart, item(lengths, a.polygon) - apart)
    return around > DEPTH * distance(a.at, b.at) && around > 3 * step
  }
  const links = places.map(() => new Set<number>())
  for (let half = 0; half < triangles.length; half += 1) {
    const other = item(halfedges, half)
    if (other <= half) continue
    const [one, two] = [Math.floor(half / 3), Math.floor(other / 3)]
    if (places[one] === undefined || places[two] === undefined) continue
    const next = half % 3 === 2 ? half - 2 : half + 1
    if (!isDeep(item(samples, item(triangles, half)), item(samples, item(triangles, next)))) continue
    links[one]?.add(two)
    links[two]?.add(one)
  }
  const rooms = places.map((place, triangle) => (place === undefined ? 0 : distance(place, corner(triangle, 0).at)))
  return { places: places.map((place) => place ?? { x: 0, y: 0 }), rooms, links }
}
