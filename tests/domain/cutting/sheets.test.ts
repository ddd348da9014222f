import { createRequire } from 'node:module'
import { Resvg } from '@resvg/resvg-js'
import { Helper } from 'dxf'
import type { DxfParser as Parser } from 'dxf-parser'
import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import { packInTurn } from '../../../src/domain/cutting/pack-in-turn.ts'
import type { Sheet, SheetWords } from '../../../src/domain/cutting/sheet.ts'
import { sheetDxf } from '../../../src/domain/cutting/sheet-dxf.ts'
import { sheetSvg } from '../../../src/domain/cutting/sheet-svg.ts'
import { emptyStrip, heightOf, placeNext } from '../../../src/domain/cutting/skyline.ts'
import { coupon, templateSheets } from '../../../src/domain/cutting/template-sheets.ts'
import { type CutPart, type Roll, usualCutRoom, vinylSheet } from '../../../src/domain/cutting/vinyl-sheets.ts'
import type { Face } from '../../../src/domain/face/face.ts'
import { contoursBox, flatten } from '../../../src/domain/geometry/contour.ts'
import { signedArea } from '../../../src/domain/geometry/region.ts'
import { placeStones } from '../../../src/domain/layout/place-stones.ts'
import { setText } from '../../../src/domain/layout/set-text.ts'
import { vinylShape } from '../../../src/domain/layout/vinyl-shape.ts'
import { fromInches, micrometres } from '../../../src/domain/units/units.ts'
import { offeredFaces } from '../../support/faces.ts'

/** The package gives its class as the whole module, which its types do not say. */
const DxfParser: typeof Parser = createRequire(import.meta.url)('dxf-parser')

let face: Face

beforeAll(async () => {
  const found = (await offeredFaces()).get('anton')
  if (found === undefined) throw new Error('anton')
  face = found
})

const words: SheetWords = {
  backwards: 'READS BACKWARDS',
  right: 'READS RIGHT',
  top: 'TOP',
  kerf: (length) => `kerf ${length / 1000} mm`,
  blade: (length) => `blade ${length / 1000} mm`,
}

const roll = (more: Partial<Roll> = {}): Roll => ({
  id: 'glitter-white',
  cut: 'mirrored',
  grain: false,
  width: micrometres(508_000),
  margin: micrometres(10_000),
  kerf: micrometres(100),
  bladeOffset: micrometres(250),
  ...more,
})

const part = (text: string, inches: number, tag = text): CutPart => {
  const shape = setText({ face, text, height: fromInches(inches) })
  if (!shape.ok) throw new Error(text)
  const { contours, box } = vinylShape(shape.value, 'face')
  return { key: tag, tag, contours, box, centre: (shape.value.box.left + shape.value.box.right) / 2 }
}

const cut = (parts: readonly CutPart[], more: Partial<Roll> = {}) => {
  const sheet = vinylSheet(parts, roll(more), words)
  if (!sheet.ok) throw new Error(JSON.stringify(sheet.problems))
  return sheet.value
}

const texts = (sheet: Sheet): readonly string[] =>
  [...sheet.marks, ...sheet.parts.flatMap(({ marks }) => marks)].flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))

const template = (text: string) => {
  const shape = setText({ face, text, height: fromInches(4) })
  if (!shape.ok) throw new Error(text)
  const setting = { size: 'SS10', hole: micrometres(3_300), web: micrometres(500), edgeGap: micrometres(1_000) }
  const layout = placeStones(shape.value, { setting, style: { style: 'outline', rows: 1, contours: 'both' } })
  const piece = layout.ok ? layout.value.pieces[0] : undefined
  if (piece === undefined) throw new Error(text)
  return { key: piece.key, piece, hole: setting.hole, lines: [text, '101.6 mm', 'SS10', 'job 12'] }
}

const templates = (list: string) => {
  const sheets = templateSheets([...list].map(template), { width: micrometres(304_800), height: micrometres(304_800) }, words)
  if (!sheets.ok) throw new Error(JSON.stringify(sheets.problems))
  return sheets.value
}

