import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readMoment, weekdayOf } from '../../../src/domain/ticket/moment.ts'

describe('the day of the week', () => {
  it('agrees with the platform calendar on every day from 1900 to 2199', () => {
    fc.assert(
      fc.property(fc.integer({ min: Date.UTC(1900, 0, 1), max: Date.UTC(2199, 11, 31) }), (instant) => {
        const date = new Date(instant)
        expect(weekdayOf(date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate())).toBe(date.getUTCDay())
      }),
      { numRuns: 2000 },
    )
  })

  it('is Thursday on 29 February 2024 and Friday on 1 March 2024', () => {
    expect(weekdayOf(2024, 2, 29)).toBe(4)
    expect(weekdayOf(2024, 3, 1)).toBe(5)
  })

  it('is read from a minute or a bare day, and nothing else', () => {
    expect(readMoment('2026-11-12T17:05')).toEqual({ year: 2026, month: 11, day: 12, hour: 17, minute: 5, weekday: 4 })
    expect(readMoment('2026-11-13').hour).toBe(0)
    expect(() => readMoment('tomorrow')).toThrow(RangeError)
  })
})
