import fc from 'fast-check'
import { expect, test } from 'vitest'
import { centreLines } from '../../../src/domain/geometry/centre-line.ts'
import { cornersOf } from '../../../src/domain/geometry/corners.ts'
import { createGrid } from '../../../src/domain/geometry/grid.ts'
import { axisOf, closeHalf, isMirrored, leftHalf, mirroredOutside } from '../../../src/domain/geometry/mirror.ts'
import { distance } from '../../../src/domain/geometry/point.ts'
import { united, without } from '../../../src/domain/geometry/region.ts'
import { chordStep, pointOn, ringOf } from '../../../src/domain/geometry/ring.ts'

const polygon = (corners: number, radius: number) =>
  Array.from({ length: corners }, (_, index) => {
    const angle = (2 * Math.PI * index) / corners
    return { x: Math.round(radius * Math.cos(angle)), y: Math.round(radius * Math.sin(angle)) }
  })

test('a step along a ring ends exactly a chord away, as a slow walk finds it', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 5, max: 60 }),
      fc.integer({ min: 500, max: 9_000 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (corners, chord, share) => {
        const ring = ringOf(polygon(corners, 20_000))
        const from = share * ring.length
        const found = chordStep(ring, from, chord, from + ring.length)
        const start = pointOn(ring, from)
        expect(distance(pointOn(ring, found), start)).toBeCloseTo(chord, 3)
        for (let along = from; along < found - 1; along += (found - from) / 40)
          expect(distance(pointOn(ring, along), start)).toBeLessThanOrEqual(chord + 1e-6)
      },
    ),
  )
})

test('an octagon has eight corners, a circle has none', () => {
  expect(cornersOf(ringOf(polygon(8, 30_000)), 600)).toHaveLength(8)
  expect(cornersOf(ringOf(polygon(200, 30_000)), 600)).toHaveLength(0)
})

test('a corner rounded off more tightly than the window is one corner in its middle', () => {
  const tight = Array.from({ length: 10 }, (_, index) => {
    const angle = (Math.PI / 2) * (index / 9)
    return { x: 20_000 - 100 + Math.round(100 * Math.cos(angle)), y: 20_000 - 100 + Math.round(100 * Math.sin(angle)) }
  })
  const ring = ringOf([{ x: 0, y: 0 }, { x: 20_000, y: 0 }, ...tight, { x: 0, y: 20_000 }])
  const corners = cornersOf(ring, 600)
  expect(corners).toHaveLength(4)
  const places = corners.map(({ along }) => pointOn(ring, along))
  expect(places.some((place) => distance(place, { x: 19_971, y: 19_971 }) < 5)).toBe(true)
})

test('the grid finds what brute force finds', () => {
  const place = fc.record({ x: fc.integer({ min: -9_000, max: 9_000 }), y: fc.integer({ min: -9_000, max: 9_000 }) })
  fc.assert(
    fc.property(fc.array(place, { maxLength: 60 }), place, (points, at) => {
      const grid = createGrid(2_000)
      for (const [id, point] of points.entries()) grid.add(id, point)
      const near = points.flatMap((point, id) => (distance(point, at) < 1_500 ? [id] : []))
      expect([...grid.near(at, 1_500)].sort((a, b) => a - b)).toEqual(near)
      grid.remove(0)
      expect(grid.near(at, 1_500)).not.toContain(0)
    }),
  )
})

test('a bar has one centre line that ends half its width before its ends', () => {
  const bar = [
    { x: 0, y: 0 },
    { x: 60_000, y: 0 },
    { x: 60_000, y: 8_000 },
    { x: 0, y: 8_000 },
  ]
  const lines = centreLines([bar], 500, 4_000)
  expect(lines).toHaveLength(1)
  const line = lines[0]?.points ?? []
  for (const { y } of line) expect(Math.abs(y - 4_000)).toBeLessThan(30)
  const ends = line.map(({ x }) => x)
  expect(Math.min(...ends)).toBeLessThan(5_500)
  expect(Math.max(...ends)).toBeGreaterThan(54_500)
})

test('a plus has two centre lines that go straight through its middle', () => {
  const across = [
    { x: -30_000, y: -3_000 },
    { x: 30_000, y: -3_000 },
    { x: 30_000, y: 3_000 },
    { x: -30_000, y: 3_000 },
  ]
  const plus = united([across, across.map(({ x, y }) => ({ x: -y, y: x }))])
  expect(centreLines(plus, 500, 4_000)).toHaveLength(2)
})

test('a ring has one closed centre line', () => {
  const ring = without([polygon(90, 20_000)], [polygon(90, 12_000)])
  const lines = centreLines(ring, 500, 4_000)
  expect(lines.map(({ closed }) => closed)).toEqual([true])
  for (const { x, y } of lines[0]?.points ?? []) expect(Math.abs(Math.hypot(x, y) - 16_000)).toBeLessThan(60)
})

test('what is nearly its own mirror image is, with its image, exactly so', () => {
  const nearly = [
    { x: 0, y: 0 },
    { x: 10_000, y: 0 },
    { x: 10_000, y: 20_100 },
    { x: 0, y: 20_000 },
  ]
  const axis = axisOf([nearly])
  expect(isMirrored([nearly], axis, 200)).toBe(true)
  expect(isMirrored([nearly], axis, 50)).toBe(false)
  const [both = []] = mirroredOutside([nearly], axis)
  const half = leftHalf(both, axis) ?? []
  const closed = closeHalf(half, axis)
  for (const { x, y } of closed) expect(closed.some((other) => other.x === 2 * axis - x && other.y === y)).toBe(true)
})
