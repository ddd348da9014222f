import type * as z from 'zod'
import { type FactValue, ok, type ProblemOf, pointer, type Result } from './result.ts'

/** What can be wrong with the shape of a document from outside; `got` is the offending value, shortened. */
export type ShapeProblems = {
  'shape-missing': { expected: string }
  'shape-unknown-key': { key: string }
  'shape-kind': { expected: string; got: string }
  'shape-choice': { choices: readonly string[]; got: string }
  'shape-range': { least: number | null; most: number | null; of: string; got: string }
  'shape-form': { form: string; got: string }
  'shape-rule': { rule: string; got: string }
}
export type ShapeProblem = ProblemOf<ShapeProblems>

type Issue = z.core.$ZodIssue
type Path = readonly PropertyKey[]

const longest = 80

const shorten = (value: unknown): string => {
  const text = JSON.stringify(value) ?? String(value)
  return text.length > longest ? `${text.slice(0, longest)}…` : text
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null

const valueAt = (document: unknown, path: Path): unknown =>
  path.reduce<unknown>((value, key) => (isRecord(value) ? value[String(key)] : undefined), document)

const stop = <Code extends keyof ShapeProblems>(path: Path, code: Code, facts: ShapeProblems[Code]) => ({
  code,
  at: pointer(...path.map(String)),
  severity: 'stop' as const,
  facts,
})

const asNumber = (value: FactValue | bigint | undefined): number | null => (value === undefined ? null : Number(value))

/** The reading of a union that got furthest into the value: deepest first trouble, then fewest troubles. */
const closestBranch = (branches: readonly (readonly Issue[])[]): readonly Issue[] =>
  branches.reduce<readonly Issue[]>((best, branch) => {
    const depth = (issues: readonly Issue[]) => Math.max(0, ...issues.map((issue) => issue.path.length))
    if (best.length === 0) return branch
    if (depth(branch) !== depth(best)) return depth(branch) > depth(best) ? branch : best
    return branch.length < best.length ? branch : best
  }, [])

const choices = (issues: readonly Issue[]): readonly string[] =>
  issues.flatMap((issue) => (issue.code === 'invalid_value' ? issue.values.map(String) : []))

const unionProblems = (
  issue: Extract<Issue, { code: 'invalid_union' }>,
  document: unknown,
  path: Path,
): readonly ShapeProblem[] => {
  if (issue.errors.length === 0) {
    return [stop(path, 'shape-rule', { rule: 'none of the known kinds', got: shorten(valueAt(document, path)) })]
  }
  const flat = issue.errors.flat()
  const offered = choices(flat)
  if (offered.length > 0 && flat.every((inner) => inner.path.length === 0)) {
    return [stop(path, 'shape-choice', { choices: offered, got: shorten(valueAt(document, path)) })]
  }
  return closestBranch(issue.errors).flatMap((inner) => issueProblems(inner, document, [...path, ...inner.path]))
}

const issueProblems = (issue: Issue, document: unknown, path: Path): readonly ShapeProblem[] => {
  const value = valueAt(document, path)
  const got = shorten(value)
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => stop([...path, key], 'shape-unknown-key', { key }))
    case 'invalid_type':
      if (value === undefined) return [stop(path, 'shape-missing', { expected: issue.expected })]
      return [stop(path, 'shape-kind', { expected: issue.expected, got })]
    case 'invalid_value':
      if (value === undefined) return [stop(path, 'shape-missing', { expected: issue.values.map(String).join(' | ') })]
      return [stop(path, 'shape-choice', { choices: issue.values.map(String), got })]
    case 'too_small':
      return [stop(path, 'shape-range', { least: asNumber(issue.minimum), most: null, of: issue.origin, got })]
    case 'too_big':
      return [stop(path, 'shape-range', { least: null, most: asNumber(issue.maximum), of: issue.origin, got })]
    case 'invalid_format':
      return [stop(path, 'shape-form', { form: issue.pattern ?? issue.format, got })]
    case 'invalid_union':
      return unionProblems(issue, document, path)
    default:
      return [stop(path, 'shape-rule', { rule: issue.message, got })]
  }
}

/** Reads a document from outside with a strict schema: the value, or every problem with its JSON Pointer. */
export const parseShape = <T>(schema: z.ZodType<T>, document: unknown): Result<T, ShapeProblem> => {
  const parsed = schema.safeParse(document)
  if (parsed.success) return ok(parsed.data)
  return { ok: false, problems: parsed.error.issues.flatMap((issue) => issueProblems(issue, document, issue.path)) }
}
