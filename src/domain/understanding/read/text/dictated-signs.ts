import { spoken } from '../../words/languages.ts'
import { fold } from './tokens.ts'

const stops = new RegExp(`(?<=\\s)${spoken.dictation.stop}(?![\\p{L}\\d])`, 'gu')
const commas = new RegExp(`(?<=[\\p{L}\\d]\\s)${spoken.dictation.comma}(?=\\s|$)`, 'gu')

/** A text in which every stretch that a pattern finds in its folded form is a sign. */
const signed = (text: string, pattern: RegExp, sign: string): string =>
  [...fold(text).matchAll(pattern)].reduceRight((left, found) => {
    const to = found.index + found[0].length
    return `${left.slice(0, found.index).trimEnd()}${sign}${left.slice(to)}`
  }, text)

const letters = new RegExp(
  `(\\p{Lu}[\\p{L}'’]+),? ${spoken.dictation.spelling}[:,]? ((?:\\p{L}[ .-]+){2,}\\p{L})(?![\\p{L}'’])`,
  'gu',
)

const named = (spelled: string): string => {
  const word = spelled.replace(/[^\p{L}]/gu, '')
  return `${word.slice(0, 1).toUpperCase()}${word.slice(1).toLowerCase()}`
}

/** "Baer spelled B A E R", "Bear, that's spelled b-a-e-r": the letters say how the name is written. */
const withLetters = (text: string): string => text.replace(letters, (_, _name: string, spelled: string) => named(spelled))

/** Signs and single letters that are spoken into the phone, as they are meant: "no names comma", "niño punto", "spelled B A E R". */
export const withDictatedSigns = (text: string): string => withLetters(signed(signed(text, commas, ','), stops, '.'))
