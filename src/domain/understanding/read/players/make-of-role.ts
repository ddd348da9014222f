import type { Draft, GarmentKind } from '../../draft.ts'
import { spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { fold, tokensOf } from '../text/tokens.ts'

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

const said = spoken.things
/** "The captain's", "los de los entrenadores"; "coaches should be", "the teachers in". */
const ofRole = new RegExp(`(?<!\\p{L})(?:${said.roleOwns}|${said.roleWears})(?!\\p{L})`, 'u')
/** A jersey is called a shirt, too. */
const tops: readonly GarmentKind[] = ['jersey', 't-shirt']
const made: readonly string[] = ['colour', 'stones', 'outline', 'shadow', 'class']

/** Another make of what they wear who are told by what they are and not by name: "the coaches' in gray". Whose that is, the list does not say. */
export const isOfRole = (words: string, { draft, lexicon }: Scene): boolean => {
  const found = ofRole.exec(fold(words))
  // "COACH in gold" is a word to be pressed on.
  const own = words.slice(found?.index ?? 0, (found?.index ?? 0) + 3)
  if (found === null || own === own.toUpperCase()) return false
  const tokens = tokensOf(words)
  const terms = termsOf(lexicon, tokens)
  const kinds = Object.values(draft.garments).map(({ kind }) => kind)
  const isThere = (id: GarmentKind): boolean =>
    kinds.includes(id) || (tops.includes(id) && kinds.some((kind) => kind !== undefined && tops.includes(kind)))
  const other = terms.some(({ meaning }) => meaning.kind === 'garment' && !isThere(meaning.id))
  return !other && terms.some(({ meaning, from }) => made.includes(meaning.kind) && (tokens[from]?.start ?? 0) > found.index)
}
