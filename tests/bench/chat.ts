import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { monitorEventLoopDelay } from 'node:perf_hooks'
import { setTimeout as sleep } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import * as z from 'zod'
import { platformDeliver } from '../../src/adapters/chat/platform/deliver.ts'
import { startPlatform } from '../../src/adapters/chat/platform/platform.ts'
import { smallDesk } from '../support/platform/desk.ts'
import { action, message } from '../support/platform/messages.ts'
import { type StandIn, startStandIn, token } from '../support/platform/stand-in.ts'
import type { Asked, Room, Stored, User } from '../support/platform/world.ts'
import type { Bench, Figure } from './bench.ts'

/**
 * Customers of one shop who each act once a second: the bot in a process of its own, against the stand-in of the platform
 * and a desk in memory. What is measured is the adapter: reading, acknowledging, handing over, answering.
 */
const customers = 200
const wanted = { acknowledgedMs: 250, memoryMb: 300, loopDelayMs: 50 } as const

const customerSchema = z.object({ person: z.string(), channel: z.string() })
const orderSchema = z.object({ api: z.string(), guild: z.string(), customers: z.array(customerSchema) })
const figuresSchema = z.object({ memoryMb: z.number(), loopDelayMs: z.number(), heard: z.number(), faults: z.number() })

const mebibyte = 2 ** 20

/** The child: the bot with its desk; says `ready`, and at the end what it measured of itself. */
const runBot = async (given: unknown): Promise<void> => {
  const { api, guild, customers: people } = orderSchema.parse(given)
  const small = smallDesk()
  const nobody = { id: '', name: '', language: 'en' } as const
  const { shop } = await small.desk.setUp({ id: guild, name: 'Cedar Flats Press' }, nobody, {})
  for (const { person, channel } of people) await small.desk.openTalk(shop, { ...nobody, id: person }, channel)
  small.running.deliver = platformDeliver(small.desk, { token, api })
  let faults = 0
  const bot = await startPlatform(small.desk, {
    token,
    api,
    readsContent: false,
    report: (error) => {
      faults += 1
      process.stderr.write(`${String(error)}\n`)
    },
  })
  const delay = monitorEventLoopDelay({ resolution: 5 })
  delay.enable()
  let memory = 0
  const watch = setInterval(() => {
    memory = Math.max(memory, process.memoryUsage.rss())
  }, 100)
  process.send?.('ready')
  process.once('message', async () => {
    clearInterval(watch)
    delay.disable()
    process.send?.({ memoryMb: memory / mebibyte, loopDelayMs: delay.percentile(99) / 1e6, heard: small.heard.length, faults })
    await bot.stop()
    process.disconnect()
  })
}

type Customer = { readonly user: User; readonly room: Room; readonly shown: Stored }

const gather = (platform: StandIn): { readonly guild: string; readonly people: readonly Customer[] } => {
  const guild = platform.addGuild('Cedar Flats Press', platform.addUser('Owner'))
  const people = Array.from({ length: customers }, (_, at) => {
    const user = platform.addUser(`Customer ${at}`)
    platform.join(guild, user)
    const body = {
      components: [...message({ actions: [action(`o:O-C${at + 1}:change:1`)] }).actions].map(({ id }) => ({
        type: 2,
        custom_id: id,
      })),
    }
    const room = platform.directRoom(user)
    return {
      user,
      room,
      shown: {
        id: platform.world.nextId(),
        author: platform.world.bot.id,
        nonce: null,
        at: 0,
        body,
        files: [],
        edits: 0,
        deleted: false,
      },
    }
  })
  return { guild: guild.id, people }
}

const act = async (platform: StandIn, people: readonly Customer[], seconds: number): Promise<readonly Asked[]> => {
  const asked: Asked[] = []
  const from = performance.now()
  const gap = 1_000 / people.length
  for (let at = 0; at < people.length * seconds; at += 1) {
    const pause = from + at * gap - performance.now()
    if (pause > 1) await sleep(pause)
    const one = people[at % people.length]
    if (one !== undefined) asked.push(platform.press(one, one.shown, `o:O-C${(at % people.length) + 1}:change:1`))
  }
  await sleep(1_500)
  return asked
}

const answerOf = async (bot: ChildProcess): Promise<unknown> => {
  const [answer] = await once(bot, 'message')
  return answer
}

const p99 = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length * 0.99)] ?? Number.NaN

export const bench: Bench = async ({ quick }) => {
  const platform = await startStandIn()
  const { guild, people } = gather(platform)
  const bot = fork(fileURLToPath(import.meta.url), ['bot'])
  bot.send({ api: platform.api, guild, customers: people.map(({ user, room }) => ({ person: user.id, channel: room.id })) })
  await answerOf(bot)
  const asked = await act(platform, people, quick ? 3 : 20)
  bot.send('report')
  const own = figuresSchema.parse(await answerOf(bot))
  await platform.stop()
  const waits = asked.flatMap((one) => (one.acknowledgedAt === null ? [] : [one.acknowledgedAt - one.at]))
  const failed = asked.length - waits.length + own.faults + (asked.length - own.heard)
  const figures: readonly Figure[] = [
    { name: `deeds of ${customers} customers`, value: asked.length, unit: '' },
    { name: 'acknowledged, p99', value: p99(waits), unit: 'ms', most: wanted.acknowledgedMs },
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
