import { readdir, readFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { Kysely, type Migration, Migrator, PostgresDialect, sql } from 'kysely'
import { ok } from '../../../domain/result/result.ts'
import { type Address, shown } from '../address.ts'
import { isDiskFull, type Opened, saidBy, unopened } from '../problems.ts'
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
}

/** Brings the records to the newest shape; several that start at once wait for one another. */
export const migrate = async ({ owner, role, root }: Migrating): Opened<void> => {
  const pool = openPool(owner, 2)
  const db = new Kysely<unknown>({ dialect: new PostgresDialect({ pool }) })
  try {
    await sql`create schema if not exists platenpost`.execute(db)
    const folder = join(root, 'src/adapters/store/sql/migrations')
    const migrator = new Migrator({
      db,
      provider: { getMigrations: () => readMigrations(folder) },
      migrationTableSchema: 'platenpost',
    })
    const { error } = await migrator.migrateToLatest()
    if (error !== undefined) throw error
    if (role !== null) await sql.raw(grants(role)).execute(db)
    return ok(undefined)
  } catch (cause) {
    const said = saidBy(cause)
    if (isDiskFull(said)) return unopened('store-disk-full', { folder: shown(owner) })
    if (said.includes('corrupted migrations')) return unopened('store-newer', { said })
    return unopened('store-unreachable', { at: shown(owner), said })
  } finally {
    await db.destroy()
  }
}
