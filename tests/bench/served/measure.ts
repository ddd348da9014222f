import { followOrders, makeOrders } from '../../support/many-orders.ts'
import type { ServedCrew } from '../../support/served-crew.ts'
import type { Records } from '../../support/service-watch.ts'
import { cpuOf } from './cpu.ts'
import { jobsSince } from './jobs-done.ts'

/** Seconds of processor per order. */
export type Spent = { readonly service: number; readonly workers: number; readonly postgres: number; readonly redis: number }

export type Run = {
  readonly perMinute: number
  readonly spent: Spent
  /** All of it. */
  readonly cpu: number
  /** Per order: jobs that the queue finished, kept transactions, bytes of the log. */
  readonly jobs: number
  readonly transactions: number
  readonly bytes: number
}

/** Whoever looks on asks over one connection: what its questions cost is no cost of an order. */
type Observer = { readonly records: () => Records; readonly asked: () => number; readonly backend: number }

const observe = async (crew: ServedCrew): Promise<Observer> => {
  const [row] = await crew.records().rows('select pg_backend_pid() as pid')
  const state = { asked: 0 }
  const records: Records = {
    ...crew.records(),
    rows: (text, ...values) => {
      state.asked += 1
      return crew.records().rows(text, ...values)
    },
  }
  return { records: () => records, asked: () => state.asked, backend: Number(row?.['pid']) }
}

const countersOf = async (records: Records): Promise<{ readonly transactions: number; readonly bytes: number }> => {
  const [row] = await records.rows(
    `select sum(xact_commit)::float8 as transactions, (pg_current_wal_lsn() - '0/0'::pg_lsn)::float8 as bytes from pg_stat_database`,
  )
  return { transactions: Number(row?.['transactions']), bytes: Number(row?.['bytes']) }
}

const spentBy = (crew: ServedCrew, observer: Observer): Spent => {
  const [service = 0, ...workers] = crew.pids()
  return {
    service: cpuOf([service]),
    workers: cpuOf(workers),
    postgres: cpuOf([crew.postgres.pid()], observer.backend),
    redis: cpuOf([crew.redis.pid()]),
  }
}

const perOrder = (before: Spent, after: Spent, many: number): Spent => ({
  service: (after.service - before.service) / many,
  workers: (after.workers - before.workers) / many,
  postgres: (after.postgres - before.postgres) / many,
  redis: (after.redis - before.redis) / many,
})

/** So many orders from the first word to the ticket, eight customers at a time. */
export const measure = async (crew: ServedCrew, many: number, first: number): Promise<Run> => {
  const observer = await observe(crew)
  const { records } = observer
  const progress = followOrders(records)
  const jobs = await jobsSince(crew.redis.url)
  const [counted, spent, from] = [await countersOf(records()), spentBy(crew, observer), performance.now()]
  const asked = observer.asked()
  await makeOrders({ front: { address: () => crew.address, records }, progress, many, atOnce: 8, first })
  const to = performance.now()
  const now = spentBy(crew, observer)
  const questions = observer.asked() - asked
  const after = await countersOf(records())
  await progress.close()
  const all = perOrder(spent, now, many)
  return {
    perMinute: many / ((to - from) / 60_000),
    spent: all,
    cpu: all.service + all.workers + all.postgres + all.redis,
    jobs: (await jobs()) / many,
    transactions: (after.transactions - counted.transactions - questions) / many,
    bytes: (after.bytes - counted.bytes) / many,
  }
}
