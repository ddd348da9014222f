import { setTimeout as pause } from 'node:timers/promises'
import type { ServedCrew } from '../../support/served-crew.ts'
import type { Records } from '../../support/service-watch.ts'
import type { SteadyCustomer } from '../../support/steady-customer.ts'
import { jobsSince } from './jobs-done.ts'
import { type Load, leave, measure } from './measure.ts'
import type { Recorded, RecordedWay } from './recorded-way.ts'
import { type Requests, requestsDuring } from './requests.ts'

/** What went to a PostgreSQL server and came back. */
export type Traffic = {
  /** Statements that were run, the beginnings and ends of transactions too. */
  readonly statements: number
  readonly begins: number
  /** Times that somebody wrote to the server: what leaves at once is one. */
  readonly writes: number
  readonly bytesUp: number
  readonly bytesDown: number
}

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

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)

const trafficOf = (all: readonly Recorded[], many: number): Traffic => {
  const per = (of: (one: Recorded) => number): number => sum(all.map(of)) / many
  return {
    statements: per(({ writes }) => sum(writes.map(({ length }) => length))),
    begins: per(({ writes }) => (writes[0]?.[0]?.text === 'begin' ? 1 : 0)),
    writes: per(({ writes }) => writes.length),
    bytesUp: per(({ bytesUp }) => bytesUp),
    bytesDown: per(({ bytesDown }) => bytesDown),
  }
}

/** Counts what so many orders move, and calls them off again. */
export const countMoved = async (crew: ServedCrew, way: RecordedWay, load: Load): Promise<Moved> => {
  const before = await countersOf(crew.records())
  const jobs = await jobsSince(crew.redis.url)
  const state = { asked: 0, customers: [] as readonly SteadyCustomer[] }
  way.taken()
  const requests = await requestsDuring(async () => Object.assign(state, await measure(crew, load)))
  const traffic = trafficOf(way.taken(), load.many)
  const done = await jobs()
  const after = await countersOf(crew.records())
  await leave(crew, state.customers)
  return {
    jobs: done / load.many,
    transactions: (after.transactions - before.transactions - state.asked) / load.many,
    bytes: (after.bytes - before.bytes) / load.many,
    traffic,
    requests: {
      many: requests.many / load.many,
      bytesUp: requests.bytesUp / load.many,
      bytesDown: requests.bytesDown / load.many,
    },
  }
}
