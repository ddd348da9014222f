import type { HttpBindings } from '@hono/node-server'
import type { Context } from 'hono'
import type { CounterDesk } from '../../../ports/counter-desk.ts'
import type { Assets } from './assets.ts'
import type { Limits } from './limit.ts'
import type { Sessions } from './session.ts'

/** What every route of the counter works with. */
export type Counter = {
  readonly desk: CounterDesk
  /** Scheme, host and port people open, without a slash at the end. */
  readonly origin: string
  readonly sessions: Sessions
  readonly limits: Limits
  readonly assets: Assets
  readonly ready: () => Promise<unknown>
  readonly report: (error: unknown) => void
  readonly closing: AbortSignal
}

export type Door = { readonly Bindings: HttpBindings }
export type Visit = Context<Door>

/** Who sent the request, for limits only; tests without a socket count as one address. */
export const addressOf = (c: Visit): string => c.env.incoming?.socket.remoteAddress ?? 'unknown'
