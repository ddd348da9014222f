import { sql } from 'kysely'
import type { ShopDeliveries, WaitingDelivery } from '../../../ports/platform-records.ts'
import type { Database } from './tables.ts'

type Claimed = Omit<WaitingDelivery, 'body'>

const taken = (atMost: number, seconds: number) => sql<Claimed>`
  with first as (
    select distinct on (shop_id, channel) shop_id, nonce, due_at from delivery order by shop_id, channel, seq
  )
  update delivery set due_at = now() + make_interval(secs => ${seconds})
  where (shop_id, nonce) in (select shop_id, nonce from first where due_at <= now() order by due_at limit ${atMost})
    and due_at <= now()
  returning shop_id, nonce, channel, changed, tries`

type Body = Pick<WaitingDelivery, 'shopId' | 'nonce' | 'body'>

const bodies = (claimed: readonly Claimed[]) => sql<Body>`
  select shop_id, nonce, body from message join unnest(
    ${claimed.map(({ shopId }) => shopId)}::text[], ${claimed.map(({ nonce }) => nonce)}::text[]
  ) as claimed (shop_id, nonce) using (shop_id, nonce)`

/**
 * Bodies are read after the claim, by a statement of their own: one that is written while the claim waits for its row is newer than what the
 * claim's own statement sees, and would be taken for delivered. A body that is newer still than the claim's waits on (`done`).
 */
const claim = async (db: Database, atMost: number, seconds: number): Promise<readonly WaitingDelivery[]> => {
  const { rows: claimed } = await taken(atMost, seconds).execute(db)
  if (claimed.length === 0) return []
  const { rows } = await bodies(claimed).execute(db)
  const named = new Map(rows.map(({ shopId, nonce, body }) => [`${shopId} ${nonce}`, body]))
  return claimed.flatMap((waiting) => {
    const body = named.get(`${waiting.shopId} ${waiting.nonce}`)
    return body === undefined ? [] : [{ ...waiting, body }]
  })
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
