import { timingSafeEqual } from 'node:crypto'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { setTimeout as pause } from 'node:timers/promises'
import type { Metrics } from './metrics.ts'

export type WatchSettings = {
  readonly port: number
  readonly host: string
  /** Who asks for figures must show it; null when only this machine can ask. */
  readonly token: string | null
  readonly metrics: Pick<Metrics, 'text' | 'contentType'>
  /** Throws when the process cannot do its work just now. */
  readonly ready: () => Promise<unknown>
  readonly report: (cause: unknown) => void
}
export type RunningWatch = { readonly port: number; readonly close: () => Promise<void> }

const patienceMs = 3_000
const loopback = ['127.0.0.1', '::1', 'localhost']

/** Settles as `ready` does, or fails when that takes too long: a store that hangs is not ready. */
const readyInTime = async (ready: () => Promise<unknown>): Promise<boolean> => {
  const late = new AbortController()
  try {
    await Promise.race([
      ready(),
      pause(patienceMs, undefined, { signal: late.signal }).then(() => Promise.reject(new Error('not ready in time'))),
    ])
    return true
  } catch {
    return false
  } finally {
    late.abort()
  }
}

const isShown = (request: IncomingMessage, token: string): boolean => {
  const given = Buffer.from(request.headers.authorization ?? '')
  const wanted = Buffer.from(`Bearer ${token}`)
  return given.byteLength === wanted.byteLength && timingSafeEqual(given, wanted)
}

type Said = readonly [status: number, body: string, type?: string]

const send = (answer: ServerResponse, [status, body, type = 'text/plain; charset=utf-8']: Said): void => {
  answer.writeHead(status, { 'content-type': type, 'cache-control': 'no-store', 'x-content-type-options': 'nosniff' })
  answer.end(body)
}

/** Without a token only pages of this very machine could ask; one that got here by another name (DNS rebinding) is refused. */
const isAtHome = (request: IncomingMessage): boolean => {
  const host = request.headers.host ?? ''
  return URL.canParse(`http://${host}`) && loopback.includes(new URL(`http://${host}`).hostname.replace(/^\[|\]$/g, ''))
}

const answerWith = async (settings: WatchSettings, request: IncomingMessage, answer: ServerResponse): Promise<void> => {
  const { token, metrics, ready } = settings
  if (token === null && !isAtHome(request)) return send(answer, [421, 'wrong address\n'])
  if (request.method !== 'GET' && request.method !== 'HEAD') return send(answer, [405, 'only read\n'])
  switch (request.url) {
    case '/up':
      return send(answer, [200, 'up\n'])
    case '/ready':
      return send(answer, (await readyInTime(ready)) ? [200, 'ready\n'] : [503, 'not ready\n'])
    case '/metrics':
      if (token !== null && !isShown(request, token)) return send(answer, [401, 'show the token\n'])
      return send(answer, [200, await metrics.text(), metrics.contentType])
    default:
      return send(answer, [404, 'nothing here\n'])
  }
}

/** `/up`: the process lives. `/ready`: it can work. `/metrics`: figures for Prometheus. On a port of its own. */
export const startWatch = async (settings: WatchSettings): Promise<RunningWatch> => {
  const { host, port, token, report } = settings
  if (token === null && !loopback.includes(host)) {
    throw new Error(`figures would be open to ${host}: set WATCH_TOKEN to a secret that who asks must show`)
  }
  const server = createServer({ headersTimeout: 5_000, requestTimeout: 10_000, maxHeaderSize: 8_192 }, (request, answer) => {
    answerWith(settings, request, answer).catch((cause: unknown) => {
      report(cause)
      if (answer.headersSent) answer.destroy()
      else send(answer, [500, 'broken\n'])
    })
  })
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, host, () => resolve())
  })
  const bound = server.address()
  return {
    port: bound !== null && typeof bound === 'object' ? bound.port : port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}
