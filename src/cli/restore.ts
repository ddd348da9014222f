import { resolve } from 'node:path'
import { projectRoot } from '../adapters/folder/root.ts'
import { readBackup } from '../adapters/store/backup.ts'
import { readConfig } from '../config.ts'
import { borrowBase } from '../wiring/borrow-base.ts'
import { answerDone, answerRefused } from './answer.ts'
import { runCommand, UsageError, type Words } from './command.ts'

const usage = `restore: puts the records of a backup back, into a store that has none

  npm run -s restore -- <file> [--json]

The whole file is checked before anything is written; then all of it is put back, or nothing. Stop the service first. DATA or
DATABASE_URL say which store: a data folder that does not exist yet is made.`

const run = async (words: Words): Promise<number> => {
  const [given, ...more] = words.positionals
  if (given === undefined || more.length > 0) throw new UsageError('say which backup is put back: one file')
  const file = resolve(given)
  const root = projectRoot()
  const config = readConfig(root)
  if (!config.ok) return answerRefused(words, config.problems)
  const { data, databaseUrl } = config.value
  const restored = await borrowBase(config.value, async ({ base, alone }) => {
    if (!alone && databaseUrl === null) {
      return { ok: false, problems: [{ code: 'store-in-use', at: '', severity: 'stop', facts: { at: data } }] }
    }
    return readBackup({ owner: base.owner, role: base.role, root }, file)
  })
  if (!restored.ok) return answerRefused(words, restored.problems)
  return answerDone(words, { file }, `The records of ${file} are back. Start the service.`)
}

await runCommand({ usage, options: { json: { type: 'boolean' } }, run })
