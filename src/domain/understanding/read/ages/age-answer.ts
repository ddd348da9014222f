import type { Draft, Player } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { anyOf, fold } from '../text/tokens.ts'
import { isBare, withoutLead } from './age-asides.ts'
import { type Mention, mentionsIn } from './age-mentions.ts'
import { allBut, contrast, type Span } from './age-spans.ts'
import { type Statement, statementsOf } from './age-statements.ts'

const said = spoken.ages

type Age = '13-up' | '3-12' | 'under-3'

export const classOf = (age: number): Age => (age < 3 ? 'under-3' : age < 13 ? '3-12' : '13-up')

export const children = anyOf(said.children)

const toddlerSizes: readonly string[] = ['2T', '3T', '4T', '5T']

const isToddlerSize = ({ size, fit }: { readonly size?: string | undefined; readonly fit?: string | undefined }): boolean =>
  fit === 'toddler' || toddlerSizes.includes(size ?? '')

/** Nobody says "5 and under" of a team of grown schoolchildren: below it babies are not left out. */
const smallest = 6
const firstOfChildren = 3

/** The ages that years may be; one who wears a toddler's size and is no baby is a child at most. Null: it must be asked. */
const ageIn = (span: Span, small: boolean): Age | null => {
  const from = span.implied && !small && span.to >= smallest ? Math.max(span.from, firstOfChildren) : span.from
  const [low, high] = [classOf(from), classOf(span.to)]
  if (low === high) return low
  return low === '3-12' && small ? low : null
}

/** What was found out: years of players by their key (null: to be asked), and of all who were not named. */
type Found = {
  readonly rows: ReadonlyMap<string, Span | null>
  readonly base: Span | null | undefined
  /** Said of everybody, so that what was known before goes. */
  readonly anew: boolean
  readonly last: Span | null
}

const spanOf = ({ span, denied, yet }: Statement, last: Span | null): Span | null | undefined => {
  if (span === null) return undefined
  if (span === 'like') return last ?? undefined
  if (span === 'unlike') return last === null ? undefined : contrast(last)
  if (!denied) return span
  return yet ? { from: 0, to: span.from - 1, implied: true } : allBut(span)
}

const opposite = (span: Span | null): Span | null => (span === null ? null : contrast(span))

/** What is told of those who have no name in a clause. */
const baseOf = ({ who, rows, only, some }: Statement, span: Span | null): Span | null | undefined => {
  if (some) return null
  if (only && rows.length > 0) return opposite(span)
  if (rows.length > 0) return undefined
  return who === 'nobody' ? (span === null ? null : allBut(span)) : span
}

const positive = ({ span, denied, yet }: Statement, told: Span | null): Span | null =>
  typeof span !== 'object' || span === null ? told : denied && yet ? { from: span.from, to: 99 } : span

const add = (found: Found, statement: Statement): Found => {
  const span = spanOf(statement, found.last)
  if (span === undefined) return statement.some ? { ...found, base: null } : found
  const rows = new Map(found.rows)
  for (const key of statement.rows) rows.set(key, span)
  const base = baseOf(statement, span)
  for (const key of statement.except)
    if (!rows.has(key) && statement.rows.length === 0) rows.set(key, statement.who === 'nobody' ? span : opposite(span))
  const all = base !== undefined && statement.who !== 'rest'
  return {
    rows,
    base: base === undefined ? found.base : mixed(found.base, base),
    anew: found.anew || all,
    last: positive(statement, span),
  }
}

/** Two different things said of everybody: who is which is asked. */
const mixed = (before: Span | null | undefined, span: Span | null): Span | null =>
  before === undefined || span === null || before === null
    ? span
    : { from: Math.min(before.from, span.from), to: Math.max(before.to, span.to) }

type Line = { readonly path: readonly string[]; readonly key: string; readonly line: Pick<Player, 'size' | 'fit' | 'age'> }

const linesOf = ({ rows, tally }: Draft): readonly Line[] => [
  ...Object.entries(rows).map(([key, line]) => ({ path: ['rows', key, 'age'], key, line })),
  ...Object.entries(tally).map(([key, line]) => ({ path: ['tally', key, 'age'], key, line })),
]

