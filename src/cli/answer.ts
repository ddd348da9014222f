import type { Problem } from '../domain/result/result.ts'
import { plainProblems, problemLines } from '../wiring/say-problems.ts'
import { exitCodes, isOn, type Words } from './command.ts'

/** Problems in words on standard error, or as JSON on standard output; the exit code of a refusal. */
export const answerRefused = (words: Words, problems: readonly Problem[]): number => {
  const said = plainProblems(problems)
  if (isOn(words, 'json')) {
    const told = problems.map(({ code, at, severity, facts }, index) => ({
      code,
      at,
      severity,
      ...facts,
      text: said[index]?.text,
    }))
    process.stdout.write(`${JSON.stringify({ problems: told })}\n`)
  } else process.stderr.write(problemLines(said))
  return exitCodes.refused
}

/** What was done, in a sentence or as JSON. */
export const answerDone = (words: Words, result: object, sentence: string): number => {
  process.stdout.write(isOn(words, 'json') ? `${JSON.stringify(result)}\n` : `${sentence}\n`)
  return exitCodes.done
}
