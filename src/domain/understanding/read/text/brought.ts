import { either, listed, spoken, weekdays } from '../../words/languages.ts'
import { type Lexicon, termsOf } from './lexicon.ts'
import { blanked, fold, tokensOf } from './tokens.ts'

const said = spoken.brought

const edge = '(?<![\\p{L}\\d])'
const end = '(?![\\p{L}\\d])'

/** What follows the verb in its own part of the sentence. */
const part = `(?:(?![,;:.!?\\n]| ${said.next}${end}).){0,60}`
const brings = new RegExp(`${edge}${said.brings}${end}(${part})`, 'gu')
const bringsThem = new RegExp(`${edge}${said.bringsThem}${end}(${part})`, 'gu')
const has = new RegExp(`${edge}${said.has}${end}(${part})`, 'gu')
const sure = new RegExp(`${edge}${said.sure}${end}`, 'gu')
const besides = new RegExp(`${edge}${said.besides}${end}`, 'u')
const them = new RegExp(`^ ${said.them}${end}`, 'u')

const days = either(weekdays.flat().map(fold))
const day = new RegExp(`(?:${edge}${said.before} )*${edge}${days}${end}`, 'gu')

const thatBehind = new RegExp(`(?: ${said.that})? *$`, 'u')

const ownWord = listed.brought.own[0] ?? ''

/** How long a stretch is up to the end of the first garment in it; null where it names none, or something else that is brought. */
const garmentEnd = (stretch: string, lexicon: Lexicon): number | null => {
  const tokens = tokensOf(stretch)
  const term = termsOf(lexicon, tokens).find(({ meaning }) => meaning.kind === 'garment')
  const last = term === undefined ? undefined : tokens[term.to - 1]
  return last === undefined || besides.test(fold(stretch.slice(0, last.end))) ? null : last.end
}

/** `verb`: who brings or has them; `object`: what follows. */
type Told = { readonly from: number; readonly to: number; readonly verb: string; readonly object: string }

const toldIn = (text: string, verb: RegExp): readonly Told[] =>
  [...fold(text).matchAll(verb)].map((match) => {
    const [from, to] = [match.index, match.index + match[0].length]
    const at = to - (match[1]?.length ?? 0)
    return { from, to, verb: text.slice(from, at), object: text.slice(at, to) }
  })

const without = (stretch: string, what: RegExp): string => {
  const found = [...fold(stretch).matchAll(what)]
  const rest = found.reduceRight((left, { index, 0: words }) => left.slice(0, index) + left.slice(index + words.length), stretch)
  return found.length === 0 ? stretch : rest.replace(/ {2,}/g, ' ')
}

const ownBehind = (stretch: string, at: number | null): string =>
  at === null ? stretch : `${stretch.slice(0, at)} (${ownWord})${stretch.slice(at)}`

/** "7 windbreakers that we'd bring you": where the garment right before the verb ends; null where another word stands there. */
const endsInGarment = (stretch: string, lexicon: Lexicon): number | null => {
  const plain = stretch.replace(thatBehind, '')
  const tokens = tokensOf(plain)
  const terms = termsOf(lexicon, tokens)
  const hue = terms.find(({ meaning, to }) => meaning.kind === 'colour' && to === tokens.length)
  const last = terms.find(({ meaning, to }) => meaning.kind === 'garment' && to === (hue?.from ?? tokens.length))
  return last === undefined || besides.test(fold(plain.slice(tokens[last.from]?.start))) ? null : plain.trimEnd().length
}

/** Garments that are brought are the customer's own, and the day they come in is none on which they are needed. */
const brought = (text: string, { from, to, verb, object }: Told, lexicon: Lexicon): string => {
  const dayless = without(object, day)
  const at = garmentEnd(dayless, lexicon)
  const rest = text.slice(to)
  const ahead = at === null && object.trim() === '' ? endsInGarment(text.slice(0, from), lexicon) : null
  if (ahead !== null) return `${text.slice(0, ahead)} (${ownWord})${rest}`
  if (at !== null) return text.slice(0, from) + verb + ownBehind(dayless, at) + rest
  if (!them.test(fold(object))) return text
  const isAhead = garmentEnd(text.slice(0, from), lexicon) === null && garmentEnd(rest, lexicon) !== null
  return text.slice(0, from) + (isAhead ? broughtBefore(dayless.replace(them, ''), rest, lexicon) : verb + dayless + rest)
}

/** They are spoken of before it is said what they are: "can I drop them off Tuesday? 10 black tees". */
const broughtBefore = (dayless: string, rest: string, lexicon: Lexicon): string =>
  dayless + ownBehind(rest, garmentEnd(rest, lexicon))

/** Who has garments orders none, where something makes sure that they are there: "we have 14 players" and "I have 12 tees to make" say nothing of it. */
const kept = (text: string, { from, to, verb, object }: Told, lexicon: Lexicon): string => {
  const at = garmentEnd(object, lexicon)
  if (at === null || !fold(verb + object).match(sure)) return text
  return text.slice(0, from) + without(verb, sure) + without(ownBehind(object, at), sure) + text.slice(to)
}

const elsewhere = new RegExp(`${edge}${said.elsewhere}`, 'gu')

/** "We'll bring them to the tournament": what is carried on from the shop is not brought to it. */
const withoutElsewhere = (text: string): string =>
  [...fold(text).matchAll(elsewhere)].reduce((left, { 0: words, index }) => blanked(left, index, index + words.length), text)

/**
 * "I've got 20 white tees already at home", "I'll bring 8 grey hoodies on Tuesday", "les llevo el martes 10 sudaderas": what customers
 * bring is their own, and the day of bringing is no day of need.
 */
export const withBrought = (told: string, lexicon: Lexicon): string => {
  const text = withoutElsewhere(told)
  const named = toldIn(text, bringsThem).reduceRight((rest, { from, to, object }) => {
    const after = rest.slice(to)
    return garmentEnd(after, lexicon) === null ? rest : rest.slice(0, from) + broughtBefore(without(object, day), after, lexicon)
  }, text)
  const carried = toldIn(named, brings).reduceRight((rest, told) => brought(rest, told, lexicon), named)
  return toldIn(carried, has).reduceRight((rest, told) => kept(rest, told, lexicon), carried)
}
