import { sql } from 'kysely'
import type { OrderStepName, Step } from '../../../ports/queue.ts'
import type { Outbox } from '../../../ports/store.ts'
import type { Database } from './tables.ts'

const orderStep = (step: OrderStepName, ids: Omit<Extract<Step, { step: 'quote' }>, 'step'>): Step => ({ ...ids, step })

/** The rows of every shop of a house; each row names its own. */
export const outboxIn = (db: Database, house: string): Outbox => {
  const ours = db.selectFrom('shop').select('shopId').where('house', '=', house)
  return {
    waiting: async (atMost) => {
      const rows = await db
        .selectFrom('outbox')
        .select(['outboxId', 'step', 'shopId', 'orderId', 'revision', 'attempt'])
        .where('shopId', 'in', ours)
        .where('sentAt', 'is', null)
        .orderBy('outboxId')
        .limit(atMost)
        .execute()
      return rows.map(({ outboxId, step, ...ids }) => ({ outboxId, step: orderStep(step, ids) }))
    },
    sent: async (outboxIds) => {
      if (outboxIds.length === 0) return
      await db
        .updateTable('outbox')
        .set({ sentAt: sql<Date>`now()` })
        .where('shopId', 'in', ours)
        .where('outboxId', 'in', outboxIds)
        .execute()
    },
    prune: async (seconds) => {
      const { numDeletedRows } = await db
        .deleteFrom('outbox')
        .where('shopId', 'in', ours)
        .where(sql<boolean>`sent_at < now() - make_interval(secs => ${seconds})`)
        .executeTakeFirst()
      return Number(numDeletedRows)
    },
  }
}
