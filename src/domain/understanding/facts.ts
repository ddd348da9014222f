import { pointer } from '../result/result.ts'
import type { Fact, How } from './conversation.ts'
import type { Json } from './patch.ts'

type Leaf = { readonly path: string; readonly key: string; readonly value: Json }

const isBranch = (value: unknown): value is { readonly [key: string]: unknown } => typeof value === 'object' && value !== null

const isLeaf = (value: unknown): value is string | number | boolean | null =>
  value === null || typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'

/** A layer of a decoration by what it is there for: blocker, face, outline, shadow, stones. */
const layerKey = ({ kind, shape, class: made }: { readonly [key: string]: unknown }): string | null => {
  if (kind === 'stones') return kind
  if (kind !== 'vinyl') return null
  if (isBranch(shape)) return Object.keys(shape).join()
  return made === 'blocker' ? made : 'face'
}

/** A list's member is known by its id, line, fibre or purpose, so that one that comes or goes does not seem to change the next. */
const memberKey = (member: unknown, index: number): string => {
  if (!isBranch(member)) return String(index)
  const named = member['id'] ?? member['line'] ?? member['fibre'] ?? layerKey(member)
  return isLeaf(named) && named !== null ? `=${String(named)}` : String(index)
}

/** Members of one purpose (two outlines) are told apart from the last on: the one next to the figure stays the first. */
const memberKeys = (members: readonly unknown[]): readonly string[] => {
  const keys = members.map(memberKey)
  return keys.map((key, index) => {
    const behind = keys.slice(index + 1).filter((other) => other === key).length
    return behind === 0 ? key : `${key}~${behind}`
  })
}

const walk = (value: unknown, path: string, key: string): readonly Leaf[] => {
  if (isLeaf(value)) return [{ path, key, value }]
  if (Array.isArray(value)) {
    const keys = memberKeys(value)
    return value.flatMap((member, index) => walk(member, `${path}/${index}`, `${key}/${keys[index] ?? index}`))
  }
  if (!isBranch(value)) return []
  return Object.entries(value).flatMap(([name, inner]) => walk(inner, `${path}${pointer(name)}`, `${key}${pointer(name)}`))
}

/** Keys that name a member and are nobody's statement. */
const isName = (leaf: Leaf): boolean => /\/(id|line|version)$/.test(leaf.path)

/** Every value of a document with its JSON Pointer and a key that stays the same when its list changes around it. */
export const leavesOf = (document: unknown): readonly Leaf[] => walk(document, '', '').filter((leaf) => !isName(leaf))

type Turn = { readonly how: How; readonly quote: string }
type Documents = { readonly before: unknown; readonly after: unknown; readonly assumed: ReadonlySet<string> }

const quoteOf = (text: string): string => (text.length > 160 ? `${text.slice(0, 160)}…` : text)

/**
 * The facts of a document after a turn: what nobody said is assumed; what stayed as it was keeps its words; what is new was
 * said now; what was said otherwise before is corrected.
 */
export const factsAfter = (facts: readonly Fact[], documents: Documents, turn: Turn): readonly Fact[] => {
  const known = new Map(facts.map((fact) => [fact.path, fact]))
  const earlier = new Map(leavesOf(documents.before).map((leaf) => [leaf.key, { ...leaf, fact: known.get(leaf.path) }]))
  const quote = quoteOf(turn.quote)
  return leavesOf(documents.after).map(({ path, key, value }) => {
    if (documents.assumed.has(path)) return { path, value, how: 'assumed', quote: '' }
    const was = earlier.get(key)
    const fact = was?.fact
    if (was === undefined || fact === undefined || fact.how === 'assumed') return { path, value, how: turn.how, quote }
    if (was.value === value) return { ...fact, path }
    return { path, value, how: 'corrected', quote }
  })
}
