import { sql } from 'kysely'
import { outboxTopic } from '../../../ports/store.ts'
import type { ShopEvent, StepKey } from '../../../ports/work-records.ts'
import { compiledText } from './compiled.ts'
import { json } from './json.ts'
import type { Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'

export type Told = { readonly topic: string; readonly id: string }

/** What happened, which steps are due now and which are done, and who is told. */
export type WorkDone = {
  readonly events: readonly ShopEvent[]
  readonly wanted: readonly StepKey[]
  readonly done: readonly StepKey[]
  readonly news: readonly Told[]
}

type Values = { readonly shopId: string } & { readonly [K in keyof WorkDone]: string }

const steps = (rows: string) => sql`jsonb_to_recordset(${rows}::jsonb) as given (step text, "orderId" text, revision integer)`

const news = (shopId: string) => sql`json_build_object('shopId', ${shopId}::text, 'topic', topic, 'id', id)::text`

/**
 * PostgreSQL expects a hundred rows of such a list and would rather read all steps there ever were than look so many up; through a function
 * it sees an equality that hardly any row meets.
 */
const areFew = sql`given.revision = abs(given.revision)`

/** A step that is wanted for the first time is due, has its row in the outbox and is told of. */
const writing = compiledText(
  (values: Values) => sql`
  with happened as (
    insert into event (shop_id, code, order_id, ticket_id, by, at, facts)
    select ${values.shopId}, code, "orderId", "ticketId", by, at, facts
    from jsonb_to_recordset(${values.events}::jsonb)
      as given (code text, "orderId" text, "ticketId" text, by text, at integer, facts jsonb)
  ), wanted as (
    insert into step (shop_id, step, order_id, revision, state)
    select ${values.shopId}, step, "orderId", revision, 'due' from ${steps(values.wanted)}
    on conflict do nothing returning step, order_id, revision, attempt
  ), handed as (
    insert into outbox (shop_id, step, order_id, revision, attempt)
    select ${values.shopId}, step, order_id, revision, attempt from wanted
    returning order_id
  ), done as (
    update step set state = 'done', reason = null, done_at = coalesce(done_at, now())
    from ${steps(values.done)}
    where step.shop_id = ${values.shopId} and step.order_id = "orderId" and step.revision = given.revision and step.step = given.step
      and ${areFew}
  )
  select pg_notify('platenpost_' || topic, ${news(values.shopId)}) from (
    select topic, id from jsonb_to_recordset(${values.news}::jsonb) as given (topic text, id text)
    union all select ${sql.lit(outboxTopic)}, order_id from handed
  ) told ${unawaited}`,
)

const keysOf = (keys: readonly StepKey[]): string =>
  json(keys.map(({ step, orderId, revision }) => ({ step, orderId, revision })))

const rowOf = ({ code, orderId, ticketId, by, at, facts }: ShopEvent) => ({
  ...{ code, orderId, ticketId, by, at },
  facts: facts ?? null,
})

export const writeWork = async ({ db, shopId }: Scope, { events, wanted, done, news }: WorkDone): Promise<void> => {
  const rows = { events: json(events.map(rowOf)), wanted: keysOf(wanted), done: keysOf(done), news: json(news) }
  await writing.all(db, { shopId, ...rows })
}
