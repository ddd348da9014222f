import { settle } from './pending.ts'
import type { Scope } from './tables.ts'

const alone = <T>(outer: Scope, work: (scope: Scope) => Promise<T>): Promise<T> =>
  outer.db.transaction().execute(async (db) => {
    const scope = { ...outer, db }
    const result = await work(scope)
    await settle(scope)
    return result
  })

/** Runs several statements as one: in the transaction at hand, or in one of their own. */
export const atomic = <T>(scope: Scope, work: (scope: Scope) => Promise<T>): Promise<T> =>
  scope.db.isTransaction ? work(scope) : alone(scope, work)
