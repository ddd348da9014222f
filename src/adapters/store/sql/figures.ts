import { sql } from 'kysely'
import type { PromiseFigures, StepFigures, StoreFigures } from '../../../ports/store-figures.ts'
import type { Scope } from './tables.ts'

const steps = ({ db, shopId }: Scope): Promise<readonly StepFigures[]> =>
  db
    .selectFrom('step')
    .select([
      'step',
      sql<number>`count(*) filter (where state = 'due')`.as('due'),
      sql<number>`coalesce(extract(epoch from now() - min(wanted_at) filter (where state = 'due')), 0)::float8`.as(
        'oldestSeconds',
      ),
      sql<number>`count(*) filter (where state = 'given-up')`.as('givenUp'),
    ])
    .where('shopId', '=', shopId)
    .where('state', '<>', 'done')
    .groupBy('step')
    .orderBy('step')
    .execute()

const took = (part: number) =>
  sql<number | null>`percentile_cont(${part}) within group (order by extract(epoch from done_at - wanted_at)::float8)`

const promises = async ({ db, shopId }: Scope): Promise<PromiseFigures> => {
  const { many, median, p95 } = await db
    .selectFrom('step')
    .select(({ fn }) => [fn.countAll<number>().as('many'), took(0.5).as('median'), took(0.95).as('p95')])
    .where('shopId', '=', shopId)
    .where('step', '=', 'quote')
    .where(sql<boolean>`done_at > now() - interval '1 hour'`)
    .executeTakeFirstOrThrow()
  return median === null || p95 === null ? null : { many, medianSeconds: median, p95Seconds: p95 }
}

const planSeconds = async ({ db, shopId }: Scope): Promise<number | null> => {
  const row = await db
    .selectFrom('plan')
    .select(sql<number>`extract(epoch from now() - written_at)::float8`.as('seconds'))
    .where('shopId', '=', shopId)
    .executeTakeFirst()
  return row?.seconds ?? null
}

const unsent = async ({ db, shopId }: Scope): Promise<number> => {
  const { many } = await db
    .selectFrom('outbox')
    .select(({ fn }) => fn.countAll<number>().as('many'))
    .where('shopId', '=', shopId)
    .where('sentAt', 'is', null)
    .executeTakeFirstOrThrow()
  return many
}

export const figures = async (scope: Scope): Promise<StoreFigures> => ({
  steps: await steps(scope),
  promises: await promises(scope),
  planSeconds: await planSeconds(scope),
  unsent: await unsent(scope),
})
