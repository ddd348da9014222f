import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openStore } from '../../src/adapters/store/sql/open-store.ts'
import { minutes } from '../../src/domain/units/units.ts'
import { openTestDesk } from '../support/desk.ts'
import { temporaryFolder, unwrap } from '../support/embedded.ts'
import { needs } from '../support/needs.ts'
import { addServers, cancelFor, orderIn, setUpAll } from '../support/platform/many-servers.ts'
import { type StandIn, startStandIn, token } from '../support/platform/stand-in.ts'
import { heldOf } from '../support/process-watch.ts'
import { type ServedCrew, startServedCrew } from '../support/served-crew.ts'
import { wholeWish } from '../support/steady-customer.ts'

const long = process.env['LONG'] === 'soak'
const soak = long
  ? { shops: 10, seconds: Number(process.env['SECONDS'] ?? 900), everySeconds: 1, lookEverySeconds: 15 }
  : { shops: 3, seconds: 6, everySeconds: 1, lookEverySeconds: 2 }

/** One look at everything that could grow, by name. */
type Look = { readonly [name: string]: number }

const cancelled = new Set<string>()
let platform: StandIn
let crew: ServedCrew
let servers: ReturnType<typeof addServers>
let shops: readonly string[]
const temporary = temporaryFolder()

/** The desk of the house, for setting the servers up as the first-run dialogue would. */
const setUp = async (): Promise<readonly string[]> => {
  const store = unwrap(await openStore({ address: { connectionString: crew.postgres.serviceUrl }, time: Date.now }))
  const desk = await openTestDesk(store, { at: minutes(Math.floor(Date.now() / 60_000)) })
  const [row] = await crew.records().rows('select shop_id from platenpost.shop order by 1')
  const ids = await setUpAll({ ...desk, shopId: String(row?.['shop_id']) }, servers)
  await store.close()
  return ids
}

const look = async (): Promise<Look> => {
  const [service = 0, ...workers] = crew.pids()
  const parts = { service, ...Object.fromEntries(workers.map((pid, at) => [`worker ${at + 1}`, pid])), redis: crew.redis.pid() }
  const held = Object.entries(parts).map(([name, pid]) => ({ name, held: heldOf(pid) }))
  const [row] = await crew.records().rows('select count(*)::int as many from pg_stat_activity where client_addr is not null')
  return {
    ...Object.fromEntries(held.map(({ name, held: { memory } }) => [`${name}, MiB`, memory])),
    ...Object.fromEntries(held.map(({ name, held: { files } }) => [`${name}, open files and sockets`, files])),
    'connections of PostgreSQL': Number(row?.['many']),
  }
}

const orderAndLeave = async (number: number): Promise<void> => {
  const server = servers[number % servers.length]
  if (server === undefined) throw new Error('there is no server')
  const name = `Customer ${number}`
  const where = await orderIn(platform, { server, name, words: wholeWish(`Team ${number} Herons`, 40 + (number % 60)) })
  await cancelFor(platform, where)
  cancelled.add(name)
}

/** An order every second, whatever becomes of those before; a look now and then. */
const run = async (): Promise<{ readonly looks: readonly Look[]; readonly orders: number; readonly most: number }> => {
  const looks: Look[] = []
  const open = new Set<Promise<void>>()
  const from = performance.now()
  let [orders, most, nextLook] = [0, 0, 0]
  while (performance.now() - from < soak.seconds * 1_000) {
    const order = orderAndLeave(orders).finally(() => open.delete(order))
    open.add(order)
    orders += 1
    most = Math.max(most, open.size)
    if (performance.now() - from >= nextLook) {
      looks.push(await look())
      nextLook += soak.lookEverySeconds * 1_000
      process.stdout.write(
        `soak: ${orders} ordered, ${cancelled.size} through, ${open.size} open: ${JSON.stringify(looks.at(-1))}\n`,
      )
    }
    await pause(Math.max(0, from + orders * soak.everySeconds * 1_000 - performance.now()))
  }
  await Promise.all(open)
  return { looks, orders, most }
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN

/** The last third against the third before it, by the middle of each; the first third is for warming up. */
const grownBy = (looks: readonly Look[], name: string): { readonly before: number; readonly after: number } => {
  const values = looks.map((one) => one[name] ?? Number.NaN)
  const third = Math.floor(values.length / 3)
  return { before: median(values.slice(third, 2 * third)), after: median(values.slice(2 * third)) }
}

describe.runIf(needs('redis-server'))('served: shops that are asked for orders one after the other', () => {
  beforeAll(async () => {
    platform = await startStandIn()
    servers = addServers(platform, soak.shops)
    crew = await startServedCrew(2, {
      PLATFORM_TOKEN: token,
      PLATFORM_API: platform.api,
      PLATFORM_GUILD: servers[0]?.guild.id ?? '',
      TMPDIR: temporary.path,
    })
    shops = await setUp()
  }, 120_000)
  afterAll(async () => {
    await crew.close()
    await platform.stop()
    temporary.remove()
  })

  it('bring every one to its own bench once, and hold no more at the end than before', { timeout: 3_600_000 }, async () => {
    const { looks, orders, most } = await run()
    const [row] = await crew.records().rows(
      `select count(*)::int as tickets, count(distinct order_id)::int as orders, count(distinct shop_id)::int as shops,
        (select count(*)::int from platenpost.step where state <> 'done') as steps from platenpost.ticket`,
    )
    process.stdout.write(`soak: ${orders} orders in ${soak.seconds} s, at most ${most} at once: ${JSON.stringify(row)}\n`)
    expect(row).toEqual({ tickets: orders, orders, shops: Math.min(shops.length, orders), steps: 0 })
    const benches = servers.map(({ bench }) => platform.shown(bench).length)
    expect(benches.reduce((sum, many) => sum + many, 0)).toBe(orders)
    const names = Object.keys(looks[0] ?? {})
    for (const name of names) {
      const { before, after } = grownBy(looks, name)
      process.stdout.write(`soak: ${name}: ${before.toFixed(1)} before, ${after.toFixed(1)} at the end\n`)
      if (long) expect.soft(after, name).toBeLessThanOrEqual(before * 1.1 + (name.endsWith('MiB') ? 5 : 3))
    }
  })
})
