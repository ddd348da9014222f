import { ok, refuse } from '../../../domain/result/result.ts'
import type { Opened } from '../../../ports/opening.ts'
import { connectRedis, type RedisPlace, shownRedis } from './redis.ts'

const patienceMs = 5_000

const valueIn = (info: string, name: string): string => new RegExp(`^${name}:(.*?)\\r?$`, 'm').exec(info)?.[1] ?? ''

const ask = async (place: RedisPlace): Promise<string> => {
  const once = { retryStrategy: () => null, sentinelRetryStrategy: () => null, maxRetriesPerRequest: 0 }
  const redis = connectRedis(place, { ...once, lazyConnect: true, connectTimeout: patienceMs })
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
export const checkRedis = async (place: RedisPlace): Opened<void> => {
  const at = shownRedis(place)
  try {
    const info = await ask(place)
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
    // It was reached and takes the password, the user or the question not.
    const code = /^(?:WRONGPASS|NOAUTH|NOPERM)\b/.test(said) ? 'queue-refused' : 'queue-unreachable'
    return refuse({ code, at: '', severity: 'stop', facts: { at, said } })
  }
}
