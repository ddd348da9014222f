import { either, languages, months, spoken, weekdays } from '../../words/languages.ts'
import { fold } from '../text/tokens.ts'

const said = spoken.complaints

/** Words for amounts of a few, in any language. */
const amounts: ReadonlyMap<string, number> = new Map(
  Object.values(languages).flatMap(({ list }) =>
    list.flatMap(({ means, words }) => (means.kind === 'count' ? words.map((word) => [fold(word), means.id] as const) : [])),
  ),
)

const amount = new RegExp(
  `\\b(\\d{1,2}(?= ?[a-z])|${said.pair}|${either([...amounts.keys()])})\\b(?! ?${said.counted}| ?${said.notNumber})`,
  'g',
)

const goesOn = `(?:, ?(?:${said.and} )?| ${said.and} | & )`
const figure = `(?:${said.theNumber}|#){0,2}\\d{1,3}\\b(?![/.:]\\d)`
const named = "\\p{Lu}[\\p{Ll}\\p{M}]+(?:[-' ]\\p{Lu}[\\p{Ll}\\p{M}]+)?"
const figures = new RegExp(`[,:(] ?(${figure}(?:${goesOn}${figure}){1,12})(?= ?(?:[,.;!)?]|$))`)
const names = new RegExp(`[,:(] ?(${named}(?:${goesOn}${named}){1,12})(?= ?(?:[,.;!)?]|$))`, 'u')
const between = new RegExp(goesOn)

const calendar = new Set([...months, ...weekdays].flat())
const isPerson = (name: string): boolean => !calendar.has(fold(name))

const amountOf = (word: string): number => amounts.get(word) ?? (/\d/.test(word) ? Number(word) : 2)

export type Listed = { readonly numbers: readonly string[]; readonly names: readonly string[] }

/** What stands in a list as long as an amount that was said before it: "two of them, Odalys and Brynn", "on three jerseys: 4, 15 and 33". */
const asMany = (sentence: string, list: RegExp): readonly string[] => {
  const found = list.exec(sentence)
  const items = (found?.[1] ?? '').split(between)
  const before = fold(sentence.slice(0, found?.index ?? 0))
  const counts = [...before.matchAll(amount)].map(([, word = '']) => amountOf(word))
  return found !== null && counts.includes(items.length) ? items : []
}

/** Numbers and names of the pieces that a complaint counts and then lists. */
export const listedPieces = (text: string): Listed => {
  const sentences = text.split(/(?<=[.;!?\n])/)
  return {
    numbers: sentences.flatMap((one) => asMany(fold(one), figures)).flatMap((item) => item.match(/\d{1,3}/g) ?? []),
    names: sentences.flatMap((one) => asMany(one, names)).filter(isPerson),
  }
}

const pointed = new RegExp(
  `(?:^|[.;!?\\n] ?|(?<!\\p{L})${said.pointing} )(${named}(?:${goesOn}${named}){1,12})(?= ?(?:[.;!?]|$))`,
  'gu',
)

/** Where pieces are asked about: "it's Odette and Lia", "only on Sam and Joaquin", "Iker y Bruno". */
export const pointedNames = (text: string): readonly string[] =>
  [...text.matchAll(pointed)].flatMap(([, list = '']) => list.split(between)).filter(isPerson)
