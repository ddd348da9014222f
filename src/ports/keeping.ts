import type { ProblemOf, Result } from '../domain/result/result.ts'

export type StoreProblems = {
  /** Somebody else was faster: read again and decide anew. */
  'store-version-changed': { readonly what: string; readonly id: string; readonly expected: number; readonly found: number }
  'store-missing': { readonly what: string; readonly id: string }
  'store-already-there': { readonly what: string; readonly id: string }
}
export type StoreProblem = ProblemOf<StoreProblems>
export type Kept<T> = Promise<Result<T, StoreProblem>>

/** A record as its holder saw it: the version it had then. */
export type Seen = { readonly id: string; readonly version: number }
