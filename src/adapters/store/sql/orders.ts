import { sql } from 'kysely'
import { ok } from '../../../domain/result/result.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { Kept, Seen } from '../../../ports/keeping.ts'
import type { OrderChange, OrderState, Orders, RowState, StoredOrder, StoredRevision } from '../../../ports/work-records.ts'
import { atomic } from './atomic.ts'
import { compiled, compiledByShape, compiledText } from './compiled.ts'
import { changeOrFail } from './hopeful.ts'
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

type Raised = OrderKey & { readonly seen: number; readonly version: number }

const raisedFrom = ({ shopId }: Scope, { id, version }: Seen): Raised => ({
  ...{ shopId, orderId: id },
  ...{ seen: version, version: version + 1 },
})

type Changed = Raised & {
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

/** What of an order may be changed. */
const changeOf = (values: Changed, shape: readonly string[]) => {
  const all = { state: values.state, hold: values.hold, handedOverAt: values.handedOverAt }
  return Object.fromEntries(Object.entries(all).filter(([name]) => shape.includes(name)))
}

const raising = (db: Database, values: Changed, shape: readonly string[]) =>
  db
    .updateTable('order')
    .set({ ...changeOf(values, shape), version: values.version })
    .where('shopId', '=', values.shopId)
    .where('orderId', '=', values.orderId)
    .where('version', '=', values.seen)
    .returning('version')

const raise = compiledByShape(raising)
const raiseLater = compiledByShape((db, values: Changed, shape) => changeOrFail(db, raising(db, values, shape)))

/** Raises the version only when it still is the one the caller saw. */
const change = async (scope: Scope, seen: Seen, changes: OrderChange): Kept<Seen> => {
  const { hold, ...plain } = changes
  const held = hold === undefined ? {} : { hold: hold === null ? null : json(hold) }
  const values = { ...raisedFrom(scope, seen), ...plain, ...held }
  const shape = Object.keys(changes).sort()
  const changed = ok({ id: seen.id, version: values.version })
  if (scope.hopeful === true) {
    await raiseLater(shape).all(scope.db, values)
    return changed
  }
  const row = await raise(shape).first(scope.db, values)
  return row === undefined ? outdated('order', seen, (await read(scope, seen.id))?.version) : changed
}

const addRevision = compiledText(
  (values: Raised & { readonly hash: string; readonly document: string }) => sql<RevisionRow>`
  with raised as (
    update "order" set revision = revision + 1, version = ${values.version}
    where shop_id = ${values.shopId} and order_id = ${values.orderId} and version = ${values.seen}
    returning order_id, revision
  )
  insert into order_revision (shop_id, order_id, revision, hash, document)
  select ${values.shopId}, order_id, revision, ${values.hash}, ${values.document}::jsonb from raised
  returning order_id, revision, hash, document, signed_by, signed_at`,
)

type Added = { readonly document: unknown; readonly hash: string }

const revise = async (scope: Scope, seen: Seen, { document, hash }: Added): Kept<StoredRevision> => {
  const row = await addRevision.first(scope.db, { ...raisedFrom(scope, seen), hash, document: json(document) })
  return row === undefined ? outdated('order', seen, (await read(scope, seen.id))?.version) : ok(revisionOf(row))
}

type Signed = OrderRow & { readonly signed: number | null }

const signNewest = compiledText(
  (values: Raised & { readonly by: string; readonly at: Minutes }) => sql<Signed>`
  with raised as (
    update "order" set state = 'signed-off', version = ${values.version}
    where shop_id = ${values.shopId} and order_id = ${values.orderId} and version = ${values.seen}
    returning order_id, conversation_id, state, hold, revision, version, handed_over_at
  ), signed as (
    update order_revision set signed_by = ${values.by}, signed_at = ${values.at} from raised
    where order_revision.shop_id = ${values.shopId} and order_revision.order_id = raised.order_id
      and order_revision.revision = raised.revision
    returning order_revision.revision
  )
  select raised.*, (select revision from signed) as signed from raised`,
)

const sign = (outer: Scope, seen: Seen, { by, at }: { readonly by: string; readonly at: Minutes }): Kept<StoredOrder> =>
  atomic(outer, async (scope) => {
    const row = await signNewest.first(scope.db, { ...raisedFrom(scope, seen), by: text(by), at })
    if (row === undefined) return outdated('order', seen, (await read(scope, seen.id))?.version)
    if (row.signed === null) throw new Error(`order ${seen.id} was to be signed before its first revision`)
    return ok(orderOf(row))
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

type RevisionKey = OrderKey & { readonly revision: number }

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
