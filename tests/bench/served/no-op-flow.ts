import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import pg from 'pg'
import { engineOptions, type ServedCrew } from '../../support/served-crew.ts'
import type { Moved } from './count-moved.ts'
import { cpuOf } from './cpu.ts'
import type { Transaction } from './no-op-store.ts'
import type { Nothing } from './no-op-worker.ts'

/** How many orders' worth of nothing, how many of them a minute; null: as fast as it goes. */
export type Pace = { readonly orders: number; readonly perMinute: number | null }

/** As many jobs as orders have, and as many transactions of one insert each, with as many bytes of the log. */
export type NoOpFlow = {
  /** Seconds of processor per order in all processes. */
  readonly spend: (moved: Moved, pace: Pace) => Promise<number>
  readonly close: () => Promise<void>
}

/** A program of this folder with the crew's engine, told where the servers are; what is said to it may hold bytes. */
export const program = (name: string, word: string): ChildProcess =>
  fork(join(process.cwd(), `.build/tests/bench/served/${name}.js`), [word], {
    serialization: 'advanced',
    env: { ...process.env, NODE_OPTIONS: engineOptions },
  })

const tables = `
  create table no_op (id bigint generated always as identity, bytes bytea);
  alter table no_op alter bytes set storage external`

/** The whole part of the next share: of shares of 7.4 the first five are 7, 7, 8, 7 and 8. */
const wholeOf = (each: number, at: number): number => Math.floor((at + 1) * each) - Math.floor(at * each)

/** A job's share of the transactions, and of the bytes of the log. */
const shareOf = ({ jobs, transactions, bytes }: Moved, job: number): Nothing => {
  const one: Transaction = { logged: Math.round(bytes / transactions) }
  return { transactions: Array.from({ length: wholeOf(transactions / jobs, job) }, () => one) }
}

export const msBetween = (perOrder: number, perMinute: number | null): number =>
  perMinute === null ? 0 : 60_000 / perMinute / perOrder

/** A worker of its own on the crew's PostgreSQL and Redis, which stays for all rounds. */
export const openNoOpFlow = async (crew: ServedCrew): Promise<NoOpFlow> => {
  const servers = { redis: crew.redis.url, postgres: crew.postgres.ownerUrl }
  const client = new pg.Client({ connectionString: servers.postgres })
  await client.connect()
  await client.query(tables)
  const worker = program('no-op-worker', JSON.stringify(servers))
  await once(worker, 'message')
  const pids = [worker.pid ?? 0, crew.postgres.pid(), crew.redis.pid()]
  return {
    spend: async (moved, { orders, perMinute }) => {
      const jobs = Array.from({ length: Math.round(orders * moved.jobs) }, (_, at) => shareOf(moved, at))
      const before = cpuOf(pids)
      worker.send({ jobs, everyMs: msBetween(moved.jobs, perMinute) })
      await once(worker, 'message')
      return (cpuOf(pids) - before) / orders
    },
    close: async () => {
      worker.disconnect()
      await once(worker, 'exit')
      await client.query('drop table no_op')
      await client.end()
    },
  }
}
