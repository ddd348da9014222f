import { type RawBuilder, sql } from 'kysely'
import { ok } from '../../../domain/result/result.ts'
import type { Kept, Seen } from '../../../ports/keeping.ts'
import { deliveryTopic } from '../../../ports/platform-records.ts'
import type {
  Conversations,
  Messages,
  PostedNotes,
  Posting,
  StoredConversation,
  StoredMessage,
} from '../../../ports/talk-records.ts'
import { compiled } from './compiled.ts'
import { waitForDelivery } from './deliveries.ts'
import { json, text } from './json.ts'
import { inTurn, notice } from './once.ts'
import { atomic, type Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'
import { alreadyThere, outdated } from './versions.ts'

const columns = ['conversationId', 'state', 'version'] as const

type TalkKey = { readonly shopId: string; readonly conversationId: string }

const theTalk = compiled((db, { shopId, conversationId }: TalkKey) =>
  db.selectFrom('conversation').select(columns).where('shopId', '=', shopId).where('conversationId', '=', conversationId),
)

const read = async ({ db, shopId }: Scope, conversationId: string): Promise<StoredConversation | null> =>
  (await theTalk.first(db, { shopId, conversationId })) ?? null

/** The state that was seen is at hand: only the new version is answered. */
const saveTalk = compiled((db, values: TalkKey & { readonly state: string; readonly seen: number; readonly version: number }) =>
  db
    .updateTable('conversation')
    .set({ state: values.state, version: values.version })
    .where('shopId', '=', values.shopId)
    .where('conversationId', '=', values.conversationId)
    .where('version', '=', values.seen)
    .returning(['conversationId', 'version']),
)

const addTalk = compiled((db, { shopId, conversationId, state }: TalkKey & { readonly state: string }) =>
  db
    .insertInto('conversation')
    .values({ shopId, conversationId, state })
    .onConflict((on) => on.doNothing())
    .returning(columns),
)

const save = async (scope: Scope, seen: Seen, state: unknown): Kept<StoredConversation> => {
  const { db, shopId } = scope
  const key = { shopId, conversationId: seen.id, seen: seen.version, version: seen.version + 1 }
  const row = await saveTalk.first(db, { ...key, state: json(state) })
  return row === undefined ? outdated('conversation', seen, (await read(scope, seen.id))?.version) : ok({ ...row, state })
}

export const conversationsIn = (scope: Scope): Conversations => ({
  add: async (conversationId, state) => {
    const row = await addTalk.first(scope.db, { shopId: scope.shopId, conversationId, state: json(state) })
    return row === undefined ? alreadyThere('conversation', conversationId) : ok(row)
  },
  read: (conversationId) => read(scope, conversationId),
  save: (seen, state) => save(scope, seen, state),
})

type Put = { readonly messageId: string; readonly edits: number }

/**
 * The message, and in the same statement the note that a new body of the bot waits to be delivered where its channel stands on a platform,
 * and the news of it. One statement, so that two processes that post the same nonce at once make one message.
 */
const putting = ({ shopId, time }: Scope, { channel, nonce, by, body }: Posting): RawBuilder<Put> => sql<Put>`
    with put as (
      insert into message (shop_id, message_id, channel, nonce, seq, changed, by, at, body)
      values (${shopId}, gen_random_uuid()::text, ${channel}, ${nonce}, nextval('message_change'), currval('message_change'),
        ${text(by)}, ${new Date(time())}, ${json(body)})
      on conflict (shop_id, nonce) do update set body = excluded.body, changed = excluded.changed, edits = message.edits + 1
        where message.body is distinct from excluded.body
      returning message_id, edits, seq, changed
    ), waits as (${waitForDelivery({ shopId, channel, nonce, by })})
    select message_id, edits, (select ${notice(shopId, { topic: deliveryTopic, id: channel })} from waits) as told from put`

/**
 * Readers ask for what is newer than the change number they saw last, so the numbers of a channel must appear in order: posting to a
 * channel goes one by one.
 */
const oneByOne = ({ db, shopId }: Scope, channel: string): Promise<void> => inTurn(db, `channel ${channel} of ${shopId}`)

const say = async (scope: Scope, posting: Posting): Promise<void> => {
  await oneByOne(scope, posting.channel)
  await sql`${putting(scope, posting)} ${unawaited}`.execute(scope.db)
}

const put = async (scope: Scope, posting: Posting): ReturnType<Messages['put']> => {
  const { db, shopId } = scope
  await oneByOne(scope, posting.channel)
  const [row] = (await putting(scope, posting).execute(db)).rows
  if (row !== undefined) return { messageId: row.messageId, outcome: row.edits === 0 ? 'posted' : 'edited' }
  const { messageId } = await db
    .selectFrom('message')
    .select('messageId')
    .where('shopId', '=', shopId)
    .where('nonce', '=', posting.nonce)
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

/** Words are looked for as the text of a document has them. */
const naming = ({ db, shopId }: Scope, channel: string, words: readonly string[]): ReturnType<Messages['naming']> => {
  const written = words.map((word) => JSON.stringify(word).slice(1, -1))
  return db
    .selectFrom('message')
    .select(['nonce', 'body'])
    .where('shopId', '=', shopId)
    .where('channel', '=', channel)
    .where(sql<boolean>`exists (select from unnest(${written}::text[]) word where position(word in body::text) > 0)`)
    .orderBy('seq')
    .execute()
}

export const messagesIn = (scope: Scope): Messages => ({
  put: (posting) => atomic(scope, (inner) => put(inner, posting)),
  say: (posting) => atomic(scope, (inner) => say(inner, posting)),
  of: (nonce) => of(scope, nonce),
  after: (channel, changed) => after(scope, channel, changed),
  naming: (channel, words) => naming(scope, channel, words),
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
