import { mkdir, readdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { ok } from '../../domain/result/result.ts'
import type { Opened } from '../../ports/opening.ts'
import type { Address } from './address.ts'
import { writeBackup } from './backup.ts'
import { proveBackup } from './prove-backup.ts'

const shape = /^records-\d{8}T\d{6}Z\.backup$/

const nameOf = (now: Date): string => `records-${now.toISOString().replaceAll(/[-:]|\.\d+/g, '')}.backup`

export type Keeping = {
  readonly address: Address
  readonly folder: string
  /** How many of the newest are kept; older ones of the same making are deleted. */
  readonly keep: number
  readonly root: string
}
export type KeptBackup = { readonly file: string; readonly rows: number }

/** Writes a dated backup, proves it by putting it back, and only then lets go of the oldest. */
export const keepBackup = async ({ address, folder, keep, root }: Keeping, now: Date): Opened<KeptBackup> => {
  await mkdir(folder, { recursive: true, mode: 0o700 })
  const file = join(folder, nameOf(now))
  const written = await writeBackup(address, file)
  if (!written.ok) return written
  const proved = await proveBackup(file, root)
  if (!proved.ok) return proved
  const ours = (await readdir(folder)).filter((name) => shape.test(name)).sort()
  for (const old of ours.slice(0, -keep)) await rm(join(folder, old), { force: true })
  return ok({ file, rows: proved.value.rows })
}
