import { spawn, spawnSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { openQueue } from '../../../src/adapters/queue/bullmq/bull-queue.ts'
import { checkRedis } from '../../../src/adapters/queue/bullmq/check-redis.ts'
import { connectRedis } from '../../../src/adapters/queue/bullmq/redis.ts'
import type { Step } from '../../../src/ports/queue.ts'
import { makeCertificates } from '../../support/certificates.ts'
import { root, temporaryFolder } from '../../support/embedded.ts'
import { needs } from '../../support/needs.ts'
import { safeRedis, startRedis, startTlsRedis } from '../../support/redis-server.ts'
import { freePort } from '../../support/service.ts'
import { until } from '../../support/until.ts'

const after: (() => unknown)[] = []
afterEach(async () => {
  for (const undo of after.splice(0).toReversed()) await undo()
})

/** Sentinel is redis-server with a file that it rewrites itself. */
const startSentinel = async (leader: number) => {
  const folder = temporaryFolder()
  const file = join(folder.path, 'sentinel.conf')
  const watch = [`sentinel monitor steps 127.0.0.1 ${leader} 1`, 'sentinel down-after-milliseconds steps 500']
  writeFileSync(file, [...watch, 'sentinel failover-timeout steps 2000'].join('\n'))
  const port = await freePort()
  const child = spawn('redis-server', [file, '--sentinel', '--port', port, '--bind', '127.0.0.1', '--dir', folder.path], {
    stdio: 'ignore',
  })
  after.push(() => {
    child.kill('SIGKILL')
    folder.remove()
  })
  return { host: '127.0.0.1', port: Number(port) }
}

const step = (orderId: string): Step => ({ step: 'quote', shopId: 'shop-1', orderId, revision: 1, attempt: 1 })

describe.runIf(needs('redis-server'))('a Redis behind sentinels', () => {
  it('is found by its name, and the queue follows when another one leads', { timeout: 60_000 }, async () => {
    const leader = await startRedis(...safeRedis)
    after.push(leader.stop)
    const follower = await startRedis(...safeRedis, '--replicaof', '127.0.0.1', String(leader.port))
    after.push(follower.stop)
    const place = { url: 'redis://steps', sentinels: [await startSentinel(leader.port)], sentinelPassword: null }
    await until('the sentinel answers', async () => (await checkRedis(place)).ok || undefined, 30_000)
    const troubles: unknown[] = []
    const queue = await openQueue(
      { kind: 'redis', house: 'shop-1', records: 'r1', ...place },
      { onTrouble: (cause) => troubles.push(cause) },
    )
    after.push(queue.close)
    await queue.add(step('before'))
    const watcher = connectRedis({ ...place, url: follower.url, sentinels: [] }, {})
    watcher.on('error', () => undefined)
    after.push(() => watcher.disconnect())
    await until('the follower has it', async () => (await watcher.dbsize()) > 0 || undefined)
    await until(
      'the sentinel knows the follower',
      async () => (await watcher.info('replication')).includes('master_link_status:up') || undefined,
    )
    await leader.kill()
    await until(
      'the follower leads',
      async () => (await watcher.info('replication')).includes('role:master') || undefined,
      45_000,
    )
    await queue.add(step('after'))
    expect([await queue.isLive(step('before')), await queue.isLive(step('after'))]).toEqual([true, true])
  })

  it('that do not answer are named, and no password is', async () => {
    const sentinels = [{ host: '127.0.0.1', port: Number(await freePort()) }]
    const checked = await checkRedis({ url: 'redis://:word-of-the-night@steps', sentinels, sentinelPassword: null })
    expect(checked).toMatchObject({ ok: false, problems: [{ code: 'queue-unreachable' }] })
    const said = JSON.stringify(checked)
    expect(said).toContain(`steps (through 127.0.0.1:${sentinels[0]?.port})`)
    expect(said).not.toContain('word-of-the-night')
  })
})

/** Node reads the file of one's own authority when it starts, so the question is asked by a process of its own. */
const checkApart = (url: string, environment: { readonly [name: string]: string }): string => {
  const script = `
    const { checkRedis } = await import(${JSON.stringify(`file://${join(root, '.build/src/adapters/queue/bullmq/check-redis.js')}`)})
    console.log(JSON.stringify(await checkRedis({ url: ${JSON.stringify(url)}, sentinels: [], sentinelPassword: null })))`
  const env = { PATH: process.env['PATH'] ?? '', ...environment }
  return spawnSync(process.execPath, ['--input-type=module', '--eval', script], { env, encoding: 'utf8' }).stdout
}

describe.runIf(needs('redis-server') && needs('openssl'))('a Redis over TLS', () => {
  it('is spoken to when its authority is known, and refused when it is not', async () => {
    const tls = await makeCertificates()
    after.push(tls.remove)
    const redis = await startTlsRedis(tls, ...safeRedis)
    after.push(redis.stop)
    expect(JSON.parse(checkApart(redis.url, { NODE_EXTRA_CA_CERTS: tls.authority }))).toEqual({ ok: true })
    const stranger = checkApart(redis.url, {})
    expect(stranger).toContain('queue-unreachable')
    expect(stranger).toMatch(/self-signed certificate|unable to verify/)
    expect(checkApart(redis.url.replace('rediss', 'redis'), {})).toContain('queue-unreachable')
  })
})
