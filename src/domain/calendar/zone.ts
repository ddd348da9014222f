import { Temporal } from 'temporal-polyfill'
import { ok, type Result, refuse } from '../result/result.ts'
import type { CalendarProblem } from './problems.ts'

export const firstYear = 2000
export const lastYear = 2060

/** A time zone as the shop needs it: `offsets[i]` minutes east of UTC hold from epoch minute `changes[i]` on. */
export type Zone = { readonly name: string; readonly changes: readonly number[]; readonly offsets: readonly number[] }

const minute = (zoned: Temporal.ZonedDateTime): number => Math.floor(zoned.epochMilliseconds / 60_000)
const offset = (zoned: Temporal.ZonedDateTime): number => Math.round(zoned.offsetNanoseconds / 60_000_000_000)

const firstInstant = (name: string): Temporal.ZonedDateTime | null => {
  try {
    return Temporal.Instant.from(`${firstYear - 1}-12-30T00:00Z`).toZonedDateTimeISO(name)
  } catch (cause) {
    if (cause instanceof RangeError) return null
    throw cause
  }
}

const read = (name: string): Zone | null => {
  let zoned = firstInstant(name)
  if (zoned === null) return null
  const changes = [minute(zoned)]
  const offsets = [offset(zoned)]
  for (;;) {
    const next: Temporal.ZonedDateTime | null = zoned.getTimeZoneTransition('next')
    if (next === null || next.year > lastYear + 1) return { name, changes, offsets }
    changes.push(minute(next))
    offsets.push(offset(next))
    zoned = next
  }
}

/** Reading a zone costs some 30 ms, and a zone never changes while the program runs. */
const known = new Map<string, Zone>()

/** The offsets of an IANA zone from 2000 to 2060, by Temporal's data; `zone-unknown` for any other name. */
export const zoneOf = (name: string): Result<Zone, CalendarProblem> => {
  const zone = known.get(name) ?? read(name)
  if (zone === null) return refuse({ code: 'zone-unknown', at: '/zone', severity: 'stop', facts: { zone: name } })
  known.set(name, zone)
  return ok(zone)
}

/** Minutes east of UTC at an epoch minute. */
export const offsetAt = (zone: Zone, at: number): number => {
  let low = 0
  let high = zone.changes.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((zone.changes[middle] ?? 0) <= at) low = middle
    else high = middle - 1
  }
  return zone.offsets[low] ?? 0
}
