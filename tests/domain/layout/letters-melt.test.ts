import { beforeAll, describe, expect, test } from 'vitest'
import type { Face } from '../../../src/domain/face/face.ts'
import type { StoneSetting, StoneStyle } from '../../../src/domain/layout/layout.ts'
import { clearHeight } from '../../../src/domain/layout/letters-melt.ts'
import { placeStones } from '../../../src/domain/layout/place-stones.ts'
import { setText } from '../../../src/domain/layout/set-text.ts'
import { fromInches, micrometres } from '../../../src/domain/units/units.ts'
import { offeredFaces } from '../../support/faces.ts'

let faces: ReadonlyMap<string, Face>
beforeAll(async () => {
  faces = await offeredFaces()
})

const settingOf = (size: string, hole: number): StoneSetting => ({
  size,
  hole: micrometres(hole),
  web: micrometres(500),
  edgeGap: micrometres(1_000),
})
const ss6 = settingOf('SS6', 2_500)
const ss10 = settingOf('SS10', 3_300)
const ss16 = settingOf('SS16', 4_400)
const outline = (rows: number): StoneStyle => ({ style: 'outline', rows, contours: 'both' })

const melts = (text: string, inches: number, plan: { setting: StoneSetting; style: StoneStyle }) => {
  const face = faces.get('quantico-700')
  if (face === undefined) throw new Error('no face')
  const shape = setText({ face, text, height: fromInches(inches), offered: [...faces.values()] })
  const laid = shape.ok ? placeStones(shape.value, plan) : shape
  if (!laid.ok) throw new Error(JSON.stringify(laid.problems))
  return laid.value.flags.filter(({ code }) => code === 'letters-melt')
}

describe('letters too small for their stones', () => {
  test.each([
    ['MARTINEZ', 1, { setting: ss10, style: outline(1) }, true],
    ['Núñez', 1.1, { setting: ss10, style: outline(1) }, true],
    ['GARCÍA', 1.5, { setting: ss16, style: outline(1) }, true],
    ['Team', 2, { setting: ss10, style: outline(2) }, true],
    ['MARTINEZ', 1, { setting: ss6, style: outline(1) }, false],
    ['MARTINEZ', 1.25, { setting: ss10, style: outline(1) }, false],
    ['Okafor', 3, { setting: ss10, style: outline(2) }, false],
    ['LEE', 1, { setting: ss10, style: { style: 'single-line' } }, false],
    ['12', 1, { setting: ss10, style: outline(1) }, false],
    ['C', 1, { setting: ss10, style: outline(1) }, false],
  ] as const)('%s, %s in', (text, inches, plan, isSaid) => {
    expect(melts(text, inches, plan)).toHaveLength(isSaid ? 1 : 0)
  })

  test('are a caution that says from which height on they stand apart, and what would help', () => {
    const plan = { setting: ss10, style: outline(1) }
    expect(clearHeight(plan)).toBe(30_400)
    const [note] = melts('MARTINEZ', 1, plan)
    expect(note).toMatchObject({
      severity: 'caution',
      facts: { text: 'MARTINEZ', neededMicrometres: 30_400, remedies: ['larger-letters', 'smaller-stone', 'vinyl'] },
    })
    expect(melts('MARTINEZ', 1.2, plan)).toEqual([])
  })
})
