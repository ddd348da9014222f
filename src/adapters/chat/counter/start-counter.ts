import { setMaxListeners } from 'node:events'
import { createServer, type Server } from 'node:http'
import { getRequestListener } from '@hono/node-server'
import type { CounterDesk } from '../../../ports/counter-desk.ts'
import { makeApp } from './app.ts'
import { readAssets } from './assets.ts'
import { doorsOf } from './guard.ts'
import { makeLimits } from './limit.ts'
import { makeSessions } from './session.ts'

export type CounterSettings = {
  readonly desk: CounterDesk
  /** The project's folder; styles, script and faces are read from there. */
  readonly root: string
  /** The port to listen at; 0 takes any, null the usual one, or the next free one where no address is said that leads to it. */
  readonly port: number | null
  readonly host: string
  /** The address people open, when it is not this machine's own; needed when the host opens the counter to a network. */
  readonly url: string | null
  /** At least 32 random bytes that stay the same over restarts. */
  readonly sessionKey: Uint8Array
  /** The machine's epoch milliseconds: sessions and limits are about real people, whatever the shop's clock says. */
  readonly now: () => number
  /** Throws when the store cannot be asked just now. */
  readonly ready: () => Promise<unknown>
  /** Told of every bug; people are told in general words. */
  readonly report: (error: unknown) => void
}
export type RunningCounter = {
  /** What people open: the given address, or this machine's own. */
  readonly address: string
  readonly port: number
  readonly close: () => Promise<void>
}

const usualPort = 4180
const triesOfPorts = 20
const patienceMs = 2_000
const homeHosts = ['127.0.0.1', '::1', 'localhost']

const isTaken = (error: unknown): boolean => error instanceof Error && 'code' in error && error.code === 'EADDRINUSE'

const listenOn = (server: Server, port: number, host: string): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, host, () => {
      server.off('error', reject)
      const bound = server.address()
      resolve(bound !== null && typeof bound === 'object' ? bound.port : port)
    })
  })

/** Whoever said a port or an address would be led to another program by the next free port. */
const listen = async (server: Server, { port: asked, host, url }: CounterSettings): Promise<number> => {
  const first = asked ?? usualPort
  const last = asked === null && url === null ? first + triesOfPorts - 1 : first
  for (let port = first; port <= last; port += 1) {
    try {
      return await listenOn(server, port, host)
    } catch (error) {
      if (!isTaken(error)) throw new Error(`the counter cannot listen at ${host}, port ${port}`, { cause: error })
    }
  }
  const taken = first === last ? `port ${first} is taken` : `ports ${first} to ${last} are taken`
  throw new Error(`${taken} by another program; set another COUNTER_PORT`)
}

const stop = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    const force = setTimeout(() => server.closeAllConnections(), patienceMs)
    server.close(() => {
      clearTimeout(force)
      resolve()
    })
    server.closeIdleConnections()
  })

/** Opens the counter; `close` ends live pages, lets running requests finish and frees the port. */
export const startCounter = async (settings: CounterSettings): Promise<RunningCounter> => {
  const { desk, host, url, now, report } = settings
  if (url === null && !homeHosts.includes(host)) {
    throw new Error('set COUNTER_URL to the address people will open')
  }
  const sessions = makeSessions(settings.sessionKey, now)
  const assets = readAssets(settings.root)
  const server = createServer({ headersTimeout: 15_000, requestTimeout: 120_000, maxHeaderSize: 16_384 })
  const port = await listen(server, settings)
  const origin = url === null ? `http://${host.includes(':') ? `[${host}]` : host}:${port}` : new URL(url).origin
  const closing = new AbortController()
  // Every open page listens, and there may be hundreds.
  setMaxListeners(0, closing.signal)
  const limits = makeLimits(now)
  const counter = { desk, origin, sessions, assets, ready: settings.ready, report, limits, closing: closing.signal }
  const app = makeApp(counter, doorsOf(origin, port))
  server.on('request', getRequestListener(app.fetch))
  return {
    address: origin,
    port,
    close: () => {
      closing.abort()
      return stop(server)
    },
  }
}
