import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { loadavg } from 'node:os'
import { join } from 'node:path'
import { createPostgresBackend, Queue, Worker } from 'bullmq'
import { temporaryFolder } from '../support/embedded.ts'
import { type OpenService, startService } from '../support/service.ts'
import { arrive, giveAges, orderOf, signOff, wordsFor } from '../support/service-customer.ts'
import { eventsOf, keysOf, leftOf, openRecords, processes, type Records, untilEvent, workerOf } from '../support/service-watch.ts'
import { until } from '../support/until.ts'
import type { Bench, Figure } from './bench.ts'

const players = 12
const stages = ['signed-off', 'planned', 'ticketed', 'posted'] as const
const teams = [
  'Herons',
  'Kites',
  'Larks',
  'Martins',
  'Plovers',
  'Swifts',
  'Terns',
  'Wrens',
  'Grebes',
  'Petrels',
  'Rails',
  'Knots',
]

const seconds = (from: number): number => (performance.now() - from) / 1_000
const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0

const timed = async <T>(work: () => Promise<T>): Promise<{ readonly value: T; readonly took: number }> => {
  const from = performance.now()
  const value = await work()
  return { value, took: seconds(from) }
}

/** Megabytes of one process; pages it shares with others count by its share where the system tells (Linux), else in full. */
const megabytesOf = (pid: number): number => {
  try {
    const kilobytes = /^Pss:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8'))?.[1]
    return Number(kilobytes ?? 0) / 1_024
  } catch {
    return Number(execFileSync('ps', ['-o', 'rss=', '-p', String(pid)], { encoding: 'utf8' })) / 1_024
  }
}

const databaseOf = (data: string): readonly number[] => {
  const [server] = leftOf(data, []).filter(({ command }) => command.includes('postgres'))
  const children = processes().filter(({ parent }) => parent === server?.pid)
  return [server, ...children].flatMap((one) => (one === undefined ? [] : [one.pid]))
}

const memory = async (service: OpenService, data: string): Promise<readonly Figure[]> => {
  const parts = [
    { name: 'service', pids: [service.pid] },
    { name: 'worker', pids: [await workerOf(service.pid)] },
    { name: 'PostgreSQL, all processes', pids: databaseOf(data) },
  ].map(({ name, pids }) => ({ name, value: pids.reduce((sum, pid) => sum + megabytesOf(pid), 0) }))
  const all = { name: 'all', value: parts.reduce((sum, { value }) => sum + value, 0) }
  return [...parts, all].map(({ name, value }) => ({ name: `memory when idle: ${name}`, value, unit: 'MB' }))
}

type Way = { readonly [Stage in (typeof stages)[number]]: number }

/** One order of twelve from the press on the sign-off to each of its stages, in seconds; nothing else is going on. */
const wayOf = async (address: string, records: Records, team: string): Promise<Way> => {
  const customer = await arrive(address, wordsFor(`Riverbend ${team}`, players))
  const id = await orderOf(records, customer)
  await giveAges(customer)
  await untilEvent(records, id, 'quoted')
  const from = performance.now()
  const seen = new Map<string, number>()
  const look = async (): Promise<boolean> => {
    for (const code of await eventsOf(records, id)) if (!seen.has(code)) seen.set(code, seconds(from))
    return seen.has('posted')
  }
  await Promise.all([signOff(customer), until(`the ticket of ${team} is posted`, look, 60_000)])
  const at = (stage: string): number => seen.get(stage) ?? 0
  return { 'signed-off': at('signed-off'), planned: at('planned'), ticketed: at('ticketed'), posted: at('posted') }
}

/** The floor: three empty jobs one after the other through the same queue on the same server. */
const emptyFlow = async (data: string, rounds: number): Promise<number> => {
  const { host, port, servicePassword } = keysOf(data)
  const connection = { host, port, user: 'service', password: servicePassword, database: 'platenpost', migrate: true }
  const queue = new Queue('floor', { connection }, createPostgresBackend)
  const done = { resolve: (): void => undefined }
  const run = async ({ name }: { readonly name: string }): Promise<void> => {
    if (name === '3') done.resolve()
    else await queue.add(String(Number(name) + 1), {})
  }
  const worker = new Worker('floor', run, { connection }, createPostgresBackend)
  await worker.waitUntilReady()
  const times: number[] = []
  for (let round = 0; round <= rounds; round += 1) {
    const from = performance.now()
    const over = new Promise<void>((resolve) => {
      done.resolve = resolve
    })
    await queue.add('1', {})
    await over
    times.push(seconds(from))
  }
  await worker.close()
  await queue.close()
  return median(times.slice(1))
}

const figuresOf = (ways: readonly Way[], floor: number): readonly Figure[] => {
  const at = (stage: keyof Way): number => median(ways.map((way) => way[stage]))
  return [
    { name: `sign-off to ticket in the channel, order of ${players}`, value: at('posted'), unit: 's', most: 3 },
    { name: '  of which until it is sold', value: at('signed-off'), unit: 's' },
    { name: '  of which planning', value: at('planned') - at('signed-off'), unit: 's' },
    { name: '  of which printing', value: at('ticketed') - at('planned'), unit: 's' },
    { name: '  of which posting', value: at('posted') - at('ticketed'), unit: 's' },
    { name: 'slowest of them', value: Math.max(...ways.map((way) => way.posted)), unit: 's' },
    { name: 'floor: three empty jobs in a row', value: floor, unit: 's' },
  ]
}

/** The service as people have it: real processes, an empty folder, one customer at a time. */
export const bench: Bench = async ({ quick }) => {
  const folder = temporaryFolder()
  const data = join(folder.path, 'data')
  const cold = await timed(() => startService(data))
  await cold.value.signal('SIGINT')
  const again = await timed(() => startService(data))
  const service = again.value
  const records = await openRecords(data)
  const ways: Way[] = []
  for (const team of teams.slice(0, quick ? 3 : teams.length)) ways.push(await wayOf(service.address, records, team))
  const idle = await memory(service, data)
  const floor = await emptyFlow(data, quick ? 5 : 20)
  await records.close()
  const stop = await timed(() => service.signal('SIGINT'))
  folder.remove()
  return [
    { name: 'start on an empty folder', value: cold.took, unit: 's', most: 10 },
    { name: 'start on its own data', value: again.took, unit: 's' },
    ...figuresOf(ways, floor),
    ...idle,
    { name: 'stop in order', value: stop.took, unit: 's' },
    { name: 'load of the machine meanwhile', value: loadavg()[0] ?? 0, unit: 'processes' },
  ]
}
