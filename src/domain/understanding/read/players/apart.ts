import type { Draft, GarmentKind } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { anyOf, blanked, fold, isNumber, tokensOf } from '../text/tokens.ts'
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

/** "… with a white number": what is on the garment apart has a colour of its own; null where more or something else is told of it. */
const ownMake = (text: string, garment: string, lexicon: Lexicon): readonly Patch[] | null => {
  const terms = termsOf(lexicon, tokensOf(text)).map(({ meaning }) => meaning)
  const hues = terms.flatMap((one) => (one.kind === 'colour' && one.readings === undefined ? [one.id] : []))
  const put = contents.filter((id) => terms.some((one) => one.kind === 'content' && one.id === id))
  const plain = terms.every(({ kind }) => ['colour', 'content', 'with', 'and', 'in', 'unit'].includes(kind)) && !/\d/.test(text)
  const [hue, ...more] = hues
  if (hue === undefined || more.length > 0 || put.length === 0 || !plain) return null
  const places = put.flatMap((id) => (id === 'number' ? ['number', 'front-number', 'back-number'] : ['name']))
  return places.map((id): Patch => ({ path: ['styles', `${id}@${garment}`, 'colour'], value: hue }))
}

const besides = new RegExp(`\\b${said.with}\\b|$`, 'u')

/** Between the player and the colour: "goalie orange", "the keeper's shirt should be orange", "la del portero que sea naranja". */
const leads = new RegExp(`^(?:'?s|')?(?: ${said.keeperLeads})* $`, 'u')
/** "Orange for the goalie", "naranja para el portero". */
const forKeeper = new RegExp(`^ (?:${said.keeperLeads} )*${said.forKeeper} (?:${said.keeperLeads} )?$`, 'u')

type Hue = { readonly id: string | null }

/** The colour that the one who keeps the goal wears in a clause; null where it tells of none. */
const hueOf = (text: string, lexicon: Lexicon): Hue | null => {
  const folded = fold(text)
  const found = who.exec(folded)
  if (found === null) return null
  const tokens = tokensOf(text)
  const end = found.index + found[0].length
  const terms = termsOf(lexicon, tokens).map(({ meaning, from, to }) => ({
    meaning,
    labels: isNumber(tokens[to]) || tokens[to]?.text === '#',
    start: tokens[from]?.start ?? 0,
    end: tokens[to - 1]?.end ?? 0,
  }))
  const colours = terms.flatMap(({ meaning, ...place }) => (meaning.kind === 'colour' ? [{ ...place, meaning }] : []))
  const behind = colours.find(({ start }) => start > found.index)
  const ahead = colours.find((one) => one.end <= found.index && forKeeper.test(folded.slice(one.end, found.index)))
  const worn = behind !== undefined && (leads.test(folded.slice(end, behind.start)) || wears.test(folded.slice(found.index)))
  const hue = worn ? behind : ahead
  // "The goalie's number in gold" is of the number; "the keeper, number 1, in orange" is not.
  const printed = terms.some(({ meaning, start, labels }) => meaning.kind === 'content' && !labels && start < (hue?.start ?? 0))
  return hue === undefined || printed ? null : { id: hue.meaning.readings === undefined ? hue.meaning.id : null }
}

/** The garment of the others, of which theirs is another. */
const likeOthers = ({ garments }: Draft): { readonly id: string; readonly kind: GarmentKind } => {
  const [only, ...more] = Object.entries(garments)
  const kind = only?.[1].kind
  return only === undefined || kind === undefined || more.length > 0
    ? { id: 'jersey-2', kind: 'jersey' }
    : { id: `${only[0]}-2`, kind }
}

/** "the libero wears gold instead, she's #5": a second garment in that colour, worn by that row alone. */
export const readApart = (text: string, draft: Draft, lexicon: Lexicon): ApartFound => {
  for (const clause of clausesOf(text)) {
    const hue = hueOf(clause.text, lexicon)
    if (hue === null) continue
    const { id, kind } = likeOthers(draft)
    const patches: readonly Patch[] = [
      { path: ['garments', id, 'kind'], value: kind },
      ...(hue.id === null ? [] : [{ path: ['garments', id, 'colour'], value: hue.id }]),
      ...rowFor(text, clause.at, draft).map((key): Patch => ({ path: ['rows', key, 'garment'], value: id })),
    ]
    const end = clause.at + clause.text.search(besides)
    const own = ownMake(text.slice(end, clause.at + clause.text.length), id, lexicon)
    const to = own === null ? end : clause.at + clause.text.length
    return { patches: [...patches, ...(own ?? [])], rest: blanked(text, clause.at, to) }
  }
  return { patches: [], rest: text }
}