describe('vinyl sheets', () => {
  test('every name is one part with a weeding box round it, its tag beside the box and ticks for centre and baseline', () => {
    const sheet = cut([part('ADAMS', 2, 'job 1 · row 1 · name'), part('12', 8, 'job 1 · row 1 · back')])
    expect(sheet.parts.map(({ tag }) => tag)).toEqual(['job 1 · row 1 · name', 'job 1 · row 1 · back'])
    for (const { contours, frame, marks } of sheet.parts) {
      const box = contoursBox(contours)
      expect(box.left - frame.left).toBeCloseTo(3_000, -2)
      expect(frame.top - box.top).toBeCloseTo(3_000, -2)
      expect(marks.filter(({ kind }) => kind === 'tick')).toHaveLength(4)
      for (const mark of marks) if (mark.kind === 'text') expect(mark.at.y).toBeLessThan(frame.bottom)
    }
  })

  test('vinyl with a clear carrier reads backwards, printed vinyl reads right, and the sheet says so with kerf and blade', () => {
    const seven = part('7', 8)
    const [mirrored, plain] = [cut([seven]), cut([seven], { cut: 'as-read' })]
    expect(texts(mirrored)[0]).toBe('READS BACKWARDS · glitter-white · kerf 0.1 mm · blade 0.25 mm')
    expect(texts(plain)[0]).toContain('READS RIGHT')
    const xs = (sheet: Sheet): readonly number[] => {
      const [only] = sheet.parts
      const points = (only?.contours ?? []).flatMap((contour) => flatten(contour, 20))
      const left = Math.min(...points.map(({ x }) => x))
      return points.map(({ x }) => Math.round(x - left)).sort((a, b) => a - b)
    }
    const width = Math.max(...xs(plain))
    const turned = xs(plain)
      .map((x) => width - x)
      .reverse()
    for (const [index, x] of xs(mirrored).entries()) expect(Math.abs(x - (turned[index] ?? 0))).toBeLessThanOrEqual(1)
    expect(xs(mirrored)).not.toEqual(xs(plain))
  })

  test('parts keep 3 mm between their boxes, lie on the roll and come in the roster order from its start', () => {
    const parts = Array.from({ length: 24 }, (_, index) => part(String(10 + index), 8, `row ${index + 1}`))
    const sheet = cut(parts)
    const frames = sheet.parts.map(({ frame }) => frame)
    for (const [index, a] of frames.entries()) {
      expect(a.left).toBeGreaterThanOrEqual(10_000)
      expect(a.right).toBeLessThanOrEqual(498_001)
      expect(a.top).toBeLessThan(sheet.length)
      for (const b of frames.slice(index + 1)) {
        const across = Math.max(b.left - a.right, a.left - b.right)
        const along = Math.max(b.bottom - a.top, a.bottom - b.top)
        expect(Math.max(across, along)).toBeGreaterThanOrEqual(usualCutRoom.partGap - 1)
      }
    }
    expect(sheet.parts.map(({ tag }) => tag)).toEqual(parts.map(({ tag }) => tag))
    expect(frames[0]?.bottom).toBeLessThan(10_000)
    expect(sheet.usedLength).toBe(sheet.length)
  })

  test('a part too wide for the roll is turned, but not when the material has grain: then it is refused by its tag', () => {
    const wide = part('MONTGOMERYS', 3, 'row 5 · name')
    expect(cut([wide], { width: micrometres(300_000) }).parts[0]?.turned).toBe(true)
    const refused = vinylSheet([wide], roll({ width: micrometres(300_000), grain: true }), words)
    expect(refused.ok ? [] : refused.problems).toMatchObject([{ code: 'part-wider-than-roll', facts: { tag: 'row 5 · name' } }])
  })

  test('turning a part keeps its area', () => {
    const wide = part('MONTGOMERYS', 3)
    const area = (list: CutPart['contours']): number =>
      Math.abs(list.reduce((sum, contour) => sum + signedArea(flatten(contour, 20)), 0))
    const [turned] = cut([wide], { width: micrometres(300_000) }).parts
    expect(area(turned?.contours ?? []) / area(wide.contours)).toBeCloseTo(1, 6)
  })
})

