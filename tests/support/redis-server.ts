import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import type { Certificates } from './certificates.ts'
import { temporaryFolder } from './embedded.ts'
import { freePort } from './service.ts'

export type RedisServer = {
  readonly url: string
  readonly port: number
  readonly pid: () => number
  readonly kill: () => Promise<void>
  /** Again at the same port with what its append-only file holds. */
  readonly start: () => Promise<void>
  readonly stop: () => Promise<void>
}

/** What Redis needs in order to keep every step. */
export const safeRedis = ['--appendonly', 'yes', '--maxmemory-policy', 'noeviction'] as const

const ready = (server: ChildProcess): Promise<void> => {
  const said: string[] = []
  return new Promise((resolve, reject) => {
    server.stdout?.on('data', (part: Buffer) => {
      said.push(part.toString())
      if (/Ready to accept connections|Sentinel ID is/.test(said.join(''))) resolve()
    })
    server.once('exit', () => reject(new Error(`redis-server did not start: ${said.join('')}`)))
  })
}

const gone = async (server: ChildProcess): Promise<void> => {
  if (server.exitCode === null && server.signalCode === null) await once(server, 'exit')
}

const keepRunning = async (words: readonly string[], remove: () => void) => {
  const state: { server: ChildProcess | null } = { server: null }
  const start = async (): Promise<void> => {
    state.server = spawn('redis-server', words, { stdio: ['ignore', 'pipe', 'inherit'] })
    await ready(state.server)
  }
  const end = async (signal: NodeJS.Signals): Promise<void> => {
    if (state.server === null) return
    state.server.removeAllListeners('exit')
    state.server.kill(signal)
    await gone(state.server)
  }
  await start()
  return {
    pid: () => state.server?.pid ?? 0,
    start,
    kill: () => end('SIGKILL'),
    stop: async () => {
      await end('SIGTERM')
      remove()
    },
  }
}

/** A redis-server of its own on a free port, with its own folder; more settings as `--name value`. */
export const startRedis = async (...settings: readonly string[]): Promise<RedisServer> => {
  const folder = temporaryFolder()
  const port = Number(await freePort())
  const asked = ['--port', String(port), '--bind', '127.0.0.1', '--dir', folder.path, '--save', '', ...settings]
  return { url: `redis://127.0.0.1:${port}`, port, ...(await keepRunning(asked, folder.remove)) }
}

/** One that speaks TLS alone. */
export const startTlsRedis = async (tls: Certificates, ...settings: readonly string[]): Promise<RedisServer> => {
  const folder = temporaryFolder()
  const port = Number(await freePort())
  const spoken = ['--tls-port', String(port), '--tls-cert-file', tls.certificate, '--tls-key-file', tls.key]
  const asked = ['--port', '0', ...spoken, '--tls-ca-cert-file', tls.authority, '--tls-auth-clients', 'no']
  const words = [...asked, '--bind', '127.0.0.1', '--dir', folder.path, '--save', '', ...settings]
  return { url: `rediss://127.0.0.1:${port}`, port, ...(await keepRunning(words, folder.remove)) }
}
