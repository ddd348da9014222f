import { statSync } from 'node:fs'
import { platformDeliver } from '../../../src/adapters/chat/platform/deliver.ts'
import { embeddedAddress } from '../../../src/adapters/store/embedded/start-embedded.ts'
import { openStore } from '../../../src/adapters/store/sql/open-store.ts'
import type { Postings } from '../../../src/ports/platform-desk.ts'
import { deliveryDesk } from './delivery-desk.ts'
import { message, ticketActions } from './messages.ts'
import { filePostings } from './postings.ts'
import { token } from './stand-in.ts'

/**
 * A process that posts one ticket; with `halt` it stops for good between the answer and the record. Its records are a file, or
 * the embedded store on a data folder.
 */
const [api = '', channel = '', records = '', nonce = '', halt = ''] = process.argv.slice(2)

const openPostings = async (): Promise<Postings> => {
  if (!statSync(records, { throwIfNoEntry: false })?.isDirectory()) return filePostings(records)
  const address = await embeddedAddress(records)
  const store = address.ok ? await openStore({ address: address.value, time: Date.now }) : address
  if (!store.ok) throw new Error(JSON.stringify(store.problems))
  return store.value.platform.postings
}

const postings = await openPostings()
const { desk, places } = deliveryDesk({
  ...postings,
  record: async (held, posted) => {
    if (halt !== 'halt') return await postings.record(held, posted)
    process.stdout.write('posted\n')
    return await new Promise((resolve) => setTimeout(() => resolve(false), 600_000))
  },
})
places.set('bench', channel)
process.stdout.write('ready\n')
await platformDeliver(desk, { token, api })({
  shop: 'shop-1',
  channel: { kind: 'shop', name: 'bench' },
  nonce,
  message: message({ actions: ticketActions(nonce) }),
})
process.stdout.write('recorded\n')
process.exit(0)
