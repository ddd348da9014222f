import { sayProblem } from '../../templates/replies/say.ts'
import type { Problem } from '../domain/result/result.ts'
import { plainShow } from '../domain/shop/plain-show.ts'

type SaidProblem = { readonly at: string; readonly severity: string; readonly text: string }

/** Problems in words when there is no shop yet whose way of writing could be taken. */
export const plainProblems = (problems: readonly Problem[]): readonly SaidProblem[] =>
  problems.map((problem) => ({ at: problem.at, severity: problem.severity, text: sayProblem(problem, 'en', plainShow) }))

/** Problems for a person at a terminal, one a line: how bad, where, what happened and what to do. */
export const problemLines = (problems: readonly SaidProblem[]): string =>
  problems.map(({ at, severity, text }) => `${severity}${at === '' ? '' : ` at ${at}`}: ${text}\n`).join('')
