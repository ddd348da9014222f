import type { Problem, Result } from '../domain/result/result.ts'

/** The program cannot go on, for reasons a person can be told. */
class Refused extends Error {
  override readonly name = 'Refused'
  readonly problems: readonly Problem[]

  constructor(problems: readonly Problem[]) {
    super(problems.map((problem) => problem.code).join(', '))
    this.problems = problems
  }
}

/** The value, or the end of the program with every problem in words. */
export const orStop = <T>(result: Result<T>): T => {
  if (result.ok) return result.value
  throw new Refused(result.problems)
}

type Close = () => Promise<void>
/** What is open; it is closed in the opposite order, whatever ends the program. */
export type Opened = { readonly toClose: (close: Close) => void }

const closeAll = async (closes: readonly Close[], report: (cause: unknown) => void): Promise<void> => {
  for (const close of closes.toReversed()) await close().catch(report)
}

/** Runs a long-lived program: problems in words and exit code 1, and whatever was opened is closed before the process ends. */
export const runProgram = async (report: (cause: unknown) => void, work: (opened: Opened) => Promise<void>): Promise<void> => {
  const closes: Close[] = []
  let code = 0
  try {
    await work({ toClose: (close) => closes.push(close) })
  } catch (cause) {
    code = 1
    if (cause instanceof Refused) {
      const { plainProblems, problemLines } = await import('./say-problems.ts')
      process.stderr.write(problemLines(plainProblems(cause.problems)))
    } else report(cause)
  }
  await closeAll(closes, report)
  process.exit(code)
}
