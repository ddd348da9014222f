import { randomBytes, randomUUID } from 'node:crypto'
import { link, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import * as z from 'zod'
import type { Address } from '../address.ts'

/** What must be known to reach the data: kept beside them, readable by us alone. */
const keysSchema = z.strictObject({
  ownerPassword: z.string().min(20),
  servicePassword: z.string().min(20),
  /** The socket's folder, or 127.0.0.1 where there are no sockets. */
  host: z.string(),
  port: z.int(),
})
export type StoreKeys = z.infer<typeof keysSchema>

export const keysFile = (data: string): string => join(data, 'store.json')

export const readKeys = async (data: string): Promise<StoreKeys | undefined> => {
  try {
    return keysSchema.parse(JSON.parse(await readFile(keysFile(data), 'utf8')))
  } catch (cause) {
    if (cause instanceof Error && 'code' in cause && cause.code === 'ENOENT') return undefined
    throw cause
  }
}

const besideIn = (data: string): string => `${keysFile(data)}.${randomUUID()}`

/** Whole or not at all: written beside, then put in place. */
export const writeKeys = async (data: string, keys: StoreKeys): Promise<void> => {
  const beside = besideIn(data)
  await writeFile(beside, `${JSON.stringify(keys, null, 2)}\n`, { mode: 0o600 })
  await rename(beside, keysFile(data))
}

/** Makes the keys unless somebody else has just done so; answers with the ones that hold. */
export const makeKeys = async (data: string): Promise<StoreKeys> => {
  const beside = besideIn(data)
  const secret = (): string => randomBytes(24).toString('base64url')
  const made: StoreKeys = { ownerPassword: secret(), servicePassword: secret(), host: '', port: 5432 }
  await writeFile(beside, `${JSON.stringify(made, null, 2)}\n`, { mode: 0o600 })
  try {
    await link(beside, keysFile(data))
    return made
  } catch {
    return (await readKeys(data)) ?? made
  } finally {
    await rm(beside, { force: true })
  }
}

export const ownerAddress = (keys: StoreKeys, database: string): Address => ({
  host: keys.host,
  port: keys.port,
  user: 'owner',
  password: keys.ownerPassword,
  database,
})
export const serviceAddress = (keys: StoreKeys): Address => ({
  host: keys.host,
  port: keys.port,
  user: 'service',
  password: keys.servicePassword,
  database: 'platenpost',
})
