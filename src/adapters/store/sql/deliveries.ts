import { type RawBuilder, sql } from 'kysely'
import type { ShopDeliveries, WaitingDelivery } from '../../../ports/platform-records.ts'
import type { Posting } from '../../../ports/talk-records.ts'
import type { Database } from './tables.ts'

/** Whether messages of a channel stand on the platform too: a customer's talk there, or a channel of a shop that has a server. */
const stands = (shopId: string, channel: string) =>
  channel.startsWith('shop:')
    ? sql`exists (select from server where shop_id = ${shopId})`
    : sql`exists (select from talk where shop_id = ${shopId} and 'conversation:' || conversation_id = ${channel})`

/** The part of a message's own statement, after `put`: a new body of the bot waits until it is delivered. */
export const waitForDelivery = ({
  shopId,
  channel,
  nonce,
  by,
}: Pick<Posting, 'channel' | 'nonce' | 'by'> & { readonly shopId: string }): RawBuilder<unknown> =>
  by === 'bot'
    ? sql`
      insert into delivery (shop_id, nonce, channel, seq, changed)
      select ${shopId}, ${nonce}, ${channel}, seq, changed from put where ${stands(shopId, channel)}
      on conflict (shop_id, nonce) do update set changed = excluded.changed, due_at = now(), tries = 0
      returning nonce`
    : sql`select where false`

const claim = async (db: Database, atMost: number, seconds: number): Promise<readonly WaitingDelivery[]> => {
  const { rows } = await sql<WaitingDelivery>`
    with first as (
      select distinct on (shop_id, channel) shop_id, nonce, due_at from delivery order by shop_id, channel, seq
    ), taken as (
      update delivery set due_at = now() + make_interval(secs => ${seconds})
      where (shop_id, nonce) in (select shop_id, nonce from first where due_at <= now() order by due_at limit ${atMost})
        and due_at <= now()
      returning shop_id, nonce, channel, changed, tries
    )
    select taken.*, message.body from taken join message using (shop_id, nonce)`.execute(db)
  return rows
}

const one = ({ shopId, nonce }: WaitingDelivery) => sql`shop_id = ${shopId} and nonce = ${nonce}`

/** What a new body made due meanwhile is left as it is. */
export const deliveriesIn = (db: Database): ShopDeliveries => ({
  claim: (atMost, seconds) => claim(db, atMost, seconds),
  done: async (delivery) => {
    await sql`delete from delivery where ${one(delivery)} and changed = ${delivery.changed}`.execute(db)
  },
  later: async (delivery, seconds) => {
    await sql`update delivery set tries = tries + 1, due_at = now() + make_interval(secs => ${seconds})
      where ${one(delivery)} and changed = ${delivery.changed}`.execute(db)
  },
  drop: async (delivery) => {
    await sql`delete from delivery where ${one(delivery)} and changed = ${delivery.changed}`.execute(db)
  },
})
