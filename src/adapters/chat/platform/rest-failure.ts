import { DiscordAPIError, HTTPError, RateLimitError } from 'discord.js'
import type { PostingTrouble } from '../../../ports/platform-desk.ts'

/**
 * What a failed call tells: come back later, it may or may not have been done, it is too large, or never. null: none of
 * these, a fault of our own.
 */
export type Failure =
  | { readonly kind: 'later'; readonly milliseconds: number }
  | { readonly kind: 'unknown' }
  | { readonly kind: 'too-large' }
  | { readonly kind: 'never'; readonly trouble: PostingTrouble }

/** The platform's error codes, from its published list. */
const troubles: { readonly [code: string]: PostingTrouble } = {
  10003: 'channel-gone',
  10004: 'channel-gone',
  10008: 'message-gone',
  50001: 'no-access',
  50007: 'direct-closed',
  50013: 'no-access',
  50083: 'channel-gone',
  50278: 'direct-closed',
}
const requestTooLarge = 40_005

const refusal = (error: DiscordAPIError): Failure | null => {
  if (error.code === requestTooLarge || error.status === 413) return { kind: 'too-large' }
  if (error.status === 401) return null
  const known = troubles[String(error.code)]
  if (known !== undefined) return { kind: 'never', trouble: known }
  if (error.status === 403) return { kind: 'never', trouble: 'no-access' }
  return { kind: 'never', trouble: 'refused-by-platform' }
}

/** A line that was cut, refused or too slow: what the system, undici and fetch throw. */
const isTransport = (error: unknown): boolean => {
  if (!(error instanceof Error)) return false
  if (error.name === 'AbortError' || error.name === 'TimeoutError') return true
  if (error instanceof TypeError) return error.message === 'fetch failed'
  return 'code' in error && typeof error.code === 'string' && /^(?:UND_ERR_[A-Z_]+|E[A-Z]+)$/.test(error.code)
}

export const failureOf = (error: unknown): Failure | null => {
  if (error instanceof RateLimitError) return { kind: 'later', milliseconds: Math.max(error.timeToReset, error.retryAfter) }
  if (error instanceof DiscordAPIError) return refusal(error)
  if (error instanceof HTTPError) return { kind: 'unknown' }
  return isTransport(error) ? { kind: 'unknown' } : null
}

export const hasCode = (error: unknown, ...codes: readonly number[]): boolean =>
  error instanceof DiscordAPIError && codes.some((code) => error.code === code)
