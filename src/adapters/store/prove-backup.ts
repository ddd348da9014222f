import { createHash } from 'node:crypto'
import { chmod, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ok } from '../../domain/result/result.ts'
import type { Opened } from '../../ports/opening.ts'
import { batchesOf, readBackup, writeBackup } from './backup.ts'
import { startEmbedded } from './embedded/start-embedded.ts'
import { unopened } from './problems.ts'

/** Per table: how many rows, and the sum of their SHA-256 sums, which no order of the rows changes. */
type Sums = ReadonlyMap<string, { readonly rows: number; readonly sum: bigint }>

const modulus = 1n << 256n

const sumOf = (row: string): bigint => BigInt(`0x${createHash('sha256').update(row).digest('hex')}`)

const sumsOf = async (file: string): Promise<Sums> => {
  const sums = new Map<string, { rows: number; sum: bigint }>()
  for await (const { table, rows } of batchesOf(file)) {
    const before = sums.get(table) ?? { rows: 0, sum: 0n }
    const sum = rows.reduce((all, row) => (all + sumOf(row)) % modulus, before.sum)
    sums.set(table, { rows: before.rows + rows.length, sum })
  }
  return sums
}

const firstDifference = (was: Sums, is: Sums): string | undefined =>
  [...new Set([...was.keys(), ...is.keys()])].find(
    (table) => was.get(table)?.rows !== is.get(table)?.rows || was.get(table)?.sum !== is.get(table)?.sum,
  )

const compare = async (file: string, again: string): Opened<{ readonly rows: number }> => {
  const [was, is] = [await sumsOf(file), await sumsOf(again)]
  const table = firstDifference(was, is)
  if (table !== undefined) return unopened('backup-differs', { file, table })
  return ok({ rows: [...was.values()].reduce((sum, { rows }) => sum + rows, 0) })
}

const restoreIn = async (folder: string, file: string, root: string): Opened<{ readonly rows: number }> => {
  const scratch = await startEmbedded(join(folder, 'data'))
  if (!scratch.ok) return scratch
  try {
    const restored = await readBackup({ owner: scratch.value.owner, role: 'service', root }, file)
    if (!restored.ok) return restored
    const again = join(folder, 'again')
    const written = await writeBackup(scratch.value.owner, again)
    return written.ok ? await compare(file, again) : written
  } finally {
    await scratch.value.stop()
  }
}

/**
 * Puts a backup of this version's records back into a store of its own that is thrown away afterwards, and compares every
 * row of every table; answers how many there were.
 */
export const proveBackup = async (file: string, root: string): Opened<{ readonly rows: number }> => {
  const folder = await mkdtemp(join(tmpdir(), 'platenpost-proof-'))
  await chmod(folder, 0o711)
  try {
    return await restoreIn(folder, file, root)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
