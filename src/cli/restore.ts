import { resolve } from 'node:path'
import { projectRoot } from '../adapters/folder/root.ts'
import { checkBackup, readBackup } from '../adapters/store/backup.ts'
import { removeCluster } from '../adapters/store/embedded/cluster.ts'
import { type Config, readConfig } from '../config.ts'
import type { Result } from '../domain/result/result.ts'
import { borrowBase, hasRecords } from '../wiring/borrow-base.ts'
import { answerDone, answerRefused } from './answer.ts'
import { runCommand, UsageError, type Words } from './command.ts'

const usage = `restore: puts the records of a backup back, into a store that has none

  npm run -s restore -- <file> [--json]

The whole file is checked before anything is written; then all of it is put back, or nothing. Stop the service first. DATA or
DATABASE_URL say which store: a data folder that does not exist yet is made.`

/** Into the store that is set. A place that was made for it and stays empty goes away again. */
const restoreInto = async (config: Config, file: string): Promise<Result<unknown>> => {
  const root = projectRoot()
  const { data, databaseUrl } = config
  const made = { here: false }
  const isNew = !hasRecords(config)
  const restored = await borrowBase(config, async ({ base, alone }) => {
    if (!alone && databaseUrl === null) {
      return { ok: false, problems: [{ code: 'store-in-use', at: '', severity: 'stop', facts: { at: data } }] }
    }
    made.here = isNew
    return readBackup({ owner: base.owner, role: base.role, root }, file)
  })
  if (!restored.ok && made.here) await removeCluster(data)
  return restored
}

const run = async (words: Words): Promise<number> => {
  const [given, ...more] = words.positionals
  if (given === undefined || more.length > 0) throw new UsageError('say which backup is put back: one file')
  const file = resolve(given)
  const config = readConfig(projectRoot())
  if (!config.ok) return answerRefused(words, config.problems)
  const whole = await checkBackup(file)
  if (!whole.ok) return answerRefused(words, whole.problems)
  const restored = await restoreInto(config.value, file)
  if (!restored.ok) return answerRefused(words, restored.problems)
  return answerDone(words, { file }, `The records of ${file} are back. Start the service.`)
}

await runCommand({ usage, options: { json: { type: 'boolean' } }, run })
