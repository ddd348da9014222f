import { setTimeout as pause } from 'node:timers/promises'
import { Queue, Worker } from 'bullmq'
import { Redis } from 'ioredis'
import { openNoOpStore, type Transaction } from './no-op-store.ts'

/** Where the store and the queue are. */
export type Servers = { readonly redis: string; readonly postgres: string }

/** What one job costs the store, to be spent again on nothing. */
export type Nothing = { readonly transactions: readonly Transaction[] }

/** Jobs of nothing, so many milliseconds apart. */
export type Asked = { readonly jobs: readonly Nothing[]; readonly everyMs: number }

const servers: Servers = JSON.parse(process.argv[2] ?? '')
const store = openNoOpStore(servers.postgres)

const connection = new Redis(servers.redis, { maxRetriesPerRequest: null })
const queue = new Queue<Nothing>('no-op', { connection, defaultJobOptions: { removeOnComplete: true } })
const worker = new Worker<Nothing>('no-op', ({ data }) => store.spend(data.transactions), { connection, concurrency: 2 })
const left = { jobs: 0 }
worker.on('completed', () => {
  left.jobs -= 1
  if (left.jobs === 0) process.send?.('done')
})

const run = async ({ jobs, everyMs }: Asked): Promise<void> => {
  left.jobs = jobs.length
  const from = performance.now()
  for (const [at, job] of jobs.entries()) {
    if (everyMs > 0) await pause(Math.max(0, from + at * everyMs - performance.now()))
    await queue.add('nothing', job)
  }
}

await worker.waitUntilReady()
process.on('message', (asked: Asked) => void run(asked))
process.on('disconnect', async () => {
  await worker.close()
  await queue.close()
  await store.close()
  connection.disconnect()
})
process.send?.('ready')
