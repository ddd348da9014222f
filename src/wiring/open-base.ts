import type { Address } from '../adapters/store/address.ts'
import { startEmbedded } from '../adapters/store/embedded/start-embedded.ts'
import type { Config } from '../config.ts'
import { ok, type Result } from '../domain/result/result.ts'

/** A server at hand, by the two addresses it is used by; `adopted` when it was running already. */
export type Base = {
  readonly service: Address
  readonly owner: Address
  readonly role: string | null
  readonly adopted: boolean
  readonly stop: () => Promise<void>
}

/** A server that is set by its address, with a role of its own for the service where its owner is set too. */
const openServed = async (url: string, ownerUrl: string | null): Promise<Result<Base>> => {
  const service = { connectionString: url }
  const served = { service, adopted: true, stop: async () => undefined }
  if (ownerUrl === null) return ok({ ...served, owner: service, role: null })
  const owner = { connectionString: ownerUrl }
  const { makeServedRole } = await import('../adapters/store/served-role.ts')
  const role = await makeServedRole(owner, url)
  return role.ok ? ok({ ...served, owner, role: role.value }) : role
}

/** The PostgreSQL that is set, or the embedded one on the data folder: started, or found running. */
export const openBase = async (config: Config): Promise<Result<Base>> => {
  if (config.databaseUrl !== null) return openServed(config.databaseUrl, config.databaseOwnerUrl)
  const embedded = await startEmbedded(config.data)
  return embedded.ok ? ok({ ...embedded.value, role: 'service' }) : embedded
}
