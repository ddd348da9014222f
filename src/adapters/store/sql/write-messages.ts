import { sql } from 'kysely'
import { deliveryTopic } from '../../../ports/platform-records.ts'
import type { Posting } from '../../../ports/talk-records.ts'
import { compiledText } from './compiled.ts'
import { json } from './json.ts'
import { inTurn } from './once.ts'
import type { Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'

/** A message, and when it was said. */
export type Said = Posting & { readonly at: string }

type Values = { readonly shopId: string; readonly said: string }
export type Put = { readonly messageId: string; readonly edits: number }

/** Whether messages of a channel stand on the platform too: a customer's talk there, or a channel of a shop that has a server. */
const stands = ({ shopId }: Values) => sql`
  case when said.channel like 'shop:%' then exists (select from server where shop_id = ${shopId})
    else exists (select from talk where shop_id = ${shopId} and 'conversation:' || conversation_id = said.channel) end`

/**
 * Messages, and in the same statement the notes that a new body of the bot waits to be delivered where its channel stands on a platform,
 * and the news of it. One statement, so that two processes that post the same nonce at once make one message.
 */
const putting = (values: Values) => sql<Put>`
  with said as (
    select * from jsonb_to_recordset(${values.said}::jsonb) as said (channel text, nonce text, by text, at timestamptz, body jsonb)
  ), put as (
    insert into message (shop_id, message_id, channel, nonce, seq, changed, by, at, body)
    select ${values.shopId}, gen_random_uuid()::text, channel, nonce, nextval('message_change'), currval('message_change'), by, at, body
    from said
    on conflict (shop_id, nonce) do update set body = excluded.body, changed = excluded.changed, edits = message.edits + 1
      where message.body is distinct from excluded.body
    returning message_id, nonce, edits, seq, changed
  ), waits as (
    insert into delivery (shop_id, nonce, channel, seq, changed)
    select ${values.shopId}, said.nonce, said.channel, put.seq, put.changed from put join said on said.nonce = put.nonce
    where said.by = 'bot' and ${stands(values)}
    on conflict (shop_id, nonce) do update set changed = excluded.changed, due_at = now(), tries = 0
    returning channel
  )
  select message_id, edits, (select count(pg_notify(${sql.lit(`platenpost_${deliveryTopic}`)},
    json_build_object('shopId', ${values.shopId}::text, 'topic', ${sql.lit(deliveryTopic)}, 'id', channel)::text)) from waits) from put`

const putLater = compiledText((values: Values) => sql`${putting(values)} ${unawaited}`)
const putNow = compiledText(putting)

/**
 * Readers ask for what is newer than the change number they saw last, so the numbers of a channel must appear in order: posting to a
 * channel goes one by one. Several channels are held in one order by everybody.
 */
const inTurnOf = async ({ db, shopId }: Scope, messages: readonly Said[]): Promise<void> => {
  for (const channel of [...new Set(messages.map(({ channel }) => channel))].sort())
    await inTurn(db, `channel ${channel} of ${shopId}`)
}

const rowsOf = (messages: readonly Said[]): string =>
  json(messages.map(({ channel, nonce, by, at, body }) => ({ channel, nonce, by, at, body: body ?? null })))

/** Writes messages of different nonces, in their order. */
export const writeMessages = async (scope: Scope, messages: readonly Said[]): Promise<void> => {
  await inTurnOf(scope, messages)
  await putLater.all(scope.db, { shopId: scope.shopId, said: rowsOf(messages) })
}

/** Writes one, and answers what became of it; nothing when its body is the same as before. */
export const writeMessage = async (scope: Scope, message: Said): Promise<Put | undefined> => {
  await inTurnOf(scope, [message])
  return putNow.first(scope.db, { shopId: scope.shopId, said: rowsOf([message]) })
}
