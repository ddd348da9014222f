import { existsSync } from 'node:fs'
import { mkdir, stat } from 'node:fs/promises'
import { dirname, resolve } from 'node:path'
import { projectRoot } from '../adapters/folder/root.ts'
import { shown } from '../adapters/store/address.ts'
import { writeBackup } from '../adapters/store/backup.ts'
import { proveBackup } from '../adapters/store/prove-backup.ts'
import { type Config, readConfig } from '../config.ts'
import { ok, type Problem, type Result } from '../domain/result/result.ts'
import { borrowBase, hasRecords } from '../wiring/borrow-base.ts'
import { answerDone, answerRefused } from './answer.ts'
import { isOn, runCommand, text, UsageError, type Words } from './command.ts'

const usage = `backup: every record of the store, files too, as of one instant, in one checksummed file

  npm run -s backup -- --out <file> [--prove] [--json]

--prove puts the file back into a store that is thrown away afterwards and compares every row. A running service does both
every night when BACKUP_INTO names a folder.

The service may run meanwhile. DATA or DATABASE_URL say which store, as for the service. A file that is there already stays
as it is: take a new name. It holds names and contacts: keep it where only the shop can read it.`

/** Which store it was, so that nobody takes one for another. */
const storeText = ({ databaseUrl, data }: Config): string =>
  databaseUrl === null ? data : shown({ connectionString: databaseUrl })

const refused = (code: string, facts: Problem['facts']): { readonly ok: false; readonly problems: readonly Problem[] } => ({
  ok: false,
  problems: [{ code, at: '', severity: 'stop', facts }],
})

/** The folder of the file, made when it is new. */
const makeFolder = async (file: string): Promise<Result<null>> => {
  try {
    await mkdir(dirname(file), { recursive: true })
    return ok(null)
  } catch (cause) {
    return refused('backup-not-written', { file, said: cause instanceof Error ? cause.message : String(cause) })
  }
}

const run = async (words: Words): Promise<number> => {
  const out = text(words, 'out')
  if (out === undefined || words.positionals.length > 0) throw new UsageError('say where the backup goes: --out <file>')
  const file = resolve(out)
  const config = readConfig(projectRoot())
  if (!config.ok) return answerRefused(words, config.problems)
  if (!hasRecords(config.value)) {
    return answerRefused(words, refused('store-nothing-there', { folder: config.value.data }).problems)
  }
  if (existsSync(file)) return answerRefused(words, refused('backup-there', { file }).problems)
  const folder = await makeFolder(file)
  if (!folder.ok) return answerRefused(words, folder.problems)
  const written = await borrowBase(config.value, ({ base }) => writeBackup(base.service, file))
  if (!written.ok) return answerRefused(words, written.problems)
  const proved = isOn(words, 'prove') ? await proveBackup(file, projectRoot()) : null
  if (proved !== null && !proved.ok) return answerRefused(words, proved.problems)
  const { size } = await stat(file)
  const proof = proved === null ? '' : ` ${proved.value.rows} rows were put back and are the same.`
  const { orders, rows } = written.value
  const held = `${file} holds every record of ${storeText(config.value)} (orders: ${orders}; rows: ${rows}; bytes: ${size}).`
  return answerDone(words, { file, bytes: size, orders, rows }, `${held}${proof}`)
}

await runCommand({ usage, options: { out: { type: 'string' }, prove: { type: 'boolean' }, json: { type: 'boolean' } }, run })
