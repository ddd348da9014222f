import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import pg from 'pg'
import { until } from './until.ts'

type Running = { readonly pid: number; readonly parent: number; readonly command: string }

/** Every process of the machine that runs. */
export const processes = (): readonly Running[] =>
  execFileSync('ps', ['-A', '-o', 'pid=,ppid=,stat=,args='], { encoding: 'utf8' })
    .split('\n')
    .map((line) => /^\s*(\d+)\s+(\d+)\s+(\S+)\s+(.*)$/.exec(line))
    .flatMap((found) => {
      const [, pid = '', parent = '', state = '', command = ''] = found ?? []
      return found === null || state.startsWith('Z') ? [] : [{ pid: Number(pid), parent: Number(parent), command }]
    })

/** The worker that a service started, as soon as there is one. */
export const workerOf = (servicePid: number): Promise<number> =>
  until(
    'the service has a worker',
    () => processes().find(({ parent, command }) => parent === servicePid && command.includes('workers/main.js'))?.pid,
  )

/** Every process that has something to do with these data: the server, its children, services and workers by their id. */
export const leftOf = (data: string, pids: readonly number[]): readonly Running[] =>
  processes().filter(({ pid, command }) => command.includes(data) || pids.includes(pid))

type Keys = { readonly host: string; readonly port: number; readonly ownerPassword: string; readonly servicePassword: string }

/** How the embedded store of these data is reached. */
export const keysOf = (data: string): Keys => JSON.parse(readFileSync(join(data, 'store.json'), 'utf8'))

export type Records = {
  readonly rows: (text: string, ...values: readonly unknown[]) => Promise<readonly Record<string, unknown>[]>
  readonly close: () => Promise<void>
}

const recordsOf = async (client: pg.Client): Promise<Records> => {
  client.on('error', () => undefined)
  await client.connect()
  const state: { last: Promise<unknown> } = { last: Promise.resolve() }
  return {
    // One question at a time: a client takes no second one while it is asked.
    rows: async (text, ...values) => {
      const ask = () => client.query(text, [...values])
      const asked = state.last.then(ask, ask)
      state.last = asked
      return (await asked).rows
    },
    close: () => client.end(),
  }
}

/** Looks into the records of an embedded store, as their owner. */
export const openRecords = (data: string): Promise<Records> => {
  const { host, port, ownerPassword } = keysOf(data)
  return recordsOf(new pg.Client({ host, port, user: 'owner', password: ownerPassword, database: 'platenpost' }))
}

/** Looks into the records of a served store. */
export const openRecordsAt = (url: string): Promise<Records> => recordsOf(new pg.Client({ connectionString: url }))

/** What happened to an order, in its order. */
export const eventsOf = async (records: Records, orderId: string): Promise<readonly string[]> => {
  const rows = await records.rows('select code from platenpost.event where order_id = $1 order by event_id', orderId)
  return rows.map(({ code }) => String(code))
}

export const untilEvent = (records: Records, orderId: string, code: string): Promise<true> =>
  until(`${orderId} is ${code}`, async () => (await eventsOf(records, orderId)).includes(code) || false, 60_000)

/** How many tickets of a team lie in the bench channel. */
export const postedOf = async (records: Records, team: string): Promise<number> => {
  const [row] = await records.rows(
    `select count(*)::int as number from platenpost.message where channel = 'shop:bench' and body::text like $1`,
    `%${team}%`,
  )
  return Number(row?.['number'])
}
