import { writeLocal } from '../domain/calendar/local-time.ts'
import { zoneOf } from '../domain/calendar/zone.ts'
import { minutes } from '../domain/units/units.ts'
import { UsageError } from './command.ts'

const form = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/

/** The minute a command counts as now, on the shop's wall clock: as given, else the machine's clock. */
export const shopNow = (given: string | undefined, zoneName: string): string => {
  if (given !== undefined) {
    if (!form.test(given)) throw new UsageError(`--now must read YYYY-MM-DDTHH:MM, not "${given}"`)
    return given
  }
  const zone = zoneOf(zoneName)
  if (!zone.ok) throw new UsageError(`the shop's zone "${zoneName}" is not a known IANA time zone`)
  return writeLocal(zone.value, minutes(Math.floor(Date.now() / 60_000)))
}
