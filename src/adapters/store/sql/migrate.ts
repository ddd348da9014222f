import { readdir, readFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { Kysely, type Migration, Migrator, PostgresDialect, sql } from 'kysely'
import pg from 'pg'
import { ok } from '../../../domain/result/result.ts'
import type { Opened } from '../../../ports/opening.ts'
import { type Address, shown } from '../address.ts'
import { failedAt, saidBy, unopened } from '../problems.ts'
import { openPool } from './pool.ts'

const readMigrations = async (folder: string): Promise<Record<string, Migration>> => {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.sql')).sort()
  const entries = names.map(async (name): Promise<[string, Migration]> => {
    const statements = await readFile(join(folder, name), 'utf8')
    const up: Migration['up'] = async (db) => {
      await sql.raw(statements).execute(db)
    }
    return [basename(name, '.sql'), { up }]
  })
  return Object.fromEntries(await Promise.all(entries))
}

/** What the service may do: everything but change or delete what happened. */
const grants = (role: string): string => `
  grant usage on schema platenpost to ${role};
  grant select, insert, update, delete on all tables in schema platenpost to ${role};
  grant usage, select on all sequences in schema platenpost to ${role};
  revoke update, delete on platenpost.event from ${role};
  revoke insert, update, delete on platenpost.kysely_migration, platenpost.kysely_migration_lock from ${role};`

export type Migrating = {
  readonly owner: Address
  /** The unprivileged role of the service, where it is another one than the owner. */
  readonly role: string | null
  /** The project's folder. */
  readonly root: string
  /** The last migration to run, for records of an older program; the newest when it is not given. */
  readonly upTo?: string
}

const lockNumber = 7_078_105_117

const bring = async (db: Kysely<unknown>, { role, root, upTo }: Migrating): Promise<void> => {
  await sql`create schema if not exists platenpost`.execute(db)
  const folder = join(root, 'src/adapters/store/sql/migrations')
  const provider = { getMigrations: () => readMigrations(folder) }
  const migrator = new Migrator({ db, provider, migrationTableSchema: 'platenpost', allowUnorderedMigrations: true })
  const { error } = await (upTo === undefined ? migrator.migrateToLatest() : migrator.migrateTo(upTo))
  if (error !== undefined) throw error
  if (role !== null) await sql.raw(grants(pg.escapeIdentifier(role))).execute(db)
}

/** Brings the records to the newest shape; several that start at once wait for one another. */
export const migrate = async (migrating: Migrating): Opened<void> => {
  const pool = openPool(migrating.owner, 2)
  const db = new Kysely<unknown>({ dialect: new PostgresDialect({ pool }) })
  try {
    const holder = await pool.connect()
    try {
      await holder.query('select pg_advisory_lock($1)', [lockNumber])
      await bring(db, migrating)
    } finally {
      holder.release(true)
    }
    return ok(undefined)
  } catch (cause) {
    const said = saidBy(cause)
    if (/corrupted migrations|migration "[^"]*" doesn't exist/.test(said)) return unopened('store-newer', { said })
    return failedAt(shown(migrating.owner), cause)
  } finally {
    await db.destroy()
  }
}
