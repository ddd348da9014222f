import { setTimeout as pause } from 'node:timers/promises'
import { afterEach, describe, expect, it } from 'vitest'
import { openBench } from '../../../src/adapters/queue/bullmq/bull-bench.ts'
import { openQueue } from '../../../src/adapters/queue/bullmq/bull-queue.ts'
import { connectRedis } from '../../../src/adapters/queue/bullmq/redis.ts'
import type { Step } from '../../../src/ports/queue.ts'
import { onceAMinute } from '../../../src/wiring/trouble.ts'
import { needs } from '../../support/needs.ts'
import { safeRedis, startRedis } from '../../support/redis-server.ts'
import { until } from '../../support/until.ts'

const after: (() => unknown)[] = []
afterEach(async () => {
  for (const undo of after.splice(0).toReversed()) await undo()
})

/** Opening makes three connections: the queue's, the workers', and the one that waits for steps. */
describe.runIf(needs('redis-server'))('a Redis that dies while the queue and its workers open', () => {
  it.each([0, 1, 2, 3])(
    'is waited for when %i of their connections stand, and the step runs',
    { timeout: 60_000 },
    async (many) => {
      const redis = await startRedis(...safeRedis)
      after.push(redis.stop)
      const place = {
        kind: 'redis',
        house: 'shop-1',
        records: 'r1',
        url: redis.url,
        sentinels: [],
        sentinelPassword: null,
      } as const
      const watcher = connectRedis(place, {})
      watcher.on('error', () => undefined)
      after.push(() => watcher.disconnect())
      const standing = async (): Promise<number> => Number(/connected_clients:(\d+)/.exec(await watcher.info('clients'))?.[1]) - 1
      await watcher.ping()
      if (many === 0) await redis.kill()
      const dying = async (): Promise<void> => {
        if (many > 0) {
          await until('they connect', async () => (await standing()) >= many)
          await redis.kill()
        }
        await pause(300)
        await redis.start()
      }
      const died = dying()
      const troubles: unknown[] = []
      const onTrouble = (cause: unknown): void => void troubles.push(cause)
      const queue = await openQueue(place, { onTrouble })
      after.push(queue.close)
      const ran: Step[] = []
      const run = async (step: Step): Promise<void> => void ran.push(step)
      const handlers = { quote: run, price: run, plan: run, ticket: run, post: run, remind: run }
      const bench = await openBench(place, { handlers, onGivenUp: async () => undefined, onTrouble })
      after.push(bench.close)
      await died
      const step: Step = { step: 'quote', shopId: 'shop-1', orderId: 'order-1', revision: 1, attempt: 1 }
      await queue.add(step)
      await until('the step runs', () => ran.length > 0, 30_000)
      expect(ran).toContainEqual(step)
      expect(troubles.length).toBeGreaterThan(0)
    },
  )
})

describe.runIf(needs('redis-server'))('a Redis that goes away for a while', () => {
  it('is told once, and once more when it answers again', { timeout: 60_000 }, async () => {
    const redis = await startRedis(...safeRedis)
    after.push(redis.stop)
    const place = {
      kind: 'redis',
      house: 'shop-1',
      records: 'records-1',
      url: redis.url,
      sentinels: [],
      sentinelPassword: null,
    } as const
    const heard: string[] = []
    const told: string[] = []
    const quiet = onceAMinute((cause) => void told.push(String(cause)), performance.now.bind(performance))
    const onTrouble = (cause: unknown): void => {
      heard.push(String(cause))
      quiet(cause)
    }
    const queue = await openQueue(place, { onTrouble })
    after.push(queue.close)
    const nothing = async (): Promise<void> => undefined
    const handlers = { quote: nothing, price: nothing, plan: nothing, ticket: nothing, post: nothing, remind: nothing }
    const bench = await openBench(place, { handlers, onGivenUp: nothing, onTrouble })
    after.push(bench.close)
    expect(told).toEqual([])
    await redis.kill()
    await until('every connection asked again and again', () => heard.length > 30, 30_000)
    expect(told.filter((line) => line.includes('ECONNREFUSED'))).toHaveLength(1)
    expect(told.some((line) => line.includes('answers again'))).toBe(false)
    await redis.start()
    await until('it is told that Redis is back', () => told.some((line) => line.includes('Redis answers again')), 30_000)
    await queue.counts()
    expect(told.length).toBeLessThan(6)
    expect(new Set(told).size).toBe(told.length)
  })
})
