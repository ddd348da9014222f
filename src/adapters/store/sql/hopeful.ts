import { type Compilable, type OperationNodeSource, sql } from 'kysely'
import type { Database } from './tables.ts'
import { unawaited } from './unawaited.ts'

/**
 * Changes one row of a version that was seen, without waiting for the answer: a row that was changed meanwhile fails the transaction
 * (`must_meet`), which is then tried again, and waits for each answer that time.
 */
export const changeOrFail = (db: Database, changing: OperationNodeSource): Compilable<unknown> => ({
  compile: () => sql`with met as (${changing}) select must_meet(exists(select from met)) ${unawaited}`.compile(db),
})
