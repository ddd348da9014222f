import { sql } from 'kysely'
import { ok } from '../../../domain/result/result.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { Kept, Seen } from '../../../ports/keeping.ts'
import type { OrderChange, OrderState, Orders, RowState, StoredOrder, StoredRevision } from '../../../ports/work-records.ts'
import { atomic } from './atomic.ts'
import { compiled, compiledByShape, compiledText } from './compiled.ts'
import { json, text } from './json.ts'
import { type OrderRow, orderColumns, orderOf, type RevisionRow, revisionColumns, revisionOf } from './order-rows.ts'
import type { Database, Scope } from './tables.ts'
import { alreadyThere, outdated } from './versions.ts'

type OrderKey = { readonly shopId: string; readonly orderId: string }

const theOrder = compiled((db, { shopId, orderId }: OrderKey) =>
  db.selectFrom('order').select(orderColumns).where('shopId', '=', shopId).where('orderId', '=', orderId),
)

const read = async ({ db, shopId }: Scope, orderId: string): Promise<StoredOrder | null> => {
  const row = await theOrder.first(db, { shopId, orderId })
  return row === undefined ? null : orderOf(row)
}

type Changed = OrderKey & {
  readonly seen: number
  readonly version: number
  readonly state?: OrderState
  readonly hold?: string | null
  readonly handedOverAt?: number
}

type Newest = OrderRow & Omit<RevisionRow, 'orderId' | 'revision'>

const newestOf = compiledText(
  ({ shopId, orderId }: OrderKey) => sql<Newest>`
  select ordered.order_id, ordered.conversation_id, ordered.state, ordered.hold, ordered.revision, ordered.version,
    ordered.handed_over_at, revised.hash, revised.document, revised.signed_by, revised.signed_at
  from "order" ordered
    join order_revision revised
      on revised.shop_id = ${shopId} and revised.order_id = ordered.order_id and revised.revision = ordered.revision
  where ordered.shop_id = ${shopId} and ordered.order_id = ${orderId}`,
)

const newest = async ({ db, shopId }: Scope, orderId: string): ReturnType<Orders['newest']> => {
  const row = await newestOf.first(db, { shopId, orderId })
  if (row === undefined) return null
  const { revision, hash, document, signedBy, signedAt } = row
  return { order: orderOf(row), revision: revisionOf({ orderId, revision, hash, document, signedBy, signedAt }) }
}

/** What of an order may be changed; a new revision counts itself. */
const changeOf = (values: Changed, shape: readonly string[]) => {
  const all = { state: values.state, hold: values.hold, handedOverAt: values.handedOverAt, revision: sql<number>`revision + 1` }
  return Object.fromEntries(Object.entries(all).filter(([name]) => shape.includes(name)))
}

const raise = compiledByShape((db, values: Changed, shape) =>
  db
    .updateTable('order')
    .set({ ...changeOf(values, shape), version: values.version })
    .where('shopId', '=', values.shopId)
    .where('orderId', '=', values.orderId)
    .where('version', '=', values.seen)
    .returning(orderColumns),
)

/** Raises the version only when it still is the one the caller saw. */
const change = async (scope: Scope, seen: Seen, changes: OrderChange & { readonly revision?: 'next' }): Kept<StoredOrder> => {
  const { hold, revision: _next, ...plain } = changes
  const held = hold === undefined ? {} : { hold: hold === null ? null : json(hold) }
  const key = { shopId: scope.shopId, orderId: seen.id, seen: seen.version, version: seen.version + 1 }
  const row = await raise(Object.keys(changes).sort()).first(scope.db, { ...key, ...plain, ...held })
  if (row !== undefined) return ok(orderOf(row))
  return outdated('order', seen, (await read(scope, seen.id))?.version)
}

type RevisionKey = OrderKey & { readonly revision: number }

const addRevision = compiled((db, values: RevisionKey & { readonly hash: string; readonly document: string }) =>
  db
    .insertInto('orderRevision')
    .values({
      shopId: values.shopId,
      orderId: values.orderId,
      revision: values.revision,
      hash: values.hash,
      document: values.document,
    })
    .returning(revisionColumns),
)

const revise = (outer: Scope, seen: Seen, added: { readonly document: unknown; readonly hash: string }): Kept<StoredRevision> =>
  atomic(outer, async (scope) => {
    const raised = await change(scope, seen, { revision: 'next' })
    if (!raised.ok) return raised
    const { orderId, revision } = raised.value
    const { shopId } = scope
    const row = await addRevision.first(scope.db, {
      ...{ shopId, orderId, revision },
      hash: added.hash,
      document: json(added.document),
    })
    if (row === undefined) throw new Error(`revision ${revision} of ${orderId} was not written`)
    return ok(revisionOf(row))
  })

const signRevision = compiled((db, values: RevisionKey & { readonly by: string; readonly at: Minutes }) =>
  db
    .updateTable('orderRevision')
    .set({ signedBy: values.by, signedAt: values.at })
    .where('shopId', '=', values.shopId)
    .where('orderId', '=', values.orderId)
    .where('revision', '=', values.revision)
    .returning('revision'),
)

const sign = (outer: Scope, seen: Seen, signed: { readonly by: string; readonly at: Minutes }): Kept<StoredOrder> =>
  atomic(outer, async (scope) => {
    const order = await change(scope, seen, { state: 'signed-off' })
    if (!order.ok) return order
    const { shopId } = scope
    const { orderId, revision } = order.value
    const row = await signRevision.first(scope.db, { shopId, orderId, revision, by: text(signed.by), at: signed.at })
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

const addOrder = compiled((db, { shopId, orderId, conversationId }: OrderKey & Pick<StoredOrder, 'conversationId'>) =>
  db
    .insertInto('order')
    .values({ shopId, state: 'asked', orderId, conversationId })
    .onConflict((on) => on.doNothing())
    .returning(orderColumns),
)

const add = async ({ db, shopId }: Scope, order: Pick<StoredOrder, 'orderId' | 'conversationId'>): Kept<StoredOrder> => {
  const row = await addOrder.first(db, { shopId, ...order })
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

const theRevisions = (db: Database, { shopId, orderId }: OrderKey) =>
  db.selectFrom('orderRevision').select(revisionColumns).where('shopId', '=', shopId).where('orderId', '=', orderId)

const everyRevision = compiled((db, key: OrderKey) => theRevisions(db, key).orderBy('revision'))

const oneRevision = compiled((db, key: RevisionKey) => theRevisions(db, key).where('revision', '=', key.revision))

const revisions = async ({ db, shopId }: Scope, orderId: string): Promise<readonly StoredRevision[]> =>
  (await everyRevision.all(db, { shopId, orderId })).map(revisionOf)

const revision = async ({ db, shopId }: Scope, orderId: string, wanted: number): Promise<StoredRevision | null> => {
  const row = await oneRevision.first(db, { shopId, orderId, revision: wanted })
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
  newest: (orderId) => newest(scope, orderId),
  change: (seen, changes) => change(scope, seen, changes),
  sign: (seen, signed) => sign(scope, seen, signed),
  rows: (orderId) => rows(scope, orderId),
  setRows: (orderId, states) => setRows(scope, orderId, states),
})
