import { spoken } from '../../words/languages.ts'
import { fold, isNumber, type Token, tokensOf } from '../text/tokens.ts'
import type { Rows } from '../whom/refs.ts'
import { refsIn } from '../whom/refs.ts'
import { type Span, type Years, yearsIn } from './age-spans.ts'

const said = spoken.ages

/** What an answer about ages is made of, in its order. */
export type Mention = { readonly start: number; readonly end: number } & (
  | { readonly kind: 'age'; readonly span: Span }
  | { readonly kind: 'rows'; readonly keys: readonly string[] }
  | { readonly kind: 'kids'; readonly span: Span }
  | { readonly kind: Sign }
)

const signs = ['nobody', 'rest', 'else', 'all', 'some', 'they', 'except', 'only', 'sole', 'not', 'yet', 'than', 'end'] as const
type Sign = (typeof signs)[number]

const word = (...sources: readonly string[]): RegExp => new RegExp(`(?<![\\w])(?:${sources.join('|')})(?!\\w)`, 'g')

/** Of words that could be several the first; years come before all of them. */
const patterns: readonly (readonly [Sign, RegExp])[] = [
  ['sole', word(said.soleOne)],
  ['else', word(said.else)],
  ['rest', word(said.others)],
  ['nobody', word(said.nobody)],
  ['all', word(said.everybody)],
  ['they', word(said.they)],
  ['all', word(said.everyone, said.all)],
  ['some', word(said.some)],
  ['except', word(said.except)],
  ['only', word(said.only)],
  ['not', word(said.not)],
  ['yet', word(said.yet)],
  ['than', word(said.younger)],
  ['end', /[.;!?\n](?!\d)/g],
]

const adults: Span = { from: 13, to: 99 }
const grownUp = word(said.grownUp, said.adult)
const schooled = word(said.children)
const babies = word(said.babies)
const toddlers = word(said.toddlers)
const kids = word(said.kids)

/** Ages that are told by words: "adults", "babies", "elementary". */
const byWords: readonly (readonly [RegExp, Span])[] = [
  [grownUp, adults],
  [schooled, { from: 3, to: 12 }],
  [babies, { from: 0, to: 2 }],
  [toddlers, { from: 1, to: 3 }],
]

type Place = { readonly start: number; readonly end: number }
const isFree = (taken: readonly Place[], { start, end }: Place): boolean =>
  taken.every((one) => end <= one.start || start >= one.end)

const placed = (match: RegExpExecArray): Place => ({ start: match.index, end: match.index + match[0].length })

const wordMentions = (folded: string, years: readonly Place[]): readonly Mention[] => {
  const found: Mention[] = []
  const take = (pattern: RegExp, make: (place: Place) => Mention): void => {
    for (const match of folded.matchAll(pattern)) {
      const place = placed(match)
      if (isFree([...years, ...found], place)) found.push(make(place))
    }
  }
  for (const [pattern, span] of byWords) take(pattern, (place) => ({ kind: 'age', span, ...place }))
  for (const [kind, pattern] of patterns) take(pattern, (place) => ({ kind, ...place }))
  take(kids, (place) => ({ kind: 'kids', span: { from: 0, to: 12, implied: true }, ...place }))
  return found
}

type Named = Place & { readonly keys: readonly string[]; readonly byName: boolean }

const namesIn = (tokens: readonly Token[], rows: Rows, years: readonly Place[]): readonly Named[] =>
  refsIn(tokens, rows).flatMap(({ keys, from, to, by }) => {
    const place = { start: tokens[from]?.start ?? 0, end: tokens[to - 1]?.end ?? 0 }
    return keys.length === 1 && isFree(years, place) ? [{ keys, byName: by === 'name', ...place }] : []
  })

/** Behind these a bare figure is an age, as behind a name. */
const leads: readonly string[] = ['rest', 'all', 'they', 'not', 'only']

/** Between whom an age is told of and the bare figure of it: "Leo: 2", "Leo (2)". */
const joint = /^[\s:=(–-]{1,3}$/

/** "Leo 2", "the others 13": bare figures close behind whom they are told of, unless they are the player's own number. */
const bareYears = (
  folded: string,
  tokens: readonly Token[],
  { subjects, rows }: { subjects: readonly (Place & { readonly keys?: readonly string[] })[]; rows: Rows },
): readonly Years[] =>
  tokens.flatMap((token): readonly Years[] => {
    const before = subjects.findLast(({ end }) => end <= token.start)
    if (!isNumber(token) || before === undefined || !joint.test(folded.slice(before.end, token.start))) return []
    if (before.keys?.some((key) => rows[key]?.number === token.text) || !/^\d{1,2}$/.test(token.text)) return []
    const age = Number(token.text)
    return [{ from: age, to: age, start: token.start, end: token.end }]
  })

/** All that a text says of ages and of whom, in its order. */
export const mentionsIn = (text: string, rows: Rows): readonly Mention[] => {
  const folded = fold(text)
  const tokens = tokensOf(text)
  const years = yearsIn(folded)
  const names = namesIn(tokens, rows, years)
  const words = wordMentions(folded, [...years, ...names])
  const whole = words.filter(({ kind }) => leads.includes(kind))
  const subjects = [...names.filter(({ byName }) => byName), ...whole].toSorted((a, b) => a.start - b.start)
  const bare = bareYears(folded, tokens, { subjects, rows }).filter((one) => isFree(years, one))
  return [
    ...[...years, ...bare].map(({ start, end, ...span }): Mention => ({ kind: 'age', span, start, end })),
    ...names.filter((one) => isFree(bare, one)).map(({ keys, start, end }): Mention => ({ kind: 'rows', keys, start, end })),
    ...words,
  ].toSorted((a, b) => a.start - b.start)
}
