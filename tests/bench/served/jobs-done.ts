import { Redis } from 'ioredis'

/** How many jobs the queue has finished since this was asked for; the queue's own list of events is read, when all is over. */
export const jobsSince = async (url: string): Promise<() => Promise<number>> => {
  const redis = new Redis(url)
  const [name] = await redis.keys('bull:steps-*:events')
  if (name === undefined) throw new Error('the queue has no events yet')
  const [[last] = ['0']] = await redis.xrevrange(name, '+', '-', 'COUNT', 1)
  return async () => {
    const events = await redis.xrange(name, `(${last}`, '+')
    redis.disconnect()
    return events.filter(([, fields]) => fields[fields.indexOf('event') + 1] === 'completed').length
  }
}
