import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import type { Face } from '../../../src/domain/face/face.ts'
import { offset, united } from '../../../src/domain/geometry/region.ts'
import { hexFill, mostStones } from '../../../src/domain/layout/hex.ts'
import { joinFills } from '../../../src/domain/layout/join-fills.ts'
import type { StoneSetting, StoneStyle } from '../../../src/domain/layout/layout.ts'
import { placeStones } from '../../../src/domain/layout/place-stones.ts'
import { ringStones } from '../../../src/domain/layout/ring-stones.ts'
import { setText } from '../../../src/domain/layout/set-text.ts'
import { letterRegion } from '../../../src/domain/layout/vinyl-shape.ts'
import { fromInches, micrometres } from '../../../src/domain/units/units.ts'
import { offeredFaces } from '../../support/faces.ts'
import { allStones, crowdedPairs } from './stones.reference.ts'

let faces: ReadonlyMap<string, Face>

beforeAll(async () => {
  faces = await offeredFaces()
})

const face = (id: string): Face => {
  const found = faces.get(id)
  if (found === undefined) throw new Error(id)
  return found
}

const circle = (radius: number) =>
  Array.from({ length: 3_600 }, (_, index) => {
    const angle = (2 * Math.PI * index) / 3_600
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) }
  })

const rectangle = (width: number, height: number) => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
]

const setting = (hole: number, edgeGap = 1_000): StoneSetting => ({
  size: 'SS',
  hole: micrometres(hole),
  web: micrometres(500),
  edgeGap: micrometres(edgeGap),
})

const count = (id: string, digit: string, inches: number, plan: { setting: StoneSetting; style: StoneStyle }): number => {
  const shape = setText({ face: face(id), text: digit, height: fromInches(inches) })
  const layout = shape.ok ? placeStones(shape.value, plan) : shape
  return layout.ok ? layout.value.count : 0
}

const outline = (rows: number): StoneStyle => ({ style: 'outline', rows, contours: 'both' })

// A regular polygon with n corners of side p inscribed in a circle: n = floor(π / asin(p / 2r)) chords fit (elementary geometry).
test('a circle takes as many stones as chords of the pitch fit round it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 8_000, max: 120_000 }), fc.integer({ min: 2_700, max: 6_000 }), (radius, pitch) => {
      const fits = (r: number): number => Math.floor(Math.PI / Math.asin(pitch / (2 * r)))
      fc.pre(fits(radius - 1) === fits(radius + 1))
      expect(ringStones(circle(radius), pitch).stones).toHaveLength(fits(radius))
    }),
    { numRuns: 150, seed: 20 },
  )
})

// Between corner stones each side holds floor(side / pitch) (elementary).
test('a rectangle takes a stone on each corner and as many between as its sides hold', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 12_000, max: 200_000 }),
      fc.integer({ min: 12_000, max: 200_000 }),
      fc.integer({ min: 2_700, max: 6_000 }),
      (a, b, pitch) => {
        const { stones, corners } = ringStones(rectangle(a, b), pitch)
        expect(stones).toHaveLength(2 * Math.floor(a / pitch) + 2 * Math.floor(b / pitch))
        for (const corner of rectangle(a, b))
          expect(stones.some(({ point }) => Math.hypot(point.x - corner.x, point.y - corner.y) < 1)).toBe(true)
        expect(corners).toHaveLength(4)
      },
    ),
    { numRuns: 150, seed: 21 },
  )
})

// A hexagonal lattice laid into one corner of a rectangle (elementary); the best of many phases holds at least as many.
test('a hexagonal fill of a rectangle holds at least the lattice laid into its corner, and no more than the bound', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 15_000, max: 90_000 }),
      fc.integer({ min: 15_000, max: 90_000 }),
      fc.integer({ min: 2_700, max: 6_000 }),
      (a, b, pitch) => {
        const rows = Math.floor((b - 1) / ((pitch * Math.sqrt(3)) / 2)) + 1
        const odd = Math.floor((a - pitch / 2) / pitch) + 1
        const corner = Math.ceil(rows / 2) * (Math.floor(a / pitch) + 1) + Math.floor(rows / 2) * odd
        const found = hexFill([rectangle(a, b)], pitch)
        expect(found.length).toBeGreaterThanOrEqual(corner)
        expect(found.length).toBeLessThanOrEqual(mostStones([rectangle(a, b)], pitch))
      },
    ),
    { numRuns: 80, seed: 22 },
  )
})

// Points of the hexagonal lattice within 1, √3, 2, √7, 3, √12, √13 and 4 spacings of one of them (OEIS A038589 / theta series, from memory).
test('a hexagonal fill of a disc holds at least the lattice points round its middle', () => {
  const rings = [
    [1, 7],
    [Math.sqrt(3), 13],
    [2, 19],
    [Math.sqrt(7), 31],
    [3, 37],
    [Math.sqrt(12), 43],
    [Math.sqrt(13), 55],
    [4, 61],
  ] as const
  for (const [radius, points] of rings) {
    const found = hexFill([circle(radius * 3_000 * 1.02)], 3_000)
    expect(found.length, `within ${radius}`).toBeGreaterThanOrEqual(points - (radius > 3 ? 1 : 0))
    expect(
      crowdedPairs(
        found.map(({ x, y }) => [x, y] as const),
        2_999,
      ),
    ).toBe(0)
  }
})

