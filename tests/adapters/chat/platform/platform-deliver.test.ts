import { afterEach, describe, expect, it } from 'vitest'
import { platformDeliver } from '../../../../src/adapters/chat/platform/deliver.ts'
import type { Delivery, Message } from '../../../../src/ports/chat.ts'
import { deliveryDesk } from '../../../support/platform/delivery-desk.ts'
import { everyComponent } from '../../../support/platform/limits.ts'
import { message, ticketActions } from '../../../support/platform/messages.ts'
import { memoryPostings } from '../../../support/platform/postings.ts'
import type { Call } from '../../../support/platform/rest.ts'
import type { Fault } from '../../../support/platform/server.ts'
import { startStandIn, token } from '../../../support/platform/stand-in.ts'
import type { Stored } from '../../../support/platform/world.ts'

const closing: (() => Promise<unknown>)[] = []
afterEach(async () => {
  for (const close of closing.splice(0).reverse()) await close()
})

const pdf = { name: 'ticket-9.pdf', mime: 'application/pdf', bytes: new Uint8Array([37, 80, 68, 70, 0, 255]) }

const start = async (timeout = 150) => {
  const platform = await startStandIn()
  closing.push(platform.stop)
  const owner = platform.addUser('Owner')
  const guild = platform.addGuild('Cedar Flats Press', owner)
  const bench = platform.addChannel(guild, 'bench')
  const office = platform.addChannel(guild, 'office')
  const postings = memoryPostings()
  const { desk, places, files, troubles } = deliveryDesk(postings)
  places.set('bench', bench.id)
  places.set('owner', office.id)
  files.set('pdf-1', pdf)
  const clock = {
    now: () => platform.world.now(),
    pause: async (milliseconds: number) => {
      platform.world.advance(milliseconds)
      await new Promise((resolve) => setTimeout(resolve, Math.min(milliseconds, 120)))
    },
  }
  const open = () => platformDeliver(desk, { token, api: platform.api, clock, timeout })
  return { platform, owner, bench, office, postings, places, files, troubles, deliver: open(), open }
}

const ticket = (parts: Partial<Message> = {}): Delivery => ({
  shop: 'shop-1',
  channel: { kind: 'shop', name: 'bench' },
  nonce: 'ticket-T9-1',
  message: message({
    actions: ticketActions('T9'),
    file: { file: 'pdf-1', name: 'ticket-9.pdf', mime: 'application/pdf', bytes: 6 },
    ...parts,
  }),
})
const saying = (text: string): Delivery => ticket({ blocks: [{ kind: 'text', text, tone: 'plain' }] })
const posting = (call: Call): boolean => call.method === 'POST' && /^\/channels\/\d+\/messages$/.test(call.path)
const editing = (call: Call): boolean => call.method === 'PATCH'
const textsOf = (stored: Stored | undefined): string =>
  everyComponent(stored?.body['components'])
    .flatMap((one) => one['content'] ?? [])
    .join('\n')

const faults: readonly (readonly [string, Fault])[] = [
  ['the line drops before it', { kind: 'drop' }],
  ['it is never answered', { kind: 'stall' }],
  ['the line drops after it', { kind: 'apply-then-drop' }],
  ['it is done and never answered', { kind: 'apply-then-stall' }],
  ['it is done and answered 500', { kind: 'apply-then-500' }],
  ['it fails with 500', { kind: 'fail-500' }],
  ['it is told to wait', { kind: 'too-many', retryAfter: 0.05 }],
  ['everything is told to wait', { kind: 'too-many', retryAfter: 0.05, global: true }],
]