describe('parts nearly in turn', () => {
  const size = fc.record({ width: fc.integer({ min: 60, max: 310 }), height: fc.integer({ min: 60, max: 220 }) })
  const turnsOf = (sizes: readonly { width: number; height: number }[]) => sizes.map((one) => ({ size: one, mayTurn: false }))

  test('lie apart on the strip, whatever their sizes', () => {
    fc.assert(
      fc.property(fc.array(size, { maxLength: 30 }), (sizes) => {
        const { spots, height } = packInTurn(turnsOf(sizes), 490)
        const boxes = sizes.map((one, index) => ({ ...one, x: spots[index]?.x ?? Infinity, y: spots[index]?.y ?? Infinity }))
        for (const [index, a] of boxes.entries()) {
          expect(a.x + a.width).toBeLessThanOrEqual(490)
          expect(a.y + a.height).toBeLessThanOrEqual(height)
          for (const b of boxes.slice(index + 1))
            expect(
              Math.max(b.x - a.x - a.width, a.x - b.x - b.width, b.y - a.y - a.height, a.y - b.y - b.height),
            ).toBeGreaterThanOrEqual(0)
        }
      }),
      { numRuns: 100, seed: 31 },
    )
  })

  test('take clearly less of a roll than parts in strict turn on rosters of a name and two numbers', () => {
    const roster = Array.from({ length: 20 }, (_, line) => [
      { width: 200 + ((line * 37) % 110), height: 66 },
      { width: 110 + ((line * 53) % 130), height: 218 },
      { width: 80 + ((line * 29) % 90), height: 117 },
    ]).flat()
    const strict = emptyStrip(491)
    for (const one of roster) placeNext(strict, one, false, Infinity)
    expect(packInTurn(turnsOf(roster), 491).height / heightOf(strict)).toBeLessThan(0.95)
  })
})

describe('template sheets', () => {
  test('each template carries TOP, its character, height, stone and job; sheets are as many as needed and read right', () => {
    const sheets = templates('0123456789')
    expect(sheets.length).toBeGreaterThan(1)
    expect(
      sheets
        .flatMap(({ parts }) => parts)
        .map(({ tag }) => tag)
        .sort(),
    ).toEqual([...'0123456789'])
    for (const sheet of sheets) {
      expect(sheet.reads).toBe('right')
      for (const { frame } of sheet.parts) {
        expect(Math.min(frame.left, frame.bottom)).toBeGreaterThanOrEqual(0)
        expect(Math.max(frame.right, frame.top)).toBeLessThanOrEqual(304_801)
      }
    }
    expect(sheets.flatMap(texts)).toContain('TOP · 7 · 101.6 mm · SS10 · job 12')
  })

  test('templates of one sheet do not overlap, whichever way they were packed', () => {
    for (const { parts } of templates('01234567890123')) {
      for (const [index, { frame: a }] of parts.entries())
        for (const { frame: b } of parts.slice(index + 1))
          expect(Math.max(b.left - a.right, a.left - b.right, b.bottom - a.top, a.bottom - b.top)).toBeGreaterThanOrEqual(2_999)
    }
  })

  test('a template larger than the sheet is refused by its text', () => {
    const small = templateSheets([template('8')], { width: micrometres(60_000), height: micrometres(60_000) }, words)
    expect(small.ok ? [] : small.problems).toMatchObject([{ code: 'template-larger-than-sheet', facts: { text: '8' } }])
  })

  test('a coupon has five by five holes at three widths', () => {
    const three = coupon('SS10', [micrometres(3_200), micrometres(3_300), micrometres(3_400)], micrometres(500))
    expect(three.map(({ piece }) => piece.stones.length)).toEqual([25, 25, 25])
    expect(three.map(({ hole }) => hole)).toEqual([3_200, 3_300, 3_400])
  })
})