// Oler 1961, Folkman and Graham 1969 (from memory): N ≤ (2/√3)·A/p² + P/(2p) + χ.
test('solid wide block digits at 8 in hold at least 88 % of the most stones that could stand in them', () => {
  for (const id of ['quantico-700', 'russo-one']) {
    for (const digit of '0123456789') {
      const shape = setText({ face: face(id), text: digit, height: fromInches(8) })
      if (!shape.ok) throw new Error(id)
      const layout = placeStones(shape.value, { setting: setting(3_300), style: { style: 'solid' } })
      if (!layout.ok) throw new Error(id)
      for (const { evidence } of layout.value.pieces) expect(evidence.fill, `${id} ${digit}`).toBeGreaterThanOrEqual(0.88)
      expect(crowdedPairs(allStones(layout.value), 3_800)).toBe(0)
    }
  }
}, 60_000)

type Spot = { readonly x: number; readonly y: number }

const crowd = (a: Spot, b: Spot, pitch: number): boolean => Math.hypot(a.x - b.x, a.y - b.y) < pitch

/** Those that keep the pitch from all taken before them. */
const spacedApart = (places: readonly Spot[], pitch: number): readonly Spot[] => {
  const taken: Spot[] = []
  for (const place of places) if (!taken.some((other) => crowd(place, other, pitch))) taken.push(place)
  return taken
}

/** The size of the largest set without a crowded pair, by trying with and without each. */
const mostOf = ([first, ...rest]: readonly Spot[], pitch: number): number =>
  first === undefined
    ? 0
    : Math.max(
        mostOf(rest, pitch),
        1 +
          mostOf(
            rest.filter((other) => !crowd(first, other, pitch)),
            pitch,
          ),
      )

const bareShares = (id: string): readonly number[] =>
  [...'0123456789'].map((digit) => {
    const shape = setText({ face: face(id), text: digit, height: fromInches(8) })
    if (!shape.ok) throw new Error(id)
    const inside = offset(united(shape.value.letters.flatMap((letter) => letterRegion(letter, 20))), -2_650)
    const fill = hexFill(inside, 3_800)
    expect(
      crowdedPairs(
        fill.map(({ x, y }) => [x, y]),
        3_799.99,
      ),
      `${id} ${digit}`,
    ).toBe(0)
    return fill.length / mostStones(inside, 3_800)
  })

test('the bare hexagonal fill of every numeral face at 8 in holds at least 88 % of the bound, and nothing crowds', () => {
  for (const { id, kind } of faces.values())
    if (kind === 'numeral') expect(Math.min(...bareShares(id)), id).toBeGreaterThanOrEqual(0.88)
}, 60_000)

test('two fills are joined into the most stones that can stand together, as trying every choice finds', () => {
  const place = fc.record({ x: fc.integer({ min: 0, max: 9 }), y: fc.integer({ min: 0, max: 9 }) })
  const fill = fc.array(place, { maxLength: 6 }).map((places) => spacedApart(places, 3))
  fc.assert(
    fc.property(fill, fill, (one, two) => {
      const joined = joinFills(one, two, 3)
      expect(spacedApart(joined, 3)).toHaveLength(joined.length)
      expect(joined).toHaveLength(mostOf([...one, ...two], 3))
    }),
    { numRuns: 200, seed: 23 },
  )
})

test('doubling letters, holes, webs and gaps keeps the count', () => {
  const doubled = { size: 'SS', hole: micrometres(6_600), web: micrometres(1_000), edgeGap: micrometres(2_000) }
  for (const id of ['quantico-700', 'anton', 'alfa-slab-one']) {
    for (const digit of '0258') {
      const small = count(id, digit, 6, { setting: setting(3_300), style: outline(1) })
      const large = count(id, digit, 12, { setting: doubled, style: outline(1) })
      expect(Math.abs(small - large), `${id} ${digit}`).toBeLessThanOrEqual(1)
    }
  }
})

test('a larger pitch never gives more stones', () => {
  for (const id of ['quantico-700', 'anton', 'bebas-neue']) {
    for (const digit of '0347') {
      const counts = [2_400, 2_900, 3_400, 3_900, 4_400].map((hole) =>
        count(id, digit, 8, { setting: setting(hole, 3_400 - hole / 2), style: outline(1) }),
      )
      expect(counts, `${id} ${digit}`).toEqual([...counts].sort((a, b) => b - a))
    }
  }
})

test('the same request gives the same stones, to the last micrometre', () => {
  const once = (): string => {
    const shape = setText({ face: face('black-ops-one'), text: '83', height: fromInches(6) })
    return JSON.stringify(shape.ok ? placeStones(shape.value, { setting: setting(3_300), style: outline(2) }) : shape)
  }
  expect(once()).toBe(once())
})
