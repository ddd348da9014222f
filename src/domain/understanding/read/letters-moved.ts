import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { spoken } from '../words/languages.ts'
import { letterId, letterIn, refKeys, type Worn } from './letters.ts'
import { fold, tokensOf } from './tokens.ts'

/** Whose letter is taken off, who wears it from now on, and the words that say so. */
export type MovedLetter = { readonly patches: readonly Patch[]; readonly worn: Worn | null; readonly words: string }

const word = (source: string): RegExp => new RegExp(`(?<!\\p{L})${source}(?!\\p{L})`, 'iu')
const givesUp = word(spoken.rowMarks.givesUp)
const takesOff = word(spoken.rowMarks.takesOff)
const moves = word(spoken.rowMarks.moves)

const named = (words: string, draft: Draft): readonly string[] => [...new Set(refKeys(tokensOf(words), draft))]

const off = (keys: readonly string[], letter: string): readonly Patch[] =>
  keys.map((key) => ({ path: ['rows', key, 'extras', letterId(letter)], value: null }))

/** "al 6 ya no le pongas la C", "no C for 6": the clause that takes a letter off, and who is named in the others. */
const takenOff = (sentence: string, letter: string, { draft, wears }: Scene): MovedLetter | null => {
  const clauses = sentence.split(',')
  const gone = clauses.filter((clause) => takesOff.test(fold(clause)) && named(clause, draft).some(wears))
  const others = clauses.filter((clause) => !gone.includes(clause)).join(',')
  const keys = named(others, draft)
  if (gone.length === 0) return null
  const patches = off(
    gone.flatMap((clause) => named(clause, draft).filter(wears)),
    letter,
  )
  return { patches, worn: keys.length === 0 ? null : { letter, keys }, words: others }
}

type Scene = { readonly draft: Draft; readonly wears: (key: string) => boolean }

/**
 * A letter that one of the list wears no more, and another may take: "4 gave up the A, put it on 19 instead", "the A on 27 goes to 8",
 * "la C ya no es del 6, es del 15"; null where a sentence says nothing like it.
 */
export const movedLetters = (sentence: string, draft: Draft): MovedLetter | null => {
  const letter = letterIn(sentence)
  if (letter === undefined) return null
  const wears = (key: string): boolean => draft.rows[key]?.extras?.[letterId(letter)] !== undefined
  const taken = takenOff(sentence, letter, { draft, wears })
  if (taken !== null) return taken
  const keys = named(sentence, draft)
  const [from, to] = [keys.filter(wears), keys.filter((key) => !wears(key))]
  const folded = fold(sentence)
  const hands = givesUp.test(folded) || (moves.test(folded) && to.length > 0)
  if (from.length === 0 || !hands) return null
  return { patches: off(from, letter), worn: to.length === 0 ? null : { letter, keys: to }, words: sentence }
}
