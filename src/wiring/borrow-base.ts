import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { holdService } from '../adapters/store/hold.ts'
import type { Config } from '../config.ts'
import type { Problem, Result } from '../domain/result/result.ts'
import { type Base, openBase } from './open-base.ts'

/** `alone`: no service runs on these data, and none can start until the command has ended. */
export type Borrowed = { readonly base: Base; readonly alone: boolean }

/** Whether the embedded store was ever made; what is set by its address is not ours to ask. */
export const hasRecords = (config: Config): boolean =>
  config.databaseUrl !== null || existsSync(join(config.data, 'postgres', 'PG_VERSION'))

/** A command's use of the store: a service that runs is not disturbed; a server that did not run is stopped again afterwards. */
export const borrowBase = async <T>(
  config: Config,
  work: (borrowed: Borrowed) => Promise<Result<T, Problem>>,
): Promise<Result<T, Problem>> => {
  const base = await openBase(config)
  if (!base.ok) return base
  if (config.databaseUrl !== null) return work({ base: base.value, alone: false })
  const held = await holdService(base.value.service)
  if (!held.ok) return held.problems.some(({ code }) => code === 'store-in-use') ? work({ base: base.value, alone: false }) : held
  try {
    return await work({ base: base.value, alone: true })
  } finally {
    await held.value.release()
    if (!base.value.adopted) await base.value.stop()
  }
}
