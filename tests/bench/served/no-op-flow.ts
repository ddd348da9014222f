import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { Queue } from 'bullmq'
import { Redis } from 'ioredis'
import pg from 'pg'
import { until } from '../../support/until.ts'
import { cpuOf } from './cpu.ts'
import { cpuDuring } from './domain-cost.ts'
import type { Load } from './no-op-worker.ts'

export type Servers = { readonly postgres: number; readonly redis: number }

/** Seconds of processor per order of a flow that only moves as many jobs, transactions and bytes, once it is warm. */
export const noOpFlow = async (load: Load, servers: Servers, orders: number): Promise<number> => {
  const client = new pg.Client({ connectionString: load.postgres })
  await client.connect()
  await client.query(
    'create table no_op (id bigint generated always as identity, bytes bytea); alter table no_op alter bytes set storage external',
  )
  const script = join(process.cwd(), '.build/tests/bench/served/no-op-worker.js')
  const worker = spawn(process.execPath, [script, JSON.stringify(load)], { stdio: ['ignore', 'pipe', 'inherit'] })
  await once(worker.stdout, 'data')
  const connection = new Redis(load.redis, { maxRetriesPerRequest: null })
  const queue = new Queue('no-op', { connection, defaultJobOptions: { removeOnComplete: true } })
  const pids = [worker.pid ?? 0, servers.postgres, servers.redis]
  const flow = async (): Promise<number> => {
    const before = cpuOf(pids)
    const jobs = Math.round(orders * load.jobsPerOrder)
    const own = await cpuDuring(async () => {
      for (let job = 0; job < jobs; job += 1) await queue.add('nothing', { job })
    })
    await until('nothing is done', async () => (await queue.getJobCountByTypes('waiting', 'active')) === 0 || undefined, 600_000)
    return cpuOf(pids) - before + own
  }
  await flow()
  const spent = await flow()
  worker.kill('SIGTERM')
  await once(worker, 'exit')
  await queue.close()
  connection.disconnect()
  await client.query('drop table no_op')
  await client.end()
  return spent / orders
}
