import { request } from 'node:http'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openBench } from '../../src/adapters/queue/bullmq/bull-bench.ts'
import { openQueue } from '../../src/adapters/queue/bullmq/bull-queue.ts'
import { openBullQueue } from '../../src/adapters/queue/bullmq/connection.ts'
import { hearCustomer } from '../../src/desk/service/talk/hear-customer.ts'
import { ticketActs } from '../../src/domain/ticket/acts.ts'
import type { Incoming } from '../../src/ports/chat.ts'
import type { Step } from '../../src/ports/queue.ts'
import { seeded } from '../support/seeded.ts'
import { openTwoShops, type TwoShops } from '../support/two-shops.ts'
import { until } from '../support/until.ts'

const long = process.env['LONG'] === 'fuzz'
const many = long ? { requests: 100_000, events: 4_000, jobs: 4_000 } : { requests: 1_500, events: 60, jobs: 100 }
/** Nothing may take longer; a request that is never answered is a hang. */
const patienceMs = 30_000

const random = seeded(20_260_328)
const pick = <T>(all: readonly T[]): T => {
  const one = all[Math.floor(random() * all.length)]
  if (one === undefined) throw new Error('there is nothing to pick from')
  return one
}
const upTo = (most: number): number => Math.floor(random() * (most + 1))
const noise = (length: number): string =>
  Array.from({ length }, () => String.fromCharCode(upTo(random() < 0.8 ? 126 : 0xffff))).join('')

const nasty = [
  '',
  '\u0000',
  '\ud800',
  '../../../etc/passwd',
  '..%2f..%2fpackage.json',
  '%00',
  '%',
  '%ff%fe',
  '\'; drop table platenpost."order"; --',
  '<script>alert(1)</script>',
  '=cmd|" /C calc"!A0',
  '{"$gt":""}',
  '__proto__',
  'constructor',
  'NaN',
  '-1',
  '9'.repeat(400),
  '\r\nset-cookie: a=b',
  '🧢'.repeat(50),
  '12 navy jerseys, white numbers, by December 11 at 5 pm',
  'a'.repeat(5_000),
  '7 Okoye L\n9 Hale M',
]
const word = (): string => (random() < 0.7 ? pick(nasty) : noise(upTo(40)))

/** Without half signs, which no form and no address can carry. */
const whole = (text: string): string => Buffer.from(text).toString()

/** Everything that can stand in a path, the real ones among them. */
const pathFor = ({ victim }: TwoShops): string => {
  const part = (): string =>
    pick([victim.token, ...victim.files, 'say', 'press', 'choose', 'fill', 'live', 'file', encodeURIComponent(whole(word()))])
  const roots = [
    '/',
    '/start',
    '/sign-in',
    '/sign-out',
    '/language',
    '/people',
    '/people/code',
    '/people/link',
    '/bench',
    '/morning',
    '/up',
    '/ready',
    '/robots.txt',
  ]
  const deep = ['/c', '/bench', '/morning', '/owner', '/assets', '/people']
  if (random() < 0.35) return pick(roots)
  const parts = Array.from({ length: 1 + upTo(3) }, part)
  return `${pick(deep)}/${parts.join('/')}${random() < 0.2 ? `?after=${encodeURIComponent(whole(word()))}` : ''}`
}

const actionsOf = ({ victim }: TwoShops): readonly string[] => [
  ...ticketActs.map((act) => `t:${victim.ticketId}:${act}`),
  `o:${victim.orderId}:again-quote:1`,
  victim.signOff,
  'c:choice',
]

type Sent = { readonly type: string; readonly body: Buffer }
const formBody = (shops: TwoShops): Sent => {
  const fields = new URLSearchParams()
  const names = ['id', 'text', 'action', 'choice', 'value', 'form', 'language', 'name', 'code', 'back', 'field.a', whole(word())]
  fields.set('id', random() < 0.8 ? `delivery-${upTo(1e9)}` : whole(word()))
  for (let at = upTo(5); at > 0; at -= 1) fields.append(pick(names), random() < 0.3 ? pick(actionsOf(shops)) : whole(word()))
  return { type: 'application/x-www-form-urlencoded', body: Buffer.from(fields.toString()) }
}

