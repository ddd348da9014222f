import { beforeAll, describe, expect, test } from 'vitest'
import type { Face } from '../../../src/domain/face/face.ts'
import { regionGap } from '../../../src/domain/geometry/nearness.ts'
import { contentKey } from '../../../src/domain/layout/content-key.ts'
import { countStones } from '../../../src/domain/layout/count.ts'
import type { PieceStones, StoneSetting, StoneStyle, TextRequest, TextShape } from '../../../src/domain/layout/layout.ts'
import { placeStones } from '../../../src/domain/layout/place-stones.ts'
import { roomForRows } from '../../../src/domain/layout/room.ts'
import { setText } from '../../../src/domain/layout/set-text.ts'
import { letterRegion, vinylShape } from '../../../src/domain/layout/vinyl-shape.ts'
import { fromInches, micrometres } from '../../../src/domain/units/units.ts'
import { offeredFaces } from '../../support/faces.ts'
import { allStones, crowdedPairs, stonesNearVinyl } from './stones.reference.ts'

let faces: ReadonlyMap<string, Face>

beforeAll(async () => {
  faces = await offeredFaces()
})

const face = (id: string): Face => {
  const found = faces.get(id)
  if (found === undefined) throw new Error(id)
  return found
}

const ask = (text: string, more: Partial<TextRequest> = {}) =>
  setText({ face: face('quantico-700'), text, height: fromInches(2), offered: [...faces.values()], ...more })

const shaped = (text: string, more: Partial<TextRequest> = {}): TextShape => {
  const shape = ask(text, more)
  if (!shape.ok) throw new Error(JSON.stringify(shape.problems))
  return shape.value
}

const codes = (result: ReturnType<typeof ask>): readonly string[] => (result.ok ? [] : result.problems.map(({ code }) => code))

const SS10: StoneSetting = { size: 'SS10', hole: micrometres(3_300), web: micrometres(500), edgeGap: micrometres(1_000) }
const twoRows: StoneStyle = { style: 'outline', rows: 2, contours: 'both' }

const laid = (shape: TextShape, style: StoneStyle, more: object = {}) => {
  const layout = placeStones(shape, { setting: SS10, style, ...more })
  if (!layout.ok) throw new Error(JSON.stringify(layout.problems))
  return layout.value
}

describe('setting text', () => {
  test('numbers have the asked height at their flat digit, names at their flat capital', () => {
    expect(shaped('1', { height: fromInches(10) }).height).toBe(254_000)
    expect(shaped('H', { face: face('anton') }).height).toBe(50_800)
  })

  test('a round digit stands over the height by its overshoot and no more than 4 %', () => {
    const { height } = shaped('0', { face: face('alfa-slab-one'), height: fromInches(8) })
    expect(height).toBeGreaterThan(203_200)
    expect(height).toBeLessThan(203_200 * 1.045)
  })

  test('quadratic curves are kept in the vinyl of a word whose letters stand apart', () => {
    const { contours } = vinylShape(shaped('DOCK', { face: face('anton') }), 'face')
    expect(contours.flatMap(({ segments }) => segments).some(({ kind }) => kind === 'quadratic')).toBe(true)
  })

  test('joined script letters become one outline', () => {
    const { contours } = vinylShape(shaped('ll', { face: face('pacifico') }), 'face')
    expect(contours.length).toBeLessThan(4)
  })

  test('a surround is wider than the letters by its own width on every side', () => {
    const shape = shaped('24')
    const surround = vinylShape(shape, { surround: micrometres(3_000) })
    expect(surround.box.right - surround.box.left).toBeCloseTo(shape.width + 6_000, -2)
  })

  test('a shadow reaches as far as it is thrown and hangs together with the letters', () => {
    const shape = shaped('7')
    const shadow = vinylShape(shape, { shadow: [micrometres(4_000), micrometres(-4_000)] })
    expect(shadow.box.right).toBeCloseTo(shape.box.right + 4_000, -1)
    expect(shadow.box.bottom).toBeCloseTo(shape.box.bottom - 4_000, -1)
    expect(shadow.contours).toHaveLength(1)
  })

  test('an arc lifts the middle over the ends by its rise, a slope the right end over the left', () => {
    const arc = shaped('HHHHHHH', { line: { kind: 'arc', rise: micrometres(20_000) } })
    const middle = arc.letters[3]
    const end = arc.letters[0]
    expect((middle?.at.y ?? 0) - (end?.at.y ?? 0)).toBeGreaterThan(12_000)
    expect((middle?.at.y ?? 0) - (end?.at.y ?? 0)).toBeLessThan(21_000)
    const slope = shaped('HHHHHHH', { line: { kind: 'slope', rise: micrometres(20_000) } })
    expect((slope.letters[6]?.at.y ?? 0) - (slope.letters[0]?.at.y ?? 0)).toBeGreaterThan(15_000)
  })

  test('a bend of more than half a circle is refused', () => {
    expect(codes(ask('HHHH', { line: { kind: 'arc', rise: fromInches(20) } }))).toEqual(['line-too-bent'])
  })
})

