import type { Minutes } from '../domain/units/units.ts'

/** The one clock of all processes. What the shop lives by is business time; what guards machines and doors is the machine's. */
export type Clock = {
  /** Business time in epoch minutes. */
  readonly now: () => Minutes
  /** Business time in epoch milliseconds, for what is shown live. */
  readonly milliseconds: () => number
  /** The machine's epoch minute: for keys that let real people in, whatever day the shop has. */
  readonly real: () => Minutes
  /** For how many milliseconds the machine must wait until so many of business time are over. */
  readonly lasting: (milliseconds: number) => number
}

/** Ties business time to the machine's: both epoch milliseconds of one instant, and how many times faster business time runs. */
export type Anchor = { readonly real: number; readonly simulated: number; readonly speed: number }

/** Where ids, secrets and hashes come from. */
export type Ids = {
  /** Letters first, no colon: fit for a job id and a link. */
  readonly fresh: (prefix: string) => string
  /** Unguessable, at least 128 bits, safe in a link. */
  readonly secret: () => string
  /** SHA-256 in lower-case hex. */
  readonly hash: (content: string | Uint8Array) => string
}
