import { sql } from 'kysely'
import type { StepKey, StepRecord, Steps } from '../../../ports/work-records.ts'
import { compiled } from './compiled.ts'
import { text } from './json.ts'
import { tell } from './once.ts'
import { atomic, type Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'

const columns = ['step', 'orderId', 'revision', 'attempt', 'state', 'reason'] as const

const toOutbox = async (scope: Scope, { step, orderId, revision }: StepKey, attempt: number): Promise<void> => {
  const { db, shopId } = scope
  await db.insertInto('outbox').values({ shopId, step, orderId, revision, attempt }).modifyEnd(unawaited).execute()
  await tell(scope, { topic: 'outbox', id: orderId })
}

const want = (outer: Scope, { step, orderId, revision }: StepKey): Promise<void> =>
  atomic(outer, async (scope) => {
    const key = { step, orderId, revision }
    const row = await scope.db
      .insertInto('step')
      .values({ shopId: scope.shopId, ...key, state: 'due' })
      .onConflict((on) => on.doNothing())
      .returning('attempt')
      .executeTakeFirst()
    if (row !== undefined) await toOutbox(scope, key, row.attempt)
  })

const renew = (outer: Scope, { step, orderId, revision }: StepKey): Promise<void> =>
  atomic(outer, async (scope) => {
    const key = { step, orderId, revision }
    const row = await scope.db
      .insertInto('step')
      .values({ shopId: scope.shopId, ...key, state: 'due' })
      .onConflict((on) =>
        on
          .columns(['shopId', 'orderId', 'revision', 'step'])
          .doUpdateSet({ attempt: sql<number>`step.attempt + 1`, state: 'due', reason: null, sentAt: sql<Date>`now()` }),
      )
      .returning('attempt')
      .executeTakeFirstOrThrow()
    await toOutbox(scope, key, row.attempt)
  })

const ofKey = ({ db, shopId }: Scope, { step, orderId, revision }: StepKey) =>
  db
    .updateTable('step')
    .where('shopId', '=', shopId)
    .where('orderId', '=', orderId)
    .where('revision', '=', revision)
    .where('step', '=', step)

const again = (outer: Scope, key: StepKey): Promise<void> =>
  atomic(outer, async (scope) => {
    const row = await ofKey(scope, key)
      .set({ attempt: sql<number>`attempt + 1`, state: 'due', reason: null, sentAt: sql<Date>`now()` })
      .where('state', '<>', 'done')
      .returning('attempt')
      .executeTakeFirst()
    if (row !== undefined) await toOutbox(scope, key, row.attempt)
  })

const theStep = compiled((db, { shopId, step, orderId, revision }: StepKey & { readonly shopId: string }) =>
  db
    .selectFrom('step')
    .select(columns)
    .where('shopId', '=', shopId)
    .where('orderId', '=', orderId)
    .where('revision', '=', revision)
    .where('step', '=', step),
)

const read = async ({ db, shopId }: Scope, key: StepKey): Promise<StepRecord | null> =>
  (await theStep.first(db, { shopId, ...key })) ?? null

const all = ({ db, shopId }: Scope) =>
  db.selectFrom('step').select(columns).where('shopId', '=', shopId).orderBy('orderId').orderBy('revision').orderBy('step')

export const stepsIn = (scope: Scope): Steps => ({
  want: (key) => want(scope, key),
  renew: (key) => renew(scope, key),
  done: async (key) => {
    const done = { state: 'done', reason: null, doneAt: sql<Date>`coalesce(done_at, now())` } as const
    await ofKey(scope, key).set(done).modifyEnd(unawaited).execute()
  },
  giveUp: async (key, reason) => {
    await ofKey(scope, key)
      .set({ state: 'given-up', reason: text(reason) })
      .where('state', '=', 'due')
      .execute()
  },
  again: (key) => again(scope, key),
  read: (key) => read(scope, key),
  ofOrder: (orderId) => all(scope).where('orderId', '=', orderId).execute(),
  overdue: (seconds) =>
    all(scope).where('state', '=', 'due').where(sql<boolean>`sent_at <= now() - make_interval(secs => ${seconds})`).execute(),
  givenUp: () => all(scope).where('state', '=', 'given-up').execute(),
})