describe('fitting a width', () => {
  const natural = () => shaped('MONTGOMERY').width

  test('a name that fits is left alone', () => {
    expect(shaped('MONTGOMERY', { fitWidth: natural() }).fit).toEqual({ height: 50_800, tracking: 0, condensedPercent: 100 })
  })

  test('first letters are drawn together, then condensed to 85 %, then made smaller, and then it is refused', () => {
    const width = natural()
    const at = (percent: number, leastHeight?: number) =>
      ask('MONTGOMERY', {
        fitWidth: micrometres((width * percent) / 100),
        ...(leastHeight === undefined ? {} : { leastHeight: micrometres(leastHeight) }),
      })
    const [tracked, condensed, smaller] = [at(99), at(88), at(60, 20_000)]
    expect(tracked.ok && tracked.value.fit).toMatchObject({ height: 50_800, condensedPercent: 100 })
    expect(tracked.ok && tracked.value.fit.tracking).toBeLessThan(0)
    expect(condensed.ok && condensed.value.fit.condensedPercent).toBeLessThan(100)
    expect(condensed.ok && condensed.value.notes.map(({ code }) => code)).toEqual(['letters-condensed'])
    expect(smaller.ok && smaller.value.fit.condensedPercent).toBe(85)
    expect(smaller.ok && smaller.value.fit.height).toBeLessThan(50_800)
    for (const [result, percent] of [
      [tracked, 99],
      [condensed, 88],
      [smaller, 60],
    ] as const)
      expect(result.ok && result.value.width).toBeLessThanOrEqual((width * percent) / 100 + 1)
    expect(codes(at(60))).toEqual(['text-too-wide'])
    expect(codes(at(30, 40_000))).toEqual(['text-too-wide'])
  })

  test('numbers are condensed by 5 % at a time, so that those of a roster share their digits', () => {
    const numbers = Array.from({ length: 90 }, (_, index) => String(index + 10))
    const widest = Math.max(...numbers.map((number) => shaped(number, { height: fromInches(8) }).width))
    const condensed = numbers.map((number) => {
      const shape = shaped(number, { height: fromInches(8), fitWidth: micrometres(widest * 0.9) })
      expect(shape.width).toBeLessThanOrEqual(widest * 0.9)
      return shape.fit.condensedPercent
    })
    expect(new Set(condensed).size).toBeGreaterThan(1)
    for (const percent of condensed) expect([100, 95, 90, 85]).toContain(percent)
  })

  test('digits are tracked apart until each is a piece of its own', () => {
    const leastGap = roomForRows(SS10, twoRows)
    const shape = shaped('20', { face: face('anton'), height: fromInches(6.8), leastGap })
    const [two, zero] = shape.letters
    if (two === undefined || zero === undefined) throw new Error('two letters')
    expect(regionGap(letterRegion(two, 5), letterRegion(zero, 5), 1e9)).toBeGreaterThanOrEqual(leastGap - 30)
    expect(laid(shape, twoRows).pieces.map(({ text }) => text)).toEqual(['2', '0'])
  })

  test('where the width does not allow that, the digits become one piece and it is said', () => {
    const tight = shaped('20', { face: face('anton'), height: fromInches(6.8) })
    const shape = shaped('20', {
      face: face('anton'),
      height: fromInches(6.8),
      leastGap: micrometres(30_000),
      fitWidth: tight.width,
    })
    const layout = laid(shape, twoRows)
    expect(layout.pieces.map(({ text }) => text)).toEqual(['20'])
    expect(layout.flags.map(({ code }) => code)).toContain('letters-joined')
    expect(crowdedPairs(allStones(layout), 3_800)).toBe(0)
    expect(stonesNearVinyl(shape, layout, 2_620)).toBe(0)
  })
})

