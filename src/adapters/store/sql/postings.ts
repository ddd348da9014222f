import { sql } from 'kysely'
import type { Held, PostingKey, PostingRecord, Postings } from '../../../ports/platform-desk.ts'
import type { Database } from './tables.ts'

const columns = ['channel', 'round', 'firstAttemptAt', 'message', 'body', 'fence'] as const

const lease = async (
  db: Database,
  { shop, nonce, part }: PostingKey,
  wanted: { readonly channel: string; readonly now: number; readonly until: number },
): Promise<PostingRecord | null> => {
  const row = await db
    .insertInto('posting')
    .values({ shopId: shop, nonce, part, channel: wanted.channel, fence: 1, until: wanted.until })
    .onConflict((on) =>
      on
        .columns(['shopId', 'nonce', 'part'])
        .doUpdateSet({
          channel: sql<string>`coalesce(posting.channel, excluded.channel)`,
          fence: sql<number>`posting.fence + 1`,
          until: wanted.until,
        })
        .where('posting.until', '<=', wanted.now),
    )
    .returning(columns)
    .executeTakeFirst()
  return row === undefined ? null : { ...row, channel: row.channel ?? wanted.channel }
}

/** The row, as long as the holder's lease is the newest. */
const held = (db: Database, { shop, nonce, part, fence }: Held) =>
  db
    .updateTable('posting')
    .where('shopId', '=', shop)
    .where('nonce', '=', nonce)
    .where('part', '=', part)
    .where('fence', '=', fence)

/** Each call is one statement, and so one committed transaction. */
export const postingsIn = (db: Database): Postings => ({
  lease: (key, wanted) => lease(db, key, wanted),
  attempt: async (holder, at, until) => {
    const { numUpdatedRows } = await held(db, holder)
      .set({ firstAttemptAt: sql<number>`coalesce(first_attempt_at, ${at})`, until })
      .executeTakeFirst()
    return numUpdatedRows > 0n
  },
  record: async (holder, { message, body }) => {
    const { numUpdatedRows } = await held(db, holder).set({ message, body }).executeTakeFirst()
    return numUpdatedRows > 0n
  },
  release: async (holder) => {
    await held(db, holder).set({ until: 0 }).execute()
  },
  parts: async (shop, nonce) => {
    const rows = await db.selectFrom('posting').select('part').where('shopId', '=', shop).where('nonce', '=', nonce).execute()
    return rows.length
  },
  drop: async ({ shop, nonce, part, fence }) => {
    await db
      .deleteFrom('posting')
      .where('shopId', '=', shop)
      .where('nonce', '=', nonce)
      .where('part', '=', part)
      .where('fence', '=', fence)
      .execute()
  },
})
