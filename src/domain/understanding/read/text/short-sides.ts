import { either, languages, spoken } from '../../words/languages.ts'
import { fold } from './tokens.ts'

type Side = 'left' | 'right'
type Phrase = { readonly part: string; readonly side: Side; readonly text: string; readonly nounFirst: boolean }

/** "manga izquierda", "left chest": every place of two words, one of which is a side. */
const phrases: readonly Phrase[] = Object.values(languages).flatMap(({ list, sides, basics: { nounFirst } }) =>
  list.flatMap(({ means, words }) => {
    const side: Side | null =
      means.kind !== 'place' ? null : means.id.startsWith('left-') ? 'left' : means.id.startsWith('right-') ? 'right' : null
    return words.flatMap((text) => {
      const [one = '', two = '', ...more] = text.split(' ')
      const part = nounFirst ? one : two
      const fits = side !== null && more.length === 0 && sides[side].includes(fold(nounFirst ? two : one))
      return fits ? [{ part: fold(part), side, text, nounFirst }] : []
    })
  }),
)

const shorts = (side: Side): string =>
  either(Object.values(languages).flatMap(({ sides }) => (side === 'left' ? sides.shortLeft : sides.shortRight)))

const replaced = phrases.map(({ part, side, text, nounFirst }) => {
  const short = `${shorts(side)}(?!\\p{L})(?:\\.(?=,| \\p{Ll}))?`
  const pattern = nounFirst
    ? `(?<!\\p{L})${part},? (?:${spoken.things.sideNoun} )?${short}`
    : `(?<!\\p{L})${short} ${part}(?!\\p{L})`
  return { pattern: new RegExp(pattern, 'giu'), text }
})

/** "Pecho izq.", "rt sleeve": a side that is cut short beside what it is of, written out; its full stop ends no sentence. */
export const withWholeSides = (text: string): string =>
  replaced.reduce((left, { pattern, text: whole }) => left.replace(pattern, whole), text)