describe('a delivery on the platform', () => {
  it('posts a ticket with its paper, and the same again changes nothing', async () => {
    const { platform, bench, deliver } = await start()
    const done = await deliver(ticket())
    expect(done).toEqual({ messageId: platform.shown(bench)[0]?.id, outcome: 'posted' })
    expect(await deliver(ticket())).toEqual({ ...done, outcome: 'already-there' })
    expect(platform.shown(bench)).toHaveLength(1)
    expect(platform.shown(bench)[0]?.files).toMatchObject([{ name: pdf.name, type: pdf.mime, bytes: pdf.bytes }])
    expect(platform.shown(bench)[0]?.body).toMatchObject({ allowed_mentions: { parse: [] }, enforce_nonce: true })
  })

  it('edits the message in place when a new body comes with the same nonce', async () => {
    const { platform, bench, deliver } = await start()
    const { messageId } = await deliver(ticket())
    expect(await deliver(saying('taken by Ana 9:40'))).toEqual({ messageId, outcome: 'edited' })
    expect(platform.shown(bench)).toHaveLength(1)
    expect(textsOf(platform.shown(bench)[0])).toContain('taken by Ana 9:40')
    expect(platform.shown(bench)[0]?.files).toHaveLength(1)
  })

  for (const [name, fault] of faults) {
    it(`posts exactly once when ${name}`, async () => {
      const { platform, bench, deliver } = await start()
      platform.fail(posting, fault)
      await deliver(ticket())
      expect(platform.shown(bench)).toHaveLength(1)
    })

    it(`posts exactly once when ${name}, every time for one whole call, and another process tries minutes later`, async () => {
      const { platform, bench, postings, deliver, open } = await start()
      platform.fail(posting, fault, 4)
      await expect(deliver(ticket())).rejects.toThrow()
      platform.world.advance(10 * 60_000)
      platform.say({ user: platform.addUser('Sam'), room: bench }, 'unrelated')
      const done = await open()(saying('by the second process'))
      const own = platform.shown(bench).filter((one) => one.author === platform.world.bot.id)
      expect(own).toHaveLength(1)
      expect(done.messageId).toBe(own[0]?.id)
      expect(textsOf(own[0])).toContain('by the second process')
      expect([...postings.all().values()]).toMatchObject([{ message: own[0]?.id, until: 0 }])
    })

    it(`edits once and for good when at the edit ${name}`, async () => {
      const { platform, bench, deliver } = await start()
      await deliver(ticket())
      platform.fail(editing, fault)
      expect(await deliver(saying('started'))).toMatchObject({ outcome: 'edited' })
      expect(textsOf(platform.shown(bench)[0])).toContain('started')
    })
  }

  it('finds its message among hundreds, and would have posted twice without looking', async () => {
    const { platform, owner, bench, deliver, open } = await start()
    platform.fail(posting, { kind: 'apply-then-500' }, 4)
    await expect(deliver(ticket())).rejects.toThrow()
    for (let at = 0; at < 250; at += 1) platform.say({ user: owner, room: bench }, `talk ${at}`)
    platform.world.advance(30 * 60_000)
    await open()(ticket())
    expect(platform.shown(bench).filter((one) => one.author === platform.world.bot.id)).toHaveLength(1)
    expect(platform.calls.filter(posting)).toHaveLength(4)
  })

  it('lets two processes post the same at once and leaves one message', async () => {
    const { platform, bench, open } = await start()
    const done = await Promise.all([open()(ticket()), open()(ticket()), open()(ticket())])
    expect(platform.shown(bench)).toHaveLength(1)
    expect(new Set(done.map(({ messageId }) => messageId)).size).toBe(1)
  })

  it('sends only the newest of many edits that come at once', async () => {
    const { platform, bench, deliver } = await start()
    await deliver(ticket())
    const done = await Promise.all(Array.from({ length: 40 }, (_, at) => deliver(saying(`step ${at}`))))
    expect(platform.calls.filter(editing).length).toBeLessThanOrEqual(2)
    expect(textsOf(platform.shown(bench)[0])).toContain('step 39')
    expect(done.at(-1)?.outcome).toBe('edited')
  })

  it('splits a long text, and takes surplus parts away when it gets shorter', async () => {
    const { platform, bench, deliver } = await start()
    const long = Array.from({ length: 300 }, (_, at) => `Line ${at} of a long talk about jerseys.`).join('\n')
    await deliver(saying(long))
    const parts = platform.shown(bench)
    expect(parts.length).toBeGreaterThan(2)
    expect(parts.map(textsOf).join('\n')).toContain('Line 299')
    expect(parts.map((one) => one.files.length)).toEqual([...parts.slice(1).map(() => 0), 1])
    await deliver(saying('short'))
    expect(platform.shown(bench)).toHaveLength(1)
    expect(platform.shown(bench)[0]?.files).toHaveLength(1)
  })

  it('sends a smaller set and says so when the files are too large', async () => {
    const { platform, bench, files, deliver } = await start()
    files.set('big', { name: 'front.png', mime: 'image/png', bytes: new Uint8Array(11 * 1024 * 1024) })
    await deliver(ticket({ picture: { file: 'big', alt: 'front' } }))
    expect(platform.shown(bench)[0]?.files.map((one) => one.name)).toEqual(['ticket-9.pdf'])
    expect(textsOf(platform.shown(bench)[0])).toContain('Too large')

    platform.rules.largestRequest = 3
    await deliver({ ...ticket(), nonce: 'ticket-T9-2' })
    expect(platform.shown(bench)[1]?.files).toEqual([])
    expect(textsOf(platform.shown(bench)[1])).toContain('Too large')
  })

  describe('with further papers', () => {
    const sheet = (name: string, bytes = 6) => ({ name, mime: 'application/pdf', bytes: new Uint8Array(bytes).fill(7) })
    const withPapers = async (sizes: { readonly [name: string]: number }) => {
      const shop = await start(10_000)
      const papers = Object.entries(sizes).map(([name, bytes], at) => {
        shop.files.set(`paper-${at}`, sheet(name, bytes))
        return { file: `paper-${at}`, name, mime: 'application/pdf', bytes }
      })
      const names = () => shop.platform.shown(shop.bench).map((one) => one.files.map(({ name }) => name))
      return { ...shop, papers, names }
    }

    it('brings each of them in the same message, once, shown and with its bytes', async () => {
      const { platform, bench, deliver, open, papers, names } = await withPapers({
        'T-9-cut.zip': 2_000,
        'T-9-templates.pdf': 90,
      })
      platform.fail(posting, { kind: 'apply-then-drop' })
      await deliver(ticket({ papers }))
      await open()(ticket({ papers }))
      expect(names()).toEqual([['ticket-9.pdf', 'T-9-cut.zip', 'T-9-templates.pdf']])
      const [stored] = platform.shown(bench)
      expect(stored?.files.map(({ bytes }) => bytes.length)).toEqual([6, 2_000, 90])
      const shown = everyComponent(stored?.body['components']).flatMap((one) => (one['type'] === 13 ? one['file'] : []))
      expect(shown).toMatchObject(names()[0]?.map((name) => ({ url: `attachment://${name}` })) ?? [])
      const calls = platform.calls.length
      await deliver(ticket({ papers }))
      expect(platform.calls).toHaveLength(calls)
    })

    it('keeps them when the message is edited, and lets a paper come later', async () => {
      const { deliver, papers, names } = await withPapers({ 'T-9-cut.zip': 20, 'T-9-templates.pdf': 90 })
      await deliver(ticket({ papers: papers.slice(0, 1) }))
      expect(await deliver(ticket({ papers, blocks: [] }))).toMatchObject({ outcome: 'edited' })
      expect(names()).toEqual([['ticket-9.pdf', 'T-9-cut.zip', 'T-9-templates.pdf']])
    })

    it('gives each a name of its own, and sends what is named twice once', async () => {
      const { platform, bench, deliver, papers, names } = await withPapers({
        'ticket-9.pdf': 3,
        'Ticket-9.pdf': 4,
        'tícket-9.pdf': 5,
      })
      await deliver(ticket({ papers: [...papers, ...papers.slice(0, 1)] }))
      expect(names()).toEqual([['ticket-9.pdf', '2-ticket-9.pdf', '3-Ticket-9.pdf', 'ti-cket-9.pdf']])
      expect(platform.shown(bench)[0]?.files.map(({ bytes }) => bytes.length)).toEqual([6, 3, 4, 5])
    })

    it('spreads more than one message or request can carry over several, in order', async () => {
      const many = Object.fromEntries(Array.from({ length: 12 }, (_, at) => [`sheet-${at + 1}.pdf`, 10]))
      const first = await withPapers(many)
      await first.deliver(ticket({ papers: first.papers }))
      expect(first.names()).toEqual([
        ['ticket-9.pdf', ...Object.keys(many).slice(0, 9)],
        ['sheet-10.pdf', 'sheet-11.pdf', 'sheet-12.pdf'],
      ])
      const mebibyte = 1024 * 1024
      const second = await withPapers({ 'a.pdf': 6 * mebibyte, 'b.pdf': 6 * mebibyte, 'c.pdf': 3 * mebibyte })
      second.platform.rules.largestRequest = 10 * mebibyte
      await second.deliver(ticket({ papers: second.papers }))
      expect(second.names()).toEqual([
        ['ticket-9.pdf', 'a.pdf'],
        ['b.pdf', 'c.pdf'],
      ])
      expect(second.platform.shown(second.bench).map(textsOf).join('')).not.toContain('Too large')
    })

    it('names the one that no request can carry, and brings the others', async () => {
      const { platform, bench, deliver, papers, names } = await withPapers({ 'T-9-cut.zip': 11 * 1024 * 1024, 'care.pdf': 30 })
      await deliver(ticket({ papers }))
      expect(names()).toEqual([['ticket-9.pdf', 'care.pdf']])
      expect(textsOf(platform.shown(bench)[0])).toContain('Too large for this chat: T\\-9\\-cut.zip')
    })

    it('keeps the message’s own file before the papers when the platform takes less than it says', async () => {
      const { platform, bench, deliver, papers, names } = await withPapers({ 'T-9-cut.zip': 5_000, 'care.pdf': 30 })
      platform.rules.largestRequest = 1_000
      await deliver(ticket({ papers }))
      expect(names()).toEqual([['ticket-9.pdf']])
      expect(textsOf(platform.shown(bench)[0])).toContain('T\\-9\\-cut.zip, care.pdf')
    })
  })

  it('tells staff in words when a message was deleted, and can be posted again when they ask', async () => {
    const { platform, bench, office, postings, troubles, deliver } = await start()
    await deliver(ticket())
    for (const stored of bench.messages) stored.deleted = true
    await expect(deliver(saying('taken'))).rejects.toMatchObject({ trouble: 'message-gone' })
    await expect(deliver(saying('taken again'))).rejects.toMatchObject({ trouble: 'message-gone' })
    expect(platform.shown(office).map(textsOf)).toEqual([
      '⚠ Ticket 9 was posted, and somebody deleted it. If it is still needed, have it posted again.',
    ])
    expect(troubles[0]).toEqual({ code: 'message-gone', nonce: 'ticket-T9-1' })
    postings.again({ shop: 'shop-1', nonce: 'ticket-T9-1', part: 1 })
    expect(await deliver(saying('once more'))).toMatchObject({ outcome: 'posted' })
    expect(platform.shown(bench)).toHaveLength(1)
  })

  it('asks staff when the message was deleted between posting and recording', async () => {
    const { platform, bench, deliver, open } = await start()
    platform.fail(posting, { kind: 'apply-then-500' }, 1)
    platform.fail(posting, { kind: 'fail-500' }, 3)
    await expect(deliver(ticket())).rejects.toThrow()
    for (const stored of bench.messages) stored.deleted = true
    await expect(open()(ticket())).rejects.toMatchObject({ trouble: 'message-gone' })
    expect(platform.shown(bench)).toHaveLength(0)
  })

  it('tells staff when a channel is gone, closed to us, not chosen, or a customer takes no direct messages', async () => {
    const { platform, owner, bench, office, places, deliver } = await start()
    bench.gone = true
    await expect(deliver(ticket())).rejects.toMatchObject({ trouble: 'channel-gone' })
    bench.gone = false
    bench.shut = true
    await expect(deliver({ ...ticket(), nonce: 'n2' })).rejects.toMatchObject({ trouble: 'no-access' })
    places.delete('bench')
    await expect(deliver({ ...ticket(), nonce: 'n3' })).rejects.toMatchObject({ trouble: 'channel-not-chosen' })
    owner.directClosed = true
    places.set('talk-1', platform.directRoom(owner).id)
    const toCustomer: Delivery = { ...ticket(), nonce: 'n4', channel: { kind: 'conversation', id: 'talk-1' } }
    await expect(deliver(toCustomer)).rejects.toMatchObject({ trouble: 'direct-closed' })
    expect(platform.shown(office).map(textsOf)).toEqual([
      expect.stringContaining('its channel is gone'),
      expect.stringContaining('may not see or write'),
      expect.stringContaining('no channel is chosen'),
      expect.stringContaining('take no direct messages'),
    ])
  })
})
