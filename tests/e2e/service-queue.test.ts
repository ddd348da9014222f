import { statSync } from 'node:fs'
import { join } from 'node:path'
import { createPostgresBackend, Queue } from 'bullmq'
import { Redis } from 'ioredis'
import { afterAll, afterEach, describe, expect, it } from 'vitest'
import { type Embedded, startEmbedded } from '../../src/adapters/store/embedded/start-embedded.ts'
import { temporaryFolder, unwrap } from '../support/embedded.ts'
import { needs } from '../support/needs.ts'
import { startRedis } from '../support/redis-server.ts'
import { freePort, runProgram, type Service, startService } from '../support/service.ts'
import { arrive, type Customer, giveAges, orderOf, signOff, wordsFor } from '../support/service-customer.ts'
import {
  eventsOf,
  keysOf,
  openRecords,
  postedOf,
  processes,
  type Records,
  untilEvent,
  workerOf,
} from '../support/service-watch.ts'

/** Steps of an order commit these; the last one leaves nothing due. */
const boundaries = ['asked', 'quoted', 'signed-off', 'planned', 'ticketed', 'posted'] as const
const quick = { STEP_LOCK_SECONDS: '1', STEP_OVERDUE_SECONDS: '1' }

const folder = temporaryFolder()
afterAll(() => folder.remove())
const after: (() => Promise<unknown>)[] = []
afterEach(async () => {
  for (const undo of after.splice(0).toReversed()) await undo()
})

const bring = async (customer: Customer): Promise<void> => {
  await giveAges(customer)
  await signOff(customer)
}

/** Brings an order from words to its ticket and does something each time one of its steps is over. */
const orderWith = async (
  at: { readonly address: string; readonly records: Records; readonly team: string },
  atEach: (boundary: string) => Promise<void>,
): Promise<readonly string[]> => {
  const customer = await arrive(at.address, wordsFor(at.team, 3))
  const id = await orderOf(at.records, customer)
  const follow = async (): Promise<void> => {
    for (const boundary of boundaries) {
      await untilEvent(at.records, id, boundary)
      await atEach(boundary)
    }
  }
  await Promise.all([follow(), bring(customer)])
  expect(await postedOf(at.records, at.team)).toBe(1)
  return eventsOf(at.records, id)
}

describe('a service whose whole queue is lost', () => {
  it('while it runs, at every step, brings the order to its ticket, once', { timeout: 120_000 }, async () => {
    const data = join(folder.path, 'running')
    const service = await startService(data, quick)
    after.push(() => service.signal('SIGINT'))
    const records = await openRecords(data)
    after.push(records.close)
    const { host, port, servicePassword } = keysOf(data)
    const connection = { host, port, user: 'service', password: servicePassword, database: 'platenpost', migrate: true }
    const queue = new Queue('steps-mesa-street', { connection }, createPostgresBackend)
    after.push(() => queue.close())
    const place = { address: service.address, records, team: 'Harbor Point Herons' }
    expect(await orderWith(place, () => queue.obliterate({ force: true }))).toEqual(boundaries)
  })

  it('while everything is down, at every step, brings the order to its ticket, once', { timeout: 120_000 }, async () => {
    const data = join(folder.path, 'down')
    const settings = { ...quick, COUNTER_PORT: await freePort() }
    const held = { service: await startService(data, settings) }
    after.push(() => held.service.signal('SIGINT'))
    const records = await openRecords(data)
    after.push(records.close)
    const loseAll = async (): Promise<void> => {
      process.kill(await workerOf(held.service.pid), 'SIGKILL')
      await held.service.signal('SIGKILL')
      await records.rows('drop schema if exists bullmq cascade')
      held.service = await startService(data, settings)
    }
    const place = { address: held.service.address, records, team: 'Cedar Flats Kites' }
    expect(await orderWith(place, loseAll)).toEqual(boundaries)
  })
})

/** The connection string of an embedded server's owner, as people write one for DATABASE_URL. */
const urlOf = ({ owner }: Embedded): string => {
  if (!('host' in owner)) throw new Error('an embedded server has a host')
  const { host, user, password, database } = owner
  return `postgres://${user}:${password}@/${database}?host=${encodeURIComponent(host)}`
}

describe.runIf(needs('redis-server'))('the served way: PostgreSQL and Redis by address, workers apart', () => {
  const worker = async (settings: { readonly [name: string]: string }): Promise<Service> => {
    const started = runProgram('workers/main.js', settings)
    await started.says(/worker ready/)
    return started
  }

  it('brings the order to its ticket, once, with workers killed and Redis emptied', { timeout: 120_000 }, async () => {
    const embedded = unwrap(await startEmbedded(join(folder.path, 'server')))
    after.push(embedded.stop)
    const redis = await startRedis('--appendonly', 'yes', '--maxmemory-policy', 'noeviction')
    after.push(redis.stop)
    const pulse = join(folder.path, 'pulse')
    const served = { ...quick, DATABASE_URL: urlOf(embedded), REDIS_URL: redis.url, DATA: join(folder.path, 'keys') }
    const service = await startService(served.DATA, { ...served, WORKERS: 'none' })
    after.push(() => service.signal('SIGTERM'))
    const workers = await Promise.all([worker({ ...served, WORKER_PULSE: pulse }), worker(served)])
    after.push(() => Promise.all(workers.map((one) => one.signal('SIGTERM'))))
    const records = await openRecords(join(folder.path, 'server'))
    after.push(records.close)
    const eraser = new Redis(redis.url)
    after.push(async () => eraser.disconnect())

    let turn = 0
    const disturb = async (boundary: string): Promise<void> => {
      if (boundary === 'posted') return
      if (boundary === 'asked' || boundary === 'planned') await eraser.flushall()
      const index = turn % workers.length
      turn += 1
      await workers[index]?.signal('SIGKILL')
      workers[index] = await worker(index === 0 ? { ...served, WORKER_PULSE: pulse } : served)
    }
    const place = { address: service.address, records, team: 'Juniper Hill Larks' }
    expect(await orderWith(place, disturb)).toEqual(boundaries)
    expect(Date.now() - statSync(pulse).mtimeMs).toBeLessThan(60_000)
    expect(processes().filter(({ parent }) => parent === service.pid)).toEqual([])
  })
})
