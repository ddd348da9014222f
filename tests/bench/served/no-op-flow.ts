import { fork } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import pg from 'pg'
import type { ServedCrew } from '../../support/served-crew.ts'
import { cpuOf } from './cpu.ts'
import type { Moved } from './measure.ts'
import type { Asked, Nothing, Servers } from './no-op-worker.ts'

/** How many orders' worth of nothing, how many of them a minute; null: as fast as it goes. */
export type Pace = { readonly orders: number; readonly perMinute: number | null }

/** A flow that only moves as many jobs, transactions and bytes as orders do. */
export type NoOpFlow = {
  /** Seconds of processor per order in all processes. */
  readonly run: (moved: Moved, pace: Pace) => Promise<number>
  readonly close: () => Promise<void>
}

/** Of jobs that make 7.4 transactions each, the first five make 7, 7, 8, 7 and 8. */
const jobOf = ({ jobs, transactions, bytes }: Moved, job: number): Nothing => {
  const each = transactions / jobs
  return { transactions: Math.floor((job + 1) * each) - Math.floor(job * each), bytes: Math.round(bytes / transactions) }
}

const askedOf = (moved: Moved, { orders, perMinute }: Pace): Asked => ({
  jobs: Array.from({ length: Math.round(orders * moved.jobs) }, (_, job) => jobOf(moved, job)),
  everyMs: perMinute === null ? 0 : 60_000 / perMinute / moved.jobs,
})

/** A worker of its own on the crew's PostgreSQL and Redis, which stays for all rounds and gives itself its jobs. */
export const openNoOpFlow = async (crew: ServedCrew): Promise<NoOpFlow> => {
  const servers: Servers = { redis: crew.redis.url, postgres: crew.postgres.ownerUrl }
  const client = new pg.Client({ connectionString: servers.postgres })
  await client.connect()
  await client.query(
    'create table no_op (id bigint generated always as identity, bytes bytea); alter table no_op alter bytes set storage external',
  )
  const worker = fork(join(process.cwd(), '.build/tests/bench/served/no-op-worker.js'), [JSON.stringify(servers)])
  await once(worker, 'message')
  const pids = [worker.pid ?? 0, crew.postgres.pid(), crew.redis.pid()]
  return {
    run: async (moved, pace) => {
      const before = cpuOf(pids)
      worker.send(askedOf(moved, pace))
      await once(worker, 'message')
      return (cpuOf(pids) - before) / pace.orders
    },
    close: async () => {
      worker.disconnect()
      await once(worker, 'exit')
      await client.query('drop table no_op')
      await client.end()
    },
  }
}
