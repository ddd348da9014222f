import { sql } from 'kysely'
import type { Minutes } from '../../../domain/units/units.ts'
import { atomic } from './atomic.ts'
import type { Scope } from './tables.ts'

export const toForget = async ({ db, shopId }: Scope, before: Minutes): Promise<readonly string[]> => {
  const rows = await db
    .selectFrom('order')
    .select('orderId')
    .where('shopId', '=', shopId)
    .where('handedOverAt', '<=', before)
    .where('forgotten', '=', false)
    .orderBy('orderId')
    .execute()
  return rows.map(({ orderId }) => orderId)
}

const dropUnused = async ({ db, shopId }: Scope): Promise<void> => {
  await sql`delete from piece where shop_id = ${shopId} and not exists
    (select from piece_use used where used.shop_id = piece.shop_id and used.hash = piece.hash)`.execute(db)
  await sql`delete from file where shop_id = ${shopId} and not exists
    (select from file_use used where used.shop_id = file.shop_id and used.hash = file.hash)`.execute(db)
}

const forgetTalk = async ({ db, shopId }: Scope, orderId: string, conversationId: string): Promise<void> => {
  const others = await db
    .selectFrom('order')
    .select('orderId')
    .where('shopId', '=', shopId)
    .where('conversationId', '=', conversationId)
    .where('orderId', '<>', orderId)
    .where('forgotten', '=', false)
    .executeTakeFirst()
  if (others !== undefined) return
  const channel = `conversation:${conversationId}`
  await db.deleteFrom('delivery').where('shopId', '=', shopId).where('channel', '=', channel).execute()
  await db.deleteFrom('talk').where('shopId', '=', shopId).where('conversationId', '=', conversationId).execute()
  await db.deleteFrom('message').where('shopId', '=', shopId).where('channel', '=', channel).execute()
  await db.deleteFrom('fileUse').where('shopId', '=', shopId).where('owner', '=', channel).execute()
  await db.deleteFrom('key').where('shopId', '=', shopId).where('holder', '=', conversationId).execute()
  await db.deleteFrom('conversation').where('shopId', '=', shopId).where('conversationId', '=', conversationId).execute()
}

/** A conversation goes with the last of its orders. */
export const forget = (outer: Scope, orderId: string): Promise<void> =>
  atomic(outer, async (scope) => {
    const { db, shopId } = scope
    const order = await db
      .updateTable('order')
      .set({ forgotten: true, hold: null })
      .where('shopId', '=', shopId)
      .where('orderId', '=', orderId)
      .returning('conversationId')
      .executeTakeFirst()
    if (order === undefined) return
    await db
      .updateTable('orderRevision')
      .set({ document: null })
      .where('shopId', '=', shopId)
      .where('orderId', '=', orderId)
      .execute()
    await db.updateTable('ticket').set({ body: null }).where('shopId', '=', shopId).where('orderId', '=', orderId).execute()
    await db.deleteFrom('quote').where('shopId', '=', shopId).where('orderId', '=', orderId).execute()
    await db.deleteFrom('pieceUse').where('shopId', '=', shopId).where('orderId', '=', orderId).execute()
    await db.deleteFrom('fileUse').where('shopId', '=', shopId).where('owner', '=', `order:${orderId}`).execute()
    if (order.conversationId !== null) await forgetTalk(scope, orderId, order.conversationId)
    await dropUnused(scope)
  })