const isSmall = ({ common, garments }: Draft, line: Line['line']): boolean =>
  isToddlerSize({ size: line.size ?? common?.size, fit: line.fit ?? common?.fit }) ||
  (line.size === undefined && Object.values(garments).some(isToddlerSize))

/** One player's age where it is not everybody's. */
const lineAge = (draft: Draft, found: Found, { path, key, line }: Line): readonly Patch[] => {
  const small = isSmall(draft, line)
  const own = found.rows.get(key)
  if (own !== undefined) return [{ path, value: (own === null ? null : ageIn(own, small)) ?? 'unknown' }]
  if (found.base === undefined || (!found.anew && line.age !== undefined && line.age !== 'unknown')) return []
  const age = found.base === null ? null : ageIn(found.base, small)
  const sure = age !== null && (age !== everyone(draft, found) || (small && age !== '13-up'))
  if (sure) return [{ path, value: age }]
  return line.age === undefined ? [] : [{ path, value: null }]
}

const everyone = (draft: Draft, { base }: Found): Age | 'mixed' => {
  const small = linesOf(draft).some(({ line }) => isSmall(draft, line))
  return (base === null || base === undefined ? null : ageIn({ ...base }, small && (base.implied ?? false))) ?? 'mixed'
}

const child: Span = { from: 0, to: 12, implied: true }
const grown: Span = { from: 13, to: 99 }

const patchesOf = (draft: Draft, found: Found): readonly Patch[] => {
  const lines = linesOf(draft).flatMap((line) => lineAge(draft, found, line))
  if (found.base !== undefined) return [{ path: ['ages'], value: everyone(draft, found) }, ...lines]
  const open = draft.ages === undefined || draft.ages === 'unknown'
  // Of one who is grown up nothing follows for the others, who are still asked about together.
  const told = [...found.rows.values()]
  const allGrown = told.length < linesOf(draft).length && told.every((span) => span !== null && span.from >= grown.from)
  return told.length > 0 && open && !allGrown ? [{ path: ['ages'], value: 'mixed' }, ...lines] : lines
}

const yes = new RegExp(`^\\s*${said.agreed}\\b`)
const refusal = new RegExp(`^\\s*${spoken.answers.no}[.!\\s]*$`)

/** Names or nobody in answer to "is anyone 12 or younger?". */
const bareAnswer = (text: string, mentions: readonly Mention[]): Found | null => {
  const none: Found = { rows: new Map(), base: undefined, anew: true, last: null }
  const keys = mentions.flatMap((mention) => (mention.kind === 'rows' ? mention.keys : []))
  const kinds = mentions.map(({ kind }) => kind)
  if (!isBare(text, mentions)) return null
  if (keys.length > 0) {
    if (kinds.includes('not') || kinds.includes('except')) return null
    return {
      ...none,
      rows: new Map(keys.map((key) => [key, child])),
      base: kinds.includes('only') || kinds.includes('sole') ? grown : undefined,
    }
  }
  if (kinds.includes('nobody') || refusal.test(fold(text))) return { ...none, base: grown }
  if (kinds.includes('all')) return { ...none, base: child }
  return yes.test(fold(text)) ? { ...none, base: null } : null
}

/**
 * The answer to "is anyone 12 or younger, under 3?": nobody, all, some, years of everybody, or of these players and of the others. Years
 * of both ages are `mixed`, and whoever is not spoken for is asked. Words that tell no ages answer nothing.
 */
export const readAgeAnswer = (text: string, draft: Draft): readonly Patch[] => {
  const own = withoutLead(text)
  const mentions = mentionsIn(own, draft.rows)
  // "Kids of the ages you would expect" tells nothing more than that they are kids.
  if (!mentions.some(({ kind }) => kind === 'age') && !isBare(own, mentions)) return []
  const start: Found = { rows: new Map(), base: undefined, anew: false, last: null }
  const found = statementsOf(mentions).reduce(add, start)
  const told = found.rows.size > 0 || found.base !== undefined ? found : bareAnswer(own === '' ? text : own, mentions)
  return told === null ? [] : patchesOf(draft, told)
}