describe('stones of names', () => {
  test.each(['anton', 'quantico-700', 'alfa-slab-one', 'lobster', 'pacifico'])(
    'no stone of a name in %s crowds a neighbour or stands on its vinyl',
    (id) => {
      const shape = shaped('Wolverine', { face: face('lobster').id === id ? face('lobster') : face(id), height: fromInches(3) })
      const layout = laid(shape, { style: 'outline', rows: 1, contours: 'both' })
      expect(crowdedPairs(allStones(layout), 3_800)).toBe(0)
      expect(stonesNearVinyl(shape, layout, 2_620)).toBe(0)
    },
  )

  test.each(['pacifico', 'yellowtail', 'sacramento', 'kaushan-script', 'lobster'])(
    'a single line in %s lies inside the strokes',
    (id) => {
      const shape = shaped('Mary Lou', { face: face(id), height: fromInches(4) })
      const layout = laid(shape, { style: 'single-line' })
      expect(crowdedPairs(allStones(layout), 3_800)).toBe(0)
      expect(layout.count).toBeGreaterThan(40)
    },
  )

  test('rows inside keep the edge room on vinyl and half a hole on bare cloth', () => {
    const shape = shaped('5', { height: fromInches(8) })
    for (const [under, room] of [
      ['vinyl', 2_650],
      ['cloth', 1_650],
    ] as const) {
      const layout = laid(shape, { style: 'rows', rows: 3 }, { under })
      expect(stonesNearVinyl(shape, layout, room - 30), under).toBe(0)
      expect(crowdedPairs(allStones(layout), 3_800)).toBe(0)
    }
  })

  test('rows outside keep their room from the widest vinyl', () => {
    const shape = shaped('5', { height: fromInches(8) })
    const layout = laid(shape, twoRows, { around: { surround: micrometres(6_000) } })
    expect(stonesNearVinyl(shape, layout, 6_000 + 2_600)).toBe(0)
  })
})

test('a text is flagged once for each kind of hard case, naming its pieces', () => {
  const layout = laid(
    shaped('6868', { face: face('anton'), height: fromInches(4), leastGap: roomForRows(SS10, twoRows) }),
    twoRows,
  )
  const kinds = layout.flags.map((flag) => (flag.code === 'row-dropped' ? `${flag.code} ${flag.facts.row}` : flag.code))
  expect(kinds).toContain('corner-blunt')
  expect(new Set(kinds).size).toBe(kinds.length)
  expect(layout.flags.map(({ facts }) => ('text' in facts ? facts.text : ''))).toContain('6, 8')
})

