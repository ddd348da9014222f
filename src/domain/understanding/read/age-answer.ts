import type { Draft, Player } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { spoken } from '../words/languages.ts'
import { allBut, type Years, yearsIn } from './age-spans.ts'
import { type Lexicon, termsOf } from './lexicon.ts'
import { refsIn } from './refs.ts'
import { sizeAt } from './sizes.ts'
import { anyOf, blanked, fold, isNumber, tokensOf } from './tokens.ts'
import { isWorn } from './told-number.ts'

const said = spoken.ages
const no = spoken.answers.no

type Age = NonNullable<Player['age']>

export const classOf = (age: number): '13-up' | '3-12' | 'under-3' => (age < 3 ? 'under-3' : age < 13 ? '3-12' : '13-up')

const classIn = ({ from, to }: Years): NonNullable<Draft['ages']> => (classOf(from) === classOf(to) ? classOf(from) : 'mixed')

const nobody = new RegExp(`\\b${said.nobody}\\b|^${no}\\b`)
const everybody = anyOf(said.everybody)
const underThree = anyOf(said.underThree)
const older = new RegExp(`\\b${said.older}`)
const some = anyOf(said.some)
const agreed = new RegExp(`^${said.agreed}\\b`)
const opening = new RegExp(`^${said.agreed}[,.!]* +(?=\\S)`)
const refused = new RegExp(`^${no}\\b`)
const grownUp = new RegExp(`\\b${said.grownUp}(?!\\w)`)
export const children = anyOf(said.children)

/** A pause, or an "and" before those who are left. */
const pause = new RegExp(
  [
    `[,;.!?\\n]| (?:${spoken.rosters.and}|${spoken.clauses.closing}) (?=${said.others}\\b)`,
    // "Leo is 2 and Max is 8": another name with years of its own.
    `(?<=\\d[^,;.!?\\n]{0,20}) ${spoken.rosters.and} (?=\\p{Lu}[^,;.!?\\n]{0,30}\\d)`,
  ].join('|'),
  'u',
)

/** "Leo 2": a name and a bare figure, where years are told. */
const bareYears = (folded: string): NonNullable<Draft['ages']> | null => {
  const figure = /^\D+ (\d{1,2})$/.exec(folded.trim())?.[1]
  return figure === undefined ? null : classOf(Number(figure))
}

type Part = { readonly folded: string; readonly rows: readonly string[]; readonly of: NonNullable<Draft['ages']> | null }

/** What figures, schools or words tell of the ages in a part of an answer; null where they tell nothing. */
const agesIn = (folded: string): NonNullable<Draft['ages']> | null => {
  const told = yearsIn(folded)
  const years = nobody.test(folded) && told.length === 1 ? told.map(allBut) : told
  const sure = years.flatMap((one) => one ?? [])
  if (some.test(folded)) return 'mixed'
  if (sure.length > 0) {
    const [from, to] = [Math.min(...sure.map((one) => one.from)), Math.max(...sure.map((one) => one.to))]
    return classIn({ from, to, start: 0, end: 0 })
  }
  if (children.test(folded)) return '3-12'
  if (grownUp.test(folded) || nobody.test(folded)) return '13-up'
  if (everybody.test(folded) && !older.test(folded)) return '3-12'
  return agreed.test(folded) ? 'mixed' : null
}

const partOf = (text: string, { rows }: Draft): Part => {
  const folded = fold(text)
  const told = yearsIn(folded)
  const tokens = tokensOf(text)
  const inYears = (start: number): boolean => told.some((one) => start >= one.start && start < one.end)
  const refs = refsIn(tokens, rows).filter(({ from, keys }) => keys.length === 1 && !inYears(tokens[from]?.start ?? 0))
  const named = [...new Set(refs.flatMap(({ keys }) => keys))]
  return { folded, rows: named, of: agesIn(folded) ?? (named.length === 1 ? bareYears(folded) : null) }
}

const ageOf = ({ of, folded }: Part): Age => {
  if (of === '13-up' || of === 'under-3') return of
  return underThree.test(folded) && !/12/.test(folded) ? 'under-3' : '3-12'
}

/** "You asked ages: Leo is 2": that years follow is said first. */
const lead = new RegExp(`^\\s*${said.spokenOf}(?!\\w)`)

export const speaksOfAges = (text: string): boolean => lead.test(fold(text))

const withoutLead = (text: string): string => text.slice(lead.exec(fold(text))?.[0].length ?? 0)

/**
 * The answer to "is anyone 12 or younger, under 3?": nobody, all, some, years of everybody, or of these players and of the others. Years
 * of both ages are `mixed`: who is which is asked then.
 */
export const readAgeAnswer = (text: string, draft: Draft): readonly Patch[] => {
  const told = withoutLead(text)
  const own = told.slice(opening.exec(fold(told))?.[0].length ?? 0)
  const parts = own.split(pause).map((part) => partOf(part.trim(), draft))
  const named = parts.filter(({ rows, folded }) => rows.length > 0 && !refused.test(folded))
  const all = parts.flatMap(({ rows, of }) => (rows.length === 0 && of !== null ? [of] : []))
  const patches = named.flatMap((part) => part.rows.map((key): Patch => ({ path: ['rows', key, 'age'], value: ageOf(part) })))
  const young = patches.some(({ value }) => value !== '13-up')
  const base = new Set(all).size > 1 ? 'mixed' : (all[0] ?? (young ? '13-up' : null))
  return base === null ? patches : [{ path: ['ages'], value: base }, ...patches]
}

const idle: readonly string[] = ['and', 'in', 'with', 'no', 'count', 'only', 'both', 'of']

/** A text without the words that tell ages. */
const withoutAges = (text: string): string => {
  const folded = fold(text)
  const phrases = [nobody, grownUp, children].flatMap((pattern) => {
    const match = pattern.exec(folded)
    return match === null ? [] : [{ start: match.index, end: match.index + match[0].length }]
  })
  return [...yearsIn(folded), ...phrases].reduce((left, { start, end }) => blanked(left, start, end), text)
}

/** An answer that speaks of nothing but ages: no size, no number that is worn, nothing of the trade. */
export const isOfAges = (text: string, lexicon: Lexicon): boolean => {
  const tokens = tokensOf(withoutAges(text))
  const sized = [...tokens.keys()].some((at) => sizeAt(tokens, at)?.size !== undefined)
  const worn = tokens.some((token, at) => token.text === '#' || (isNumber(token) && isWorn(tokens, at))) || /\n\W*\d/.test(text)
  return tokens.length <= 30 && !sized && !worn && termsOf(lexicon, tokens).every(({ meaning }) => idle.includes(meaning.kind))
}
