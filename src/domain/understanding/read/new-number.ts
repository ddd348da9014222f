import { listed } from '../words/languages.ts'
import { sizeAt } from './sizes.ts'
import { isNumber, isWord, type Token } from './tokens.ts'

const numberVerbs: readonly string[] = listed.changes.number

/** The new number that words after a reference give: "Noor wears 21 now", "#22 should be 23", "el 4 ahora es el 14". */
export const newNumber = (tokens: readonly Token[], from: number): { readonly number: string; readonly to: number } | null => {
  let at = from
  let verb = false
  while (at < from + 6 && (isWord(tokens[at], ...numberVerbs) || tokens[at]?.text === '#')) {
    verb = true
    at += 1
  }
  const token = tokens[at]
  if (!verb || token === undefined || !isNumber(token) || !/^\d{1,3}$/.test(token.text) || sizeAt(tokens, at) !== null)
    return null
  const joined = tokens[at + 1]?.kind === 'word' && tokens[at + 1]?.start === token.end
  if (joined || isWord(tokens[at + 1], ...listed.changes.notNumber)) return null
  const tail = isWord(tokens[at + 1], ...listed.changes.now) ? at + 2 : at + 1
  const not = isWord(tokens[tail], ...listed.changes.not) && isNumber(tokens[tail + 1]) ? tail + 2 : tail
  return { number: token.text, to: not }
}
