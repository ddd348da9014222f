import { createHash, randomBytes } from 'node:crypto'
import { minutes } from '../../domain/units/units.ts'
import type { Clock, Ids } from '../../ports/clock.ts'

/** The machine's own clock. */
export const machineClock: Clock = {
  now: () => minutes(Math.floor(Date.now() / 60_000)),
  milliseconds: () => Date.now(),
}

/** Ids and secrets from the machine's random source. */
export const machineIds: Ids = {
  fresh: (prefix) => `${prefix}${randomBytes(8).toString('hex')}`,
  secret: () => randomBytes(24).toString('base64url'),
  hash: (content) => createHash('sha256').update(content).digest('hex'),
}
