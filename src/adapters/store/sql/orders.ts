import { type RawBuilder, sql } from 'kysely'
import { ok } from '../../../domain/result/result.ts'
import { type Minutes, minutes } from '../../../domain/units/units.ts'
import type { Kept, Seen } from '../../../ports/keeping.ts'
import type { Hold, OrderChange, OrderState, Orders, RowState, StoredOrder, StoredRevision } from '../../../ports/work-records.ts'
import { json, text } from './json.ts'
import { atomic, type Scope } from './tables.ts'
import { alreadyThere, outdated } from './versions.ts'

const orderColumns = ['orderId', 'conversationId', 'state', 'hold', 'revision', 'version', 'handedOverAt'] as const
const revisionColumns = ['orderId', 'revision', 'hash', 'document', 'signedBy', 'signedAt'] as const

type OrderRow = Omit<StoredOrder, 'hold'> & { readonly hold: unknown }
type RevisionRow = Omit<StoredRevision, 'signed'> & { readonly signedBy: string | null; readonly signedAt: number | null }

const isHold = (value: unknown): value is Hold => typeof value === 'object' && value !== null && 'why' in value

const orderOf = (row: OrderRow): StoredOrder => ({ ...row, hold: isHold(row.hold) ? row.hold : null })

const revisionOf = ({ signedBy, signedAt, ...row }: RevisionRow): StoredRevision => ({
  ...row,
  signed: signedBy === null || signedAt === null ? null : { by: signedBy, at: minutes(signedAt) },
})

const read = async ({ db, shopId }: Scope, orderId: string): Promise<StoredOrder | null> => {
  const row = await db
    .selectFrom('order')
    .select(orderColumns)
    .where('shopId', '=', shopId)
    .where('orderId', '=', orderId)
    .executeTakeFirst()
  return row === undefined ? null : orderOf(row)
}

/** Raises the version only when it still is the one the caller saw. */
const change = async (
  scope: Scope,
  seen: Seen,
  changes: OrderChange & { readonly revision?: RawBuilder<number> },
): Kept<StoredOrder> => {
  const { hold, ...plain } = changes
  const row = await scope.db
    .updateTable('order')
    .set({ ...plain, ...(hold === undefined ? {} : { hold: hold === null ? null : json(hold) }), version: seen.version + 1 })
    .where('shopId', '=', scope.shopId)
    .where('orderId', '=', seen.id)
    .where('version', '=', seen.version)
    .returning(orderColumns)
    .executeTakeFirst()
  if (row !== undefined) return ok(orderOf(row))
  return outdated('order', seen, (await read(scope, seen.id))?.version)
}

const revise = (outer: Scope, seen: Seen, added: { readonly document: unknown; readonly hash: string }): Kept<StoredRevision> =>
  atomic(outer, async (scope) => {
    const raised = await change(scope, seen, { revision: sql<number>`revision + 1` })
    if (!raised.ok) return raised
    const { orderId, revision } = raised.value
    const row = await scope.db
      .insertInto('orderRevision')
      .values({ shopId: scope.shopId, orderId, revision, hash: added.hash, document: json(added.document) })
      .returning(revisionColumns)
      .executeTakeFirstOrThrow()
    return ok(revisionOf(row))
  })

const sign = (outer: Scope, seen: Seen, signed: { readonly by: string; readonly at: Minutes }): Kept<StoredOrder> =>
  atomic(outer, async (scope) => {
    const order = await change(scope, seen, { state: 'signed-off' })
    if (!order.ok) return order
    const row = await scope.db
      .updateTable('orderRevision')
      .set({ signedBy: text(signed.by), signedAt: signed.at })
      .where('shopId', '=', scope.shopId)
      .where('orderId', '=', seen.id)
      .where('revision', '=', order.value.revision)
      .returning('revision')
      .executeTakeFirst()
    if (row === undefined) throw new Error(`order ${seen.id} was to be signed before its first revision`)
    return order
  })

const setRows = async ({ db, shopId }: Scope, orderId: string, rows: readonly RowState[]): Promise<void> => {
  if (rows.length === 0) return
  await db
    .insertInto('rowState')
    .values(rows.map((row) => ({ shopId, orderId, ...row })))
    .onConflict((on) => on.columns(['shopId', 'orderId', 'line']).doUpdateSet({ state: (row) => row.ref('excluded.state') }))
    .execute()
}

const add = async ({ db, shopId }: Scope, order: Pick<StoredOrder, 'orderId' | 'conversationId'>): Kept<StoredOrder> => {
  const row = await db
    .insertInto('order')
    .values({ shopId, state: 'asked', ...order })
    .onConflict((on) => on.doNothing())
    .returning(orderColumns)
    .executeTakeFirst()
  return row === undefined ? alreadyThere('order', order.orderId) : ok(orderOf(row))
}

const list = async ({ db, shopId }: Scope, states: readonly OrderState[]): Promise<readonly StoredOrder[]> => {
  const rows = await db
    .selectFrom('order')
    .select(orderColumns)
    .where('shopId', '=', shopId)
    .where('state', 'in', states)
    .orderBy('orderId')
    .execute()
  return rows.map(orderOf)
}

const revisions = async ({ db, shopId }: Scope, orderId: string): Promise<readonly StoredRevision[]> => {
  const rows = await db
    .selectFrom('orderRevision')
    .select(revisionColumns)
    .where('shopId', '=', shopId)
    .where('orderId', '=', orderId)
    .orderBy('revision')
    .execute()
  return rows.map(revisionOf)
}

const revision = async ({ db, shopId }: Scope, orderId: string, wanted: number): Promise<StoredRevision | null> => {
  const row = await db
    .selectFrom('orderRevision')
    .select(revisionColumns)
    .where('shopId', '=', shopId)
    .where('orderId', '=', orderId)
    .where('revision', '=', wanted)
    .executeTakeFirst()
  return row === undefined ? null : revisionOf(row)
}

const rows = async ({ db, shopId }: Scope, orderId: string): Promise<readonly RowState[]> =>
  db
    .selectFrom('rowState')
    .select(['line', 'state'])
    .where('shopId', '=', shopId)
    .where('orderId', '=', orderId)
    .orderBy('line')
    .execute()

export const ordersIn = (scope: Scope): Orders => ({
  add: (order) => add(scope, order),
  read: (orderId) => read(scope, orderId),
  list: (states) => list(scope, states),
  revise: (seen, added) => revise(scope, seen, added),
  revision: (orderId, wanted) => revision(scope, orderId, wanted),
  revisions: (orderId) => revisions(scope, orderId),
  change: (seen, changes) => change(scope, seen, changes),
  sign: (seen, signed) => sign(scope, seen, signed),
  rows: (orderId) => rows(scope, orderId),
  setRows: (orderId, states) => setRows(scope, orderId, states),
})
