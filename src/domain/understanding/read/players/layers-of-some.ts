import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { isAdd } from '../list/change.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { blanked, isCapital, isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'
import { nameClauses } from '../whom/name-clauses.ts'
import { type Ref, refsIn } from '../whom/refs.ts'
import { isDrop } from './drops.ts'

/** Clauses that ask of some players what all of them have alike, and the text without them. */
export type LayersOfSome = { readonly alike: readonly string[]; readonly rest: string }

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

const said = listed.leftOff
const lifting = phrasesOf([...said.lifting, ...said.bareOf])

/** A word that takes off, refuses or excepts. */
const refuses = (tokens: readonly Token[]): boolean =>
  tokens.some(
    (token, at) =>
      phraseEnd(tokens, at, lifting) !== null || isDrop(token) || isWord(token, ...said.refusing, ...listed.players.except),
  ) ||
  (tokens.some((token) => isWord(token, ...said.lifts)) && tokens.some((token) => isWord(token, ...said.lifted)))

/** A word that gives: "stones for Abel", "add stones to 12", "Abel gets an outline". */
const wishes = (tokens: readonly Token[], refs: readonly Ref[]): boolean =>
  tokens.some((token) => isAdd(token) || isWord(token, ...said.theirs, ...listed.things.having)) ||
  refs.some(({ from }) => isWord(tokens[from - 1], ...said.whose))

/** A name; a number only as somebody's: "#12", and beside a refusal "for 12". */
const isWhose = (tokens: readonly Token[], { from, to, by }: Ref, refused: boolean): boolean => {
  if (by === 'name') return true
  const before = tokens[from - 1]
  return before?.text === '#' || to > from + 1 || (refused && isWord(before, ...said.whose, ...listed.again.joins))
}

/** Layers named in a clause; "Stone" and "Crystal" are players where such a one is on the list. */
const ofLayers = (tokens: readonly Token[], refs: readonly Ref[], { lexicon }: Scene): boolean =>
  termsOf(lexicon, tokens).some(
    ({ meaning: { kind }, from }) =>
      ['stones', 'outline', 'shadow'].includes(kind) && !refs.some((ref) => from >= ref.from && from < ref.to),
  )

const playersIn = (tokens: readonly Token[], { draft, lexicon }: Scene): readonly Ref[] => {
  const hues = termsOf(lexicon, tokens).flatMap(({ meaning, from }) => (meaning.kind === 'colour' ? [from] : []))
  return refsIn(tokens, draft.rows).filter(({ from }) => !hues.includes(from) || isCapital(tokens[from]))
}

/** "Leave the stones off Abel", "no stones for Zoe and Eli", "solo Ana con contorno": asked for some of the list. */
const isOfSome = (text: string, scene: Scene): boolean => {
  const tokens = tokensOf(text)
  const named = playersIn(tokens, scene)
  const refused = refuses(tokens)
  const refs = named.filter((ref) => isWhose(tokens, ref, refused))
  const keys = new Set(refs.flatMap((ref) => ref.keys))
  const few = keys.size > 0 && keys.size < Object.keys(scene.draft.rows).length
  return few && ofLayers(tokens, named, scene) && (refused || wishes(tokens, refs))
}

/**
 * Stones, outlines and shadows are of all that is put on alike, and no line of a roster can go without: what is asked of them for some
 * players is no wish for all, so that nothing is changed and it is told.
 */
export const readLayersOfSome = (text: string, scene: Scene): LayersOfSome => {
  if (Object.keys(scene.draft.rows).length < 2 || text.length > 600) return { alike: [], rest: text }
  return nameClauses(text, scene.draft)
    .filter(({ from, to }) => isOfSome(text.slice(from, to), scene))
    .reduce<LayersOfSome>(
      ({ alike, rest }, { from, to }) => ({ alike: [...alike, text.slice(from, to).trim()], rest: blanked(rest, from, to) }),
      { alike: [], rest: text },
    )
}
