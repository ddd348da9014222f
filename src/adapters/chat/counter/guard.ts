import type { MiddlewareHandler } from 'hono'
import { refuse, visitorLanguage } from './answer.ts'
import type { Counter, Door, Visit } from './counter.ts'

const headers: readonly (readonly [string, string])[] = [
  [
    'content-security-policy',
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
  ],
  ['x-content-type-options', 'nosniff'],
  ['x-frame-options', 'DENY'],
  // Not no-referrer: that would make a form's Origin "null". The address of a conversation never leaves this origin.
  ['referrer-policy', 'same-origin'],
  ['cross-origin-opener-policy', 'same-origin'],
  ['cross-origin-resource-policy', 'same-origin'],
  ['permissions-policy', 'camera=(), geolocation=(), microphone=()'],
  ['x-robots-tag', 'noindex, nofollow'],
]

/** Headers of every answer; private pages are never stored. */
export const safeHeaders: MiddlewareHandler<Door> = async (c, next) => {
  await next()
  for (const [name, value] of headers) if (!c.res.headers.has(name)) c.res.headers.set(name, value)
  if (!c.res.headers.has('cache-control')) c.res.headers.set('cache-control', 'no-store')
}

export type Doors = { readonly origins: ReadonlySet<string>; readonly hosts: ReadonlySet<string> }

/** The addresses the counter answers to: the one it was given, and this machine's own names at its port. */
export const doorsOf = (origin: string, port: number): Doors => {
  const origins = [origin, ...['127.0.0.1', 'localhost', '[::1]'].map((name) => `http://${name}:${port}`)]
  return { origins: new Set(origins.map((one) => new URL(one).origin)), hosts: new Set(origins.map((one) => new URL(one).host)) }
}

const isReading = (method: string): boolean => method === 'GET' || method === 'HEAD'

/** A request that changes something must come from a page of ours: by its Origin, and by what the browser says of its site. */
const isOurs = (c: Visit, doors: Doors): boolean => {
  const site = c.req.header('sec-fetch-site')
  if (site !== undefined && site !== 'same-origin') return false
  const origin = c.req.header('origin')
  return origin !== undefined && doors.origins.has(origin) && new URL(origin).host === c.req.header('host')?.toLowerCase()
}

/** Refuses a Host that is not ours (DNS rebinding) and a change asked for by another page (forged requests). */
export const guardDoors =
  (counter: Counter, doors: Doors): MiddlewareHandler<Door> =>
  async (c, next) => {
    const language = visitorLanguage(c, counter)
    const host = c.req.header('host')?.toLowerCase() ?? ''
    if (!doors.hosts.has(host)) return refuse(c, counter, { trouble: { code: 'wrong-address' }, language, back: counter.origin })
    if (!isReading(c.req.method) && !isOurs(c, doors)) {
      return refuse(c, counter, { trouble: { code: 'forged' }, language, back: '/' })
    }
    await next()
    return undefined
  }
