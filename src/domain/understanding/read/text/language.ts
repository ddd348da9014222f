import type { Language } from '../../../units/language.ts'
import { either, languages } from '../../words/languages.ts'
import { fold } from './tokens.ts'

const known = Object.entries(languages).map(([code, { basics }]) => ({
  code,
  small: new Set(basics.small),
  letters: basics.letters,
}))

const isLanguage = (code: string): code is Language => Object.hasOwn(languages, code)

/** The language a message is in, by its small words and its own letters; null when it cannot be told. */
export const languageOf = (text: string): Language | null => {
  const words = fold(text).match(/[a-z']+/g) ?? []
  const counted = known.map(({ code, small, letters }) => ({
    code,
    heard: words.filter((word) => small.has(word)).length + (letters.test(text) ? 2 : 0),
  }))
  const most = Math.max(...counted.map(({ heard }) => heard))
  const [first, ...others] = counted.filter(({ heard }) => heard === most)
  return first === undefined || others.length > 0 || !isLanguage(first.code) ? null : first.code
}

const wishes = Object.entries(languages).map(([code, { intents }]) => ({
  code,
  asks: new RegExp(`^${either(intents.language)}[.!? ]*$`),
}))

/** The language that a whole message asks for: "in English please", "¿hablas español?". `folded`: lower case, no accents. */
export const languageWished = (folded: string): Language | null => {
  const code = wishes.find(({ asks }) => asks.test(folded))?.code
  return code !== undefined && isLanguage(code) ? code : null
}
