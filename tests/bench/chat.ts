import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { monitorEventLoopDelay } from 'node:perf_hooks'
import { setTimeout as sleep } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import * as z from 'zod'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { readConfig } from '../../src/config.ts'
import { platformDesk } from '../../src/desk/platform/platform-desk.ts'
import { openShop } from '../../src/desk/service/shop/open-shop.ts'
import { addressFor, openDesk } from '../../src/wiring/open-place.ts'
import { openPlatform } from '../../src/wiring/open-platform.ts'
import { openWorkshop } from '../../src/wiring/open-workshop.ts'
import { openTestStore, unwrap } from '../support/embedded.ts'
import { action, message } from '../support/platform/messages.ts'
import { type StandIn, startStandIn, token } from '../support/platform/stand-in.ts'
import type { Asked, Room, Stored, User } from '../support/platform/world.ts'
import { runProgram } from '../support/service.ts'
import type { Bench, Figure } from './bench.ts'
import { openFloor } from './chat-floor.ts'

/**
 * Customers of one shop who each act once a second: the bot in a process of its own with the desk over the embedded store,
 * a worker process that answers, quotes and delivers, all against the stand-in of the platform on the same machine.
 */
const customers = 200
const wanted = { acknowledgedMs: 250, memoryMb: 300, loopDelayMs: 50 } as const

const customerSchema = z.object({ person: z.string(), channel: z.string() })
const orderSchema = z.object({ guild: z.string(), customers: z.array(customerSchema) })
const figuresSchema = z.object({
  memoryMb: z.number(),
  loopDelayMs: z.number(),
  busyPercent: z.number(),
  heard: z.number(),
  faults: z.number(),
})

const mebibyte = 2 ** 20

const patience = 60_000

/** Deliveries that the desk heard, by its own records; those still being worked on are waited for. */
const heardIn = async (desk: Awaited<ReturnType<typeof openBot>>['desk'], sent: number): Promise<number> => {
  const { heard } = desk.store.shop(desk.shopId)
  const from = performance.now()
  for (let many = await heard.count(); ; many = await heard.count()) {
    if (many >= sent || performance.now() - from > patience) return many
    await sleep(250)
  }
}

const openBot = async (given: unknown) => {
  const { guild, customers: people } = orderSchema.parse(given)
  const root = projectRoot()
  const config = unwrap(readConfig(root))
  const desk = unwrap(await openDesk(config, openWorkshop(root, config.shop), unwrap(await addressFor(config))))
  await openShop(desk)
  const nobody = { id: '', name: '', language: 'en' } as const
  const platform = platformDesk(desk, guild)
  const { shop } = await platform.setUp({ id: guild, name: 'Cedar Flats Press' }, nobody, {})
  for (const { person, channel } of people) await platform.openTalk(shop, { ...nobody, id: person }, channel)
  return { desk, config }
}

/** The child without a desk: says `ready`, and acknowledges until it is told to end. */
const runFloor = async (): Promise<void> => {
  const stop = await openFloor(process.env['PLATFORM_API'] ?? '', token)
  process.send?.('ready')
  await once(process, 'message')
  await stop()
  process.disconnect()
}

/** The child: the bot with its desk; says `ready`, and at the end what it measured of itself. */
const runBot = async (given: unknown): Promise<void> => {
  const { desk, config } = await openBot(given)
  let faults = 0
  const opened = await openPlatform(desk, config, (error) => {
    faults += 1
    process.stderr.write(`${String(error)}\n`)
  })
  const stop = unwrap(opened)
  const delay = monitorEventLoopDelay({ resolution: 5 })
  delay.enable()
  let memory = 0
  const watch = setInterval(() => {
    memory = Math.max(memory, process.memoryUsage.rss())
  }, 100)
  process.send?.('ready')
  const used = process.cpuUsage()
  const from = performance.now()
  process.once('message', async (sent) => {
    clearInterval(watch)
    delay.disable()
    const loopDelayMs = delay.percentile(99) / 1e6
    const { user, system } = process.cpuUsage(used)
    const busyPercent = (user + system) / 10 / (performance.now() - from)
    const heard = await heardIn(desk, Number(sent))
    process.send?.({ memoryMb: memory / mebibyte, loopDelayMs, busyPercent, heard, faults })
    await stop()
    await desk.store.close()
    process.disconnect()
  })
}

type Customer = { readonly user: User; readonly room: Room; readonly shown: Stored }

const shownMessage = (platform: StandIn): Stored => ({
  id: platform.world.nextId(),
  author: platform.world.bot.id,
  nonce: null,
  at: 0,
  body: { components: message({ actions: [action('c:change:1')] }).actions.map(({ id }) => ({ type: 2, custom_id: id })) },
  files: [],
  edits: 0,
  deleted: false,
})

