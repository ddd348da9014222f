import { createServer } from 'node:http'
import { buffer } from 'node:stream/consumers'
import { Queue } from 'bullmq'
import { Redis } from 'ioredis'
import type { Servers } from './no-op-worker.ts'
import type { Recorded } from './recorded-way.ts'
import { openReplayStore } from './replay-store.ts'

/** What each request does to the records, the jobs that it leaves behind, and with how many bytes it is answered. */
export type Fronted = {
  readonly shares: readonly { readonly transactions: readonly Recorded[]; readonly jobs: readonly number[] }[]
  readonly bytes: number
}

const servers: Servers = JSON.parse(process.argv[2] ?? '')
const store = openReplayStore(servers.postgres)
const connection = new Redis(servers.redis, { maxRetriesPerRequest: null })
const queue = new Queue('replay', { connection, defaultJobOptions: { removeOnComplete: true } })
const state: { fronted: Fronted } = { fronted: { shares: [], bytes: 0 } }

/** Requests come one after the other, each with the number of its share. */
const server = createServer(async (request, response) => {
  await buffer(request)
  const { shares, bytes } = state.fronted
  const share = shares[Number(request.url?.slice(1))]
  await store.spend(share?.transactions ?? [])
  response.end(Buffer.alloc(bytes, 32))
  for (const at of share?.jobs ?? []) await queue.add('nothing', { at })
})

server.listen(0, '127.0.0.1', () => {
  const bound = server.address()
  process.send?.(bound !== null && typeof bound === 'object' ? bound.port : 0)
})
/** What is asked for comes later; what is to be done at once is done; either is answered with how it went since. */
process.on('message', async (told: Fronted | readonly Recorded[]) => {
  if ('shares' in told) state.fronted = told
  else await store.spend(told)
  process.send?.(store.answered())
})
process.on('disconnect', async () => {
  server.close()
  await queue.close()
  await store.close()
  connection.disconnect()
})
