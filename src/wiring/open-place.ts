import { machineIds } from '../adapters/machine/machine.ts'
import type { QueuePlace } from '../adapters/queue/bullmq/connection.ts'
import { readSheet } from '../adapters/sheet/read-sheet.ts'
import type { Address } from '../adapters/store/address.ts'
import { embeddedAddress } from '../adapters/store/embedded/start-embedded.ts'
import { openStore } from '../adapters/store/sql/open-store.ts'
import type { Config } from '../config.ts'
import type { Desk } from '../desk/service/desk.ts'
import type { Workshop } from '../desk/work-out.ts'
import { zoneOf } from '../domain/calendar/zone.ts'
import { ok, type Result } from '../domain/result/result.ts'
import { openClock } from './open-clock.ts'

/**
 * Where the house's queue lives: on Redis when its address is set, else on the store's own PostgreSQL. One Redis may serve several places
 * that know a house by the same id.
 */
export const queuePlace = ({ redis }: Config, address: Address, { shopId: house, store }: Desk): QueuePlace =>
  redis === null ? { kind: 'postgres', house, address } : { kind: 'redis', house, records: store.place, ...redis }

type Reading = Promise<Result<Workshop>>

/** The desk of a shop, whose records may still be being read, over a store at an address. */
export const openDesk = async (config: Config, reading: Reading, address: Address): Promise<Result<Desk>> => {
  const workshop = await reading
  if (!workshop.ok) return workshop
  const zone = zoneOf(workshop.value.shop.profile.zone)
  if (!zone.ok) return zone
  const clock = await openClock(config, address, zone.value)
  if (!clock.ok) return clock
  const store = await openStore({ address, time: clock.value.milliseconds })
  if (!store.ok) return store
  const shopId = workshop.value.shop.profile.id
  return ok({
    shopId,
    zone: zone.value,
    store: store.value,
    workshop: workshop.value,
    clock: clock.value,
    ids: machineIds,
    readSheet,
  })
}

/** Where the store is: the address that is set, else the embedded server's on the data folder. */
export const addressFor = async (config: Config): Promise<Result<Address>> =>
  config.databaseUrl === null ? embeddedAddress(config.data) : ok({ connectionString: config.databaseUrl })
