import { existsSync } from 'node:fs'
import { rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname } from 'node:path'
import { ok } from '../../../domain/result/result.ts'
import type { Opened } from '../../../ports/opening.ts'
import type { Address } from '../address.ts'
import { isDiskFull, saidBy, unopened } from '../problems.ts'
import { findAccount } from './account.ts'
import { findBinaries } from './binaries.ts'
import { clusterFolder, makeCluster, makeData, type Place } from './cluster.ts'
import { keysFile, makeKeys, ownerAddress, readKeys, type StoreKeys, serviceAddress } from './keys.ts'
import { closedFolder } from './passable.ts'
import type { Account } from './run.ts'
import { makeRoom, startOrAdopt, stopServer } from './server.ts'

export type Embedded = {
  /** For everything the service does. */
  readonly service: Address
  /** For migrations alone. */
  readonly owner: Address
  /** The server was running already, left behind by a service that was killed. */
  readonly adopted: boolean
  readonly stop: () => Promise<void>
}

const isThere = async (path: string): Promise<boolean> => {
  try {
    await stat(path)
    return true
  } catch {
    return false
  }
}

const firstClosed = async (folders: readonly string[], account: Account): Promise<string | undefined> => {
  for (const folder of folders) {
    const closed = await closedFolder(folder, account)
    if (closed !== undefined) return closed
  }
  return undefined
}

const findPlace = async (data: string): Opened<Place> => {
  const binaries = await findBinaries()
  if (!binaries.ok) return binaries
  const account = await findAccount(clusterFolder(data))
  if (!account.ok) return account
  await makeData(data, account.value)
  if (account.value !== null) {
    const closed = await firstClosed([data, tmpdir(), dirname(binaries.value.initdb)], account.value)
    if (closed !== undefined) return unopened('store-folder-closed', { folder: closed, user: account.value.name })
  }
  return ok({ data, binaries: binaries.value, account: account.value })
}

const findKeys = async (place: Place): Opened<StoreKeys> => {
  // In this order: another start writes its keys first and then makes the data.
  const made = await isThere(clusterFolder(place.data))
  const known = await readKeys(place.data)
  if (made && known === undefined) {
    return unopened('store-keys-missing', { file: keysFile(place.data), folder: clusterFolder(place.data) })
  }
  const keys = known ?? (await makeKeys(place.data))
  if (made) return ok(keys)
  const cluster = await makeCluster(place, keys)
  return cluster.ok ? ok(keys) : cluster
}

const open = async (data: string): Opened<Embedded> => {
  const place = await findPlace(data)
  if (!place.ok) return place
  const keys = await findKeys(place.value)
  if (!keys.ok) return keys
  const started = await startOrAdopt(place.value, keys.value)
  if (!started.ok) return started
  const { adopted, keys: held } = started.value
  const room = await makeRoom(held)
  if (!room.ok) return room
  return ok({
    service: serviceAddress(held),
    owner: ownerAddress(held, 'platenpost'),
    adopted,
    stop: async () => {
      await stopServer(place.value)
      if (process.platform !== 'win32') await rm(held.host, { recursive: true, force: true })
    },
  })
}

/** PostgreSQL of our own on a data folder: makes it, starts it, or adopts the one that runs there. */
export const startEmbedded = async (data: string): Opened<Embedded> => {
  try {
    return await open(data)
  } catch (cause) {
    const said = saidBy(cause)
    if (isDiskFull(said)) return unopened('store-disk-full', { folder: data })
    if (/EACCES|EEXIST|EPERM|EROFS|ENOTDIR/.test(said)) return unopened('store-folder-refused', { folder: data, said })
    throw cause
  }
}

/** The service's address on data whose server runs: how the worker process finds the store. */
export const embeddedAddress = async (data: string): Opened<Address> => {
  const keys = await readKeys(data)
  if (keys !== undefined) return ok(serviceAddress(keys))
  const folder = clusterFolder(data)
  if (!existsSync(folder)) return unopened('store-nothing-there', { folder: data })
  return unopened('store-keys-missing', { file: keysFile(data), folder })
}
