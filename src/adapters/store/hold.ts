import { setTimeout as pause } from 'node:timers/promises'
import pg from 'pg'
import { ok } from '../../domain/result/result.ts'
import type { Opened } from '../../ports/opening.ts'
import { type Address, shown } from './address.ts'
import { failedAt, unopened } from './problems.ts'

export type Held = {
  readonly release: () => Promise<void>
  /** Settles when the connection that holds the data breaks: from then on another service could take them. */
  readonly lost: Promise<void>
}

/** Any number that nobody else takes on this database. */
const lockNumber = 7_078_105_116

/** A service that was killed lets go within moments. */
const tries = 20

const connect = async (address: Address): Promise<pg.Client> => {
  const client = new pg.Client({ ...address, keepAlive: true })
  client.on('error', () => undefined)
  await client.connect()
  return client
}

/** Takes the data for this service alone, for as long as it runs. */
export const holdService = async (address: Address): Opened<Held> => {
  try {
    const client = await connect(address)
    for (let at = 0; at < tries; at += 1) {
      const { rows } = await client.query('select pg_try_advisory_lock($1) as taken', [lockNumber])
      if (rows[0]?.taken === true) {
        return ok({ release: () => client.end(), lost: new Promise((resolve) => client.once('end', () => resolve())) })
      }
      await pause(100)
    }
    await client.end()
    return unopened('store-in-use', { at: shown(address) })
  } catch (cause) {
    return failedAt(shown(address), cause)
  }
}
