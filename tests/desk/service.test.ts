import { unzipSync } from 'fflate'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { counterDesk, openNews } from '../../src/desk/service/counter-desk.ts'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { lapseHolds } from '../../src/desk/service/quote/lapse-holds.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { conversationFrom, messageFrom, shopPlanFrom } from '../../src/desk/service/records/records.ts'
import { ticketIdOf } from '../../src/desk/service/records/ticket-names.ts'
import { actOnTicket } from '../../src/desk/service/ticket/act-on-ticket.ts'
import type { Shop } from '../../src/domain/shop/shop.ts'
import type { TicketAct } from '../../src/domain/ticket/acts.ts'
import { startConversation } from '../../src/domain/understanding/conversation.ts'
import { localMinute, openTestDesk, presses, says, type TestClock, work } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { workThrough } from '../support/floor.ts'

let opened: TestStore
const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const wishes = (needBy: string) =>
  `3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the Lantern Hill Lynx, sport is soccer. We need them ${needBy}. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

const openTalk = async (desk: WorkerDesk, id: string): Promise<string> => {
  const state = startConversation({ id, person: { id, name: null }, language: 'en' })
  unwrap(await desk.store.shop(desk.shopId).conversations.add(id, state))
  return id
}

const talkOf = async (desk: WorkerDesk, id: string) =>
  conversationFrom((await desk.store.shop(desk.shopId).conversations.read(id))?.state)

const toProof = async (desk: WorkerDesk, id: string, needBy: string): Promise<void> => {
  await openTalk(desk, id)
  await says(desk, id, wishes(needBy))
  if ((await talkOf(desk, id)).asked?.code === 'ask-ages') await says(desk, id, 'all are 13 or older')
  await work(desk)
}

const sign = async (desk: WorkerDesk, id: string): Promise<void> => {
  const { shown } = await talkOf(desk, id)
  if (shown === null) throw new Error(`nothing was shown to ${id}`)
  await presses(desk, id, `c:sign-off:${shown.revision}:${shown.hash}`)
}

const orderOf = async (desk: WorkerDesk, id: string) => {
  const order = await desk.store.shop(desk.shopId).orders.read(orderIdOf(id))
  if (order === null) throw new Error(`${id} has no order`)
  return order
}

const bodies = async (desk: WorkerDesk, channel: string) =>
  (await desk.store.shop(desk.shopId).messages.after(channel, 0)).map((message) => ({
    ...message,
    body: messageFrom(message.body),
  }))

const act = (desk: WorkerDesk, ticketId: string, name: TicketAct, by = 'Noor') =>
  desk.store.together(desk.shopId, (shop) =>
    actOnTicket(desk, shop, { ticketId, act: name, by: { id: by, name: by, role: 'staff' } }),
  )

describe('an order over the store', () => {
  test('reaches the bench once, though every step is run twice', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, clock)
    await openTalk(desk, 'c-lynx')
    await says(desk, 'c-lynx', wishes('December 10 at 5 pm'))
    if ((await talkOf(desk, 'c-lynx')).asked?.code === 'ask-ages') await says(desk, 'c-lynx', 'all are 13 or older')
    await work(desk, 2)
    expect((await orderOf(desk, 'c-lynx')).state).toBe('quoted')
    await sign(desk, 'c-lynx')
    await work(desk, 2)
    expect((await orderOf(desk, 'c-lynx')).state).toBe('on-bench')
    const bench = await bodies(desk, shopChannel('bench'))
    expect(bench.map(({ body }) => body.file?.mime)).toEqual(['application/pdf'])
    const talk = await bodies(desk, conversationChannel('c-lynx'))
    expect(talk.filter(({ body }) => body.picture !== null).length).toBe(1)
    const events = await desk.store.shop(desk.shopId).events.ofOrder(orderIdOf('c-lynx'))
    expect(events.map(({ code }) => code)).toEqual(['asked', 'quoted', 'signed-off', 'planned', 'ticketed', 'posted'])
  })

  test('brings its papers: cut files, picture and templates one to one to the bench, price and care to the customer', {
    timeout: 120_000,
  }, async () => {
    const desk = await openTestDesk(opened.store, clock)
    const { files } = desk.store.shop(desk.shopId)
    await openTalk(desk, 'c-papers')
    await says(desk, 'c-papers', wishes('December 10 at 5 pm').replace('numbers on', 'numbers with an SS10 crystal outline on'))
    if ((await talkOf(desk, 'c-papers')).asked?.code === 'ask-ages') await says(desk, 'c-papers', 'all are 13 or older')
    await work(desk, 2)
    await sign(desk, 'c-papers')
    await work(desk, 2)

    const ticket = (await bodies(desk, shopChannel('bench'))).at(-1)?.body
    const papers = ticket?.papers ?? []
    expect(papers.map(({ name, mime }) => [name.replace(/^T\d+-1-/, ''), mime])).toEqual([
      ['cut.zip', 'application/zip'],
      ['templates.pdf', 'application/pdf'],
    ])
    const [archive, templates] = await Promise.all(papers.map(({ file }) => files.read(shopChannel('bench'), file)))
    const names = Object.keys(unzipSync(archive?.bytes ?? new Uint8Array()))
    expect(names).toEqual(expect.arrayContaining(['preview.png', 'templates.pdf', 'cut/vinyl-standard-white.svg']))
    expect(new TextDecoder().decode(templates?.bytes.subarray(0, 5))).toBe('%PDF-')

    const talk = conversationChannel('c-papers')
    const offered = (await bodies(desk, talk)).filter(({ body }) => body.file !== null)
    expect(offered).toHaveLength(1)
    const own = offered.flatMap(({ body }) => [...(body.file === null ? [] : [body.file]), ...(body.papers ?? [])])
    expect(own.map(({ name }) => name.split('-')[0])).toEqual(['price', 'care'])
    for (const { file, bytes } of own) expect((await files.read(talk, file))?.bytes.length).toBe(bytes)
  })

  test('keeps its stock: reserved at the sign-off, used when checked, given back when cancelled', {
    timeout: 120_000,
  }, async () => {
    const desk = await openTestDesk(opened.store, clock)
    const shop = desk.store.shop(desk.shopId)
    const received = new Map(await shop.stock.sums())
    await toProof(desk, 'c-kept', 'December 10 at 5 pm')
    expect(new Map(await shop.stock.sums())).toEqual(received)
    await sign(desk, 'c-kept')
    const reserved = (await shop.stock.sums()).get('vinyl-standard-white') ?? 0
    expect(reserved).toBeLessThan(received.get('vinyl-standard-white') ?? 0)
    await work(desk)
    const ticketId = ticketIdOf(orderIdOf('c-kept'), 1)
    await workThrough(desk, ticketId)
    expect((await shop.stock.sums()).get('vinyl-standard-white')).toBe(reserved)
    expect((await orderOf(desk, 'c-kept')).state).toBe('collected')

    await toProof(desk, 'c-gone', 'December 10 at 5 pm')
    await sign(desk, 'c-gone')
    await says(desk, 'c-gone', 'please cancel the order')
    await says(desk, 'c-gone', 'yes')
    expect((await orderOf(desk, 'c-gone')).state).toBe('cancelled')
    expect((await shop.stock.sums()).get('vinyl-standard-white')).toBe(reserved)
    expect(shopPlanFrom((await shop.plan.read()).body).sold.map(({ id }) => id)).toEqual([orderIdOf('c-kept')])
  })

  test('is taken by one of two who take it at once; the other is told by whom', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, clock)
    await toProof(desk, 'c-two', 'December 10 at 5 pm')
    await sign(desk, 'c-two')
    await work(desk)
    const ticketId = ticketIdOf(orderIdOf('c-two'), 1)
    const both = await Promise.all([act(desk, ticketId, 'take', 'Noor'), act(desk, ticketId, 'take', 'Pim')])
    const done = both.filter((one) => one.ok && one.value === null)
    expect(done.length).toBe(1)
    const late = unwrap(await act(desk, ticketId, 'take', 'Pim'))
    expect(late).toMatch(/^Taken by (Noor|Pim), /)
    const taken = (await desk.store.shop(desk.shopId).tickets.findings(ticketId)).filter(({ code }) => code === 'take')
    expect(taken.length).toBe(1)
  })

  test('changed after the sign-off is signed again and gets a new ticket; the old one says so', {
    timeout: 120_000,
  }, async () => {
    const desk = await openTestDesk(opened.store, clock)
    await toProof(desk, 'c-new', 'December 10 at 5 pm')
    await sign(desk, 'c-new')
    await work(desk)
    await says(desk, 'c-new', 'make the 9 a medium')
    await work(desk)
    expect((await orderOf(desk, 'c-new')).revision).toBe(2)
    await sign(desk, 'c-new')
    await work(desk)
    const tickets = await desk.store.shop(desk.shopId).tickets.ofOrder(orderIdOf('c-new'))
    expect(tickets.map(({ revision, state, replacedBy }) => [revision, state, replacedBy])).toEqual([
      [1, 'replaced', 2],
      [2, 'open', null],
    ])
    const bench = await bodies(desk, shopChannel('bench'))
    expect(bench.map(({ body }) => body.actions.length > 0)).toEqual([false, true])
  })

  test('that loses the last place to another customer gets an honest later date and is asked again', {
    timeout: 120_000,
  }, async () => {
    const crowded = (shop: Shop): Shop => ({
      ...shop,
      rates: { ...shop.rates, inspectAndBagEach: 100 },
      garments: shop.garments.map((garment) => ({ ...garment, arrivesInDays: 0 })),
      stations: shop.stations.filter(({ id, kind }) => kind !== 'person' || id === 'person-1'),
    })
    const time: TestClock = { at: localMinute('2026-11-30T08:00') }
    const desk = await openTestDesk(opened.store, time, crowded)
    await toProof(desk, 'c-first', 'Wednesday December 2 at 5 pm')
    const { shown: early } = await talkOf(desk, 'c-first')
    expect(early).not.toBeNull()
    time.at = localMinute('2026-12-02T08:00')
    await lapseHolds(desk)
    await toProof(desk, 'c-second', 'Wednesday December 2 at 5 pm')
    await sign(desk, 'c-second')
    await sign(desk, 'c-first')
    await work(desk)
    expect((await orderOf(desk, 'c-second')).state).toBe('on-bench')
    const first = await orderOf(desk, 'c-first')
    expect([first.state, first.revision]).toEqual(['quoted', 2])
    const plan = shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)
    const promisedTo = (id: string) => [...plan.sold, ...plan.held].find((one) => one.id === orderIdOf(id))?.promised ?? 0
    expect(promisedTo('c-first')).toBeGreaterThan(promisedTo('c-second'))
  })
})

describe('the counter’s desk', () => {
  test('greets every customer in a conversation of their own, and keeps them apart', async () => {
    const desk = await openTestDesk(opened.store, clock)
    const news = await openNews(desk)
    const counter = counterDesk(desk, news)
    const lines = async (token: string) => {
      const talk = await counter.conversation(token)
      return talk === null ? [] : counter.lines({ kind: 'conversation', id: talk.id }, 0)
    }
    const [one, two] = [await counter.startConversation('en'), await counter.startConversation('es')]
    await counter.hear(one.id, { kind: 'said', id: 'only-one', text: 'hello there', files: [] })
    expect((await lines(one.token)).length).toBeGreaterThan(1)
    expect((await lines(two.token)).map(({ message }) => message.language)).toEqual(['es'])
    expect(await counter.conversation('no-such-token')).toBeNull()
    expect(await counter.hear('c-forgotten', { kind: 'said', id: 'x', text: 'hello', files: [] })).toBe('unknown')
    await news.close()
  })

  test('reads a roster that comes as a file, and keeps a picture unread', async () => {
    const desk = await openTestDesk(opened.store, clock)
    const news = await openNews(desk)
    const counter = counterDesk(desk, news)
    const { token, id } = await counter.startConversation('en')
    const keep = async (name: string, mime: string, text: string) => {
      const bytes = new TextEncoder().encode(text)
      return { file: (await counter.keepFile(token, { name, mime, bytes })).id, name, mime, bytes: bytes.length }
    }
    const roster = await keep('roster.csv', 'text/csv', 'Number,Name,Size\n07,Núñez,M\n12,O’Hara,L\n')
    const photo = await keep('list.png', 'image/png', 'no picture at all')
    await counter.hear(id, { kind: 'said', id: 'with-files', text: 'navy mesh jerseys', files: [roster, photo] })
    const talk = await counter.conversation(token)
    const { draft, kept } = await talkOf(desk, talk?.id ?? '')
    expect(Object.values(draft.rows).map(({ number, name, size }) => [number, name, size])).toEqual([
      ['07', 'Núñez', 'M'],
      ['12', 'O’Hara', 'L'],
    ])
    expect(kept.map(({ file }) => file)).toEqual(['list.png'])
    await news.close()
  })

  test('lets the owner in once by a link, and staff once by a code with their name', async () => {
    const desk = await openTestDesk(opened.store, clock)
    const news = await openNews(desk)
    const counter = counterDesk(desk, news)
    const link = await counter.newOwnerLink()
    expect((await counter.ownerByLink(link))?.role).toBe('owner')
    expect(await counter.ownerByLink(link)).toBeNull()
    const { code } = await counter.newPairingCode('Noor')
    expect(await counter.staffByCode('Pim', code)).toBeNull()
    expect((await counter.staffByCode('Noor', code))?.name).toBe('Noor')
    expect(await counter.staffByCode('Noor', code)).toBeNull()
    await news.close()
  })
})
