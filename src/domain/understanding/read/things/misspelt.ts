import type { Draft } from '../../draft.ts'
import type { Meaning } from '../../words/word-list.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { fold } from '../text/tokens.ts'

/** Short words are too near to one another. */
const shortest = 5

/** Words of which a slip of the fingers is mended: the others are too many, and names among them. */
const mended: ReadonlySet<Meaning['kind']> = new Set(['colour', 'garment', 'content'])

/** A letter that stands twice stands once. */
const single = (word: string): string => word.replace(/(.)\1+/g, '$1')

const sorted = (word: string): string => [...word].sort().join('')

/** Two letters that stand beside each other changed places. */
const isTurned = (word: string, right: string): boolean => {
  const at = [...word].findIndex((letter, index) => letter !== right[index])
  const turned = at >= 0 && word.length === right.length && word[at] === right[at + 1] && word[at + 1] === right[at]
  return turned && word.slice(at + 2) === right.slice(at + 2)
}

type Slips = { readonly once: ReadonlyMap<string, string>; readonly turned: ReadonlyMap<string, readonly string[]> }

const built = new WeakMap<Lexicon, Slips>()

/** The words of a lexicon by what slips leave of them. */
const slipsOf = (lexicon: Lexicon): Slips => {
  const known = built.get(lexicon)
  if (known !== undefined) return known
  const words = [...lexicon.entries].flatMap(([word, { kind }]) =>
    mended.has(kind) && word.length >= shortest && /^[a-z]+$/.test(word) ? [word] : [],
  )
  const once = new Map(words.map((word) => [single(word), word]))
  // "Maron" may be maroon or marrón: of two words neither is meant for sure.
  for (const word of words) if (once.get(single(word)) !== word) once.delete(single(word))
  const turned = new Map<string, string[]>()
  for (const word of words) turned.set(sorted(word), [...(turned.get(sorted(word)) ?? []), word])
  built.set(lexicon, { once, turned })
  return { once, turned }
}

const rightOf = (word: string, { once, turned }: Slips): string | undefined =>
  turned.get(sorted(word))?.find((right) => isTurned(word, right)) ?? once.get(single(word))

/** "Pruple", "yelow", "hoddies": a word in small letters that means nothing, with a letter twice or once or two of them turned, is the word of the trade. */
export const withRightSpelling = (
  text: string,
  { draft, lexicon }: { readonly draft: Draft; readonly lexicon: Lexicon },
): string => {
  const names = new Set(Object.values(draft.rows).flatMap(({ name = '' }) => fold(name).split(' ')))
  return text.replace(/(?<![\p{L}\p{M}\d@.#'-])\p{Ll}{5,20}(?![\p{L}\p{M}\d@'-])/gu, (word) => {
    const key = fold(word)
    if (lexicon.longest.has(key) || names.has(key)) return word
    return rightOf(key, slipsOf(lexicon)) ?? word
  })
}
