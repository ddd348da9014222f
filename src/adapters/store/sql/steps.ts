import { sql } from 'kysely'
import { outboxTopic } from '../../../ports/store.ts'
import type { StepKey, StepRecord, Steps } from '../../../ports/work-records.ts'
import { atomic } from './atomic.ts'
import { compiled } from './compiled.ts'
import { text } from './json.ts'
import { noteDone, noteNews, noteWanted, settle } from './pending.ts'
import { aboutStep } from './step-about.ts'
import type { Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'

const columns = ['step', 'orderId', 'revision', 'attempt', 'state', 'reason'] as const

const toOutbox = async (scope: Scope, { step, orderId, revision }: StepKey, attempt: number): Promise<void> => {
  const { db, shopId } = scope
  await db.insertInto('outbox').values({ shopId, step, orderId, revision, attempt }).modifyEnd(unawaited).execute()
  await noteNews(scope, { topic: outboxTopic, id: orderId })
}

const renew = (outer: Scope, { step, orderId, revision }: StepKey): Promise<void> =>
  atomic(outer, async (scope) => {
    await settle(scope)
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
    await settle(scope)
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

const read = async (scope: Scope, key: StepKey): Promise<StepRecord | null> => {
  await settle(scope)
  return (await theStep.first(scope.db, { shopId: scope.shopId, ...key })) ?? null
}

const all = ({ db, shopId }: Scope) =>
  db.selectFrom('step').select(columns).where('shopId', '=', shopId).orderBy('orderId').orderBy('revision').orderBy('step')

export const stepsIn = (scope: Scope): Steps => ({
  want: (key) => noteWanted(scope, key),
  renew: (key) => renew(scope, key),
  done: (key) => noteDone(scope, key),
  giveUp: async (key, reason) => {
    await settle(scope)
    await ofKey(scope, key)
      .set({ state: 'given-up', reason: text(reason) })
      .where('state', '=', 'due')
      .execute()
  },
  about: (key) => aboutStep(scope, key),
  again: (key) => again(scope, key),
  read: (key) => read(scope, key),
  ofOrder: async (orderId) => {
    await settle(scope)
    return all(scope).where('orderId', '=', orderId).execute()
  },
  overdue: async (seconds) => {
    await settle(scope)
    const since = sql<boolean>`sent_at <= now() - make_interval(secs => ${seconds})`
    return all(scope).where('state', '=', 'due').where(since).execute()
  },
  givenUp: async () => {
    await settle(scope)
    return all(scope).where('state', '=', 'given-up').execute()
  },
})
