import { listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { pieces } from '../whom/refs.ts'

const numberVerbs: readonly string[] = listed.changes.number
const wanting = phrasesOf(listed.changes.wanting)
const insteadOf = phrasesOf(listed.changes.insteadOf)
const amounts: readonly string[] = pieces.map((piece) => `${piece}s`)

/** ", not 3", "instead of 9", "en vez del 9": where the words about the number that was come to their end. */
const pastOld = (tokens: readonly Token[], at: number): number => {
  const over = isWord(tokens[at], ...listed.changes.not) ? at + 1 : phraseEnd(tokens, at, insteadOf)
  const old = over !== null && isWord(tokens[over], ...listed.changes.the) ? over + 1 : over
  return old !== null && isNumber(tokens[old]) ? old + 1 : at
}

/** "Del 1 al 5 XL": from one to another, whose size follows. */
const isSizedRange = (tokens: readonly Token[], from: number, at: number): boolean => {
  const led =
    isWord(tokens[from - 2], ...listed.told.rangeFrom, ...listed.players.from) && isWord(tokens[from], ...listed.told.rangeTo)
  let next = at + 1
  while (next < at + 4 && isWord(tokens[next], ...listed.players.areSized) && sizeAt(tokens, next) === null) next += 1
  return led && sizeAt(tokens, next)?.size !== undefined
}

/** The new number that words after a reference give: "Noor wears 21 now", "#22 should be 23", "el 4 ahora es el 14". */
export const newNumber = (tokens: readonly Token[], from: number): { readonly number: string; readonly to: number } | null => {
  // "#5 #16": one after the other, and no change from one to the other.
  if (tokens[from]?.text === '#' && isNumber(tokens[from - 1])) return null
  let at = phraseEnd(tokens, from, wanting) ?? from
  let verb = at > from
  while (at < from + 6 && (isWord(tokens[at], ...numberVerbs) || tokens[at]?.text === '#')) {
    verb = true
    at += 1
  }
  const token = tokens[at]
  if (!verb || token === undefined || !isNumber(token) || !/^\d{1,3}$/.test(token.text) || sizeAt(tokens, at) !== null)
    return null
  if (isSizedRange(tokens, from, at)) return null
  const joined = tokens[at + 1]?.kind === 'word' && tokens[at + 1]?.start === token.end
  if (joined || isWord(tokens[at + 1], ...listed.changes.notNumber, ...amounts)) return null
  const tail = isWord(tokens[at + 1], ...listed.changes.now) ? at + 2 : at + 1
  return { number: token.text, to: pastOld(tokens, tail) }
}
