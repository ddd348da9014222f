import { readFile } from 'node:fs/promises'
import { writeLocal } from '../domain/calendar/local-time.ts'
import type { Zone } from '../domain/calendar/zone.ts'
import type { Problem } from '../domain/result/result.ts'
import { type ReadBook, readBook } from '../domain/schedule/book/book-record.ts'
import type { Slot } from '../domain/schedule/book/operation.ts'
import { explainLate } from '../domain/schedule/explain/explain.ts'
import { loadOf } from '../domain/schedule/load/load.ts'
import { budgetFor, type Plan, planFor } from '../domain/schedule/search/plan.ts'
import { slotsOf } from '../domain/schedule/timeline/slots.ts'
import { verify } from '../domain/schedule/verify/verify.ts'
import { plainProblems, problemLines } from '../wiring/say-problems.ts'
import { type Command, exitCodes, isOn, runCommand, text, UsageError, type Words } from './command.ts'

const USAGE = `plan: plans the open orders of a book on its stations

  npm run -s plan -- book.json [--seconds S] [--seed N] [--json]

It says who does what when, what will be late and why, and the load of every day.
Without --seconds it plans for about one second. The same book, seconds and seed give the same plan.`

const numberOf = (words: Words, name: string, otherwise: number): number => {
  const given = text(words, name)
  if (given === undefined) return otherwise
  if (!/^\d+(\.\d+)?$/.test(given)) throw new UsageError(`--${name} ${given} is not a number`)
  return Number(given)
}

const bookAt = async (words: Words): Promise<unknown> => {
  const [file] = words.positionals
  if (file === undefined) throw new UsageError('say which book to plan')
  const source = await readFile(file, 'utf8').catch(() => undefined)
  if (source === undefined) throw new UsageError(`${file} cannot be read`)
  try {
    return JSON.parse(source)
  } catch (cause) {
    throw new UsageError(`${file} is not JSON: ${cause instanceof Error ? cause.message : String(cause)}`, { cause })
  }
}

const told = (problems: readonly Problem[]) =>
  plainProblems(problems).map((said, index) => ({ code: problems[index]?.code ?? '', ...problems[index]?.facts, ...said }))

const refused = (words: Words, problems: readonly Problem[]): number => {
  if (isOn(words, 'json')) process.stdout.write(`${JSON.stringify({ problems: told(problems) })}\n`)
  else process.stderr.write(problemLines(plainProblems(problems)))
  return exitCodes.refused
}

const toSlot = (zone: Zone) => (slot: Slot) => ({ ...slot, start: writeLocal(zone, slot.start), end: writeLocal(zone, slot.end) })

/** Time is only a safety stop: the budget is spent before on any machine of our day. */
const stopAfter = (seconds: number): (() => boolean) => {
  const end = performance.now() + seconds * 3_000
  return () => performance.now() > end
}

const toJson = ({ book, zone, cautions }: ReadBook, plan: Plan) => {
  const slots = slotsOf(plan.lines).toSorted((a, b) => a.start - b.start || a.end - b.end)
  return {
    slots: slots.map(toSlot(zone)),
    late: explainLate(plan.lines).map((late) => ({
      ...late,
      fixes: late.fixes.map((fix) => ({ ...fix, at: fix.at === null ? null : writeLocal(zone, fix.at) })),
    })),
    load: loadOf(book, zone, slots),
    verified: verify(book, slots).length === 0,
    seed: plan.seed,
    iterations: plan.iterations,
    ...(cautions.length > 0 ? { problems: told(cautions) } : {}),
  }
}

const report = (result: ReturnType<typeof toJson>): string => {
  const slots = result.slots.map((one) => `${one.start}  ${one.end}  ${one.order}  ${one.operation}  ${one.stations.join(' + ')}`)
  const late = result.late.map((one) => {
    const causes = one.causes.map(({ cause, operation, minutes }) => `${cause} ${operation} ${minutes} min`).join(', ')
    const fixes = one.fixes.map(({ code, subject, minutes }) => `${code} ${subject} ${minutes} min`).join('; ')
    return `late: ${one.order} by ${one.minutes} min (${causes})${fixes === '' ? '' : `\n  mend: ${fixes}`}`
  })
  const sound = result.verified ? 'checked and sound' : 'NOT SOUND'
  return [...slots, ...late, `${result.slots.length} slots, ${result.late.length} late, ${sound}, seed ${result.seed}`].join('\n')
}

const plan: Command = {
  usage: USAGE,
  options: { seconds: { type: 'string' }, seed: { type: 'string' }, json: { type: 'boolean' } },
  run: async (words) => {
    const read = readBook(await bookAt(words))
    if (!read.ok) return refused(words, read.problems)
    const seconds = numberOf(words, 'seconds', 1)
    const seed = Math.trunc(numberOf(words, 'seed', 1))
    const planned = planFor(read.value.book, { seed, budget: budgetFor(seconds), stop: stopAfter(seconds) })
    if (!planned.ok) return refused(words, planned.problems)
    const result = toJson(read.value, planned.value)
    process.stdout.write(isOn(words, 'json') ? `${JSON.stringify(result)}\n` : `${report(result)}\n`)
    return exitCodes.done
  },
}

await runCommand(plan)
