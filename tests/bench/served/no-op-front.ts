import { createServer } from 'node:http'
import { buffer } from 'node:stream/consumers'
import { openNoOpStore } from './no-op-store.ts'
import type { Nothing } from './no-op-worker.ts'

/** What requests of nothing cost the store, one after the other, and bytes to answer each of them with. */
export type Answers = { readonly shares: readonly Nothing[]; readonly bytes: number }

const store = openNoOpStore(process.argv[2] ?? '')
const state: { answers: Answers; next: number } = { answers: { shares: [], bytes: 0 }, next: 0 }

const server = createServer(async (request, response) => {
  await buffer(request)
  const { shares, bytes } = state.answers
  const share = shares[state.next]
  state.next += 1
  if (share !== undefined) await store.spend(share.transactions)
  response.end(Buffer.alloc(bytes, 32))
})

server.listen(0, '127.0.0.1', () => {
  const bound = server.address()
  process.send?.(bound !== null && typeof bound === 'object' ? bound.port : 0)
})
process.on('message', (answers: Answers) => {
  Object.assign(state, { answers, next: 0 })
  process.send?.('ready')
})
process.on('disconnect', async () => {
  server.close()
  await store.close()
})
