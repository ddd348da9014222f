import { readFile, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import pg from 'pg'
import { ok, type Result } from '../../../domain/result/result.ts'
import type { Opened, OpenProblem } from '../../../ports/opening.ts'
import { failedAt, isDiskFull, unopened } from '../problems.ts'
import { clusterFolder, lastOfLog, type Place, settle } from './cluster.ts'
import { keysFile, ownerAddress, type StoreKeys, writeKeys } from './keys.ts'
import { run } from './run.ts'

type Running = { readonly pid: number; readonly host: string; readonly port: number }

const isAlive = (pid: number): boolean => {
  try {
    process.kill(pid, 0)
    return true
  } catch (cause) {
    return cause instanceof Error && 'code' in cause && cause.code === 'EPERM'
  }
}

/** After a restart of the machine the number may be another program's. */
const isPostgres = async (pid: number): Promise<boolean> => {
  if (process.platform !== 'linux') return true
  const command = await readFile(`/proc/${pid}/cmdline`, 'utf8').catch(() => 'postgres')
  return command.includes('postgres')
}

/** The server that postmaster.pid names, when it lives; a stale file is taken away. */
const findRunning = async (data: string): Promise<Running | undefined> => {
  const file = join(clusterFolder(data), 'postmaster.pid')
  const lines = (await readFile(file, 'utf8').catch(() => '')).split('\n')
  const pid = Number(lines[0])
  if (!Number.isInteger(pid) || pid <= 0) return undefined
  if (isAlive(pid) && (await isPostgres(pid))) {
    const [, , , port, socket, host] = lines
    return { pid, port: Number(port), host: socket === undefined || socket === '' ? (host ?? '') : socket }
  }
  await rm(file, { force: true })
  return undefined
}

type Answer = 'answers' | 'wrong-password' | 'silent'

const ask = async (keys: StoreKeys): Promise<Answer> => {
  const client = new pg.Client({ ...ownerAddress(keys, 'postgres'), connectionTimeoutMillis: 5_000 })
  client.on('error', () => undefined)
  try {
    await client.connect()
    return 'answers'
  } catch (cause) {
    return cause instanceof pg.DatabaseError && cause.code === '28P01' ? 'wrong-password' : 'silent'
  } finally {
    await client.end().catch(() => undefined)
  }
}

const start = async (place: Place, keys: StoreKeys): Opened<void> => {
  await settle(place, keys)
  const cluster = clusterFolder(place.data)
  const log = join(cluster, 'server.log')
  const started = await run(place.binaries.pgCtl, ['start', '-w', '-t', '60', '-D', cluster, '-l', log], place.account)
  if (started.code === 0) return ok(undefined)
  const said = `${started.said}\n${await lastOfLog(place.data)}`
  if (isDiskFull(said)) return unopened('store-disk-full', { folder: place.data })
  return unopened('store-not-started', { log, said })
}

export type Started = { readonly keys: StoreKeys; readonly adopted: boolean }

/** Where the server really listens: of two that start at once either may have written its settings. */
const meet = async (place: Place, keys: StoreKeys, running: Running): Promise<StoreKeys> => {
  const met = { ...keys, host: running.host, port: running.port }
  await writeKeys(place.data, met)
  return met
}

const adopt = async (place: Place, keys: StoreKeys, running: Running): Promise<Result<Started, OpenProblem> | undefined> => {
  const answer = await ask({ ...keys, host: running.host, port: running.port })
  if (answer === 'answers') return ok({ keys: await meet(place, keys, running), adopted: true })
  if (answer === 'silent') return undefined
  return unopened('store-keys-missing', { file: keysFile(place.data), folder: clusterFolder(place.data) })
}

/** The children of a server that was killed take a moment to notice. */
const isStillLeaving = (said: string): boolean => said.includes('shared memory block') && said.includes('still in use')

const startAlone = async (place: Place, keys: StoreKeys): Promise<Result<Started, OpenProblem> | undefined> => {
  const started = await start(place, keys)
  const running = await findRunning(place.data)
  if (started.ok) return running && ok({ keys: await meet(place, keys, running), adopted: false })
  if (started.problems.some(({ facts }) => 'said' in facts && isStillLeaving(facts.said))) return undefined
  // Another start on the same data was faster: look again.
  return running === undefined ? started : undefined
}

const patience = 60_000

/** Adopts the server that runs on the data, waits for one that is coming or going, and starts one when there is none. */
export const startOrAdopt = async (place: Place, keys: StoreKeys): Opened<Started> => {
  const until = Date.now() + patience
  while (Date.now() < until) {
    const running = await findRunning(place.data)
    const settled = running === undefined ? await startAlone(place, keys) : await adopt(place, keys, running)
    if (settled !== undefined) return settled
    await pause(100)
  }
  return unopened('store-not-started', { log: join(clusterFolder(place.data), 'server.log'), said: await lastOfLog(place.data) })
}

/** Ends the server in order; nothing happens when it runs no more. */
export const stopServer = async (place: Place): Promise<void> => {
  const stopped = await run(
    place.binaries.pgCtl,
    ['stop', '-w', '-t', '60', '-m', 'fast', '-D', clusterFolder(place.data)],
    place.account,
  )
  if (stopped.code !== 0 && (await findRunning(place.data)) !== undefined) {
    throw new Error(`PostgreSQL could not be stopped: ${stopped.said}`)
  }
}

/** The service's role and database; both may be there. */
export const makeRoom = async (keys: StoreKeys): Opened<void> => {
  const client = new pg.Client(ownerAddress(keys, 'postgres'))
  client.on('error', () => undefined)
  try {
    await client.connect()
    await client.query('select pg_advisory_lock(1)')
    const { rows } = await client.query(
      `select exists (select from pg_roles where rolname = 'service') as role,
              exists (select from pg_database where datname = 'platenpost') as base`,
    )
    if (!rows[0]?.role) await client.query(`create role service login password ${pg.escapeLiteral(keys.servicePassword)}`)
    if (!rows[0]?.base) await client.query('create database platenpost')
    await client.query('grant connect, create on database platenpost to service')
    return ok(undefined)
  } catch (cause) {
    return failedAt(keys.host, cause)
  } finally {
    await client.end().catch(() => undefined)
  }
}
