import { Polygon as Flat } from '@flatten-js/core'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { flatten, fromPolygon } from '../../../src/domain/geometry/contour.ts'
import { regionGap, toEdges } from '../../../src/domain/geometry/nearness.ts'
import { distance } from '../../../src/domain/geometry/point.ts'
import { isInside, offset, outerEdges, regionArea, signedArea, united, without } from '../../../src/domain/geometry/region.ts'

const square = (left: number, bottom: number, side: number) => [
  { x: left, y: bottom },
  { x: left + side, y: bottom },
  { x: left + side, y: bottom + side },
  { x: left, y: bottom + side },
]

const star = fc.array(fc.integer({ min: 2_000, max: 60_000 }), { minLength: 3, maxLength: 24 }).map((radii) =>
  radii.map((radius, index) => {
    const angle = (2 * Math.PI * index) / radii.length
    return { x: Math.round(radius * Math.cos(angle)), y: Math.round(radius * Math.sin(angle)) }
  }),
)

test('the shoelace area of any star agrees with @flatten-js/core', () => {
  fc.assert(
    fc.property(star, (points) => {
      const flat = new Flat(points.map(({ x, y }): [number, number] => [x, y]))
      expect(Math.abs(signedArea(points))).toBeCloseTo(flat.area(), 3)
    }),
  )
})

test('overlapping squares become one region with the area of both less their overlap', () => {
  const joined = united([square(0, 0, 10_000), square(5_000, 5_000, 10_000)])
  expect(joined).toHaveLength(1)
  expect(regionArea(joined)).toBe(175_000_000)
})

test('a square with a hole keeps it through union, and loses it when only outer edges are asked', () => {
  const ring = without([square(0, 0, 10_000)], [square(3_000, 3_000, 4_000)])
  expect(regionArea(ring)).toBe(84_000_000)
  expect(regionArea(outerEdges(ring))).toBe(100_000_000)
})

test('a square widened by 1 mm keeps its corners sharp', () => {
  expect(regionArea(offset([square(0, 0, 10_000)], 1_000))).toBe(144_000_000)
})

test('every place on a widened star keeps the distance from it', () => {
  fc.assert(
    fc.property(star, fc.integer({ min: 500, max: 5_000 }), (points, by) => {
      const region = united([points])
      for (const point of offset(region, by).flat()) expect(toEdges(point, region)).toBeGreaterThan(by - 3)
    }),
    { numRuns: 50 },
  )
})

test('the gap between two squares is the distance of their nearest corners, and 0 when they overlap', () => {
  expect(regionGap([square(0, 0, 1_000)], [square(4_000, 5_000, 1_000)], 1e9)).toBeCloseTo(5_000, 6)
  expect(regionGap([square(0, 0, 1_000)], [square(500, 500, 1_000)], 1e9)).toBe(0)
})

test('a cross of two bars has no gap although no corner of one lies in the other', () => {
  const bar = (x: number, y: number) => [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ]
  expect(regionGap([bar(5_000, 500)], [bar(500, 5_000)], 1e9)).toBe(0)
})

test('a flattened quadratic stays within the asked tolerance of the curve', () => {
  const [from, control, to] = [
    { x: 0, y: 0 },
    { x: 50_000, y: 90_000 },
    { x: 100_000, y: 0 },
  ]
  const points = flatten({ start: from, segments: [{ kind: 'quadratic', control, to }] }, 20)
  const polygon = [points]
  for (let step = 0; step <= 1_000; step += 1) {
    const t = step / 1_000
    const on = { x: 2 * (1 - t) * t * control.x + t * t * to.x, y: 2 * (1 - t) * t * control.y }
    expect(toEdges(on, polygon)).toBeLessThanOrEqual(20)
  }
  expect(points.length).toBeLessThan(60)
})

test('a place is inside when a ray from it crosses the edge an odd number of times', () => {
  const ring = without([square(0, 0, 10_000)], [square(3_000, 3_000, 4_000)])
  expect(isInside(ring, { x: 1_000, y: 1_000 })).toBe(true)
  expect(isInside(ring, { x: 5_000, y: 5_000 })).toBe(false)
  expect(isInside(ring, { x: -1, y: 5_000 })).toBe(false)
})

test('a polygon made a curve and flattened again is the same polygon', () => {
  const points = square(0, 0, 7_000)
  expect(flatten(fromPolygon(points), 1)).toEqual(points)
  expect(distance({ x: 0, y: 0 }, { x: 3, y: 4 })).toBe(5)
})
