import type { Address } from '../adapters/store/address.ts'
import { type Held, holdService } from '../adapters/store/hold.ts'
import { migrate } from '../adapters/store/sql/migrate.ts'
import type { Config } from '../config.ts'
import { ok, type Result } from '../domain/result/result.ts'
import type { Base } from './open-base.ts'

/** The store under the service: its address, a word when it is lost, and how to let go of it. */
export type Ground = { readonly service: Address; readonly lost: Promise<void>; readonly close: () => Promise<void> }

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

/** Takes a store for this service alone when it is embedded, and brings the records to the newest shape. */
export const openGround = async (root: string, config: Config, base: Base): Promise<Result<Ground>> => {
  const held = await hold(config, base)
  if (!held.ok) return held
  const state = { lost: false, closing: false }
  const lost = held.value.lost.then(() => {
    state.lost = !state.closing
  })
  const close = async (): Promise<void> => {
    state.closing = true
    await letGo(base, held.value, () => state.lost)
  }
  const { service, owner, role } = base
  const migrated = await migrate({ owner, role, root })
  if (migrated.ok) return ok({ service, lost, close })
  await close()
  return migrated
}
