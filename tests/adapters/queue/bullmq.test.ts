import { describe, expect, it } from 'vitest'
import { openQueue } from '../../../src/adapters/queue/bullmq/bull-queue.ts'
import { checkRedis } from '../../../src/adapters/queue/bullmq/check-redis.ts'
import { startEmbedded } from '../../../src/adapters/store/embedded/start-embedded.ts'
import { queueContract } from '../../ports/queue.contract.ts'
import { temporaryFolder, unwrap } from '../../support/embedded.ts'
import { needs } from '../../support/needs.ts'
import { startRedis } from '../../support/redis-server.ts'

const alone = (url: string) => ({ url, sentinels: [], sentinelPassword: null })
const safe = ['--appendonly', 'yes', '--maxmemory-policy', 'noeviction']

queueContract('embedded PostgreSQL', async () => {
  const folder = temporaryFolder()
  const embedded = unwrap(await startEmbedded(`${folder.path}/data`))
  if (!('host' in embedded.service)) throw new Error('the embedded store listens on a socket')
  return {
    place: { kind: 'postgres', house: 'shop-1', address: embedded.service },
    close: async () => {
      await embedded.stop()
      folder.remove()
    },
  }
})

describe.runIf(needs('redis-server'))('with a redis-server', () => {
  queueContract('Redis', async () => {
    const redis = await startRedis(...safe)
    return { place: { kind: 'redis', house: 'shop-1', records: 'r1', ...alone(redis.url) }, close: redis.stop }
  })

  it('keeps apart what places with a house of the same id have queued', async () => {
    const redis = await startRedis(...safe)
    const open = (records: string) =>
      openQueue({ kind: 'redis', house: 'shop-1', records, ...alone(redis.url) }, { onTrouble: () => undefined })
    const [live, trial] = [await open('r1'), await open('r2')]
    await live.add({ step: 'quote', shopId: 'shop-1', orderId: 'o-1', revision: 1, attempt: 1 })
    const waiting = async (queue: typeof live): Promise<number> => (await queue.counts()).waiting
    expect([await waiting(live), await waiting(trial)]).toEqual([1, 0])
    await Promise.all([live.close(), trial.close()])
    await redis.stop()
  })

  it('accepts a Redis with an append-only file that evicts nothing', async () => {
    const redis = await startRedis(...safe)
    expect(await checkRedis(alone(redis.url))).toEqual({ ok: true, value: undefined })
    await redis.stop()
  })

  it('refuses a Redis that keeps no append-only file or evicts', async () => {
    const redis = await startRedis('--appendonly', 'no', '--maxmemory-policy', 'allkeys-lru')
    const checked = await checkRedis(alone(redis.url))
    expect(checked.ok ? [] : checked.problems.map(({ code }) => code)).toEqual(['queue-forgets', 'queue-evicts'])
    await redis.stop()
  })

  it('names the address of a Redis that does not answer', async () => {
    const redis = await startRedis(...safe)
    await redis.stop()
    const checked = await checkRedis(alone(redis.url))
    expect(checked).toMatchObject({
      ok: false,
      problems: [{ code: 'queue-unreachable', facts: { at: new URL(redis.url).host } }],
    })
  })
})
