import { Redis } from 'ioredis'
import { ok, refuse } from '../../../domain/result/result.ts'
import type { Opened } from '../../../ports/opening.ts'

const shown = (url: string): string => (URL.canParse(url) ? new URL(url).host : '(an address that cannot be read)')

const valueIn = (info: string, name: string): string => new RegExp(`^${name}:(.*?)\\r?$`, 'm').exec(info)?.[1] ?? ''

const ask = async (url: string): Promise<string> => {
  const redis = new Redis(url, { lazyConnect: true, retryStrategy: () => null, maxRetriesPerRequest: 0, connectTimeout: 5_000 })
  const said: { cause: unknown } = { cause: null }
  redis.on('error', (cause) => {
    said.cause = cause
  })
  try {
    await redis.connect()
    return await redis.info('everything')
  } catch (cause) {
    // The listener hears why; the command only that the connection is closed.
    throw said.cause ?? cause
  } finally {
    redis.disconnect()
  }
}

/** Whether this Redis keeps what it is given: an append-only file, and nothing thrown away when memory is short. */
export const checkRedis = async (url: string): Opened<void> => {
  const at = shown(url)
  try {
    const info = await ask(url)
    const policy = valueIn(info, 'maxmemory_policy')
    const problems = []
    if (valueIn(info, 'aof_enabled') !== '1') {
      problems.push({ code: 'queue-forgets', at: '', severity: 'stop', facts: { at, setting: 'appendonly yes' } } as const)
    }
    if (policy !== 'noeviction') {
      problems.push({ code: 'queue-evicts', at: '', severity: 'stop', facts: { at, policy } } as const)
    }
    return problems.length > 0 ? refuse(...problems) : ok(undefined)
  } catch (cause) {
    const said = cause instanceof Error ? cause.message : String(cause)
    return refuse({ code: 'queue-unreachable', at: '', severity: 'stop', facts: { at, said } })
  }
}
