import { sql } from 'kysely'
import { ok, refuse } from '../../../domain/result/result.ts'
import type { Kept } from '../../../ports/keeping.ts'
import type { Events, PlanBook } from '../../../ports/work-records.ts'
import { compiled } from './compiled.ts'
import type { Read } from './document-text.ts'
import { alone, inTurn } from './once.ts'
import { pack, unpack } from './packed.ts'
import { noteEvent, settle } from './pending.ts'
import type { Database, Scope } from './tables.ts'

const eventColumns = ['code', 'orderId', 'ticketId', 'by', 'at', 'facts'] as const

export const eventsIn = (scope: Scope): Events => ({
  add: (event) => noteEvent(scope, event),
  ofOrder: async (orderId) => {
    await settle(scope)
    return scope.db
      .selectFrom('event')
      .select(eventColumns)
      .where('shopId', '=', scope.shopId)
      .where('orderId', '=', orderId)
      .orderBy('eventId')
      .execute()
  },
  between: async (from, to) => {
    await settle(scope)
    return scope.db
      .selectFrom('event')
      .select(eventColumns)
      .where('shopId', '=', scope.shopId)
      .where('at', '>=', from)
      .where('at', '<', to)
      .orderBy('eventId')
      .execute()
  },
})

type KeptPlan = Read & { readonly stamp: string }

/**
 * The plans that were read or written last, by shop, so that a large one is sent once for each version, and only what is new in it is
 * parsed or written. The stamp names the very row: its version, the transaction that wrote it and when, so that no plan that was taken
 * back is ever taken for another.
 */
const keptPlans = new Map<string, KeptPlan>()
const mostKept = 4

const keepPlan = (shopId: string, plan: KeptPlan): void => {
  keptPlans.delete(shopId)
  keptPlans.set(shopId, plan)
  const [oldest] = keptPlans.keys()
  if (keptPlans.size > mostKept && oldest !== undefined) keptPlans.delete(oldest)
}

const stamp = sql<string>`concat_ws(' ', xmin, version, ${sql.ref('writtenAt')})`

const thePlan = compiled((db, values: { readonly shopId: string; readonly known: string }) =>
  db
    .selectFrom('plan')
    .select([
      'version',
      stamp.as('stamp'),
      sql<Buffer | null>`case when ${stamp} = ${values.known} then null else body end`.as('body'),
    ])
    .where('shopId', '=', values.shopId),
)

const readPlan = async ({ db, shopId }: Scope): Promise<{ readonly version: number; readonly body: unknown }> => {
  const kept = keptPlans.get(shopId)
  const row = await thePlan.first(db, { shopId, known: kept?.stamp ?? '' })
  if (row === undefined) return { version: 0, body: null }
  const plan = row.body === null ? kept : unpack(row.body, kept?.parts)
  if (plan === undefined) throw new Error(`the plan of ${shopId} has no body`)
  keepPlan(shopId, { ...plan, stamp: row.stamp })
  return { version: row.version, body: plan.document }
}

type Written = { readonly shopId: string; readonly seen: number; readonly version: number; readonly body: Buffer }
const writtenAt = sql<Date>`now()`

const firstPlan = compiled((db, { shopId, version, body }: Written) =>
  db
    .insertInto('plan')
    .values({ shopId, version, body, writtenAt })
    .onConflict((on) => on.doNothing())
    .returning(['version', stamp.as('stamp')]),
)

const nextPlan = compiled((db, { shopId, seen, version, body }: Written) =>
  db
    .updateTable('plan')
    .set({ version, body, writtenAt })
    .where('shopId', '=', shopId)
    .where('version', '=', seen)
    .returning(['version', stamp.as('stamp')]),
)

const writePlan = async (scope: Scope, version: number, body: unknown): Kept<number> => {
  const { db, shopId } = scope
  const statement = version === 0 ? firstPlan : nextPlan
  const { bytes, parts } = pack(body, keptPlans.get(shopId)?.parts)
  const written = await statement.first(db, { shopId, seen: version, version: version + 1, body: bytes })
  if (written !== undefined) {
    keepPlan(shopId, { stamp: written.stamp, document: body, parts })
    return ok(written.version)
  }
  const found = (await readPlan(scope)).version
  const facts = { what: 'plan', id: shopId, expected: version, found }
  return refuse({ code: 'store-version-changed', at: '', severity: 'stop', facts })
}

const planName = ({ shopId }: Scope): string => `plan of ${shopId}`

const inside = ({ db }: Scope): Database => {
  if (!db.isTransaction) throw new Error('the plan can only be held inside a transaction')
  return db
}

export const planIn = (scope: Scope): PlanBook => ({
  read: () => readPlan(scope),
  write: (version, body) => writePlan(scope, version, body),
  alone: async () => alone(inside(scope), planName(scope)),
  hold: async () => {
    await inTurn(inside(scope), planName(scope))
    return readPlan(scope)
  },
})
