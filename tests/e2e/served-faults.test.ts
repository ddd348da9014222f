import { execFileSync } from 'node:child_process'
import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { Queue, UnrecoverableError, Worker } from 'bullmq'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { root, temporaryFolder } from '../support/embedded.ts'
import { followOrders, makeOrders, nothingWrong, type Progress, wrongsOf } from '../support/many-orders.ts'
import { needs } from '../support/needs.ts'
import { ask } from '../support/page-request.ts'
import { startProxy, type Way } from '../support/proxy.ts'
import { type ServedCrew, startServedCrew } from '../support/served-crew.ts'
import { runProgram, startService } from '../support/service.ts'
import { openRecords } from '../support/service-watch.ts'
import { until } from '../support/until.ts'

const house = 'mesa-street'
const after: (() => unknown)[] = []
afterEach(async () => {
  for (const undo of after.splice(0).toReversed()) await undo()
})

const isLong = process.env['LONG'] !== undefined

describe.runIf(needs('redis-server'))('a served shop', () => {
  const folder = temporaryFolder()
  const clockFile = join(folder.path, 'clock')
  let crew: ServedCrew
  let progress: Progress
  let ways: { readonly postgres: Way; readonly redis: Way }
  const state = { next: 0 }

  beforeAll(async () => {
    writeFileSync(clockFile, '0')
    const shifted = `--import=${join(root, 'tests/support/shifted-clock.mjs')}`
    crew = await startServedCrew(2, { NODE_OPTIONS: shifted, SHIFTED_CLOCK: clockFile })
    progress = followOrders(crew.records)
    ways = { postgres: await startProxy(crew.postgres.port), redis: await startProxy(crew.redis.port) }
  }, 180_000)
  afterAll(async () => {
    await progress.close()
    await Promise.all([ways.postgres.close(), ways.redis.close()])
    await crew.close()
    folder.remove()
  })

  /** So many more orders from the first word to the ticket, and everything that must hold of them. */
  const bring = async (many: number): Promise<void> => {
    const first = state.next
    state.next += many
    const front = { address: () => crew.address, records: crew.records }
    const made = await makeOrders({ front, progress, many, atOnce: 2, first })
    const wrongs = await wrongsOf(crew.records(), made)
    const shelf = 'items whose shelf is not what was there less what is reserved'
    // The shelf is the shop's, not these orders' alone; the kills' suite looks at it.
    expect({ ...wrongs, [shelf]: 0 }).toEqual({ ...nothingWrong(many, wrongs), [shelf]: 0 })
  }

  const queueOf = async (): Promise<string> => {
    const [row] = await crew.records().rows('select id from platenpost.place')
    return `steps-${house}-${row?.['id']}`
  }
  const toRedis = () => ({ connection: { host: '127.0.0.1', port: crew.redis.port, maxRetriesPerRequest: null } })

  it('goes on when its queue holds junk', { timeout: 180_000 }, async () => {
    const queue = new Queue(await queueOf(), toRedis())
    after.push(() => queue.close())
    for (const junk of [
      null,
      'text',
      { step: 'quote' },
      { step: 'quote', shopId: house, orderId: '../../x', revision: 1, attempt: 1 },
      { step: 'ticket', shopId: house, orderId: 'nobody', revision: 7, attempt: 1 },
    ])
      await queue.add('quote', junk, { attempts: 1 })
    await bring(1)
    await until('the junk is put aside', async () => (await queue.getFailedCount()) >= 4 || undefined, 60_000)
  })

  it('makes its tickets though a worker of an older version takes steps it does not know', { timeout: 300_000 }, async () => {
    const taken: string[] = []
    const older = new Worker(
      await queueOf(),
      async ({ name }) => {
        taken.push(name)
        throw new UnrecoverableError('this version knows no such step')
      },
      { ...toRedis(), concurrency: 2 },
    )
    older.on('error', () => undefined)
    const upgrade = until('the older one had its share', () => taken.length >= 3 || undefined, 120_000).then(() => older.close())
    await Promise.all([bring(3), upgrade])
    expect(taken.length).toBeGreaterThanOrEqual(3)
  })

  it('keeps its order of things when the clock jumps ahead and back', { timeout: 180_000 }, async () => {
    const jumps = [3_600_000, -3_600_000, 26 * 3_600_000, 0]
    const jump = async (): Promise<void> => {
      for (const off of jumps) {
        writeFileSync(clockFile, String(off))
        await pause(1_500)
      }
    }
    await Promise.all([bring(2), jump()])
    expect((await ask(crew.address, '/ready')).text).toBe('ready')
  })

  // The long form alone: on a loaded machine a stalled way can outlast what a step waits for.
  it.runIf(isLong)('serves over slow, stalled and cut ways to PostgreSQL and Redis', { timeout: 300_000 }, async () => {
    const through = {
      ...crew.settings,
      DATABASE_URL: crew.postgres.serviceUrl.replace(`:${crew.postgres.port}/`, `:${ways.postgres.port}/`),
      REDIS_URL: `redis://127.0.0.1:${ways.redis.port}`,
    }
    const far = runProgram('workers/main.js', through)
    after.push(() => far.signal('SIGTERM'))
    await far.says(/worker ready/)
    const rough = async (): Promise<void> => {
      for (const way of [ways.postgres, ways.redis]) {
        way.slow(60)
        await pause(1_500)
        way.stall()
        await pause(2_000)
        way.heal()
        await pause(500)
        way.cut()
        await pause(1_000)
        way.heal()
      }
    }
    await Promise.all([bring(3), rough()])
    expect(far.process.exitCode).toBeNull()
    await bring(1)
  })
})

/** A disk of its own for the records; only who may mount has one. */
const mounted = (path: string, size: string): boolean => {
  mkdirSync(path)
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${size},mode=0711`, 'tmpfs', path], { stdio: 'ignore' })
    return true
  } catch {
    return false
  }
}

describe('a shop whose disk is full', () => {
  it('says so, loses nothing, and goes on when there is room', { timeout: 300_000 }, async () => {
    const folder = temporaryFolder()
    const disk = join(folder.path, 'disk')
    if (!mounted(disk, '256m')) {
      process.stderr.write('\n  LEFT OUT: a disk of its own needs the right to mount.\n')
      folder.remove()
      return
    }
    const data = join(disk, 'data')
    const service = await startService(data, { STEP_OVERDUE_SECONDS: '1' })
    const records = await openRecords(data)
    const progress = followOrders(() => records)
    const front = { address: () => service.address, records: () => records }
    try {
      await makeOrders({ front, progress, many: 1, atOnce: 1, first: 9_000 })
      try {
        execFileSync('dd', ['if=/dev/zero', `of=${join(disk, 'ballast')}`, 'bs=1M'], { stdio: 'ignore' })
      } catch {
        // It ends when the disk is full.
      }
      const late = makeOrders({ front, progress, many: 2, atOnce: 2, first: 9_001 })
      await pause(4_000)
      rmSync(join(disk, 'ballast'))
      const made = await late
      const wrongs = await wrongsOf(records, made)
      const shelf = 'items whose shelf is not what was there less what is reserved'
      expect({ ...wrongs, [shelf]: 0 }).toEqual({ ...nothingWrong(2, wrongs), [shelf]: 0 })
    } finally {
      await progress.close()
      await records.close()
      await service.signal('SIGINT')
      await service.ended
      execFileSync('umount', ['-l', disk])
      folder.remove()
    }
  })
})
