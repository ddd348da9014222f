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

const spend = async (): Promise<void> => {
  for (let at = 0; at < load.transactionsPerJob; at += 1) {
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
