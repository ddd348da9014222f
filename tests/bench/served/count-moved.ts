import { setTimeout as pause } from 'node:timers/promises'
import { type ServedCrew, startServedCrew } from '../../support/served-crew.ts'
import type { Records } from '../../support/service-watch.ts'
import type { SteadyCustomer } from '../../support/steady-customer.ts'
import { jobsSince } from './jobs-done.ts'
import { type Load, leave, measure, warmUp } from './measure.ts'
import { type Requests, requestsDuring } from './requests.ts'
import { type CountedWay, startCountedWay, type Traffic } from './traffic.ts'

/** Per order: jobs that the queue finished, kept transactions and bytes of the log; what went to the store and back; customers' requests. */
export type Moved = {
  readonly jobs: number
  readonly transactions: number
  readonly bytes: number
  readonly traffic: Traffic
  readonly requests: Requests
}

/** A connection without work tells what it has counted within ten seconds (PGSTAT_IDLE_INTERVAL of PostgreSQL). */
const untilTold = 11_000

const countersOf = async (records: Records): Promise<{ readonly transactions: number; readonly bytes: number }> => {
  await pause(untilTold)
  const [row] = await records.rows(
    `select sum(xact_commit)::float8 as transactions, (pg_current_wal_lsn() - '0/0'::pg_lsn)::float8 as bytes from pg_stat_database`,
  )
  return { transactions: Number(row?.['transactions']), bytes: Number(row?.['bytes']) }
}

type CountedCrew = { readonly crew: ServedCrew; readonly way: CountedWay }

const each = <T extends Readonly<Record<string, number>>>(all: T, many: number, before?: T): T => {
  const entries = Object.entries(all).map(([key, value]) => [key, (value - (before?.[key] ?? 0)) / many])
  return Object.fromEntries(entries)
}

const countMoved = async ({ crew, way }: CountedCrew, load: Load): Promise<Moved> => {
  const before = await countersOf(crew.records())
  const jobs = await jobsSince(crew.redis.url)
  const [went, state] = [way.traffic(), { asked: 0, customers: [] as readonly SteadyCustomer[] }]
  const requests = await requestsDuring(async () => Object.assign(state, await measure(crew, load)))
  const traffic = each(way.traffic(), load.many, went)
  const done = await jobs()
  const after = await countersOf(crew.records())
  await leave(crew, state.customers)
  return {
    jobs: done / load.many,
    transactions: (after.transactions - before.transactions - state.asked) / load.many,
    bytes: (after.bytes - before.bytes) / load.many,
    traffic,
    requests: each(requests, load.many),
  }
}

/** What orders move, counted in a crew of its own whose way to the store is watched; it costs the measured ones nothing. */
export const movedByOrders = async (orders: number): Promise<Moved> => {
  const ways: CountedWay[] = []
  const crew = await startServedCrew(1, async ({ port, serviceUrl }) => {
    const way = await startCountedWay(port)
    ways.push(way)
    const watched = new URL(serviceUrl)
    watched.port = String(way.port)
    return { DATABASE_URL: watched.href }
  })
  try {
    const [way] = ways
    if (way === undefined) throw new Error('the way to the store was not asked for')
    await warmUp(crew, { many: orders, first: 0 })
    return await countMoved({ crew, way }, { many: orders, first: 2 * orders })
  } finally {
    await crew.close()
    await Promise.all(ways.map((way) => way.close()))
  }
}
