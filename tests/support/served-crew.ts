import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { temporaryFolder } from './embedded.ts'
import { type RedisServer, safeRedis, startRedis } from './redis-server.ts'
import { type ServedPostgres, startServedPostgres } from './served-postgres.ts'
import { freePort, type OpenService, runProgram, type Service, type Settings, startService } from './service.ts'
import { openRecords, openRecordsAt, type Records, workerOf } from './service-watch.ts'
import { until } from './until.ts'

export type Crew = {
  readonly address: string
  readonly records: () => Records
  /** What can be killed, by name; each comes back by itself before it is answered. */
  readonly victims: { readonly [name: string]: () => Promise<void> }
  readonly pids: () => readonly number[]
  readonly close: () => Promise<void>
}

/** What docker-compose.yml gives the engine of service and workers. */
export const engineOptions = '--max-semi-space-size=32'

const quick = { STEP_LOCK_SECONDS: '5', STEP_OVERDUE_SECONDS: '5' }

const startWorker = async (settings: Settings): Promise<Service> => {
  const worker = runProgram('workers/main.js', settings)
  await worker.says(/worker ready/)
  return worker
}

/** A program that is killed while its store is away may refuse to start: whoever watches over it starts it again. */
const again = async <T>(start: () => Promise<T>): Promise<T> => {
  for (let tries = 1; ; tries += 1) {
    try {
      return await start()
    } catch (cause) {
      if (tries >= 20) throw cause
      await pause(200)
    }
  }
}

/** An answer of the server other than that it ends, starts or is not there (SQLSTATE classes 57P and 08). */
const isWrong = (cause: unknown): boolean =>
  cause instanceof Error && 'severity' in cause && !('code' in cause && /^(?:57P|08)/.test(String(cause.code)))

/** Looks at the records over a connection that is made anew when the server was away. */
const steadyRecords = async (
  open: () => Promise<Records>,
): Promise<{ readonly it: () => Records; readonly close: () => Promise<void> }> => {
  const state = { records: await open() }
  const it: Records = {
    rows: (text, ...values) =>
      until(
        'the records can be read',
        async () => {
          try {
            return await state.records.rows(text, ...values)
          } catch (cause) {
            if (isWrong(cause)) throw cause
            await state.records.close().catch(() => undefined)
            state.records = await open().catch(() => state.records)
            return undefined
          }
        },
        120_000,
      ),
    close: () => state.records.close(),
  }
  return { it: () => it, close: () => state.records.close().catch(() => undefined) }
}

export type ServedCrew = Crew & {
  readonly postgres: ServedPostgres
  readonly redis: RedisServer
  readonly settings: Settings
}

/**
 * PostgreSQL, Redis, the service and some workers, each a process of its own; `more` is put into their environment, once it is known
 * where the servers are.
 */
export const startServedCrew = async (
  workers: number,
  more: Settings | ((postgres: ServedPostgres) => Promise<Settings>) = {},
): Promise<ServedCrew> => {
  const folder = temporaryFolder()
  const [postgres, redis] = await Promise.all([startServedPostgres(), startRedis(...safeRedis)])
  const data = join(folder.path, 'keys')
  const settings = {
    ...quick,
    NODE_OPTIONS: engineOptions,
    DATABASE_URL: postgres.serviceUrl,
    REDIS_URL: redis.url,
    DATA: data,
    COUNTER_PORT: await freePort(),
    ...(typeof more === 'function' ? await more(postgres) : more),
  }
  const open = () => startService(data, { ...settings, DATABASE_OWNER_URL: postgres.ownerUrl, WORKERS: 'none' })
  const state: { service: OpenService; readonly workers: Service[] } = { service: await open(), workers: [] }
  for (let number = 0; number < workers; number += 1) state.workers.push(await startWorker(settings))
  const records = await steadyRecords(() => openRecordsAt(postgres.ownerUrl))
  const replaceWorker = (index: number) => async (): Promise<void> => {
    await state.workers[index]?.signal('SIGKILL')
    state.workers[index] = await again(() => startWorker(settings))
  }
  return {
    address: state.service.address,
    settings,
    postgres,
    redis,
    records: records.it,
    pids: () => [state.service.pid, ...state.workers.map(({ pid }) => pid)],
    victims: {
      service: async () => {
        await state.service.signal('SIGKILL')
        state.service = await again(open)
      },
      ...Object.fromEntries(state.workers.map((_one, index) => [`worker ${index + 1}`, replaceWorker(index)])),
      postgres: async () => {
        await postgres.kill()
        await postgres.start()
      },
      redis: async () => {
        await redis.kill()
        await redis.start()
      },
    },
    close: async () => {
      await records.close()
      await Promise.all([state.service, ...state.workers].map((one) => one.signal('SIGTERM')))
      await Promise.all([postgres.remove(), redis.stop()])
      folder.remove()
    },
  }
}

/** The embedded way: the service with its own worker and PostgreSQL on one data folder. */
export const startEmbeddedCrew = async (): Promise<Crew> => {
  const folder = temporaryFolder()
  const data = join(folder.path, 'data')
  const settings = { ...quick, COUNTER_PORT: await freePort() }
  const state = { service: await startService(data, settings) }
  const records = await steadyRecords(() => openRecords(data))
  const restart = async (): Promise<void> => {
    state.service = await again(() => startService(data, settings))
  }
  const killService = async (): Promise<void> => {
    await state.service.signal('SIGKILL')
    await restart()
  }
  const postmaster = async (): Promise<number> => {
    const [row] = await records.it().rows(`select split_part(pg_read_file('postmaster.pid'), E'\\n', 1)::int as pid`)
    return Number(row?.['pid'])
  }
  return {
    address: state.service.address,
    records: records.it,
    pids: () => [state.service.pid],
    victims: {
      service: killService,
      worker: async () => {
        process.kill(await workerOf(state.service.pid), 'SIGKILL')
        await workerOf(state.service.pid)
      },
      'service and worker': async () => {
        process.kill(await workerOf(state.service.pid), 'SIGKILL')
        await killService()
      },
      postgres: async () => {
        process.kill(await postmaster(), 'SIGKILL')
        await state.service.ended
        await restart()
      },
    },
    close: async () => {
      await records.close()
      await state.service.signal('SIGINT')
      await state.service.ended
      folder.remove()
    },
  }
}
