import { sql } from 'kysely'
import type { Database, Scope } from './tables.ts'

const before = new WeakMap<Database, Set<string>>()

/**
 * Whether a transaction does something for the first time: a lock that it has already is its own until it ends, and the same
 * news is told once when it is kept. Outside of a transaction every time is the first.
 */
const isFirst = (db: Database, what: string): boolean => {
  if (!db.isTransaction) return true
  const done = before.get(db) ?? new Set<string>()
  before.set(db, done)
  const first = !done.has(what)
  done.add(what)
  return first
}

/** Waits until no other transaction holds this name, and holds it until this one ends. */
export const alone = async (db: Database, name: string): Promise<void> => {
  if (isFirst(db, `alone: ${name}`)) await sql`select pg_advisory_xact_lock(hashtextextended(${name}, 0))`.execute(db)
}

/** Everybody who listens hears of it when the transaction is kept. */
export const tell = async ({ db, shopId }: Scope, news: { readonly topic: string; readonly id: string }): Promise<void> => {
  const told = JSON.stringify({ shopId, ...news })
  if (isFirst(db, `tell: ${told}`)) await sql`select pg_notify('platenpost', ${told})`.execute(db)
}
