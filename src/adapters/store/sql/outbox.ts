import { sql } from 'kysely'
import type { OrderStepName, Step } from '../../../ports/queue.ts'
import type { Outbox } from '../../../ports/store.ts'
import type { Database } from './tables.ts'

const orderStep = (step: OrderStepName, ids: Omit<Extract<Step, { step: 'quote' }>, 'step'>): Step => ({ ...ids, step })

/** The relay's view, across shops; each row names its own. */
export const outboxIn = (db: Database): Outbox => ({
  waiting: async (atMost) => {
    const rows = await db
      .selectFrom('outbox')
      .select(['outboxId', 'step', 'shopId', 'orderId', 'revision', 'attempt'])
      .where('sentAt', 'is', null)
      .orderBy('outboxId')
      .limit(atMost)
      .execute()
    return rows.map(({ outboxId, step, ...ids }) => ({ outboxId, step: orderStep(step, ids) }))
  },
  sent: async (outboxIds) => {
    if (outboxIds.length === 0) return
    await db.updateTable('outbox').set({ sentAt: sql<Date>`now()` }).where('outboxId', 'in', outboxIds).execute()
  },
})