const starts = [
  '\x89PNG\r\n\x1a\n',
  '\xff\xd8\xff',
  'GIF89a',
  '%PDF-1.7',
  'PK\x03\x04[Content_Types].xml',
  'PK\x03\x04../../x',
  'number,name\n7,Hale\n',
  'ID3',
  '',
]
const uploadBody = (): Sent => {
  const bytes = Buffer.concat([Buffer.from(pick(starts), 'latin1'), Buffer.from(noise(upTo(2_000)), 'latin1')])
  const name = word().replaceAll(/[\r\n"]/g, '_')
  const head = `--b\r\ncontent-disposition: form-data; name="id"\r\n\r\ndelivery-${upTo(1e9)}\r\n--b\r\ncontent-disposition: form-data; name="file"; filename="${name}"\r\n\r\n`
  const end = random() < 0.8 ? '\r\n--b--\r\n' : ''
  return { type: 'multipart/form-data; boundary=b', body: Buffer.concat([Buffer.from(head), bytes, Buffer.from(end)]) }
}

const bodyFor = (shops: TwoShops): Sent => {
  const kind = random()
  if (kind < 0.55) return formBody(shops)
  if (kind < 0.8) return uploadBody()
  return {
    type: pick(['application/json', 'text/plain', 'multipart/form-data', '', noise(10).replaceAll(/[^\w/]/g, 'x')]),
    body: Buffer.from(noise(upTo(400))),
  }
}

type Answer = { readonly status: number; readonly ms: number }

/** Live pages never end by themselves: their head is the answer. */
const send = (shops: TwoShops, from: string): Promise<Answer> => {
  const { first } = shops
  const { hostname, port, host } = new URL(first.counter.address)
  const method = pick(['GET', 'GET', 'POST', 'POST', 'POST', 'POST', 'HEAD', 'PUT', 'DELETE', 'OPTIONS', 'PATCH'])
  const sent = method === 'GET' || method === 'HEAD' ? null : bodyFor(shops)
  const cookie = pick(['', '', first.owner, first.staff, first.owner.slice(0, -3), `counter-${port}=a.b`])
  const headers: { [name: string]: string } = {
    host: random() < 0.97 ? host : pick(['evil.example', '', '[::1', `127.0.0.1:${upTo(65_535)}`]),
    ...(random() < 0.95 ? { origin: first.counter.address } : { origin: pick(['null', 'http://evil.example', '::']) }),
    ...(cookie === '' ? {} : { cookie }),
    ...(sent === null || sent.type === '' ? {} : { 'content-type': sent.type }),
    accept: pick(['application/json', 'text/html', '*/*']),
    'accept-language': pick(['en', 'es', 'xx', ',,,;q=', '']),
    ...(random() < 0.05 ? { 'last-event-id': word().replaceAll(/[^\x20-\x7e]/g, '') } : {}),
  }
  const began = performance.now()
  return new Promise((resolve, reject) => {
    const asked = request(
      { hostname, port, path: pathFor(shops), method, headers, agent: false, localAddress: from },
      (answer) => {
        const done = (): void => resolve({ status: answer.statusCode ?? 0, ms: performance.now() - began })
        if (String(answer.headers['content-type']).startsWith('text/event-stream')) {
          answer.destroy()
          done()
          return
        }
        answer.resume()
        answer.on('end', done)
        answer.on('error', done)
      },
    )
    asked.setTimeout(patienceMs, () => asked.destroy(new Error(`${method} hangs`)))
    asked.on('error', (cause) =>
      /hangs/.test(cause.message) ? reject(cause) : resolve({ status: 0, ms: performance.now() - began }),
    )
    asked.end(sent?.body)
  })
}

const heapMegabytes = (): number => {
  globalThis.gc?.()
  return process.memoryUsage().heapUsed / 1_048_576
}

const incoming = (shops: TwoShops, at: number): Incoming => {
  const id = `fuzz-${at}`
  const kind = pick(['said', 'pressed', 'chose', 'filled'] as const)
  switch (kind) {
    case 'said':
      return { kind, id, text: whole(word()), files: [] }
    case 'pressed':
      return { kind, id, action: pick([...actionsOf(shops), word()]) }
    case 'chose':
      return { kind, id, choice: pick(['c:choice', word()]), value: pick(['all-13', word()]) }
    case 'filled':
      return { kind, id, form: pick(['c:roster', word()]), values: { [word()]: word() } }
    default:
      return kind satisfies never
  }
}

describe('bad input', () => {
  let shops: TwoShops
  beforeAll(async () => {
    shops = await openTwoShops()
  }, 300_000)
  afterAll(() => shops.close())

  it('on every route is answered, breaks nothing and leaves no memory taken', { timeout: 3_600_000 }, async () => {
    const statuses = new Map<number, number>()
    const heaps: number[] = []
    const slowest = { ms: 0 }
    const parts = 10
    for (let part = 0; part < parts; part += 1) {
      const lane = async (number: number): Promise<void> => {
        for (let sent = 0; sent < many.requests / parts / 8; sent += 1) {
          // Everybody has an address of their own, so that the limits let most through.
          const answer = await send(shops, `127.${2 + number}.${upTo(250)}.${1 + upTo(250)}`)
          statuses.set(answer.status, (statuses.get(answer.status) ?? 0) + 1)
          slowest.ms = Math.max(slowest.ms, answer.ms)
        }
      }
      await Promise.all(Array.from({ length: 8 }, (_one, number) => lane(number)))
      heaps.push(heapMegabytes())
    }
    process.stdout.write(
      `requests: ${[...statuses.values()].reduce((sum, one) => sum + one, 0)}, statuses ${JSON.stringify([...statuses].sort(([a], [b]) => a - b))}, slowest ${Math.round(slowest.ms)} ms, heap ${heaps.map(Math.round).join(' ')} MB\n`,
    )
    expect(shops.bugs.map(String)).toEqual([])
    expect([...statuses.keys()].filter((status) => status >= 500)).toEqual([])
    expect(new Set(statuses.keys()).size).toBeGreaterThan(6)
    expect(Math.max(...heaps.slice(5))).toBeLessThan(Math.max(...heaps.slice(0, 5)) * 1.25 + 20)
  })

  it('as events of a chat is heard or refused, and never thrown', { timeout: 3_600_000 }, async () => {
    const { first, victim } = shops
    const owner = { id: 'owner', name: 'Mesa', role: 'owner' as const }
    const outcomes = { heard: 0, refused: 0, acted: 0 }
    for (let at = 0; at < many.events; at += 1) {
      const event = incoming(shops, at)
      if (at % 3 === 0) {
        await first.pages.act(owner, event)
        outcomes.acted += 1
        continue
      }
      // A conversation grows with what is said in it: a fresh one now and then, as customers come and go.
      const id = at % 50 === 1 ? await freshTalk() : (talk.id ?? victim.conversationId)
      const heard = await hearCustomer(first.desk, id, { incoming: event, files: [] })
      outcomes[heard.ok ? 'heard' : 'refused'] += 1
    }
    process.stdout.write(`events: ${JSON.stringify(outcomes)}\n`)
    expect(outcomes.heard).toBeGreaterThan(0)
    expect(shops.bugs.map(String)).toEqual([])
  })

  const talk: { id: string | null } = { id: null }
  const freshTalk = async (): Promise<string> => {
    const { token } = await shops.first.pages.startConversation(pick(['en', 'es']))
    talk.id = (await shops.first.pages.conversation(token))?.id ?? null
    return talk.id ?? ''
  }

  it('as jobs fails by itself while the steps among it run', { timeout: 3_600_000 }, async () => {
    const { service } = shops.store.embedded
    if (!('host' in service)) throw new Error('an embedded store has a host')
    const place = { kind: 'postgres', house: 'fuzz', address: service } as const
    const troubles: unknown[] = []
    const onTrouble = (cause: unknown): void => void troubles.push(cause)
    const queue = await openQueue(place, { onTrouble })
    const raw = openBullQueue(place, { attempts: 1 }, onTrouble)
    const ran: string[] = []
    const run = async (step: Step): Promise<void> => void ran.push(step.step)
    const handlers = { quote: run, price: run, plan: run, ticket: run, post: run, remind: run }
    const bench = await openBench(place, { handlers, onGivenUp: async () => undefined, onTrouble, concurrency: 8 })
    const good = { step: 'quote', shopId: 's', orderId: 'o', revision: 1, attempt: 1 }
    const junk = (): unknown => {
      const spoiled = {
        ...good,
        [pick(Object.keys(good))]: pick<unknown>([
          null,
          whole(word()).replaceAll('\u0000', ''),
          -1,
          1.5,
          {},
          [],
          true,
          { a: good },
        ]),
      }
      return pick<unknown>([spoiled, null, 7, 'text', [], {}, { ...good, more: 1 }, { step: 'remind', shopId: 's' }])
    }
    for (let at = 0; at < many.jobs; at += 1) await raw.it.add(pick(['quote', 'plan', 'x']), junk())
    await queue.add({ step: 'quote', shopId: 'fuzz', orderId: 'last', revision: 1, attempt: 1 })
    await until(
      'every job was taken',
      async () => (await queue.counts()).waiting === 0 && (await queue.counts()).active === 0,
      600_000,
    )
    const { failed } = await queue.counts()
    process.stdout.write(`jobs: ${many.jobs} of junk, ${failed} failed, ${ran.length} could be read\n`)
    expect(failed + ran.length).toBe(many.jobs + 1)
    expect(ran).toContain('quote')
    await bench.close()
    await raw.close()
    await queue.close()
  })
})
