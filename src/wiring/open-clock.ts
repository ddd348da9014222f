import { machineClock, simulatedClock } from '../adapters/machine/machine.ts'
import type { Address } from '../adapters/store/address.ts'
import { keptAnchor } from '../adapters/store/sql/anchor.ts'
import type { Config } from '../config.ts'
import { readLocal, writeLocal } from '../domain/calendar/local-time.ts'
import type { Zone } from '../domain/calendar/zone.ts'
import { ok, type Result } from '../domain/result/result.ts'
import { minutes } from '../domain/units/units.ts'
import type { Anchor, Clock } from '../ports/clock.ts'

const minute = 60_000

/** A simulated clock that begins now. */
const anchorNow = (zone: Zone, clock: Config['clock']): Result<Anchor | null> => {
  if (clock === null) return ok(null)
  const start = readLocal(zone, clock.start)
  return start.ok ? ok({ real: machineClock.milliseconds(), simulated: start.value.at * minute, speed: clock.speed }) : start
}

const isSame = (one: Anchor | null, other: Anchor | null): boolean =>
  one?.simulated === other?.simulated && one?.speed === other?.speed

/** As CLOCK is written. */
const written = (zone: Zone, anchor: Anchor | null): string | null =>
  anchor === null ? null : `${writeLocal(zone, minutes(anchor.simulated / minute))}x${anchor.speed}`

/** The one clock of all who use these records: the machine's, or the simulated one that the records were made with. */
export const openClock = async ({ clock }: Pick<Config, 'clock'>, address: Address, zone: Zone): Promise<Result<Clock>> => {
  const wanted = anchorNow(zone, clock)
  if (!wanted.ok) return wanted
  const kept = await keptAnchor(address, wanted.value)
  if (!kept.ok) return kept
  if (isSame(wanted.value, kept.value)) return ok(kept.value === null ? machineClock : simulatedClock(kept.value))
  const facts = { set: written(zone, wanted.value), theirs: written(zone, kept.value) }
  return { ok: false, problems: [{ code: 'clock-not-theirs', at: '', severity: 'stop', facts }] }
}
