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

/** SQLSTATE: who asks is not let in (28000, 28P01), or may not do what is needed (42501). */
const refusals: ReadonlySet<unknown> = new Set(['28000', '28P01', '42501'])

/** SQLSTATE: a table (42P01), a column (42703) or the schema (3F000) is not there. */
const lacks: ReadonlySet<unknown> = new Set(['42P01', '42703', '3F000'])

/** Why a server that was asked did not do it: no room, no right, or not to be reached. */
export const failedAt = (at: string, cause: unknown): Refused => {
  const said = saidBy(cause)
  if (isDiskFull(said)) return unopened('store-disk-full', { folder: at })
  const code = cause instanceof Error && 'code' in cause ? cause.code : null
  if (lacks.has(code)) return unopened('store-not-made', { at })
  return unopened(refusals.has(code) ? 'store-refused' : 'store-unreachable', { at, said })
}
