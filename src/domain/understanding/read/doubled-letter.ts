import { listed, wordValues } from '../words/languages.ts'
import { fold, isWord, type Token } from './tokens.ts'

const letterOf = (token: Token | undefined): string | null => {
  const key = token?.key ?? ''
  if (/^[a-z](?:'?s)?$/.test(key)) return key[0] ?? null
  return wordValues.letters[key] ?? null
}

/** The letter that words say stands twice: "with a double l", "two Ls", "con doble ele". */
export const doubled = (tokens: readonly Token[]): string | null => {
  const at = tokens.findIndex((token, index) => {
    const twice = isWord(token, ...listed.again.twice) || token.text === '2'
    return twice && letterOf(tokens[index + 1]) !== null
  })
  return at < 0 ? null : letterOf(tokens[at + 1])
}

/** A word with that letter twice: where it stands once, or at the end where the end was said; null where it is not certain which. */
export const withDoubled = (word: string, tokens: readonly Token[]): string | null => {
  const letter = doubled(tokens)
  if (letter === null) return null
  const places = [...fold(word)].flatMap((sign, index) => (sign === letter ? [index] : []))
  const ends = tokens.some((token) => isWord(token, ...listed.again.end))
  const [first] = places
  if (first === undefined || (places.length > 1 && !ends)) return null
  const at = ends ? (places.at(-1) ?? first) : first
  if (ends && at !== word.length - 1) return null
  return `${word.slice(0, at + 1)}${fold(word[at] ?? '')}${word.slice(at + 1)}`
}
