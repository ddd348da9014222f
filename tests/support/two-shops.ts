import { createHmac } from 'node:crypto'
import pg from 'pg'
import { type RunningCounter, startCounter } from '../../src/adapters/chat/counter/start-counter.ts'
import { placeTables, recordTables } from '../../src/adapters/store/sql/record-tables.ts'
import { counterDesk, type News, openNews } from '../../src/desk/service/counter-desk.ts'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { conversationFrom } from '../../src/desk/service/records/records.ts'
import { ticketIdOf } from '../../src/desk/service/records/ticket-names.ts'
import type { CounterDesk } from '../../src/ports/counter-desk.ts'
import { localMinute, openTestDesk, presses, says, type TestClock, work } from './desk.ts'
import { openTestStore, root, type TestStore, unwrap } from './embedded.ts'
import { fillFloor } from './fill-floor.ts'
import { cookieOf, post } from './page-request.ts'

/** Stands in every word and name of the first shop's order, and nowhere else. */
export const marker = 'Zyxwellian'

export type ShopAtWork = {
  readonly desk: WorkerDesk
  readonly pages: CounterDesk
  readonly news: News
  readonly counter: RunningCounter
  /** The cookies of its owner and of one of its staff. */
  readonly owner: string
  readonly staff: string
}

/** An order of the first shop that lies on its bench, by everything that names any part of it. */
export type Victim = {
  readonly token: string
  readonly conversationId: string
  readonly orderId: string
  readonly ticketId: string
  readonly files: readonly string[]
  readonly signOff: string
  /** A link and a code of the first shop that nobody has used yet. */
  readonly link: string
  readonly code: string
}

const signedIn = async (counter: RunningCounter, pages: CounterDesk): Promise<{ owner: string; staff: string }> => {
  const owner = await post(counter.address, `/owner/${await pages.newOwnerLink()}`, { fields: {} })
  const { code } = await pages.newPairingCode('Noor')
  const staff = await post(counter.address, '/sign-in', { fields: { name: 'Noor', code } })
  return { owner: cookieOf(owner), staff: cookieOf(staff) }
}

/** Both shops have one secret, as two services on one folder would; each derives a key of its own from it. */
const keyOf = (shopId: string): Uint8Array =>
  createHmac('sha256', 'one secret of two shops').update(`sessions of ${shopId}`).digest()

const openShopAtWork = async (store: TestStore, clock: TestClock, bugs: unknown[]): Promise<ShopAtWork> => {
  const desk = await openTestDesk(store.store, clock)
  const news = await openNews(desk)
  const pages = counterDesk(desk, news)
  const counter = await startCounter({
    desk: pages,
    root,
    port: 0,
    host: '127.0.0.1',
    url: null,
    sessionKey: keyOf(desk.shopId),
    now: () => clock.at * 60_000,
    ready: () => store.store.shopsOf(desk.shopId),
    report: (cause) => bugs.push(cause),
  })
  return { desk, pages, news, counter, ...(await signedIn(counter, pages)) }
}

const words = `3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the ${marker} Lynx, sport is soccer. We need them December 10 at 5 pm. My name is ${marker} Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

/** What an order on the bench does not write by itself, so that every table has something to lose. */
const fillTheRest = async (desk: WorkerDesk, orderId: string): Promise<void> => {
  const shop = desk.store.shop(desk.shopId)
  const ticketId = ticketIdOf(orderId, 1)
  const version = (await shop.tickets.read(ticketId))?.version ?? 0
  await shop.orders.setRows(orderId, [{ line: 1, state: 'cut' }])
  await shop.pieces.put(orderId, [{ hash: 'a-piece', body: { text: marker } }])
  unwrap(await shop.tickets.tick({ id: ticketId, version }, [{ step: 1, line: 1, state: 'taken', by: marker }]))
  await shop.tickets.find(ticketId, { code: 'water-drops', facts: { by: marker }, by: marker, at: desk.clock.now() })
  await shop.posted.note(ticketId, { messageId: marker, hash: 'h' })
  const rooms = { bench: 'b', owner: 'o', orders: null, staffRoles: [], ownerRoles: [] }
  await shop.server.save({ guild: '10000000000000001', name: marker, language: 'en', talks: 'direct', ...rooms })
  await shop.talks.use({ conversation: `c${orderId.slice(1)}`, person: marker, channel: 'direct-1', language: 'en' })
  await shop.heard.isNew('delivery-1')
  await fillFloor(shop, { orderId, ticketId, word: marker, at: desk.clock.now() })
  await shop.deliveries.again(ticketId)
}

const makeVictim = async ({ desk, pages }: ShopAtWork): Promise<Victim> => {
  const { token } = await pages.startConversation('en')
  const found = await pages.conversation(token)
  if (found === null) throw new Error('a conversation that was opened is there')
  const conversationId = found.id
  await says(desk, conversationId, words)
  const shop = desk.store.shop(desk.shopId)
  const talk = async () => conversationFrom((await shop.conversations.read(conversationId))?.state)
  if ((await talk()).asked?.code === 'ask-ages') await says(desk, conversationId, 'all are 13 or older')
  await work(desk)
  const { shown } = await talk()
  if (shown === null) throw new Error('the proof was shown')
  const signOff = `c:sign-off:${shown.revision}:${shown.hash}`
  await presses(desk, conversationId, signOff)
  await work(desk)
  await says(desk, conversationId, `I want to talk to a person about ${marker} please`)
  const orderId = orderIdOf(conversationId)
  await fillTheRest(desk, orderId)
  const owners = [`order:${orderId}`, 'shop:bench', `conversation:${conversationId}`]
  const files = (await Promise.all(owners.map((one) => shop.files.ofOwner(one)))).flat().map(({ hash }) => hash)
  const link = await pages.newOwnerLink()
  const { code } = await pages.newPairingCode('Ines')
  return { token, conversationId, orderId, ticketId: ticketIdOf(orderId, 1), files: [...new Set(files)], signOff, link, code }
}

/** Two shops over one store, each with its counter; the first has an order on its bench. */
export const openTwoShops = async () => {
  const statements: string[] = []
  const store = await openTestStore((text) => statements.push(text))
  const clock = { at: localMinute('2026-11-25T09:00') }
  const bugs: unknown[] = []
  const first = await openShopAtWork(store, clock, bugs)
  const second = await openShopAtWork(store, clock, bugs)
  const victim = await makeVictim(first)
  const client = new pg.Client(store.embedded.owner)
  await client.connect()
  await client.query(
    `insert into platenpost.posting (shop_id, nonce, part, channel, message, body, fence, until) values ($1, 'n', 0, 'b', 'm', $2, 1, 0)`,
    [first.desk.shopId, marker],
  )
  return {
    first,
    second,
    victim,
    store,
    clock,
    bugs,
    statements,
    /** Every row of a shop as text, table by table. */
    rowsOf: async (shopId: string): Promise<{ readonly [table: string]: readonly unknown[] }> => {
      const tables: { [table: string]: readonly unknown[] } = {}
      for (const table of recordTables.filter((name) => !placeTables.has(name))) {
        const { rows } = await client.query(`select t::text as row from platenpost."${table}" t where shop_id = $1 order by 1`, [
          shopId,
        ])
        tables[table] = rows.map(({ row }) => row)
      }
      return tables
    },
    close: async () => {
      await client.end()
      for (const shop of [first, second]) {
        await shop.counter.close()
        await shop.news.close()
      }
      await store.close()
    },
  }
}
export type TwoShops = Awaited<ReturnType<typeof openTwoShops>>