describe('the cache and the count', () => {
  test('a roster costs its distinct pieces only, and a cached piece is the same as a fresh one', () => {
    const cache = new Map<string, PieceStones>()
    const leastGap = roomForRows(SS10, twoRows)
    const fresh = ['12', '21', '11'].map((text) => laid(shaped(text, { height: fromInches(8), leastGap }), twoRows, { cache }))
    expect(cache.size).toBe(2)
    const again = ['12', '21', '11'].map((text) => laid(shaped(text, { height: fromInches(8), leastGap }), twoRows))
    expect(fresh).toEqual(again)
    expect(JSON.parse(JSON.stringify([...cache.values()]))).toEqual([...cache.values()])
  })

  test('stones are counted in pieces, spare, whole gross and weight; templates with how often each is brushed', () => {
    const leastGap = roomForRows(SS10, twoRows)
    const uses = ['12', '21'].map((text) => ({
      layout: laid(shaped(text, { height: fromInches(8), leastGap }), twoRows),
      colour: 'crystal',
      quantity: 3,
    }))
    const { stones, templates } = countStones(uses, { percent: 5, grossMilligrams: () => 4_320 })
    const pieces = uses.reduce((sum, { layout }) => sum + layout.count * 3, 0)
    const spare = Math.ceil(pieces / 20)
    expect(stones).toEqual([
      {
        size: 'SS10',
        colour: 'crystal',
        pieces,
        spare,
        gross: Math.ceil((pieces + spare) / 144),
        milligrams: Math.round((pieces + spare) * 30),
      },
    ])
    expect(templates.map(({ text, brushed }) => [text, brushed])).toEqual([
      ['1', 6],
      ['2', 6],
    ])
  })
})

describe('bad input', () => {
  test.each([
    ['', ['text-empty']],
    ['   ', ['text-empty']],
    ['9'.repeat(500), ['text-too-long']],
    ['🏈', ['face-lacks']],
    ['שלום', ['text-right-to-left', 'face-lacks']],
    ['\u0000', ['face-lacks']],
  ])('%j is refused as %j', (text, expected) => {
    expect(codes(ask(text))).toEqual(expected)
  })

  test.each([0, -5, Number.NaN, 10_000_000])('a height of %d µm is refused', (height) => {
    const odd = { ...{ height: fromInches(1) }, height: height as never }
    expect(codes(ask('7', odd))).toEqual(['height-impossible'])
  })

  test('a text that would take more stones than two hundred gross is refused before any is laid', () => {
    const shape = shaped('8'.repeat(60), { height: micrometres(1_200_000) })
    const layout = placeStones(shape, { setting: SS10, style: { style: 'solid' } })
    expect(layout.ok ? [] : layout.problems.map(({ code }) => code)).toEqual(['stones-too-many'])
  })

  test('fifty rows, a hole of nothing and a stone larger than the letter are refused, each in its words', () => {
    const shape = shaped('7', { height: micrometres(6_000) })
    const problems = (plan: { setting: StoneSetting; style: StoneStyle }) => {
      const layout = placeStones(shape, plan)
      return layout.ok ? [] : layout.problems.map(({ code }) => code)
    }
    expect(problems({ setting: SS10, style: { style: 'outline', rows: 50, contours: 'both' } })).toEqual(['too-many-rows'])
    expect(problems({ setting: { ...SS10, hole: micrometres(0) }, style: twoRows })).toEqual(['stone-setting-impossible'])
    expect(problems({ setting: SS10, style: { style: 'rows', rows: 1 } })).toEqual(['no-room-for-stones'])
  })
})

test('a piece is named by engine, face, letters, setting and style: another of any is another piece', () => {
  const shape = shaped('7', { height: fromInches(8) })
  const parts = { setting: SS10, style: twoRows, around: 'face', under: 'vinyl' } as const
  const key = contentKey(shape, shape.letters, parts)
  const taller = shaped('7', { height: fromInches(9) })
  const others = [
    contentKey(shape, shape.letters, parts, 0),
    contentKey({ ...shape, fingerprint: 'another file' }, shape.letters, parts),
    contentKey(taller, taller.letters, parts),
    contentKey(shape, shape.letters, { ...parts, setting: { ...SS10, hole: micrometres(3_310) } }),
    contentKey(shape, shape.letters, { ...parts, style: { style: 'rows', rows: 2 } }),
    contentKey(shape, shape.letters, { ...parts, around: { surround: micrometres(3_000) } }),
    contentKey(shape, shape.letters, { ...parts, under: 'cloth' }),
  ]
  expect(new Set([key, ...others]).size).toBe(others.length + 1)
  expect(contentKey(shaped('7', { height: fromInches(8) }), shape.letters, parts)).toBe(key)
})
