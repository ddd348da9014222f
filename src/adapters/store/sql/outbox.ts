import { sql } from 'kysely'
import type { OrderStepName, Step } from '../../../ports/queue.ts'
import type { Outbox } from '../../../ports/store.ts'
import { compiled } from './compiled.ts'
import type { Database } from './tables.ts'

const orderStep = (step: OrderStepName, ids: Omit<Extract<Step, { step: 'quote' }>, 'step'>): Step => ({ ...ids, step })

const shopsOf = (db: Database, house: string) => db.selectFrom('shop').select('shopId').where('house', '=', house)

const theWaiting = compiled((db, { house, atMost }: { readonly house: string; readonly atMost: number }) =>
  db
    .selectFrom('outbox')
    .select(['outboxId', 'step', 'shopId', 'orderId', 'revision', 'attempt'])
    .where('shopId', 'in', shopsOf(db, house))
    .where('sentAt', 'is', null)
    .orderBy('outboxId')
    .limit(atMost),
)

const markSent = compiled((db, { house, outboxIds }: { readonly house: string; readonly outboxIds: readonly number[] }) =>
  db
    .updateTable('outbox')
    .set({ sentAt: sql<Date>`now()` })
    .where('shopId', 'in', shopsOf(db, house))
    .where(sql<boolean>`outbox_id = any(${outboxIds}::bigint[])`),
)

/** The rows of every shop of a house; each row names its own. */
export const outboxIn = (db: Database, house: string): Outbox => {
  const ours = shopsOf(db, house)
  return {
    waiting: async (atMost) => {
      const rows = await theWaiting.all(db, { house, atMost })
      return rows.map(({ outboxId, step, ...ids }) => ({ outboxId, step: orderStep(step, ids) }))
    },
    sent: async (outboxIds) => {
      if (outboxIds.length === 0) return
      await markSent.all(db, { house, outboxIds: [...outboxIds] })
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
