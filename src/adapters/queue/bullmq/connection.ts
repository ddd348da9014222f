import { createPostgresBackend, type JobsOptions, Queue, Worker, type WorkerOptions } from 'bullmq'
import type { Redis } from 'ioredis'
import { connectRedis, type RedisPlace } from './redis.ts'

/** Where the queue of one house lives, whose workers serve one shop or several: on the store's PostgreSQL, or on Redis. */
export type QueuePlace = { readonly house: string } & (
  | { readonly kind: 'postgres'; readonly address: PostgresAddress }
  | (RedisPlace & { readonly kind: 'redis'; readonly records: string })
)

type PostgresAddress =
  | { readonly host: string; readonly port: number; readonly user: string; readonly password: string; readonly database: string }
  | { readonly connectionString: string }

/**
 * Each house has a queue of its own: its workers know its records, and never see another house's steps. On Redis it is told apart by the
 * records as well: a trial or a restored place beside the live one has a house of the same id.
 */
export const queueName = (place: QueuePlace): string =>
  place.kind === 'redis' ? `steps-${place.house}-${place.records}` : `steps-${place.house}`

/** What went wrong beside any one step: a lost connection, a lock that could not be renewed. */
export type OnTrouble = (cause: unknown) => void

const postgres = (address: PostgresAddress) => ({ ...address, max: 3, migrate: true, keepAlive: true })

/** Commands wait for a connection that is away: a step is late then, never lost. */
const openRedis = (place: RedisPlace, onTrouble: OnTrouble): Redis => {
  const redis = connectRedis(place, { maxRetriesPerRequest: null })
  const state = { away: false }
  redis.on('error', (cause) => {
    state.away = true
    onTrouble(cause)
  })
  redis.on('ready', () => {
    if (state.away) onTrouble(new Error('Redis answers again'))
    state.away = false
  })
  return redis
}

type Opened<T> = { readonly it: T; readonly close: () => Promise<void> }

const openedOn = <T extends { close: () => Promise<void> }>(it: T, redis: Redis): Opened<T> => ({
  it,
  close: async () => {
    await it.close()
    redis.disconnect()
  },
})

type BullQueue = Pick<Queue<unknown>, 'add' | 'getJob' | 'getJobCounts' | 'waitUntilReady'>

export const openBullQueue = (place: QueuePlace, defaultJobOptions: JobsOptions, onTrouble: OnTrouble): Opened<BullQueue> => {
  if (place.kind === 'postgres') {
    const options = { connection: postgres(place.address), defaultJobOptions }
    const queue = new Queue(queueName(place), options, createPostgresBackend)
    queue.on('error', onTrouble)
    return { it: queue, close: () => queue.close() }
  }
  const redis = openRedis(place, onTrouble)
  const queue = new Queue<unknown>(queueName(place), { connection: redis, defaultJobOptions })
  queue.on('error', onTrouble)
  return openedOn(queue, redis)
}

/** What is seen of a job here, whichever backend runs it. */
export type RunningJob = { readonly id?: string | undefined; readonly data: unknown; readonly finishedOn?: number | undefined }
type Work = {
  readonly run: (job: RunningJob) => Promise<void>
  readonly failed: (job: RunningJob, cause: Error) => void
  readonly options: Omit<WorkerOptions, 'connection'>
}

export const openBullWorker = (place: QueuePlace, { run, failed, options }: Work, onTrouble: OnTrouble): Opened<BullWorker> => {
  if (place.kind === 'postgres') {
    const connection = postgres(place.address)
    const worker = new Worker(queueName(place), run, { ...options, connection }, createPostgresBackend)
    worker.on('error', onTrouble)
    worker.on('failed', (job, cause) => job !== undefined && failed(job, cause))
    return { it: worker, close: () => worker.close() }
  }
  const redis = openRedis(place, onTrouble)
  const worker = new Worker<unknown, void>(queueName(place), run, { ...options, connection: redis })
  worker.on('error', onTrouble)
  worker.on('failed', (job, cause) => job !== undefined && failed(job, cause))
  return openedOn(worker, redis)
}
type BullWorker = Pick<Worker, 'waitUntilReady'>
