import { createHash, randomBytes } from 'node:crypto'
import { minutes } from '../../domain/units/units.ts'
import type { Anchor, Clock, Ids } from '../../ports/clock.ts'

const minuteOf = (milliseconds: number) => minutes(Math.floor(milliseconds / 60_000))

/** The machine's own clock. */
export const machineClock: Clock = {
  now: () => minuteOf(Date.now()),
  milliseconds: () => Date.now(),
  real: () => minuteOf(Date.now()),
  lasting: (milliseconds) => milliseconds,
}

/** A clock that every process with the same anchor reads alike; `machine` is the machine's epoch milliseconds. */
export const simulatedClock = ({ real, simulated, speed }: Anchor, machine: () => number = Date.now): Clock => {
  const milliseconds = (): number => Math.floor(simulated + (machine() - real) * speed)
  return {
    now: () => minuteOf(milliseconds()),
    milliseconds,
    real: () => minuteOf(machine()),
    lasting: (business) => business / speed,
  }
}

/** Ids and secrets from the machine's random source. */
export const machineIds: Ids = {
  fresh: (prefix) => `${prefix}${randomBytes(8).toString('hex')}`,
  secret: () => randomBytes(24).toString('base64url'),
  hash: (content) => createHash('sha256').update(content).digest('hex'),
}
