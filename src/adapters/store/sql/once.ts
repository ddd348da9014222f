import { type RawBuilder, sql } from 'kysely'
import type { Database } from './tables.ts'
import { unawaited } from './unawaited.ts'

const before = new WeakMap<Database, Set<string>>()

/**
 * Whether a transaction does something for the first time: a lock that it has already is its own until it ends. Outside of a
 * transaction every time is the first.
 */
const isFirst = (db: Database, what: string): boolean => {
  if (!db.isTransaction) return true
  const done = before.get(db) ?? new Set<string>()
  before.set(db, done)
  const first = !done.has(what)
  done.add(what)
  return first
}

const lock = (name: string): RawBuilder<unknown> => sql`select pg_advisory_xact_lock(hashtextextended(${name}, 0))`

/** Waits until no other transaction holds this name, and holds it until this one ends. */
export const alone = async (db: Database, name: string): Promise<void> => {
  if (isFirst(db, `alone: ${name}`)) await lock(name).execute(db)
}

/** The same for what is said to the records alone: the name is held before the next statement is run. */
export const inTurn = async (db: Database, name: string): Promise<void> => {
  if (isFirst(db, `alone: ${name}`)) await sql`${lock(name)} ${unawaited}`.execute(db)
}
