import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  alwaysOpen,
  axisFrom,
  begin,
  beginWhole,
  beginWholeBy,
  finish,
  intersect,
  intervalsOf,
  lastOpen,
  never,
  neverBefore,
  nextOpen,
  without,
  workBetween,
} from '../../../src/domain/calendar/axis.ts'
import { type Shift, weekAxis, weekdays } from '../../../src/domain/calendar/hours.ts'
import { zoneOf } from '../../../src/domain/calendar/zone.ts'
import { openMinutes, walkBack, walkForward, walkWhole } from './axis.reference.ts'

const runs = process.env['LONG'] === undefined ? 60 : 3_000
const clock = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`

const shift: fc.Arbitrary<Shift> = fc
  .record({ day: fc.constantFrom(...weekdays), from: fc.integer({ min: 0, max: 95 }), length: fc.integer({ min: 1, max: 60 }) })
  .map(({ day, from, length }) => ({ day, from: clock(from * 15), to: clock(((from + length) * 15) % 1_440) }))

/** Weeks in which the clocks change: Chicago and Santiago in both directions, Lord Howe by half an hour. */
const weeks = [
  { zone: 'America/Chicago', first: '2026-03-05' },
  { zone: 'America/Chicago', first: '2026-10-29' },
  { zone: 'America/Santiago', first: '2026-04-02' },
  { zone: 'America/Santiago', first: '2026-09-03' },
  { zone: 'Australia/Lord_Howe', first: '2026-04-02' },
  { zone: 'Australia/Lord_Howe', first: '2026-10-01' },
  { zone: 'Asia/Kolkata', first: '2026-06-04' },
]

const none = (value: number): number | null => (value === never || value === neverBefore ? null : value)

describe('a compiled axis', () => {
  it.each(weeks)('counts like a walk minute by minute in $zone from $first', { timeout: 600_000 }, ({ zone, first }) => {
    const known = zoneOf(zone)
    if (!known.ok) throw new Error(zone)
    const from = Date.parse(`${first}T00:00Z`) / 60_000
    const to = from + 9 * 1_440
    const ask = fc.record({
      shifts: fc.array(shift, { minLength: 1, maxLength: 9 }),
      at: fc.integer({ min: from + 1_440, max: to - 1_440 }),
      work: fc.integer({ min: 1, max: 900 }),
    })
    fc.assert(
      fc.property(ask, ({ shifts, at, work }) => {
        const range = { from, to }
        const axis = intersect(weekAxis(known.value, { shifts, dated: [] }, range), axisFrom([{ start: from, end: to }]))
        const set = openMinutes(zone, shifts, {
          first: new Date((from - 3 * 1_440) * 60_000).toISOString().slice(0, 10),
          count: 15,
        })
        const open = new Set([...set].filter((minute) => minute >= from && minute < to))
        expect(none(finish(axis, at, work))).toBe(walkForward(open, at, work, to))
        expect(none(begin(axis, at, work))).toBe(walkBack(open, at, work, from))
        expect(none(beginWhole(axis, at, work))).toBe(walkWhole(open, at, work, to))
        expect(workBetween(axis, at, at + work)).toBe([...open].filter((minute) => minute >= at && minute < at + work).length)
        expect(none(nextOpen(axis, at))).toBe(walkWhole(open, at, 1, to))
      }),
      { numRuns: runs, seed: 5 },
    )
  })

  const day = axisFrom([
    { start: 480, end: 720 },
    { start: 750, end: 1_020 },
    { start: 1_920, end: 2_160 },
  ])

  it('ends work that fills the day that evening, and begins it that morning', () => {
    expect(finish(day, 480, 510)).toBe(1_020)
    expect(begin(day, 1_020, 510)).toBe(480)
  })

  it('begins at the opening what is asked for when it is closed, and ends by the last closing', () => {
    expect(nextOpen(day, 1_020)).toBe(1_920)
    expect(lastOpen(day, 1_500)).toBe(1_020)
    expect(lastOpen(day, 800)).toBe(800)
    expect(lastOpen(day, 480)).toBe(neverBefore)
  })

  it('does not break work that may not be interrupted over noon', () => {
    expect(beginWhole(day, 600, 130)).toBe(750)
    expect(beginWholeBy(day, 800, 60)).toBe(660)
    expect(beginWhole(day, 0, 300)).toBe(never)
    expect(beginWholeBy(day, 3_000, 300)).toBe(neverBefore)
  })

  it('says never when the axis is too short', () => {
    expect(finish(day, 2_000, 161)).toBe(never)
    expect(begin(day, 500, 21)).toBe(neverBefore)
    expect(finish(axisFrom([]), 0, 1)).toBe(never)
  })

  it('joins intervals that touch and leaves out empty ones', () => {
    const joined = axisFrom([
      { start: 5, end: 9 },
      { start: 1, end: 5 },
      { start: 20, end: 20 },
    ])
    expect(intervalsOf(joined)).toEqual([{ start: 1, end: 9 }])
  })

  it('is open with another when both are, and without it when only it is', () => {
    const other = axisFrom([{ start: 700, end: 800 }])
    expect(intervalsOf(intersect(day, other))).toEqual([
      { start: 700, end: 720 },
      { start: 750, end: 800 },
    ])
    expect(intervalsOf(without(day, other)).slice(0, 2)).toEqual([
      { start: 480, end: 700 },
      { start: 800, end: 1_020 },
    ])
    expect(intervalsOf(without(day, axisFrom([])))).toEqual(intervalsOf(day))
    expect(alwaysOpen.longest).toBe(never)
  })
})
