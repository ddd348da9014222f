import type { OpenProblem, OpenProblems } from '../../ports/opening.ts'

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