const holesOf = (sheet: Sheet): readonly string[] =>
  sheet.parts
    .flatMap(({ holes }) => holes)
    .map(({ at, radius }) => key(at.x / 1000, at.y / 1000, radius / 1000))
    .sort()

const key = (x: number, y: number, radius: number): string => `${x.toFixed(2)} ${y.toFixed(2)} ${radius.toFixed(3)}`

describe('files for the cutter', () => {
  test('a picture program reads the drawing at its true size and finds every hole as a spot of its own', () => {
    const [sheet] = templates('08')
    if (sheet === undefined) throw new Error('no sheet')
    const svg = sheetSvg(sheet)
    expect(svg).toContain('width="304.8mm" height="304.8mm" viewBox="0 0 304.8 304.8"')
    expect(svg).not.toContain('transform')
    const black = svg.replace(/<style>.*<\/style>/, '<style>.hole{fill:#000}.frame,.mark{display:none}</style>')
    const drawn = new Resvg(black, { fitTo: { mode: 'width', value: 1_524 }, background: '#fff' }).render()
    expect(drawn.width).toBe(1_524)
    const { pixels, width } = { pixels: drawn.pixels, width: drawn.width }
    for (const { at, radius } of sheet.parts.flatMap(({ holes }) => holes)) {
      const shade = (x: number, y: number): number =>
        pixels[4 * (Math.round(((sheet.length - y) / 1000) * 5) * width + Math.round((x / 1000) * 5))] ?? 0
      expect(shade(at.x, at.y)).toBe(0)
      expect(shade(at.x, at.y + radius + 250)).toBeGreaterThan(100)
    }
  })

  test('two independent readers of DXF find the same circles, in millimetres, y up', () => {
    const [sheet] = templates('2')
    if (sheet === undefined) throw new Error('no sheet')
    const dxf = sheetDxf(sheet)
    const one = new DxfParser().parseSync(dxf)
    expect(one?.header['$INSUNITS']).toBe(4)
    const circles = (one?.entities ?? []).flatMap((entity) =>
      entity.type === 'CIRCLE' && 'center' in entity && 'radius' in entity
        ? [entity as unknown as { center: { x: number; y: number }; radius: number }]
        : [],
    )
    expect(circles.map(({ center, radius }) => key(center.x, center.y, radius)).sort()).toEqual(holesOf(sheet))
    const two = new Helper(dxf).denormalised
    const others = two.filter(({ type }) => type === 'CIRCLE').map(({ x, y, r }) => key(x, y, r))
    expect(others.sort()).toEqual(holesOf(sheet))
  })

  test('cut lines in the DXF enclose the area of the curves, and a tag with signs beyond ASCII is escaped', () => {
    const sheet = cut([part('88', 8, 'Núñez · 88')])
    const dxf = sheetDxf(sheet)
    expect(dxf).toContain('N\\U+00FA\\U+00F1ez')
    const lines = new DxfParser().parseSync(dxf)?.entities ?? []
    const polylines = lines.filter(({ type, layer }) => type === 'POLYLINE' && layer === 'CUT') as unknown as readonly {
      vertices: { x: number; y: number }[]
    }[]
    const area = Math.abs(polylines.reduce((sum, { vertices }) => sum + signedArea(vertices), 0))
    const curves = sheet.parts.flatMap(({ contours }) => contours)
    const exact = Math.abs(curves.reduce((sum, contour) => sum + signedArea(flatten(contour, 1)), 0)) / 1e6
    expect(area / exact).toBeCloseTo(1, 3)
  })

  test('no letter of a tag can break out of the drawing', () => {
    expect(sheetSvg(cut([part('7', 4, '<script>"&')]))).toContain('&lt;script&gt;&quot;&amp;')
  })
})
