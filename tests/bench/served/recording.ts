import { setTimeout as pause } from 'node:timers/promises'
import pg from 'pg'
import { type ServedCrew, startServedCrew } from '../../support/served-crew.ts'
import type { ServedPostgres } from '../../support/served-postgres.ts'
import { until } from '../../support/until.ts'
import { countMoved, type Moved } from './count-moved.ts'
import { leave, measure, warmUp } from './measure.ts'
import { type Recorded, type RecordedWay, startRecordedWay } from './recorded-way.ts'

/** What some orders did to the records, and what was done after it until the next of them. */
export type Stretch = { readonly orders: readonly Recorded[]; readonly rest: readonly Recorded[] }

/** Orders as they were done once, and the records as they stood before, on servers where nothing else is done any more. */
export type Recording = {
  readonly moved: Moved
  /** How many orders are in each stretch. */
  readonly each: number
  readonly stretches: readonly Stretch[]
  /** The service's own role on the copy of the records. */
  readonly postgres: string
  readonly redis: string
  readonly postgresPid: () => number
  readonly redisPid: () => number
  readonly close: () => Promise<void>
}

const copied = 'as_before'

const inDatabase = (url: string, name: string): string => {
  const there = new URL(url)
  there.pathname = `/${name}`
  return there.href
}

/** A server copies records that nobody is connected to: everybody is sent off meanwhile, and comes back by itself. */
const copyRecords = async ({ ownerUrl }: ServedPostgres, way: RecordedWay): Promise<void> => {
  const client = new pg.Client({ connectionString: inDatabase(ownerUrl, 'template1') })
  await client.connect()
  await client.query('alter database postgres with allow_connections false')
  // In this order: a condition on the list alone would be asked of everybody first, and end whoever asks.
  const others = `select from pg_stat_activity where case when datname = 'postgres' then pg_terminate_backend(pid) else false end`
  await until('nobody is connected', async () => ((await client.query(others)).rowCount === 0 ? true : undefined))
  await client.query(`create database ${copied} template postgres`)
  way.taken()
  await client.query('alter database postgres with allow_connections true')
  await client.end()
}

/** What comes after the last ticket, of its own accord, is done by then. */
const untilQuiet = 500

const recordStretch = async (crew: ServedCrew, way: RecordedWay, load: Parameters<typeof measure>[1]): Promise<Stretch> => {
  const { customers } = await measure(crew, load)
  await pause(untilQuiet)
  const orders = way.taken()
  await leave(crew, customers)
  await pause(untilQuiet)
  return { orders, rest: way.taken() }
}

const isGone = (pid: number): boolean => {
  try {
    return !process.kill(pid, 0)
  } catch {
    return true
  }
}

const stopDesk = async (crew: ServedCrew): Promise<void> => {
  const pids = crew.pids()
  for (const pid of pids) process.kill(pid, 'SIGTERM')
  await until('service and workers are gone', async () => pids.every(isGone) || undefined)
}

export type Recorder = { readonly warm: number; readonly counted: number; readonly each: number; readonly stretches: number }

const recorded = async (crew: ServedCrew, way: RecordedWay, asked: Recorder): Promise<Recording> => {
  await warmUp(crew, { many: asked.warm, first: 0 })
  const moved = await countMoved(crew, way, { many: asked.counted, first: 2 * asked.warm })
  await pause(untilQuiet)
  await copyRecords(crew.postgres, way)
  const stretches: Stretch[] = []
  for (let at = 0; at < asked.stretches; at += 1)
    stretches.push(await recordStretch(crew, way, { many: asked.each, first: 5_000 + at * asked.each }))
  await stopDesk(crew)
  return {
    moved,
    each: asked.each,
    stretches,
    postgres: inDatabase(crew.postgres.serviceUrl, copied),
    redis: crew.redis.url,
    postgresPid: crew.postgres.pid,
    redisPid: crew.redis.pid,
    close: async () => {
      await crew.close()
      await way.close()
    },
  }
}

/** Counts and keeps what orders do to the records, in a crew of its own whose way to the store is watched; it costs the measured ones nothing. */
export const recordOrders = async (asked: Recorder): Promise<Recording> => {
  const ways: RecordedWay[] = []
  const crew = await startServedCrew(1, async ({ port, serviceUrl }) => {
    const way = await startRecordedWay(port)
    ways.push(way)
    const watched = new URL(serviceUrl)
    watched.port = String(way.port)
    return { DATABASE_URL: watched.href }
  })
  const [way] = ways
  if (way === undefined) throw new Error('the way to the store was not asked for')
  try {
    return await recorded(crew, way, asked)
  } catch (cause) {
    await crew.close()
    await way.close()
    throw cause
  }
}
