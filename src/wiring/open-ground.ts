import { checkRedis } from '../adapters/queue/bullmq/check-redis.ts'
import type { Address } from '../adapters/store/address.ts'
import { startEmbedded } from '../adapters/store/embedded/start-embedded.ts'
import { holdService } from '../adapters/store/hold.ts'
import { migrate } from '../adapters/store/sql/migrate.ts'
import type { Config } from '../config.ts'
import { ok, type Result } from '../domain/result/result.ts'

/** The store under the service: its address, a word when it is lost, and how to let go of it. */
export type Ground = { readonly service: Address; readonly lost: Promise<void>; readonly close: () => Promise<void> }

type Base = {
  readonly service: Address
  readonly owner: Address
  readonly role: string | null
  readonly stop: () => Promise<void>
}

const baseOf = async (config: Config): Promise<Result<Base>> => {
  if (config.databaseUrl !== null) {
    const address = { connectionString: config.databaseUrl }
    return ok({ service: address, owner: address, role: null, stop: async () => undefined })
  }
  const embedded = await startEmbedded(config.data)
  if (!embedded.ok) return embedded
  const { service, owner, stop } = embedded.value
  return ok({ service, owner, role: 'service', stop })
}

/** Starts or finds PostgreSQL, takes it for this service alone when it is embedded, and brings the records to the newest shape. */
export const openGround = async (root: string, config: Config): Promise<Result<Ground>> => {
  if (config.redisUrl !== null) {
    const redis = await checkRedis(config.redisUrl)
    if (!redis.ok) return redis
  }
  const base = await baseOf(config)
  if (!base.ok) return base
  const { service, owner, role, stop } = base.value
  const embedded = config.databaseUrl === null
  const held = embedded
    ? await holdService(service)
    : ok({ release: async () => undefined, lost: new Promise<void>(() => undefined) })
  if (!held.ok) return held
  const migrated = await migrate({ owner, role, root })
  if (!migrated.ok) {
    await held.value.release()
    return migrated
  }
  const close = async (): Promise<void> => {
    await held.value.release()
    await stop()
  }
  return ok({ service, lost: held.value.lost, close })
}
