import type { ProblemOf, Result } from '../../domain/result/result.ts'

export type QueueProblems = {
  'queue-unreachable': { readonly at: string; readonly said: string }
  /** Redis without an append-only file loses steps that were promised. */
  'queue-forgets': { readonly at: string; readonly setting: string }
  /** Redis that throws keys away when memory is short. */
  'queue-evicts': { readonly at: string; readonly policy: string }
}
export type QueueProblem = ProblemOf<QueueProblems>
export type QueueResult<T> = Promise<Result<T, QueueProblem>>
