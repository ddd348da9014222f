import { setTimeout as pause } from 'node:timers/promises'
import type { Address } from '../adapters/store/address.ts'
import { keepBackup } from '../adapters/store/keep-backups.ts'
import type { Config } from '../config.ts'
import { plainProblems, problemLines } from './say-problems.ts'
import type { Report } from './trouble.ts'

const hour = 3_600_000

export type Backups = { readonly config: Config; readonly address: Address; readonly root: string; readonly report: Report }

/** A backup now and every so many hours, where a folder is set; one that cannot be written or put back is told at once. */
export const startBackups = ({ config, address, root, report }: Backups): { readonly close: () => Promise<void> } => {
  const { backups } = config
  if (backups === null) return { close: async () => undefined }
  const stop = new AbortController()
  const once = async (): Promise<void> => {
    const kept = await keepBackup({ address, folder: backups.folder, keep: backups.keep, root }, new Date())
    if (kept.ok) process.stdout.write(`Backup: ${kept.value.file}, ${kept.value.rows} rows, put back and compared.\n`)
    else report(new Error(problemLines(plainProblems(kept.problems))))
  }
  const loop = async (): Promise<void> => {
    while (!stop.signal.aborted) {
      await once().catch(report)
      await pause(backups.everyHours * hour, undefined, { signal: stop.signal }).catch(() => undefined)
    }
  }
  const ended = loop()
  return {
    close: async () => {
      stop.abort()
      await ended
    },
  }
}
