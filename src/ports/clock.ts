import type { Minutes } from '../domain/units/units.ts'

/** The one clock of all processes: business time in epoch minutes, and milliseconds for what is shown live. */
export type Clock = { readonly now: () => Minutes; readonly milliseconds: () => number }

/** Where ids, secrets and hashes come from. */
export type Ids = {
  /** Letters first, no colon: fit for a job id and a link. */
  readonly fresh: (prefix: string) => string
  /** Unguessable, at least 128 bits, safe in a link. */
  readonly secret: () => string
  /** SHA-256 in lower-case hex. */
  readonly hash: (content: string | Uint8Array) => string
}
