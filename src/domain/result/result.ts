/**
 * Expected trouble is a value. A problem names what is wrong (`code`), where (`at`, a JSON Pointer into the document it
 * is about, '' for the whole), how bad it is, and the facts a sentence needs. Sentences live in templates/replies.
 */
export type Severity = 'stop' | 'needs-test' | 'caution' | 'note'

export type FactValue = string | number | boolean | null | readonly FactValue[] | { readonly [name: string]: FactValue }
export type Facts = { readonly [name: string]: FactValue }

export type Problem<Code extends string = string, F extends Facts = Facts> = {
  readonly code: Code
  readonly at: string
  readonly severity: Severity
  readonly facts: F
}

/** The problems of one folder, from its catalogue `{ code: facts }`. */
export type ProblemOf<Catalogue extends { readonly [code: string]: Facts }> = {
  [Code in keyof Catalogue & string]: Problem<Code, Catalogue[Code]>
}[keyof Catalogue & string]

export type Result<T, P extends Problem = Problem> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly P[] }

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value })

export const refuse = <P extends Problem>(
  ...problems: readonly P[]
): { readonly ok: false; readonly problems: readonly P[] } => ({
  ok: false,
  problems,
})

/** All values, or all problems of all failures. */
export const collect = <T, P extends Problem>(results: readonly Result<T, P>[]): Result<readonly T[], P> => {
  const problems = results.flatMap((result) => (result.ok ? [] : result.problems))
  if (problems.length > 0) return { ok: false, problems }
  return ok(results.flatMap((result) => (result.ok ? [result.value] : [])))
}

/** One step of a JSON Pointer (RFC 6901). */
export const pointer = (...steps: readonly (string | number)[]): string =>
  steps.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
