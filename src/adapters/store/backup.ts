import { createHash } from 'node:crypto'
import { createReadStream, createWriteStream, existsSync } from 'node:fs'
import { rename, rm } from 'node:fs/promises'
import { createInterface } from 'node:readline'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { createGunzip, createGzip } from 'node:zlib'
import type pg from 'pg'
import * as z from 'zod'
import { ok } from '../../domain/result/result.ts'
import type { Opened } from '../../ports/opening.ts'
import { type Address, shown } from './address.ts'
import { failedAt, isDiskFull, saidBy, unopened } from './problems.ts'
import { type Migrating, migrate } from './sql/migrate.ts'
import { openPool } from './sql/pool.ts'
import { counters, type RecordTable, recordTables } from './sql/record-tables.ts'

/*
 * A backup is one gzip file of JSON lines: a head, the rows of the tables in their order, and a foot with the number of lines
 * and the SHA-256 of everything before it.
 */
const headSchema = z.strictObject({
  backup: z.literal('platenpost'),
  version: z.literal(1),
  migrations: z.array(z.string()).min(1),
})
const rowSchema = z.strictObject({ table: z.enum(recordTables), row: z.string() })
const footSchema = z.strictObject({ lines: z.int().min(1), sha256: z.string() })

/** Files are up to a megabyte each. */
const atOnce = (table: RecordTable): number => (table === 'file' ? 8 : 200)

type Counts = Map<RecordTable, number>

async function* rowsOf(client: pg.PoolClient, counts: Counts): AsyncGenerator<string> {
  const { rows } = await client.query('select name from kysely_migration order by name')
  yield JSON.stringify({ backup: 'platenpost', version: 1, migrations: rows.map(({ name }) => name) })
  for (const table of recordTables) {
    // A row as PostgreSQL writes it itself: what is read back is equal to the last bit.
    await client.query(`declare reading no scroll cursor for select t::text as row from "${table}" t`)
    for (;;) {
      const { rows: read } = await client.query(`fetch ${atOnce(table)} from reading`)
      if (read.length === 0) break
      counts.set(table, (counts.get(table) ?? 0) + read.length)
      for (const { row } of read) yield JSON.stringify({ table, row })
    }
    await client.query('close reading')
  }
}

async function* withFoot(lines: AsyncIterable<string>): AsyncGenerator<string> {
  const hash = createHash('sha256')
  let many = 0
  for await (const line of lines) {
    hash.update(`${line}\n`)
    many += 1
    yield `${line}\n`
  }
  yield `${JSON.stringify({ lines: many, sha256: hash.digest('hex') })}\n`
}

/** How much a backup holds: a shop that has just been opened for the first time holds next to nothing. */
export type Held = { readonly orders: number; readonly rows: number }

const heldBy = (counts: Counts): Held => ({
  orders: counts.get('order') ?? 0,
  rows: [...counts.values()].reduce((sum, many) => sum + many, 0),
})

/** Writes every record as it stands at one instant into one file; answers with how much it was. */
export const writeBackup = async (address: Address, file: string): Opened<Held> => {
  const counts: Counts = new Map()
  const pool = openPool(address, 1)
  const beside = `${file}.part`
  try {
    const client = await pool.connect()
    try {
      await client.query('begin isolation level repeatable read read only')
      await pipeline(Readable.from(withFoot(rowsOf(client, counts))), createGzip(), createWriteStream(beside, { mode: 0o600 }))
      await client.query('commit')
    } finally {
      client.release(true)
    }
    await rename(beside, file)
    return ok(heldBy(counts))
  } catch (cause) {
    await rm(beside, { force: true })
    return isDiskFull(saidBy(cause)) ? unopened('store-disk-full', { folder: file }) : failedAt(shown(address), cause)
  } finally {
    await pool.end()
  }
}

async function* linesOf(file: string): AsyncGenerator<string> {
  const source = createReadStream(file)
  const unpacked = createGunzip()
  source.on('error', (cause) => unpacked.destroy(cause))
  yield* createInterface({ input: source.pipe(unpacked), crlfDelay: Number.POSITIVE_INFINITY })
}

/** Reads the whole file; answers with the migrations its records had. */
const check = async (file: string): Promise<readonly string[]> => {
  const hash = createHash('sha256')
  const read: { first: string | null; last: string | null; many: number } = { first: null, last: null, many: 0 }
  for await (const line of linesOf(file)) {
    if (read.last !== null) hash.update(`${read.last}\n`)
    read.first ??= line
    read.last = line
    read.many += 1
  }
  const foot = footSchema.parse(JSON.parse(read.last ?? ''))
  if (foot.lines !== read.many - 1 || foot.sha256 !== hash.digest('hex')) throw new Error('its sum does not fit')
  return headSchema.parse(JSON.parse(read.first ?? '')).migrations
}

/** Rows of one table after the other, a few at a time. */
export async function* batchesOf(
  file: string,
): AsyncGenerator<{ readonly table: RecordTable; readonly rows: readonly string[] }> {
  let batch: { table: RecordTable; rows: string[] } | null = null
  for await (const line of linesOf(file)) {
    const parsed = rowSchema.safeParse(JSON.parse(line))
    if (!parsed.success) continue
    const { table, row } = parsed.data
    if (batch !== null && (batch.table !== table || batch.rows.length >= atOnce(table))) {
      yield batch
      batch = null
    }
    batch ??= { table, rows: [] }
    batch.rows.push(row)
  }
  if (batch !== null) yield batch
}

const putBack = async (client: pg.PoolClient, file: string): Promise<void> => {
  await client.query('begin')
  for await (const { table, rows } of batchesOf(file)) {
    await client.query(
      `insert into "${table}" overriding system value
        select (written.row).* from (select unnest($1::text[])::"${table}" as row) written`,
      [rows],
    )
  }
  for (const { sequence, table, column } of counters) {
    await client.query(`select setval('${sequence}', max(${column})) from "${table}" having count(*) > 0`)
  }
  await client.query('commit')
}

const intoEmpty = async (owner: Address, file: string): Opened<void> => {
  const pool = openPool(owner, 1)
  try {
    const client = await pool.connect()
    try {
      const { rowCount } = await client.query('select from shop limit 1')
      if (rowCount !== 0) return unopened('store-not-empty', { at: shown(owner) })
      await putBack(client, file)
      return ok(undefined)
    } finally {
      client.release(true)
    }
  } catch (cause) {
    return failedAt(shown(owner), cause)
  } finally {
    await pool.end()
  }
}

/** Whether a file is a whole backup, before anything is written; answers with the migrations its records had. */
export const checkBackup = async (file: string): Opened<readonly string[]> => {
  if (!existsSync(file)) return unopened('backup-missing', { file })
  const checked = await check(file).catch(saidBy)
  return typeof checked === 'string' ? unopened('backup-damaged', { file, said: checked }) : ok(checked)
}

/** Puts the records of a backup back where there are none: all of them or nothing. Older records are brought to the newest shape. */
export const readBackup = async (migrating: Migrating, file: string): Opened<void> => {
  const checked = await checkBackup(file)
  if (!checked.ok) return checked
  const older = await migrate({ ...migrating, upTo: checked.value.at(-1) ?? '' })
  if (!older.ok) return older
  const restored = await intoEmpty(migrating.owner, file)
  return restored.ok ? migrate(migrating) : restored
}
