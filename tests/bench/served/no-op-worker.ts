import { Worker } from 'bullmq'
import { Redis } from 'ioredis'
import pg from 'pg'

/** What one order costs the store and the queue, to be spent again on nothing. */
export type Load = {
  readonly redis: string
  readonly postgres: string
  readonly jobsPerOrder: number
  readonly transactionsPerJob: number
  readonly bytesPerTransaction: number
}

const load: Load = JSON.parse(process.argv[2] ?? '')
const pool = new pg.Pool({ connectionString: load.postgres, max: 8 })
const bytes = Buffer.alloc(load.bytesPerTransaction, 7)

/** Of jobs that make 7.4 transactions each, the first five make 7, 7, 8, 7 and 8. */
const transactionsOf = (job: number): number =>
  Math.floor((job + 1) * load.transactionsPerJob) - Math.floor(job * load.transactionsPerJob)

const spend = async ({ data }: { readonly data: { readonly job: number } }): Promise<void> => {
  for (let left = transactionsOf(data.job); left > 0; left -= 1) {
    const client = await pool.connect()
    await client.query('begin')
    await client.query('insert into no_op (bytes) values ($1)', [bytes])
    await client.query('commit')
    client.release()
  }
}

const connection = new Redis(load.redis, { maxRetriesPerRequest: null })
const worker = new Worker('no-op', spend, { connection, concurrency: 2 })
await worker.waitUntilReady()
process.on('SIGTERM', async () => {
  await worker.close()
  await pool.end()
  connection.disconnect()
})
process.stdout.write('worker ready\n')
