import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import pg from 'pg'
import { ask } from '../../support/page-request.ts'
import type { ServedCrew } from '../../support/served-crew.ts'
import type { Moved } from './count-moved.ts'
import { cpuOf } from './cpu.ts'
import type { Answers } from './no-op-front.ts'
import type { Asked, Nothing } from './no-op-worker.ts'
import { type Requests, requestsDuring } from './requests.ts'
import { bareShare, fullShare } from './shares.ts'

/** How many orders' worth of nothing, how many of them a minute; null: as fast as it goes. */
export type Pace = { readonly orders: number; readonly perMinute: number | null }

/** A flow that only moves what orders move. Both answer seconds of processor per order in all processes. */
export type NoOpFlow = {
  /** As many jobs, and as many transactions of one insert each, with as many bytes of the log. */
  readonly bare: (moved: Moved, pace: Pace) => Promise<number>
  /** As many requests too, and the transactions with as many statements, writes, and bytes up and down as an order's have. */
  readonly full: (moved: Moved, pace: Pace) => Promise<number>
  readonly close: () => Promise<void>
}

const program = (name: string, word: string): ChildProcess =>
  fork(join(process.cwd(), `.build/tests/bench/served/${name}.js`), [word])

const tables = `
  create table no_op (id bigint generated always as identity, bytes bytea);
  alter table no_op alter bytes set storage external;
  create table no_op_page (id int primary key, body text);
  alter table no_op_page alter body set storage external;
  insert into no_op_page values (1, repeat('x', 1000000))`

const shares = (count: number, share: (at: number) => Nothing): readonly Nothing[] =>
  Array.from({ length: Math.round(count) }, (_, at) => share(at))

const msBetween = (perOrder: number, perMinute: number | null): number => (perMinute === null ? 0 : 60_000 / perMinute / perOrder)

/** Eight customers at a time, as orders have them, each request over a connection of its own. */
const atOnce = 8

type Asking = { readonly many: number; readonly bytes: number; readonly everyMs: number }

const askAll = async (address: string, { many, bytes, everyMs }: Asking): Promise<void> => {
  const state = { next: 0, from: performance.now() }
  const body = Buffer.alloc(bytes, 32)
  const customer = async (): Promise<void> => {
    while (state.next < many) {
      const at = state.next
      state.next += 1
      await pause(Math.max(0, state.from + at * everyMs - performance.now()))
      await ask(address, '/', { method: 'POST', body })
    }
  }
  await Promise.all(Array.from({ length: atOnce }, customer))
}

/** The bodies that make a request and its answer as long as a customer's, with their heads. */
const bodiesOf = async (address: string, { many, bytesUp, bytesDown }: Requests): Promise<Requests> => {
  const heads = await requestsDuring(() => ask(address, '/', { method: 'POST' }))
  const body = (whole: number, head: number): number => Math.max(0, Math.round(whole / many) - head)
  return { many, bytesUp: body(bytesUp, heads.bytesUp), bytesDown: body(bytesDown, heads.bytesDown) }
}

/** A worker and a front of their own on the crew's PostgreSQL and Redis, which stay for all rounds. */
export const openNoOpFlow = async (crew: ServedCrew): Promise<NoOpFlow> => {
  const [redis, postgres] = [crew.redis.url, crew.postgres.ownerUrl]
  const client = new pg.Client({ connectionString: postgres })
  await client.connect()
  await client.query(tables)
  const [worker, front] = [program('no-op-worker', JSON.stringify({ redis, postgres })), program('no-op-front', postgres)]
  const [, [port]] = await Promise.all([once(worker, 'message'), once(front, 'message')])
  const address = `http://127.0.0.1:${port}`
  const pids = [worker.pid ?? 0, front.pid ?? 0, crew.postgres.pid(), crew.redis.pid()]
  const told = async (child: ChildProcess, what: Asked | Answers): Promise<void> => {
    child.send(what)
    await once(child, 'message')
  }
  const spent = async (pace: Pace, work: () => Promise<unknown>): Promise<number> => {
    const before = cpuOf(pids)
    await work()
    return (cpuOf(pids) - before) / pace.orders
  }
  return {
    bare: (moved, pace) =>
      spent(pace, () =>
        told(worker, {
          jobs: shares(pace.orders * moved.jobs, (at) => bareShare(moved, at)),
          everyMs: msBetween(moved.jobs, pace.perMinute),
        }),
      ),
    full: async (moved, pace) => {
      const { orders, perMinute } = pace
      const { many, bytesUp, bytesDown } = await bodiesOf(address, moved.requests)
      const all = shares(orders * (moved.jobs + many), (at) => fullShare(moved, at))
      const asked = Math.round(orders * many)
      await told(front, { shares: all.slice(0, asked), bytes: bytesDown })
      return spent(pace, () =>
        Promise.all([
          askAll(address, { many: asked, bytes: bytesUp, everyMs: msBetween(many, perMinute) }),
          told(worker, { jobs: all.slice(asked), everyMs: msBetween(moved.jobs, perMinute) }),
        ]),
      )
    },
    close: async () => {
      worker.disconnect()
      front.disconnect()
      await Promise.all([once(worker, 'exit'), once(front, 'exit')])
      await client.query('drop table no_op, no_op_page')
      await client.end()
    },
  }
}
