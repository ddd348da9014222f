import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import * as z from 'zod'
import { packStrip } from '../../../src/domain/cutting/pack-strip.ts'
import { emptyStrip, heightOf, placeNext, type Size, type Spot } from '../../../src/domain/cutting/skyline.ts'

// Hopper & Turton, EJOR 128 (2001) 34-57, the authors' own test-data paper: 21 instances whose optimum is a perfect packing.
const instances = z
  .array(
    z.object({ name: z.string(), strip_width: z.int(), optimal_height: z.int(), items_hw: z.array(z.tuple([z.int(), z.int()])) }),
  )
  .parse(JSON.parse(readFileSync(new URL('../../fixtures/strip/hopper-turton.json', import.meta.url), 'utf8')))

const laidSize = (size: Size, spot: Spot): Size => (spot.turned ? { width: size.height, height: size.width } : size)

/** Nothing overlaps, nothing sticks out: looked at pair by pair. */
const isSound = (sizes: readonly Size[], spots: readonly Spot[], width: number, height: number): boolean => {
  const laid = sizes.map((size, index) => {
    const spot = spots[index] ?? { x: -1, y: -1, turned: false }
    return { ...spot, ...laidSize(size, spot) }
  })
  const inside = laid.every((one) => one.x >= 0 && one.y >= 0 && one.x + one.width <= width && one.y + one.height <= height)
  const apart = laid.every((a, index) =>
    laid
      .slice(index + 1)
      .every((b) => a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y),
  )
  return inside && apart
}

test('the published strips are packed soundly and on average at most 5 % above the optimum', () => {
  expect(instances).toHaveLength(21)
  const excess = instances.map(({ name, strip_width: width, optimal_height: optimum, items_hw: items }) => {
    const sizes = items.map(([height, wide]) => ({ width: wide, height }))
    const { height, spots } = packStrip(sizes, width, process.env['LONG'] === undefined ? 250 : 3_000)
    expect(isSound(sizes, spots, width, height), name).toBe(true)
    expect(height, name).toBeGreaterThanOrEqual(optimum)
    return height / optimum - 1
  })
  expect(excess.reduce((sum, one) => sum + one, 0) / 21).toBeLessThanOrEqual(0.05)
}, 120_000)

test('the same seed packs the same way', () => {
  const sizes = [5, 3, 8, 2, 6].map((width) => ({ width, height: 11 - width }))
  expect(packStrip(sizes, 12, 50, 7)).toEqual(packStrip(sizes, 12, 50, 7))
})

const size = fc.record({ width: fc.integer({ min: 1, max: 30 }), height: fc.integer({ min: 1, max: 30 }) })

test('any rectangles are packed soundly', () => {
  fc.assert(
    fc.property(fc.array(size, { maxLength: 30 }), (sizes) => {
      const { height, spots } = packStrip(sizes, 40, 5)
      expect(isSound(sizes, spots, 40, height)).toBe(true)
    }),
  )
})

test('rectangles placed one after another lie soundly, in their order, unturned unless they may turn', () => {
  fc.assert(
    fc.property(fc.array(size, { maxLength: 30 }), fc.boolean(), (sizes, mayTurn) => {
      const strip = emptyStrip(40)
      const spots = sizes.map((one) => placeNext(strip, one, mayTurn, Infinity) ?? { x: -1, y: -1, turned: false })
      expect(isSound(sizes, spots, 40, sizes.length === 0 ? 0 : heightOf(strip))).toBe(true)
      if (!mayTurn) expect(spots.some(({ turned }) => turned)).toBe(false)
    }),
  )
})
