import { sql } from 'kysely'
import type { Pieces, QuoteKey, Quotes } from '../../../ports/work-records.ts'
import { atomic } from './atomic.ts'
import { compiled, compiledText } from './compiled.ts'
import { json } from './json.ts'
import type { Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'

type Key = QuoteKey & { readonly shopId: string }

const theQuote = compiled((db, { shopId, orderId, revision, hash }: Key) =>
  db
    .selectFrom('quote')
    .select('body')
    .where('shopId', '=', shopId)
    .where('orderId', '=', orderId)
    .where('revision', '=', revision)
    .where('hash', '=', hash),
)

const asAsked = compiledText(
  ({ shopId, orderId, revision }: Omit<Key, 'hash'>) => sql<{ readonly body: unknown }>`
  select quote.body
  from order_revision revised
    join quote on quote.shop_id = ${shopId} and quote.order_id = ${orderId} and quote.revision = ${revision}
      and quote.hash = revised.hash
  where revised.shop_id = ${shopId} and revised.order_id = ${orderId} and revised.revision = ${revision}`,
)

const addQuote = compiled((db, { shopId, orderId, revision, hash, body }: Key & { readonly body: string }) =>
  db
    .insertInto('quote')
    .values({ shopId, orderId, revision, hash, body })
    .onConflict((on) => on.doNothing())
    .modifyEnd(unawaited),
)

export const quotesIn = ({ db, shopId }: Scope): Quotes => ({
  put: async (key, body) => {
    await addQuote.all(db, { shopId, ...key, body: json(body) })
  },
  read: async (key) => (await theQuote.first(db, { shopId, ...key }))?.body ?? null,
  ofRevision: async ({ orderId, revision }) => (await asAsked.first(db, { shopId, orderId, revision }))?.body ?? null,
})

const use = async ({ db, shopId }: Scope, orderId: string, hashes: readonly string[]): Promise<void> => {
  if (hashes.length === 0) return
  await db
    .insertInto('pieceUse')
    .values(hashes.map((hash) => ({ shopId, orderId, hash })))
    .onConflict((on) => on.doNothing())
    .modifyEnd(unawaited)
    .execute()
}

export const piecesIn = (outer: Scope): Pieces => ({
  put: async (orderId, pieces) => {
    if (pieces.length === 0) return
    await atomic(outer, async (scope) => {
      await scope.db
        .insertInto('piece')
        .values(pieces.map(({ hash, body }) => ({ shopId: scope.shopId, hash, body: json(body) })))
        .onConflict((on) => on.doNothing())
        .modifyEnd(unawaited)
        .execute()
      const hashes = pieces.map(({ hash }) => hash)
      await use(scope, orderId, hashes)
    })
  },
  use: (orderId, hashes) => use(outer, orderId, hashes),
  read: async (hashes) => {
    if (hashes.length === 0) return new Map()
    const rows = await outer.db
      .selectFrom('piece')
      .select(['hash', 'body'])
      .where('shopId', '=', outer.shopId)
      .where('hash', 'in', hashes)
      .execute()
    return new Map(rows.map(({ hash, body }) => [hash, body]))
  },
})
