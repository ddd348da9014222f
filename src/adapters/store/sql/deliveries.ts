import { sql } from 'kysely'
import type { ShopDeliveries, WaitingDelivery } from '../../../ports/platform-records.ts'
import type { Database } from './tables.ts'

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
