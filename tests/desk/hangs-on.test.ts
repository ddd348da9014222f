import { describe, expect, test } from 'vitest'
import { hangsOn } from '../../src/desk/hangs-on.ts'
import type { Slot } from '../../src/domain/schedule/book/operation.ts'
import type { Promised } from '../../src/domain/schedule/promise/promise.ts'
import { minutes } from '../../src/domain/units/units.ts'

const day = 1_440
const slot = (operation: string, start: number): Slot => ({
  order: 'o',
  operation,
  stations: [],
  start: minutes(start),
  end: minutes(start + 10),
  setupMinutes: 0,
})

const promised: Promised = {
  feasible: true,
  promised: minutes(20 * day),
  earliest: minutes(10 * day),
  slackMinutes: 0,
  rung: 'gap',
  alone: true,
  causes: [],
  hangsOn: [
    { code: 'sign-off', by: minutes(18 * day) },
    { code: 'garments', by: minutes(18 * day) },
  ],
  collectBy: minutes(20 * day),
  freezesAt: null,
  slots: [],
  held: [slot('count-in', 18 * day), slot('cut-vinyl-1', 19 * day), slot('press-1-1', 19.5 * day)],
  moved: [],
}

describe('what a promise hangs on', () => {
  test('is a sign-off early enough for ordered garments to come', () => {
    const hangs = hangsOn(promised, { garmentDays: 3, materialDays: null, ownGarments: false })
    expect(hangs).toEqual([{ code: 'sign-off', by: 15 * day }])
  })

  test('is a sign-off early enough for the slower of garments and materials', () => {
    const hangs = hangsOn(promised, { garmentDays: 1, materialDays: 7, ownGarments: false })
    expect(hangs).toEqual([{ code: 'sign-off', by: 12 * day }])
  })

  test('names the hour to bring garments only when they are the customer’s own', () => {
    const hangs = hangsOn(promised, { garmentDays: null, materialDays: null, ownGarments: true })
    expect(hangs).toEqual(promised.hangsOn)
  })
})
