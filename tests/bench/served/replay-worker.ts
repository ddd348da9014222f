import { Worker } from 'bullmq'
import { Redis } from 'ioredis'
import type { Servers } from './no-op-worker.ts'
import type { Recorded } from './recorded-way.ts'
import { openReplayStore } from './replay-store.ts'

const servers: Servers = JSON.parse(process.argv[2] ?? '')
const store = openReplayStore(servers.postgres)
const state: { shares: readonly (readonly Recorded[])[] } = { shares: [] }

const connection = new Redis(servers.redis, { maxRetriesPerRequest: null })
const worker = new Worker<{ readonly at: number }>('replay', ({ data }) => store.spend(state.shares[data.at] ?? []), {
  connection,
})

await worker.waitUntilReady()
/** Shares to be done when jobs name them; answered with how it went since. */
process.on('message', (shares: readonly (readonly Recorded[])[]) => {
  state.shares = shares
  process.send?.(store.answered())
})
process.on('disconnect', async () => {
  await worker.close()
  await store.close()
  connection.disconnect()
})
process.send?.('ready')
