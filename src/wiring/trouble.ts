import type { Step } from '../ports/queue.ts'

/** What a line is about; ids only. */
export type About = {
  readonly step: Step['step']
  readonly order?: string
  readonly revision?: number
  readonly attempt?: number
}

export const aboutStep = (step: Step): About =>
  step.step === 'remind'
    ? { step: step.step }
    : { step: step.step, order: step.orderId, revision: step.revision, attempt: step.attempt }

const longest = 500

/**
 * Words that other programs put into their messages can be a customer's: what stands in quotes, addresses of mail and long
 * numbers are struck out, line ends and control signs too.
 */
export const withoutPeople = (message: string): string =>
  message
    .slice(0, 4 * longest)
    .replaceAll(/"(?:[^"\\]|\\.)*"?|“[^”]*”?|'(?:[^'\\]|\\.){25,}'?/g, '"…"')
    .replaceAll(/[^\s@]+@[^\s@]+/g, '…')
    .replaceAll(/(?<![\w-])\+?\d[\d\s().-]{8,}\d(?![\w-])/g, '…')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: exactly these must not reach a terminal or a file of lines.
    .replaceAll(/[\s\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ')
    .slice(0, longest)

/** PostgreSQL names the constraint or table beside its message, whose quoted words are struck out. */
const detailOf = (cause: Error): string =>
  ['code', 'schema', 'table', 'constraint']
    .map((name): unknown => Reflect.get(cause, name))
    .filter((value) => typeof value === 'string' && /^[\w.-]{1,60}$/.test(value))
    .join(' ')

const reasonOf = (cause: unknown): string => {
  if (!(cause instanceof Error)) return withoutPeople(String(cause))
  const detail = detailOf(cause)
  const own = `${withoutPeople(cause.message)}${detail === '' ? '' : ` [${detail}]`}`
  return cause.cause === undefined ? own : `${own} (${reasonOf(cause.cause)})`
}

export type Report = (cause: unknown, about?: About) => void

const write = (line: { readonly [name: string]: unknown }): void => {
  process.stderr.write(`${JSON.stringify(line)}\n`)
}

/** One line of JSON a trouble on standard error: when, which process, about which order, what. No personal data. */
export const reporter =
  (who: string): Report =>
  (cause, about) =>
    write({ at: new Date().toISOString(), who, ...about, trouble: reasonOf(cause) })

const minuteMilliseconds = 60_000

/** Every connection and every loop of a process finds out that a server is away, again and again: the same words once a minute. */
export const onceAMinute = (tell: (cause: unknown) => void, now: () => number): ((cause: unknown) => void) => {
  const told = new Map<string, number>()
  return (cause) => {
    const reason = reasonOf(cause)
    for (const [one, at] of told) if (now() - at >= minuteMilliseconds) told.delete(one)
    if (told.has(reason)) return
    told.set(reason, now())
    tell(cause)
  }
}

export type StepRan = { readonly step: Step; readonly milliseconds: number; readonly outcome: 'done' | 'failed' }

/** One line a step that ran. */
export const stepLogger =
  (who: string) =>
  ({ step, milliseconds, outcome }: StepRan): void =>
    write({ at: new Date().toISOString(), who, ...aboutStep(step), outcome, ms: Math.round(milliseconds) })
