import { describe, expect, test } from 'vitest'
import { fromPolygon } from '../../../src/domain/geometry/contour.ts'
import type { Letter, TextShape } from '../../../src/domain/layout/layout.ts'
import { strokeOf } from '../../../src/domain/layout/stroke.ts'
import { micrometres } from '../../../src/domain/units/units.ts'

const rectangle = (left: number, bottom: number, right: number, top: number) => [
  { x: left, y: bottom },
  { x: right, y: bottom },
  { x: right, y: top },
  { x: left, y: top },
]

const letter = (...polygons: readonly (readonly { x: number; y: number }[])[]): Letter => ({
  text: '1',
  form: '1',
  at: { x: 0, y: 0 },
  contours: polygons.map(fromPolygon),
  box: { left: 0, bottom: 0, right: 1, top: 1 },
})

const shape = (letters: readonly Letter[]): TextShape => ({
  text: '1',
  face: 'drawn',
  fingerprint: 'drawn',
  letters,
  box: { left: 0, bottom: 0, right: 1, top: 1 },
  width: micrometres(1),
  height: micrometres(1),
  pen: micrometres(1),
  fit: { height: micrometres(1), tracking: micrometres(0), condensedPercent: 100 },
  notes: [],
})

describe('the stroke of a text', () => {
  test('of a straight bar is its width', () => {
    expect(strokeOf(shape([letter(rectangle(0, 0, 20_000, 150_000))]))).toBe(20_000)
  })

  test('of a square ring is the ring’s width', () => {
    const ring = letter(rectangle(0, 0, 100_000, 100_000), [...rectangle(20_000, 20_000, 80_000, 80_000)].reverse())
    expect(strokeOf(shape([ring]))).toBe(20_000)
  })

  test('is that of the thinnest letter, and none without ink', () => {
    const bars = [letter(rectangle(0, 0, 20_000, 150_000)), letter(rectangle(0, 0, 15_000, 150_000))]
    expect(strokeOf(shape(bars))).toBe(15_000)
    expect(strokeOf(shape([letter()]))).toBeNull()
  })
})
