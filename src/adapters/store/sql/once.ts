import { type RawBuilder, sql } from 'kysely'
import type { Database, Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'

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

const lock = (name: string): RawBuilder<unknown> => sql`select pg_advisory_xact_lock(hashtextextended(${name}, 0))`

/** Waits until no other transaction holds this name, and holds it until this one ends. */
export const alone = async (db: Database, name: string): Promise<void> => {
  if (isFirst(db, `alone: ${name}`)) await lock(name).execute(db)
}

/** The same for what is said to the records alone: the name is held before the next statement is run. */
export const inTurn = async (db: Database, name: string): Promise<void> => {
  if (isFirst(db, `alone: ${name}`)) await sql`${lock(name)} ${unawaited}`.execute(db)
}

type News = { readonly topic: string; readonly id: string }

const told = (shopId: string, news: News): string => JSON.stringify({ shopId, ...news })

/** The part of a statement that tells everybody who listens, when the transaction is kept. */
export const notice = (shopId: string, news: News): RawBuilder<unknown> => sql`pg_notify('platenpost', ${told(shopId, news)})`

/** Everybody who listens hears of it when the transaction is kept. */
export const tell = async ({ db, shopId }: Scope, news: News): Promise<void> => {
  if (isFirst(db, `tell: ${told(shopId, news)}`)) await sql`select ${notice(shopId, news)} ${unawaited}`.execute(db)
}
