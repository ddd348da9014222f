import { Redis } from 'ioredis'

/** How many jobs the queue has finished since this was asked for; the queue's own list of events is read, when all is over. */
export const jobsSince = async (url: string): Promise<() => Promise<number>> => {
  const redis = new Redis(url)
  const events = async (): Promise<string> => (await redis.keys('bull:steps-*:events'))[0] ?? 'no events yet'
  const [[last] = ['0']] = await redis.xrevrange(await events(), '+', '-', 'COUNT', 1)
  return async () => {
    const happened = await redis.xrange(await events(), `(${last}`, '+')
    redis.disconnect()
    return happened.filter(([, fields]) => fields[fields.indexOf('event') + 1] === 'completed').length
  }
}
