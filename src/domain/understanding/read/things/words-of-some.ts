import type { PlaceId } from '../../../garment/place.ts'
import type { Draft, Mark } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Lexicon, type Term, termsOf } from '../text/lexicon.ts'
import { blanked, fold, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'
import { placesAt } from './groups.ts'
import { itemsOf } from './items.ts'

/** Words that some players wear, in whose lines they are kept; `rest` is the text without these sentences. */
export type WordsOfSome = { readonly patches: readonly Patch[]; readonly rest: string }

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

type Sentence = {
  readonly tokens: readonly Token[]
  readonly terms: readonly Term[]
  readonly text: string
  readonly place: PlaceId | null
  readonly keys: readonly string[]
}

const said = listed.parts

const idOf = (text: string): string =>
  `word-${fold(text)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40)}`

/** "3 inches", "5 of them", "2 more": figures that are no players. */
const isCounted = (tokens: readonly Token[], terms: readonly Term[], to: number): boolean =>
  isWord(tokens[to], ...listed.told.of, ...listed.anew.more) ||
  terms.some(({ meaning, from }) => from === to && (meaning.kind === 'unit' || meaning.kind === 'garment'))

const whom = (tokens: readonly Token[], terms: readonly Term[], { rows }: Draft): readonly string[] | null => {
  const refs = refsIn(tokens, rows).filter(({ to, by }) => by === 'name' || !isCounted(tokens, terms, to))
  const keys = [...new Set(refs.flatMap((ref) => ref.keys))]
  return refs.every((ref) => ref.keys.length === 1) && keys.length > 0 && keys.length < Object.keys(rows).length ? keys : null
}

const placeIn = (terms: readonly Term[]): PlaceId | null => {
  const spots = new Set(terms.flatMap(({ meaning }) => (meaning.kind === 'place' ? placesAt('text', meaning.id) : [])))
  const [only, ...more] = spots
  return only !== undefined && more.length === 0 ? only : null
}

/** A sentence that speaks of one word to be pressed and of some players. */
const sentenceOf = (words: string, { draft, lexicon }: Scene): Sentence | null => {
  const tokens = tokensOf(words)
  const terms = termsOf(lexicon, tokens)
  const keys = whom(tokens, terms, draft)
  if (keys === null) return null
  const items = itemsOf({ text: words, tokens, terms, shouted: false })
  const [text, ...more] = items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))
  return text === undefined || more.length > 0 ? null : { tokens, terms, text, place: placeIn(terms), keys }
}

const isSame = (mark: Mark | undefined, text: string): mark is Mark => mark?.text !== undefined && fold(mark.text) === fold(text)

/** Who wears the word already. */
const wearers = ({ rows }: Draft, { text }: Sentence): readonly string[] =>
  Object.keys(rows).filter((key) => isSame(rows[key]?.extras?.[idOf(text)], text))

const put = (keys: readonly string[], text: string, mark: Mark): readonly Patch[] =>
  keys.map((key) => ({ path: ['rows', key, 'extras', idOf(text)], value: mark }))

const off = (keys: readonly string[], text: string): readonly Patch[] =>
  keys.map((key) => ({ path: ['rows', key, 'extras', idOf(text)], value: null }))

/** What is there of the word already: its mark for all, or that of a player. */
const known = (draft: Draft, sentence: Sentence): { readonly id: string | null; readonly mark: Mark } | null => {
  const all = Object.entries(draft.marks).find(([, mark]) => mark.wanted !== false && isSame(mark, sentence.text))
  if (all !== undefined) return { id: all[0], mark: all[1] }
  const [key] = wearers(draft, sentence)
  const mark = draft.rows[key ?? '']?.extras?.[idOf(sentence.text)]
  return mark === undefined ? null : { id: null, mark }
}

const fresh = ({ terms, text, place }: Sentence): Mark | null => {
  if (place === null) return null
  const hues = terms.flatMap(({ meaning }) => (meaning.kind === 'colour' && meaning.readings === undefined ? [meaning.id] : []))
  const [colour, ...more] = hues
  return { content: 'text', text, place, ...(colour === undefined || more.length > 0 ? {} : { style: { colour } }) }
}

const patchesOf = (draft: Draft, sentence: Sentence): readonly Patch[] => {
  const { tokens, terms, text, keys } = sentence
  const there = known(draft, sentence)
  const only = terms.some(({ meaning }) => meaning.kind === 'only')
  const refuses = tokens.some((token) => isWord(token, ...listed.leftOff.refusing))
  const gives = tokens.some((token) => isWord(token, ...said.wearing))
  if (!gives && !only) return []
  if (there === null) {
    const mark = refuses ? null : fresh(sentence)
    return mark === null ? [] : put(keys, text, mark)
  }
  if (there.id !== null)
    return only && !refuses ? [{ path: ['marks', there.id], value: null }, ...put(keys, text, there.mark)] : []
  if (refuses) return off(keys, text)
  const others = only ? wearers(draft, sentence).filter((key) => !keys.includes(key)) : []
  return [...off(others, text), ...put(keys, text, there.mark)]
}

/**
 * "The three seniors, 5, 9 and 23, get SENIOR on the right sleeve", "SENIOR is only for 5 and 9": a word that some players wear and the
 * others do not.
 */
export const readWordsOfSome = (text: string, scene: Scene): WordsOfSome => {
  if (Object.keys(scene.draft.rows).length < 2 || text.length > 600) return { patches: [], rest: text }
  return [...text.matchAll(/[^.\n!?;]+/g)].reduce<WordsOfSome>(
    (found, { 0: words, index }) => {
      const sentence = sentenceOf(words, scene)
      const patches = sentence === null ? [] : patchesOf(scene.draft, sentence)
      if (patches.length === 0) return found
      return { patches: [...found.patches, ...patches], rest: blanked(found.rest, index, index + words.length) }
    },
    { patches: [], rest: text },
  )
}
