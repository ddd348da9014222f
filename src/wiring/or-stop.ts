import type { Result } from '../domain/result/result.ts'
import { plainProblems, problemLines } from './say-problems.ts'

/** The value, or every problem in words on standard error and the end of the process. */
export const orStop = <T>(result: Result<T>): T => {
  if (result.ok) return result.value
  process.stderr.write(problemLines(plainProblems(result.problems)))
  process.exit(1)
}
