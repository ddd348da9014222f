import { platformDeliver } from '../../../src/adapters/chat/platform/deliver.ts'
import { deliveryDesk } from './delivery-desk.ts'
import { message, ticketActions } from './messages.ts'
import { filePostings } from './postings.ts'
import { token } from './stand-in.ts'

/** A process that posts one ticket; with `halt` it stops for good between the answer and the record. */
const [api = '', channel = '', file = '', nonce = '', halt = ''] = process.argv.slice(2)

const postings = filePostings(file)
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
