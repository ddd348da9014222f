import type { Mention } from './age-mentions.ts'
import { type Span, widened } from './age-spans.ts'

/** What one clause says of ages: of whom, and which. `like` and `unlike` stand for the age that was told before. */
export type Statement = {
  readonly who: 'all' | 'rest' | 'nobody' | null
  readonly rows: readonly string[]
  readonly except: readonly string[]
  readonly only: boolean
  readonly span: Span | 'like' | 'unlike' | null
  /** "Not under 3"; with `yet`, "not 3 yet". */
  readonly denied: boolean
  readonly yet: boolean
  /** "Some are 12": nobody knows who. */
  readonly some: boolean
}

/** A clause that is being read: names are exceptions of it, what else it says of children, whether an age came last. */
type Clause = Statement & { readonly excepting: boolean; readonly kids: Span | null; readonly aged: boolean }

const fresh: Clause = {
  ...{ who: null, rows: [], except: [], only: false, span: null, denied: false, yet: false, some: false },
  ...{ excepting: false, kids: null, aged: false },
}

/** Clauses so far, the open one last. */
type Reading = {
  readonly done: readonly Clause[]
  readonly open: Clause
  readonly mentions: readonly Mention[]
  readonly at: number
}

const quiet: readonly string[] = ['rows', 'not', 'only', 'yet', 'they', 'kids']

/** Whether years are told of whom is named here, before anybody else is spoken of. */
const ageFollows = ({ mentions, at }: Reading): boolean => {
  const next = mentions.slice(at + 1).find(({ kind }) => !quiet.includes(kind))
  return next?.kind === 'age' || next?.kind === 'than'
}

/** "Under 3: Ava and Leo", "2 years for Ava and 4 for Leo": the ages of a sentence stand before whom they are of. */
const isAgeFirst = ({ mentions, at }: Reading): boolean => {
  const start = mentions.findLastIndex(({ kind }, index) => kind === 'end' && index < at) + 1
  const end = mentions.findIndex(({ kind }, index) => kind === 'end' && index >= at)
  const told = mentions.slice(start, end < 0 ? mentions.length : end).filter(({ kind }) => kind === 'age' || kind === 'rows')
  return told[0]?.kind === 'age' && told.at(-1)?.kind === 'rows'
}

const hasSubject = ({ who, rows }: Clause): boolean => who !== null || rows.length > 0
const isEmpty = (open: Clause): boolean => !hasSubject(open) && open.span === null && !open.some && open.kids === null

const withOpen = (reading: Reading, part: Partial<Clause>): Reading => ({ ...reading, open: { ...reading.open, ...part } })
const begun = (reading: Reading, part: Partial<Clause>): Reading => ({
  ...reading,
  done: isEmpty(reading.open) ? reading.done : [...reading.done, reading.open],
  open: { ...fresh, ...part },
})

const takeRows = (reading: Reading, keys: readonly string[]): Reading => {
  const { open } = reading
  if (open.excepting) return withOpen(reading, { except: [...open.except, ...keys], aged: false })
  if (open.span === null) return withOpen(reading, { rows: [...open.rows, ...keys], who: null })
  const first = isAgeFirst(reading)
  if (first || (!hasSubject(open) && !ageFollows(reading)))
    return withOpen(reading, { rows: [...open.rows, ...keys], aged: false })
  return begun(reading, { rows: keys })
}

const takeAge = (reading: Reading, span: Span): Reading => {
  const { open } = reading
  const told = open.span !== null
  const ofExcepted = open.excepting && told && open.except.length > 0
  if (ofExcepted) return begun(reading, { rows: open.except, span, aged: true })
  if (told && isAgeFirst(reading) && open.rows.length > 0) return begun(reading, { span, aged: true })
  if (!told) return withOpen(reading, { span, aged: true, excepting: false })
  // "He is 4, not 2" says nothing new.
  if (open.denied && !open.aged) return withOpen(reading, { denied: false, aged: true })
  return typeof open.span === 'object' && open.span !== null
    ? withOpen(reading, { span: widened(open.span, span), aged: true })
    : reading
}

const takeWho = (reading: Reading, who: 'all' | 'rest' | 'nobody'): Reading => {
  const { open } = reading
  if (open.span === null && !hasSubject(open)) return withOpen(reading, { who, excepting: false })
  if (open.span !== null && !hasSubject(open) && who !== 'rest' && !ageFollows(reading)) return withOpen(reading, { who })
  // "All of them", "everyone, all": the same ones again.
  if (open.span === null && open.who === who) return reading
  return begun(reading, { who })
}

const takeDenial = (reading: Reading): Reading => {
  const { open } = reading
  return open.span === null ? withOpen(reading, { denied: true }) : withOpen(reading, { denied: true, aged: false })
}

const take = (reading: Reading, mention: Mention): Reading => {
  const { open, mentions, at } = reading
  switch (mention.kind) {
    case 'age':
      return takeAge(reading, mention.span)
    case 'rows':
      return takeRows(reading, mention.keys)
    case 'all':
    case 'rest':
    case 'nobody':
      return takeWho(reading, mention.kind)
    case 'else':
      return begun(reading, { who: 'rest', span: 'unlike' })
    case 'they':
      return isEmpty(open) && reading.done.length === 0 ? withOpen(reading, { who: 'all' }) : reading
    case 'except':
      return withOpen(reading, { excepting: true })
    case 'only':
      return mentions[at + 1]?.kind !== 'rows'
        ? reading
        : open.span === null
          ? withOpen(reading, { only: true })
          : begun(reading, { only: true })
    case 'sole':
      return withOpen(reading, { only: true })
    case 'not':
      return takeDenial(reading)
    case 'yet':
      return withOpen(reading, { yet: open.denied })
    case 'than':
      return open.span === null ? withOpen(reading, { span: 'unlike' }) : reading
    case 'some':
      return withOpen(reading, { some: true })
    case 'kids':
      return withOpen(reading, { kids: mention.span })
    case 'end':
      return begun(reading, {})
  }
}

/** A clause without years of its own tells by words of children, or of the others that they are like or unlike those before. */
const closed = ({ excepting, kids, aged, ...statement }: Clause): Statement => {
  if (statement.span !== null) return statement
  if (kids !== null) return { ...statement, span: kids, who: hasSubject({ ...fresh, ...statement }) ? statement.who : 'all' }
  return statement.who === 'rest' ? { ...statement, span: statement.denied ? 'unlike' : 'like', denied: false } : statement
}

/** The clauses of an answer about ages, in their order. */
export const statementsOf = (mentions: readonly Mention[]): readonly Statement[] => {
  let reading: Reading = { done: [], open: fresh, mentions, at: 0 }
  for (const [at, mention] of mentions.entries()) reading = take({ ...reading, at }, mention)
  return begun(reading, {}).done.map(closed)
}
