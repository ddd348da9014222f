import { Temporal } from '@js-temporal/polyfill'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dayNumber, dayOf, readLocal, startOfDay, writeLocal } from '../../../src/domain/calendar/local-time.ts'
import { type Zone, zoneOf } from '../../../src/domain/calendar/zone.ts'
import { minutes } from '../../../src/domain/units/units.ts'

/** A second implementation of Temporal, not the one the calendar is built from, is the judge. */
const zones = [
  'America/Chicago',
  'America/St_Johns',
  'America/Santiago',
  'Europe/Berlin',
  'Asia/Kolkata',
  'Australia/Lord_Howe',
  'Pacific/Auckland',
]
const runs = process.env['LONG'] === undefined ? 150 : 20_000

const zoneFor = (name: string): Zone => {
  const zone = zoneOf(name)
  if (!zone.ok) throw new Error(`${name} is not known`)
  return zone.value
}

const judge = (text: string, name: string): number =>
  Temporal.PlainDateTime.from(text).toZonedDateTime(name, { disambiguation: 'compatible' }).epochMilliseconds / 60_000

const read = (zone: Zone, text: string): number => {
  const reading = readLocal(zone, text)
  if (!reading.ok) throw new Error(`${text} was refused`)
  return reading.value.at
}

const wallText = fc
  .integer({ min: Date.UTC(2000, 0, 2) / 60_000, max: Date.UTC(2060, 11, 30) / 60_000 })
  .map((minute) => new Date(minute * 60_000).toISOString().slice(0, 16))

describe.each(zones)('in %s', (name) => {
  const zone = zoneFor(name)

  it('a wall-clock minute is the instant Temporal says', () => {
    fc.assert(
      fc.property(wallText, (text) => {
        expect(read(zone, text)).toBe(judge(text, name))
      }),
      { numRuns: runs, seed: 11 },
    )
  })

  it('the minutes around every change of the clock from 2024 to 2031 are the instants Temporal says', () => {
    const changes = zone.changes.filter((at) => at > Date.UTC(2024, 0, 1) / 60_000 && at < Date.UTC(2031, 0, 1) / 60_000)
    const around = changes.flatMap((at) => [-121, -61, -60, -31, -30, -1, 0, 1, 29, 30, 59, 60, 61, 119].map((by) => at + by))
    for (const at of around) {
      const offsets = [
        zone.offsets[0] ?? 0,
        Temporal.Instant.fromEpochMilliseconds(at * 60_000).toZonedDateTimeISO(name).offsetNanoseconds / 6e10,
      ]
      for (const offset of offsets) {
        const text = new Date((at + offset) * 60_000).toISOString().slice(0, 16)
        expect([text, read(zone, text)]).toEqual([text, judge(text, name)])
      }
    }
    expect(around.length).toBe(changes.length * 14)
  })

  it('an instant is written as Temporal writes it', () => {
    fc.assert(
      fc.property(fc.integer({ min: Date.UTC(2000, 0, 2) / 60_000, max: Date.UTC(2060, 11, 30) / 60_000 }), (at) => {
        const zoned = Temporal.Instant.fromEpochMilliseconds(at * 60_000).toZonedDateTimeISO(name)
        expect(writeLocal(zone, minutes(at))).toBe(zoned.toPlainDateTime().toString({ smallestUnit: 'minute' }))
      }),
      { numRuns: runs, seed: 12 },
    )
  })
})

describe('reading a wall-clock minute', () => {
  const chicago = zoneFor('America/Chicago')

  it('moves a minute of the lost hour of spring forward and says so', () => {
    const reading = readLocal(chicago, '2026-03-08T02:30')
    expect(reading).toEqual({ ok: true, value: { at: read(chicago, '2026-03-08T03:30'), reading: 'lost-hour' } })
  })

  it('takes the earlier of two in the repeated hour of autumn and says so', () => {
    const reading = readLocal(chicago, '2026-11-01T01:30')
    expect(reading).toEqual({ ok: true, value: { at: read(chicago, '2026-11-01T00:30') + 60, reading: 'repeated-hour' } })
  })

  it('ends 24 hours from Saturday noon over the autumn change on Sunday at 11', () => {
    const end = minutes(read(chicago, '2026-10-31T12:00') + 24 * 60)
    expect(writeLocal(chicago, end)).toBe('2026-11-01T11:00')
  })

  it('counts a day of 25 hours and the half hour of Lord Howe', () => {
    const autumn = dayNumber('2026-11-01') ?? 0
    expect(startOfDay(chicago, autumn + 1) - startOfDay(chicago, autumn)).toBe(25 * 60)
    const lordHowe = zoneFor('Australia/Lord_Howe')
    const april = dayNumber('2026-04-05') ?? 0
    expect(startOfDay(lordHowe, april + 1) - startOfDay(lordHowe, april)).toBe(24 * 60 + 30)
  })

  it.each([
    ['2026-02-30T10:00', 'no-such-time'],
    ['2026-13-01T10:00', 'no-such-time'],
    ['2026-01-01T24:00', 'no-such-time'],
    ['2026-01-01 10:00', 'time-malformed'],
    ['Friday at five', 'time-malformed'],
    ['1999-12-31T23:59', 'year-out-of-range'],
    ['2061-01-01T00:00', 'year-out-of-range'],
  ])('refuses %s as %s', (text, code) => {
    expect(readLocal(chicago, text)).toMatchObject({ ok: false, problems: [{ code, facts: { text } }] })
  })

  it('refuses a zone that does not exist', () => {
    expect(zoneOf('America/Springfield')).toMatchObject({ ok: false, problems: [{ code: 'zone-unknown' }] })
  })

  it('names the day an instant falls on in the zone, not in UTC', () => {
    expect(dayOf(chicago, minutes(read(chicago, '2026-07-04T23:59')))).toBe('2026-07-04')
  })
})
