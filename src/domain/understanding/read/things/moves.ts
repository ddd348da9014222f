import type { PlaceId } from '../../../garment/place.ts'
import type { Draft, Mark } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { span } from '../list/change.ts'
import type { Term } from '../text/lexicon.ts'
import { fold, isEnd, type Token } from '../text/tokens.ts'
import { placesAt } from './groups.ts'

const moving = new RegExp(`\\b${spoken.things.moves}\\b`, 'u')

export type Move = { readonly patches: readonly Patch[]; readonly taken: ReadonlySet<number> }

const live = (draft: Draft): readonly (readonly [string, Mark])[] =>
  Object.entries(draft.marks).filter(([, mark]) => mark.wanted !== false && mark.place !== undefined)

const nothing: Move = { patches: [], taken: new Set() }

const patchesFor = (id: string, mark: Mark, place: PlaceId): readonly Patch[] => [
  { path: ['marks', id], value: null },
  { path: ['marks', place], value: { ...mark, place } },
]

const isBeforePlace = (no: Term, terms: readonly Term[]): boolean =>
  terms.some((term) => term.meaning.kind === 'place' && term.from >= no.to && term.from <= no.to + 2)

type Stretch = { readonly tokens: readonly Token[]; readonly from: number; readonly terms: readonly Term[] }

/** The sentences of a message, each with its terms; `from` is where its first token stands. */
const stretchesOf = (tokens: readonly Token[], terms: readonly Term[]): readonly Stretch[] => {
  const ends = [...[...tokens.keys()].filter((at) => isEndOf(tokens[at])), tokens.length]
  return ends.map((to, index) => {
    const from = index === 0 ? 0 : (ends[index - 1] ?? 0) + 1
    return { tokens: tokens.slice(from, to), from, terms: terms.filter((term) => term.from >= from && term.to <= to) }
  })
}

const isEndOf = (token: Token | undefined): boolean => token !== undefined && isEnd(token)

const moveIn = (text: string, { tokens, from, terms }: Stretch, draft: Draft): Move => {
  const words = text.slice(tokens[0]?.start ?? 0, tokens.at(-1)?.end ?? 0)
  if (words.length > 120 || !moving.test(fold(words))) return nothing
  const negated = (term: Term): boolean =>
    terms.some((one) => one.meaning.kind === 'no' && one.to <= term.from && one.to >= term.from - 2)
  const places = terms.filter((term) => term.meaning.kind === 'place' && !negated(term))
  const [spot] = places
  const colours = terms.some(
    (term) => term.meaning.kind === 'colour' || (term.meaning.kind === 'no' && !isBeforePlace(term, terms)),
  )
  if (spot?.meaning.kind !== 'place' || places.length !== 1 || colours) return nothing
  const content = terms.find((term) => term.meaning.kind === 'content')?.meaning
  const marks = live(draft).filter(([, mark]) => (content?.kind === 'content' ? mark.content === content.id : true))
  const [only] = marks
  const [place, ...more] = only === undefined ? [] : placesAt(only[1].content, spot.meaning.id)
  if (only === undefined || marks.length !== 1 || place === undefined || more.length > 0 || only[1].place === place)
    return nothing
  return { patches: patchesFor(only[0], only[1], place), taken: span(from, from + tokens.length) }
}

/** "actually put it on the front", "move the names below the number": the one thing of that kind changes its place. */
export const readMove = (
  text: string,
  { tokens, terms, draft }: { readonly tokens: readonly Token[]; readonly terms: readonly Term[]; readonly draft: Draft },
): Move => {
  if (text.length > 400) return nothing
  const found = stretchesOf(tokens, terms).map((stretch) => moveIn(text, stretch, draft))
  return found.find(({ patches }) => patches.length > 0) ?? nothing
}
