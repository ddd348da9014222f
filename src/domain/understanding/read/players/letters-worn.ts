import type { Draft } from '../../draft.ts'
import { spoken } from '../../words/languages.ts'
import { tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'
import type { Worn } from './letters.ts'

const said = spoken.rowMarks

/** "the C", "an A", "the As", "A's are", "C:", and who wears them by their part in the team: "alternates", "captain". */
const marks = new RegExp(
  [
    `\\b${said.letter} (?:[\\p{L}]+'s )?["']?([CA])(?:'?s)?["']?(?![\\p{L}'])`,
    `(?:^|(?<=[\\s,]))([CA])(?='?s?(?: ${said.letterFor} |: ))`,
    '\\(([CA])\\)',
    `(?<![\\p{L}])(?:(${said.alternate})|${said.captain})(?![\\p{L}])`,
  ].join('|'),
  'giu',
)

type Mark = { readonly at: number; readonly letter: string }

const marksIn = (sentence: string): readonly Mark[] =>
  [...sentence.matchAll(marks)].flatMap(({ index, 1: lettered, 2: led, 3: bracketed, 4: alternate }): readonly Mark[] => {
    const letter = lettered ?? led ?? bracketed
    if (letter !== undefined) return /[CA]/.test(letter) ? [{ at: index, letter }] : []
    return [{ at: index, letter: alternate === undefined ? 'C' : 'A' }]
  })

type People = readonly { readonly at: number; readonly keys: readonly string[] }[]

/** Each mark with those who stand in front of it, or behind; none where a letter has nobody. */
const shared = (found: readonly Mark[], people: People, { first, end }: { readonly first: boolean; readonly end: number }) => {
  const worn = found.flatMap(({ at, letter }, index): readonly Worn[] => {
    const from = first ? (found[index - 1]?.at ?? -1) : at
    const to = first ? at : (found[index + 1]?.at ?? end)
    const keys = people.filter((one) => one.at > from && one.at < to).flatMap((one) => one.keys)
    return keys.length === 0 ? [] : [{ letter, keys }]
  })
  return found.every(({ letter }) => worn.some((one) => one.letter === letter)) ? worn : []
}

/**
 * Who wears which of two letters: "17 is captain, she wears a C, and 28 wears an A", "captain is 7, alternates 4 and 12". Where people are
 * named first each letter is theirs who stand before it, else behind it.
 */
export const wornLetters = (sentence: string, { rows }: Draft): readonly Worn[] => {
  const found = marksIn(sentence)
  if (new Set(found.map(({ letter }) => letter)).size < 2) return []
  const tokens = tokensOf(sentence)
  const people = refsIn(tokens, rows).map((ref) => ({
    at: tokens[ref.from]?.start ?? 0,
    keys: ref.keys.length === 1 ? ref.keys : [],
  }))
  const first = (people[0]?.at ?? Number.POSITIVE_INFINITY) < (found[0]?.at ?? 0)
  const end = sentence.length
  const worn = shared(found, people, { first, end })
  return worn.length > 0 ? worn : shared(found, people, { first: !first, end })
}
