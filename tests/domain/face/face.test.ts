import * as opentype from 'opentype.js'
import { beforeAll, describe, expect, test } from 'vitest'
import { checkFace } from '../../../src/domain/face/check-face.ts'
import { drawFace, faceFrom } from '../../../src/domain/face/drawn-face.ts'
import type { Face } from '../../../src/domain/face/face.ts'
import { lacking } from '../../../src/domain/face/lacking.ts'
import { faceListingsSchema, type PackagedFace } from '../../../src/domain/face/listing.ts'
import { openFace } from '../../../src/domain/face/open-face.ts'
import { type Contour, contoursBox, flatten } from '../../../src/domain/geometry/contour.ts'
import { signedArea } from '../../../src/domain/geometry/region.ts'
import { faceBytes, faceListings, offeredFaces } from '../../support/faces.ts'

let faces: ReadonlyMap<string, Face>
let listings: readonly PackagedFace[]

beforeAll(async () => {
  faces = await offeredFaces()
  listings = await faceListings()
})

const face = (id: string): Face => {
  const found = faces.get(id)
  if (found === undefined) throw new Error(id)
  return found
}

const areaOf = (contours: readonly Contour[]): number =>
  Math.abs(contours.reduce((sum, contour) => sum + signedArea(flatten(contour, 0.5)), 0))

const opentypeContours = (commands: readonly opentype.PathCommand[]): readonly Contour[] => {
  const contours: { start: { x: number; y: number }; segments: Contour['segments'][number][] }[] = []
  for (const command of commands) {
    if (command.type === 'M') contours.push({ start: { x: command.x, y: command.y }, segments: [] })
    const segments = contours.at(-1)?.segments
    if (command.type === 'L') segments?.push({ kind: 'line', to: { x: command.x, y: command.y } })
    if (command.type === 'Q')
      segments?.push({ kind: 'quadratic', control: { x: command.x1, y: command.y1 }, to: { x: command.x, y: command.y } })
    if (command.type === 'C')
      segments?.push({
        kind: 'cubic',
        first: { x: command.x1, y: command.y1 },
        second: { x: command.x2, y: command.y2 },
        to: { x: command.x, y: command.y },
      })
  }
  return contours
}

const opentypeAreas = (bytes: Uint8Array): ReadonlyMap<string, number> => {
  const font = opentype.parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength))
  const areas = new Map<string, number>()
  for (let index = 0; index < font.glyphs.length; index += 1) {
    const glyph = font.glyphs.get(index)
    for (const code of glyph.unicodes) areas.set(String.fromCodePoint(code), areaOf(opentypeContours(glyph.path.commands)))
  }
  return areas
}

describe('offered faces', () => {
  test('there are at least nine for numerals and four scripts, each with licence and author', () => {
    expect(listings.filter(({ kind }) => kind === 'numeral').length).toBeGreaterThanOrEqual(9)
    expect(listings.filter(({ kind }) => kind === 'script').length).toBeGreaterThanOrEqual(4)
    for (const listing of listings) expect(['OFL-1.1', 'Apache-2.0']).toContain(listing.licence)
  })

  test('opentype.js draws every glyph of every face with the same area', async () => {
    let compared = 0
    for (const listing of listings) {
      const theirs = new Map((await faceBytes(listing)).toReversed().flatMap((bytes) => [...opentypeAreas(bytes)]))
      theirs.delete('0')
      for (const [character, area] of theirs) {
        const ours = areaOf(face(listing.id).outline(character))
        expect(Math.abs(ours - area), `${listing.id} ${character}`).toBeLessThanOrEqual(2 + area * 1e-3)
        compared += 1
      }
    }
    expect(compared).toBeGreaterThan(4_000)
  })

  test('characters that only the extended file has are there', () => {
    for (const character of 'čőŁ') expect(face('anton').has(character)).toBe(true)
    expect(face('quantico-700').has('č')).toBe(false)
  })

  test('a face that lacks characters names them and the faces that have them all', () => {
    const [problem] = lacking(face('quantico-700'), 'Nováček', [...faces.values()])
    expect(problem).toMatchObject({ code: 'face-lacks', facts: { face: 'quantico-700', characters: ['č'] } })
    const named = problem?.code === 'face-lacks' ? problem.facts.faces : []
    expect(named).toContain('anton')
    expect(named).not.toContain('quantico-700')
    expect(lacking(face('anton'), 'Nováček', [])).toEqual([])
  })

  test('the zero drawn with a dot in its counter has lost the dot', () => {
    const zero = face('graduate').outline('0')
    expect(zero).toHaveLength(2)
    expect(face('graduate').outline('8')).toHaveLength(3)
  })

  test('digits without overshoot give the height: 1, 4 and 7 of each numeral face agree within a hundredth', () => {
    for (const listing of listings.filter(({ kind }) => kind === 'numeral')) {
      const opened = face(listing.id)
      for (const digit of '147')
        expect(Math.abs(contoursBox(opened.outline(digit)).top / opened.flatDigit - 1), listing.id).toBeLessThan(0.01)
    }
  })

  test('pairs are kerned: AV stands closer than its two advances', () => {
    const [, second] = face('anton').shape('AV')
    expect(second?.x).toBeLessThan(face('anton').advance('A'))
  })
})

describe('files that are no faces', () => {
  const listing: Pick<PackagedFace, 'id' | 'kind' | 'files'> = {
    id: 'own',
    kind: 'numeral',
    files: [{ file: 'own.ttf', sha256: '0'.repeat(64) }],
  }

  test.each([
    ['a PDF', new TextEncoder().encode('%PDF-1.7\n1 0 obj\n<<>>\nendobj\n')],
    ['nothing at all', new Uint8Array()],
    ['the first half of a font', undefined],
  ])('%s is refused as unreadable or without digits', async (_, given) => {
    const [first] = listings
    const [whole] = first === undefined ? [] : await faceBytes(first)
    const bytes = given ?? (whole ?? new Uint8Array()).subarray(0, 3_000)
    const opened = openFace(listing, [bytes])
    const problems = opened.ok ? checkFace(opened.value) : opened
    expect(problems.ok).toBe(false)
  })

  test('a list of faces without sums is refused', () => {
    expect(faceListingsSchema.safeParse([{ id: 'x', kind: 'numeral', files: [] }]).success).toBe(false)
  })
})

test('a face handed over as plain data sets digits and names as the opened one does', () => {
  const opened = face('anton')
  const drawn = faceFrom(JSON.parse(JSON.stringify(drawFace(opened))))
  for (const text of ['2047', 'AVERY', 'Łukasz'])
    expect(drawn.shape(text).map(({ x, contours }) => ({ x, contours }))).toEqual(
      opened.shape(text).map(({ x, contours }) => ({ x, contours })),
    )
  expect(checkFace(drawn).ok).toBe(true)
})
