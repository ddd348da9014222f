import { setTimeout as pause } from 'node:timers/promises'
import type { Platform } from './platform.ts'
import { failureOf } from './rest-failure.ts'

/** Milliseconds: how long the start waits for the first try, and the pauses between tries, each twice as long as the one before. */
export type Pauses = { readonly first: number; readonly shortest: number; readonly longest: number }

const usual: Pauses = { first: 10_000, shortest: 5_000, longest: 60_000 }

export type ComingIn = {
  /** Resolves when the bot listens; ends at once, leaving nothing open, when the signal comes. */
  readonly connect: (signal: AbortSignal) => Promise<Platform>
  readonly report: (cause: unknown) => void
  readonly pauses?: Pauses
}

/** Nobody answered, or somebody who is not the platform (a proxy's page, a server that is down): it may go by. A refusal does not. */
const goesBy = (cause: unknown): boolean => {
  if (cause instanceof SyntaxError) return true
  const kind = failureOf(cause)?.kind
  return kind === 'unknown' || kind === 'later'
}

const notYet = (cause?: unknown): Error =>
  new Error('the chat platform cannot be reached; the counter is open, and the bot tries again by itself', { cause })

/**
 * Brings the bot in. A platform that cannot be reached keeps nothing else from opening: it is tried again until it is there or
 * `stop` is called. Throws what the platform refuses for good at the first try; what it refuses later is reported.
 */
export const comeIn = async ({ connect, report, pauses = usual }: ComingIn): Promise<{ readonly stop: () => Promise<void> }> => {
  const leaving = new AbortController()
  const { signal } = leaving
  const state: { bot: Platform | null } = { bot: null }

  const tryOnce = async (): Promise<'in' | 'later'> => {
    try {
      state.bot = await connect(signal)
      return 'in'
    } catch (cause) {
      if (signal.aborted) return 'in'
      if (!goesBy(cause)) throw cause
      report(notYet(cause))
      return 'later'
    }
  }
  const again = async (first: Promise<'in' | 'later'>): Promise<void> => {
    let came = await first
    for (let wait = pauses.shortest; came === 'later' && !signal.aborted; wait = Math.min(pauses.longest, wait * 2)) {
      await pause(wait, undefined, { signal }).catch(() => undefined)
      if (!signal.aborted) came = await tryOnce()
    }
  }

  const first = tryOnce()
  const slow = pause(pauses.first, 'slow' as const, { ref: false })
  if ((await Promise.race([first, slow])) === 'slow') report(notYet())
  const ended = again(first).catch(report)
  return {
    stop: async () => {
      leaving.abort()
      await ended
      await state.bot?.stop()
    },
  }
}
