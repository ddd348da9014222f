import { sql } from 'kysely'
import { ok } from '../../../domain/result/result.ts'
import type { Kept, Seen } from '../../../ports/keeping.ts'
import type {
  Conversations,
  Messages,
  PostedNotes,
  Posting,
  StoredConversation,
  StoredMessage,
} from '../../../ports/talk-records.ts'
import { waitForDelivery } from './deliveries.ts'
import { json, text } from './json.ts'
import { atomic, type Scope } from './tables.ts'
import { alreadyThere, outdated } from './versions.ts'

const columns = ['conversationId', 'state', 'version'] as const

const read = async ({ db, shopId }: Scope, conversationId: string): Promise<StoredConversation | null> => {
  const row = await db
    .selectFrom('conversation')
    .select(columns)
    .where('shopId', '=', shopId)
    .where('conversationId', '=', conversationId)
    .executeTakeFirst()
  return row ?? null
}

const save = async (scope: Scope, seen: Seen, state: unknown): Kept<StoredConversation> => {
  const row = await scope.db
    .updateTable('conversation')
    .set({ state: json(state), version: seen.version + 1 })
    .where('shopId', '=', scope.shopId)
    .where('conversationId', '=', seen.id)
    .where('version', '=', seen.version)
    .returning(columns)
    .executeTakeFirst()
  return row === undefined ? outdated('conversation', seen, (await read(scope, seen.id))?.version) : ok(row)
}

export const conversationsIn = (scope: Scope): Conversations => ({
  add: async (conversationId, state) => {
    const row = await scope.db
      .insertInto('conversation')
      .values({ shopId: scope.shopId, conversationId, state: json(state) })
      .onConflict((on) => on.doNothing())
      .returning(columns)
      .executeTakeFirst()
    return row === undefined ? alreadyThere('conversation', conversationId) : ok(row)
  },
  read: (conversationId) => read(scope, conversationId),
  save: (seen, state) => save(scope, seen, state),
})

const changeNumber = sql<number>`nextval('message_change')`

/**
 * One statement, so that two processes that post the same nonce at once make one message. Readers ask for what is newer than
 * the change number they saw last, so the numbers of a channel must appear in order: posting to a channel goes one by one.
 */
const put = async (scope: Scope, { channel, nonce, by, body }: Posting): ReturnType<Messages['put']> => {
  const { db, shopId, time } = scope
  await sql`select pg_advisory_xact_lock(hashtextextended(${`channel ${channel} of ${shopId}`}, 0))`.execute(db)
  const row = await db
    .insertInto('message')
    .values({
      shopId,
      messageId: sql<string>`gen_random_uuid()::text`,
      channel,
      nonce,
      seq: changeNumber,
      changed: sql<number>`currval('message_change')`,
      by: text(by),
      at: new Date(time()),
      body: json(body),
    })
    .onConflict((on) =>
      on
        .columns(['shopId', 'nonce'])
        .doUpdateSet({
          body: (old) => old.ref('excluded.body'),
          changed: (old) => old.ref('excluded.changed'),
          edits: sql<number>`message.edits + 1`,
        })
        .whereRef('message.body', 'is distinct from', 'excluded.body'),
    )
    .returning(['messageId', 'edits', 'seq', 'changed'])
    .executeTakeFirst()
  if (row !== undefined) {
    if (by === 'bot') await waitForDelivery(scope, { channel, nonce, seq: row.seq, changed: row.changed })
    return { messageId: row.messageId, outcome: row.edits === 0 ? 'posted' : 'edited' }
  }
  const { messageId } = await db
    .selectFrom('message')
    .select('messageId')
    .where('shopId', '=', shopId)
    .where('nonce', '=', nonce)
    .executeTakeFirstOrThrow()
  return { messageId, outcome: 'already-there' }
}

const messageColumns = ['messageId', 'channel', 'seq', 'changed', 'edits', 'by', 'at', 'body'] as const

const of = async ({ db, shopId }: Scope, nonce: string): Promise<StoredMessage | null> => {
  const row = await db
    .selectFrom('message')
    .select(messageColumns)
    .where('shopId', '=', shopId)
    .where('nonce', '=', nonce)
    .executeTakeFirst()
  return row === undefined ? null : { ...row, at: row.at.getTime() }
}

const after = async ({ db, shopId }: Scope, channel: string, changed: number): Promise<readonly StoredMessage[]> => {
  const rows = await db
    .selectFrom('message')
    .select(messageColumns)
    .where('shopId', '=', shopId)
    .where('channel', '=', channel)
    .where('changed', '>', changed)
    .orderBy('seq')
    .execute()
  return rows.map((row) => ({ ...row, at: row.at.getTime() }))
}

export const messagesIn = (scope: Scope): Messages => ({
  put: (posting) => atomic(scope, (inner) => put(inner, posting)),
  of: (nonce) => of(scope, nonce),
  after: (channel, changed) => after(scope, channel, changed),
})

export const postedIn = ({ db, shopId }: Scope): PostedNotes => ({
  read: async (nonce) => {
    const row = await db
      .selectFrom('posted')
      .select(['messageId', 'hash'])
      .where('shopId', '=', shopId)
      .where('nonce', '=', nonce)
      .executeTakeFirst()
    return row ?? null
  },
  note: async (nonce, { messageId, hash }) => {
    await db
      .insertInto('posted')
      .values({ shopId, nonce, messageId, hash })
      .onConflict((on) => on.columns(['shopId', 'nonce']).doUpdateSet({ messageId, hash }))
      .execute()
  },
})
