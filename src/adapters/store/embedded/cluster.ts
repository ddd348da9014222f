import { chmod, chown, mkdir, mkdtemp, readFile, rename, rm, stat, writeFile } from 'node:fs/promises'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { ok } from '../../../domain/result/result.ts'
import type { Opened } from '../../../ports/opening.ts'
import { isDiskFull, unopened } from '../problems.ts'
import type { Binaries } from './binaries.ts'
import { type StoreKeys, writeKeys } from './keys.ts'
import type { Account } from './run.ts'
import { run } from './run.ts'

export const clusterFolder = (data: string): string => join(data, 'postgres')

/** What one server of one data folder is made of. */
export type Place = {
  readonly data: string
  readonly binaries: Binaries
  readonly account: Account | null
}

const giveTo = async (path: string, account: Account | null): Promise<void> => {
  if (account !== null) await chown(path, account.uid, account.gid)
}

/**
 * Makes the data's own folder: UTF-8, locale C so that order and case do not depend on the machine, with checksums. It is
 * made beside and renamed, so a half-made one is never taken for whole.
 */
export const makeCluster = async ({ data, binaries, account }: Place, keys: StoreKeys): Opened<void> => {
  const beside = await mkdtemp(join(data, 'new-'))
  const passwordFile = join(beside, 'password')
  const folder = join(beside, 'postgres')
  try {
    await giveTo(beside, account)
    await writeFile(passwordFile, keys.ownerPassword, { mode: 0o600 })
    await giveTo(passwordFile, account)
    const asked = [`--pgdata=${folder}`, '--username=owner', `--pwfile=${passwordFile}`, '--auth=scram-sha-256']
    const made = await run(
      binaries.initdb,
      [...asked, '--encoding=UTF8', '--locale=C', '--data-checksums', '--no-instructions'],
      account,
    )
    if (made.code !== 0) {
      if (isDiskFull(made.said)) return unopened('store-disk-full', { folder: data })
      return unopened('store-not-started', { log: folder, said: made.said })
    }
    await writeFile(join(folder, 'postgresql.conf'), "\ninclude_if_exists = 'platenpost.conf'\n", { flag: 'a' })
    await putInPlace(folder, clusterFolder(data))
    return ok(undefined)
  } finally {
    await rm(beside, { recursive: true, force: true })
  }
}

/** Another start may have been faster; its folder is as good as ours. */
const putInPlace = async (made: string, wanted: string): Promise<void> => {
  try {
    await rename(made, wanted)
  } catch (cause) {
    await stat(join(wanted, 'PG_VERSION')).catch(() => {
      throw cause
    })
  }
}

/** Takes a place away whose server is stopped; the file of its passwords stays, which may be those of records that were moved elsewhere. */
export const removeCluster = (data: string): Promise<void> => rm(clusterFolder(data), { recursive: true, force: true })

const longestSocketPath = 107
const socketPrefix = 'platenpost-'

/**
 * A short private folder for the socket, since the kernel refuses long paths; a new one for every start, since a server that
 * was killed leaves a lock beside its socket.
 */
const socketFolder = async (old: string, account: Account | null): Promise<string> => {
  if (basename(old).startsWith(socketPrefix)) await rm(old, { recursive: true, force: true })
  const fits = join(tmpdir(), `${socketPrefix}123456`, '.s.PGSQL.5432').length <= longestSocketPath
  const folder = await mkdtemp(join(fits ? tmpdir() : '/tmp', socketPrefix))
  await chmod(folder, 0o700)
  await giveTo(folder, account)
  return folder
}

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const server = createServer()
    server.on('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 5432))
    })
  })

const settings = (keys: StoreKeys): string => {
  const where =
    process.platform === 'win32'
      ? [`listen_addresses = '127.0.0.1'`, `port = ${keys.port}`]
      : [
          `listen_addresses = ''`,
          `port = ${keys.port}`,
          `unix_socket_directories = '${keys.host}'`,
          'unix_socket_permissions = 0700',
        ]
  const modest = ['max_connections = 80', "shared_buffers = '64MB'", "max_wal_size = '256MB'", 'jit = off', "timezone = 'UTC'"]
  return `${[...where, ...modest].join('\n')}\n`
}

/** Decides where the server will listen and writes it into its settings and the keys. */
export const settle = async ({ data, account }: Place, keys: StoreKeys): Promise<void> => {
  const settled: StoreKeys =
    process.platform === 'win32'
      ? { ...keys, host: '127.0.0.1', port: await freePort() }
      : { ...keys, host: await socketFolder(keys.host, account) }
  const file = join(clusterFolder(data), 'platenpost.conf')
  await writeFile(file, settings(settled), { mode: 0o600 })
  await giveTo(file, account)
  await writeKeys(data, settled)
}

export const makeData = async (data: string, account: Account | null): Promise<void> => {
  const made = await mkdir(data, { recursive: true })
  // Only passable for the account; what lies in it is closed on its own.
  if (made !== undefined && account !== null) await chmod(data, 0o711)
}

export const lastOfLog = async (data: string): Promise<string> => {
  const log = await readFile(join(clusterFolder(data), 'server.log'), 'utf8').catch(() => '')
  return log.trimEnd().split('\n').slice(-12).join('\n')
}