const gather = (platform: StandIn): { readonly guild: string; readonly people: readonly Customer[] } => {
  const guild = platform.addGuild('Cedar Flats Press', platform.addUser('Owner'))
  const people = Array.from({ length: customers }, (_, at) => {
    const user = platform.addUser(`Customer ${at}`)
    platform.join(guild, user)
    return { user, room: platform.directRoom(user), shown: shownMessage(platform) }
  })
  return { guild: guild.id, people }
}

const names = ['Abel', 'Bea', 'Cid', 'Dot', 'Eli', 'Fay', 'Gus', 'Hal', 'Ida', 'Jon']
const opening =
  'Practice tees for the Lynx, navy cotton, white vinyl numbers on the back, soccer. We need them December 10 at 5 pm.'

/** What a customer does in their n-th second: every fourth time they write, else they press a button or ask how it stands. */
const deed = (platform: StandIn, customer: Customer, turn: number): Asked => {
  if (turn === 0) return platform.command(customer, 'order', { text: opening })
  if (turn % 4 === 0) return platform.command(customer, 'order', { text: `${turn} ${names[turn % names.length]}, adult M` })
  return turn % 2 === 0 ? platform.command(customer, 'status') : platform.press(customer, customer.shown, 'c:change:1')
}

const act = async (platform: StandIn, people: readonly Customer[], seconds: number): Promise<readonly Asked[]> => {
  const asked: Asked[] = []
  const from = performance.now()
  const gap = 1_000 / people.length
  for (let at = 0; at < people.length * seconds; at += 1) {
    const pause = from + at * gap - performance.now()
    if (pause > 1) await sleep(pause)
    const one = people[at % people.length]
    if (one !== undefined) asked.push(deed(platform, one, Math.floor(at / people.length)))
  }
  await sleep(1_500)
  return asked
}

const answerOf = async (bot: ChildProcess): Promise<unknown> => {
  const [answer] = await once(bot, 'message')
  return answer
}

const waitsOf = (asked: readonly Asked[]): readonly number[] =>
  asked.flatMap((one) => (one.acknowledgedAt === null ? [] : [one.acknowledgedAt - one.at]))

const p99 = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length * 0.99)] ?? Number.NaN

const startChild = (kind: 'bot' | 'floor', settings: { readonly [name: string]: string }): ChildProcess =>
  fork(fileURLToPath(import.meta.url), [kind], { env: { ...process.env, ...settings } })

/** The same deeds of the same customers, acknowledged by a client that does nothing else. */
const measureFloor = async (seconds: number): Promise<number> => {
  const platform = await startStandIn()
  const { people } = gather(platform)
  const floor = startChild('floor', { PLATFORM_API: platform.api })
  await answerOf(floor)
  const asked = await act(platform, people, seconds)
  floor.send('end')
  await once(floor, 'exit')
  await platform.stop()
  return p99(waitsOf(asked))
}

export const bench: Bench = async ({ quick }) => {
  const seconds = quick ? 3 : 20
  const floor = await measureFloor(seconds)
  const platform = await startStandIn()
  const { guild, people } = gather(platform)
  const opened = await openTestStore()
  const settings = { DATA: opened.data, PLATFORM_TOKEN: token, PLATFORM_API: platform.api, PLATFORM_GUILD: guild }
  const worker = runProgram('workers/main.js', settings)
  await worker.says(/worker ready/)
  const bot = startChild('bot', settings)
  bot.send({ guild, customers: people.map(({ user, room }) => ({ person: user.id, channel: room.id })) })
  await answerOf(bot)
  const asked = await act(platform, people, seconds)
  bot.send(asked.length)
  const own = figuresSchema.parse(await answerOf(bot))
  await once(bot, 'exit')
  await worker.signal('SIGTERM')
  await platform.stop()
  await opened.close()
  const waits = waitsOf(asked)
  const failed = asked.length - waits.length + own.faults + (asked.length - own.heard)
  const figures: readonly Figure[] = [
    { name: `deeds of ${customers} customers`, value: asked.length, unit: '' },
    { name: 'acknowledged, p99', value: p99(waits), unit: 'ms', most: wanted.acknowledgedMs },
    { name: 'acknowledged by a client that does nothing else (the floor), p99', value: floor, unit: 'ms' },
    { name: 'acknowledged, p99, over the floor', value: p99(waits) / floor, unit: '×' },
    { name: 'processor of the bot, of one core', value: own.busyPercent, unit: '%' },
    { name: 'failed', value: failed, unit: '', most: 0 },
    { name: 'memory of the bot, most', value: own.memoryMb, unit: 'MiB', most: wanted.memoryMb },
    { name: 'event loop of the bot, p99', value: own.loopDelayMs, unit: 'ms', most: wanted.loopDelayMs },
  ]
  return figures
}

if (process.argv[2] === 'bot' && process.send !== undefined) {
  const [given] = await once(process, 'message')
  await runBot(given)
}
if (process.argv[2] === 'floor' && process.send !== undefined) await runFloor()
