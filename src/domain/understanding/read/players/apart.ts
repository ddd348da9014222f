import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { anyOf, blanked, fold, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'

/** A player whose jersey has another colour, and the words that said so. */
export type ApartFound = { readonly patches: readonly Patch[]; readonly rest: string }

const said = spoken.rowMarks
const who = anyOf(said.keeper)
const wears = anyOf(said.wears)

type Clause = { readonly text: string; readonly at: number }

const goesOn = new RegExp(`^ ?${said.wearsToo}\\b.`)

/** A clause with the next one behind its comma, where that tells what is worn. */
const longer = (text: string, clause: Clause, next: Clause | undefined): readonly Clause[] => {
  const comma = clause.at + clause.text.length
  const joins = next !== undefined && next.at === comma + 1 && text[comma] === ',' && goesOn.test(next.text)
  return joins ? [{ text: `${clause.text},${next.text}`, at: clause.at }] : []
}

/** Clauses; one that only names the player goes on into the next: "la portera Ximena usa el 1, va de verde". */
const clausesOf = (text: string): readonly Clause[] => {
  const clauses = [...text.matchAll(/[^.,;\n!?]+/g)].map((match) => ({ text: match[0], at: match.index }))
  return [...clauses.flatMap((clause, index) => longer(text, clause, clauses[index + 1])), ...clauses]
}

const near = new RegExp(`(?:#|\\b${said.numberNear})(\\d{1,3})\\b`)
const numberNear = (sentence: string): string | null => near.exec(fold(sentence))?.[1] ?? null

const rowFor = (text: string, at: number, draft: Draft): readonly string[] => {
  const stretch = text.slice(at, at + 140).split('\n')[0] ?? ''
  const number = numberNear(stretch)
  const byNumber = Object.entries(draft.rows).flatMap(([key, row]) => (number !== null && row.number === number ? [key] : []))
  if (byNumber.length > 0) return byNumber
  return refsIn(tokensOf(stretch), draft.rows).flatMap((ref) => (ref.keys.length === 1 ? ref.keys : []))
}

const contents = ['number', 'name'] as const

/** "… with a white number": what is on the jersey apart has a colour of its own; null where more or something else is told of it. */
const ownMake = (text: string, lexicon: Lexicon): readonly Patch[] | null => {
  const terms = termsOf(lexicon, tokensOf(text)).map(({ meaning }) => meaning)
  const hues = terms.flatMap((one) => (one.kind === 'colour' && one.readings === undefined ? [one.id] : []))
  const put = contents.filter((id) => terms.some((one) => one.kind === 'content' && one.id === id))
  const plain = terms.every(({ kind }) => ['colour', 'content', 'with', 'and', 'in', 'unit'].includes(kind)) && !/\d/.test(text)
  const [hue, ...more] = hues
  if (hue === undefined || more.length > 0 || put.length === 0 || !plain) return null
  const places = put.flatMap((id) => (id === 'number' ? ['number', 'front-number', 'back-number'] : ['name']))
  return places.map((id): Patch => ({ path: ['styles', `${id}@jersey-2`, 'colour'], value: hue }))
}

const besides = new RegExp(`\\b${said.with}\\b|$`, 'u')

/** "the libero wears gold instead, she's #5": a second jersey in that colour, worn by that row alone. */
export const readApart = (text: string, draft: Draft, lexicon: Lexicon): ApartFound => {
  for (const clause of clausesOf(text)) {
    const folded = fold(clause.text)
    const found = who.exec(folded)
    if (found === null || !wears.test(folded.slice(found.index))) continue
    const tokens = tokensOf(clause.text)
    const terms = termsOf(lexicon, tokens)
    const hue = terms.find((term) => term.meaning.kind === 'colour' && (tokens[term.from]?.start ?? 0) > found.index)?.meaning
    if (
      hue?.kind !== 'colour' ||
      terms.some(
        (term) => term.meaning.kind === 'content' && (tokens[term.from]?.start ?? 0) < (tokens[terms.indexOf(term)]?.start ?? 0),
      )
    )
      continue
    const keys = rowFor(text, clause.at, draft)
    const patches: readonly Patch[] = [
      { path: ['garments', 'jersey-2', 'kind'], value: 'jersey' },
      ...(hue.readings === undefined ? [{ path: ['garments', 'jersey-2', 'colour'], value: hue.id }] : []),
      ...keys.map((key): Patch => ({ path: ['rows', key, 'garment'], value: 'jersey-2' })),
    ]
    const end = clause.at + clause.text.search(besides)
    const own = ownMake(text.slice(end, clause.at + clause.text.length), lexicon)
    const to = own === null ? end : clause.at + clause.text.length
    return { patches: [...patches, ...(own ?? [])], rest: blanked(text, clause.at, to) }
  }
  return { patches: [], rest: text }
}
