import type { ProblemOf, Result } from '../../domain/result/result.ts'

/** Why the store could not be opened. */
export type OpenProblems = {
  /** npm brings no PostgreSQL for this kind of machine. */
  'store-program-missing': { readonly machine: string }
  /** The libraries' links were not made, as happens when install scripts are off. */
  'store-links-missing': { readonly command: string }
  'store-user-missing': { readonly user: string; readonly said: string }
  'store-folder-closed': { readonly folder: string; readonly user: string }
  'store-folder-refused': { readonly folder: string; readonly said: string }
  'store-disk-full': { readonly folder: string }
  /** The data are there and the file with their passwords is not. */
  'store-keys-missing': { readonly file: string; readonly folder: string }
  'store-not-started': { readonly log: string; readonly said: string }
  'store-in-use': { readonly at: string }
  'store-unreachable': { readonly at: string; readonly said: string }
  /** The records were written by a newer program. */
  'store-newer': { readonly said: string }
}
export type OpenProblem = ProblemOf<OpenProblems>
export type Opened<T> = Promise<Result<T, OpenProblem>>

type Refused = { readonly ok: false; readonly problems: readonly OpenProblem[] }

export const unopened = <Code extends keyof OpenProblems & string>(code: Code, facts: OpenProblems[Code]): Refused => ({
  ok: false,
  // A generic code cannot be matched with its own facts by the compiler; the parameters have done it.
  problems: [{ code, at: '', severity: 'stop', facts } as OpenProblem],
})

/** The words PostgreSQL and the system use when a disk is full. */
export const isDiskFull = (said: string): boolean =>
  /No space left on device|ENOSPC|could not extend file|disk quota exceeded/i.test(said)

export const saidBy = (cause: unknown): string => (cause instanceof Error ? cause.message : String(cause))
