import type { PlaceId } from '../../../garment/place.ts'
import type { Draft, Mark } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { blanked, isNumber, isWord, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'
import { placesAt } from './groups.ts'

type Side = 'home' | 'away'
type Content = 'name' | 'number'
type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

/** Names or numbers that are on one of two sides alone, and the text without the words that say so. */
export type SideAlone = { readonly patches: readonly Patch[]; readonly rest: string }

/** A stretch between two pauses: the sides it names, whether it refuses something there, and of what it speaks. */
type Part = {
  readonly from: number
  readonly to: number
  readonly sides: readonly Side[]
  readonly contents: readonly Content[]
  readonly places: readonly PlaceId[]
  readonly refuses: boolean
  readonly only: boolean
  /** More is told than where: a colour, a player, a figure. */
  readonly more: boolean
}

const plain: readonly string[] = ['content', 'role', 'place', 'only', 'no', 'and', 'in', 'with', 'of', 'unit', 'garment', 'use']

const partOf = (text: string, from: number, { draft, lexicon }: Scene): Part => {
  const tokens = tokensOf(text)
  const terms = termsOf(lexicon, tokens)
  const meanings = terms.map(({ meaning }) => meaning)
  // "Nada más" is "only" and refuses nothing.
  const onlys = terms.flatMap(({ meaning, from, to }) => (meaning.kind === 'only' ? tokens.slice(from, to) : []))
  const contents = meanings.flatMap((one): readonly Content[] =>
    one.kind === 'content' && (one.id === 'name' || one.id === 'number') ? [one.id] : [],
  )
  return {
    from,
    to: from + text.length,
    sides: [...new Set(meanings.flatMap((one) => (one.kind === 'role' ? [one.id] : [])))],
    contents,
    places: meanings.flatMap((one) => (one.kind === 'place' ? placesAt('number', one.id) : [])),
    refuses: tokens.some((token) => isWord(token, ...listed.leftOff.refusing) && !onlys.includes(token)),
    only: meanings.some(({ kind }) => kind === 'only'),
    more:
      meanings.some((one) => !plain.includes(one.kind) || (one.kind === 'content' && one.id !== 'name' && one.id !== 'number')) ||
      tokens.some(isNumber) ||
      refsIn(tokens, draft.rows).length > 0,
  }
}

const others: Readonly<Record<Side, Side>> = { home: 'away', away: 'home' }

/** The side on which they are: the only one that is named, or the one that is left where the other is refused. */
const sideOf = (parts: readonly Part[]): Side | null => {
  const given = new Set(parts.flatMap((part) => (part.refuses ? [] : part.sides)))
  const refused = new Set(parts.flatMap((part) => (part.refuses ? part.sides : [])))
  const [side] = given
  const [off] = refused
  if (given.size > 1 || refused.size > 1 || side === off) return null
  if (off !== undefined) return side === undefined || side === others[off] ? others[off] : null
  return side !== undefined && parts.some(({ only }) => only) ? side : null
}

const worn = (draft: Draft, content: Content): readonly (readonly [string, Mark])[] =>
  Object.entries(draft.marks).filter(([, mark]) => mark.content === content && mark.wanted !== false)

const numberPlaces: readonly PlaceId[] = ['front-number', 'back-number']

/** Numbers that nobody placed yet stand front and back, each of which is on its own sides from now on. */
const placed = (draft: Draft, content: Content): readonly Patch[] => {
  const there = worn(draft, content)
  const loose = there.filter(([, { place }]) => place === undefined)
  const told = there.length === 0 && Object.keys(draft.styles).some((key) => key.split('@')[0] === content)
  if (content === 'name' || (loose.length === 0 && !told)) return []
  const style = loose[0]?.[1].style
  const make = style === undefined ? {} : { style }
  return [
    ...loose.map(([id]): Patch => ({ path: ['marks', id], value: null })),
    ...numberPlaces.map((place): Patch => ({ path: ['marks', place], value: { content, place, ...make } })),
  ]
}

type Told = { readonly side: Side; readonly content: Content; readonly places: readonly PlaceId[] }

const patchesOf = (start: Draft, { side, content, places }: Told): readonly Patch[] => {
  const apart = placed(start, content)
  const draft = preview(start, apart)
  const there = worn(draft, content).filter(
    ([, { place }]) => places.length === 0 || (place !== undefined && places.includes(place)),
  )
  if (there.length > 0) return [...apart, ...there.map(([id]): Patch => ({ path: ['marks', id, 'on'], value: [side] }))]
  return content === 'name' ? [{ path: ['marks', 'name'], value: { content, on: [side] } }] : []
}

const sentence = /[^.;!?\n]+/g
const stretch = /(?:(?! - )[^,—–])+/g

const inSentence = (words: string, at: number, scene: Scene): readonly Part[] =>
  [...words.matchAll(stretch)]
    .map(({ 0: text, index }) => partOf(text, at + index, scene))
    .filter(({ sides, contents }) => sides.length + contents.length > 0)

/** Home and away are there, or both are named. */
const hasSides = (text: string, { draft, lexicon }: Scene): boolean => {
  const named = termsOf(lexicon, tokensOf(text)).flatMap(({ meaning }) => (meaning.kind === 'role' ? [meaning.id] : []))
  const sides = new Set<string>([...Object.keys(draft.garments), ...named])
  return sides.has('home') && sides.has('away')
}

/** "Names on the home only", "nombres en el local, en el de visita no", "no front number on the away". */
export const readSideAlone = (text: string, scene: Scene): SideAlone => {
  if (!hasSides(text, scene)) return { patches: [], rest: text }
  return [...text.matchAll(sentence)].reduce<SideAlone>(
    (found, { 0: words, index }) => {
      const parts = inSentence(words, index, scene)
      const [content, ...besides] = new Set(parts.flatMap((part) => part.contents))
      const side = parts.every(({ more }) => !more) ? sideOf(parts) : null
      if (side === null || content === undefined || besides.length > 0) return found
      const told = { side, content, places: parts.flatMap(({ places }) => places) }
      const patches = patchesOf(preview(scene.draft, found.patches), told)
      if (patches.length === 0) return found
      return {
        patches: [...found.patches, ...patches],
        rest: parts.reduce((left, { from, to }) => blanked(left, from, to), found.rest),
      }
    },
    { patches: [], rest: text },
  )
}
