import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { blanked, fold, isWord, tokensOf } from '../text/tokens.ts'

const said = spoken.rowMarks
/** The words for long sleeves with what joins them to the rest: "…, and with long sleeves". */
const sleeves = new RegExp(`(?:[,;]\\s*)?(?:\\b${said.sleevesJoin} )*\\b(${said.longSleeve})(?!\\p{L})`, 'iu')
const keeper = new RegExp(`(?<!\\p{L})${said.keeper}(?!\\p{L})`, 'u')
const others: readonly string[] = [...listed.players.every, ...listed.players.except, ...listed.leftOff.refusing]

const keepersIn = ({ rows }: Draft): readonly string[] =>
  Object.entries(rows).flatMap(([key, { note }]) => (note !== undefined && keeper.test(fold(note)) ? [key] : []))

/** Garments in long sleeves are another matter. */
const isOfGarments = (sentence: string, lexicon: Lexicon): boolean =>
  termsOf(lexicon, tokensOf(sentence)).some(({ meaning }) => meaning.kind === 'garment')

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

/** Who keeps the goal by the list before, and long sleeves for them: "the keeper's is yellow, and long sleeves". `rest` is the text without the sleeves. */
export const readSleevesOfRole = (
  text: string,
  { draft, lexicon }: Scene,
): { readonly patches: readonly Patch[]; readonly rest: string } => {
  const keys = keepersIn(draft)
  if (keys.length === 0) return { patches: [], rest: text }
  for (const { 0: sentence, index } of text.matchAll(/[^.!?\n]+/g)) {
    const found = sleeves.exec(sentence)
    const words = found?.[1]
    if (found === null || words === undefined || !keeper.test(fold(sentence)) || isOfGarments(sentence, lexicon)) continue
    if (tokensOf(sentence).some((token) => isWord(token, ...others))) continue
    const patches = keys.map((key): Patch => {
      const note = draft.rows[key]?.note ?? ''
      return { path: ['rows', key, 'note'], value: fold(note).includes(fold(words)) ? note : `${note}, ${words}` }
    })
    const from = index + found.index
    return { patches, rest: blanked(text, from, from + found[0].length) }
  }
  return { patches: [], rest: text }
}
