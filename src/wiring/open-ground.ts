import type { Address } from '../adapters/store/address.ts'
import { startEmbedded } from '../adapters/store/embedded/start-embedded.ts'
import { type Held, holdService } from '../adapters/store/hold.ts'
import { makeServedRole } from '../adapters/store/served-role.ts'
import { migrate } from '../adapters/store/sql/migrate.ts'
import type { Config } from '../config.ts'
import { ok, type Result } from '../domain/result/result.ts'

/** The store under the service: its address, a word when it is lost, and how to let go of it. */
export type Ground = { readonly service: Address; readonly lost: Promise<void>; readonly close: () => Promise<void> }

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
  const role = await makeServedRole(owner, url)
  return role.ok ? ok({ ...served, owner, role: role.value }) : role
}

/** The PostgreSQL that is set, or the embedded one on the data folder: started, or found running. */
export const openBase = async (config: Config): Promise<Result<Base>> => {
  if (config.databaseUrl !== null) return openServed(config.databaseUrl, config.databaseOwnerUrl)
  const embedded = await startEmbedded(config.data)
  return embedded.ok ? ok({ ...embedded.value, role: 'service' }) : embedded
}

const unheld: Held = { release: async () => undefined, lost: new Promise<void>(() => undefined) }

/** Takes embedded data for this process alone; many services may share a server that is set by its address. */
const hold = async (config: Config, base: Base): Promise<Result<Held>> => {
  if (config.databaseUrl !== null) return ok(unheld)
  const held = await holdService(base.service)
  if (held.ok) return held
  const problems = held.problems.map((problem) =>
    problem.code === 'store-in-use' ? { ...problem, facts: { at: config.data } } : problem,
  )
  return { ok: false, problems }
}

/** Stops the server in order, unless somebody else took the data meanwhile. */
const letGo = async (base: Base, held: Held, isLost: () => boolean): Promise<void> => {
  await held.release()
  if (!isLost()) return base.stop()
  const again = await holdService(base.service)
  if (again.ok) {
    await again.value.release()
    await base.stop()
  }
}

/** Starts or finds PostgreSQL, takes it for this service alone when it is embedded, and brings the records to the newest shape. */
export const openGround = async (root: string, config: Config): Promise<Result<Ground>> => {
  if (config.redis !== null) {
    const { checkRedis } = await import('../adapters/queue/bullmq/check-redis.ts')
    const redis = await checkRedis(config.redis)
    if (!redis.ok) return redis
  }
  const base = await openBase(config)
  if (!base.ok) return base
  const held = await hold(config, base.value)
  if (!held.ok) return held
  const state = { lost: false, closing: false }
  const lost = held.value.lost.then(() => {
    state.lost = !state.closing
  })
  const close = async (): Promise<void> => {
    state.closing = true
    await letGo(base.value, held.value, () => state.lost)
  }
  const { service, owner, role } = base.value
  const migrated = await migrate({ owner, role, root })
  if (migrated.ok) return ok({ service, lost, close })
  await close()
  return migrated
}
