import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { intervalsOf, workBetween } from '../../../src/domain/calendar/axis.ts'
import { type Hours, hoursSchema, openTime, ownTime, peopleTime, weekAxis } from '../../../src/domain/calendar/hours.ts'
import { dayNumber, startOfDay } from '../../../src/domain/calendar/local-time.ts'
import { type Zone, zoneOf } from '../../../src/domain/calendar/zone.ts'

const chicago = (): Zone => {
  const zone = zoneOf('America/Chicago')
  if (!zone.ok) throw new Error('Chicago')
  return zone.value
}
const zone = chicago()
const hours = (over: Partial<Hours> = {}): Hours => ({
  zone: zone.name,
  open: [
    { day: 'mon', from: '08:00', to: '17:00' },
    { day: 'tue', from: '08:00', to: '17:00' },
  ],
  breaks: [{ day: 'mon', from: '12:00', to: '12:30' }],
  holidays: [],
  closed: [],
  special: [],
  ...over,
})
const range = { from: startOfDay(zone, dayNumber('2026-06-01') ?? 0), to: startOfDay(zone, dayNumber('2026-06-06') ?? 0) }
const openOn = (day: string, axis = openTime(zone, hours(), range)): number =>
  workBetween(axis, startOfDay(zone, dayNumber(day) ?? 0), startOfDay(zone, (dayNumber(day) ?? 0) + 1))

describe('shop hours', () => {
  it('are open on the days of the week they name', () => {
    expect(['2026-06-01', '2026-06-02', '2026-06-03'].map((day) => openOn(day))).toEqual([540, 540, 0])
  })

  it('are closed on a holiday and for the hours of a closure', () => {
    const shut = hours({
      holidays: [{ date: '2026-06-02', name: 'a holiday' }],
      closed: [{ from: '2026-06-01T15:00', to: '2026-06-01T23:00', why: 'stock-taking' }],
    })
    const axis = openTime(zone, shut, range)
    expect([openOn('2026-06-01', axis), openOn('2026-06-02', axis)]).toEqual([420, 0])
  })

  it('follow a special day instead of the week on its date', () => {
    const special = hours({
      special: [
        { date: '2026-06-02', from: '10:00', to: '12:00', why: 'short day' },
        { date: '2026-06-03', from: '09:00', to: '10:00', why: 'extra' },
      ],
    })
    const axis = openTime(zone, special, range)
    expect([openOn('2026-06-02', axis), openOn('2026-06-03', axis)]).toEqual([120, 60])
  })

  it('give people their breaks and machines none', () => {
    expect(openOn('2026-06-01', peopleTime(zone, hours(), range))).toBe(510)
    expect(openOn('2026-06-01')).toBe(540)
  })

  it('keep a person within the shop and out of days off', () => {
    const week = weekAxis(zone, { shifts: [{ day: 'mon', from: '06:00', to: '10:00' }], dated: [] }, range)
    const own = ownTime(zone, openTime(zone, hours(), range), { week, closed: [] })
    expect(openOn('2026-06-01', own)).toBe(120)
    const off = [{ from: '2026-06-01T00:00', to: '2026-06-02T00:00', why: 'day off' }]
    expect(openOn('2026-06-01', ownTime(zone, openTime(zone, hours(), range), { week: null, closed: off }))).toBe(0)
  })

  it('let a night shift run into the next day', () => {
    const axis = weekAxis(zone, { shifts: [{ day: 'mon', from: '22:00', to: '02:00' }], dated: [] }, range)
    expect(intervalsOf(axis).some(({ start, end }) => end - start === 240)).toBe(true)
    expect(openOn('2026-06-02', axis)).toBe(120)
  })

  it('of the starter shop are well formed', () => {
    const file = new URL('../../../templates/shop/hours.json', import.meta.url)
    expect(hoursSchema.safeParse(JSON.parse(readFileSync(file, 'utf8'))).success).toBe(true)
  })
})
