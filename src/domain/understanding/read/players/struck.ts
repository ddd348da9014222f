import { listed } from '../../words/languages.ts'
import { type Scene, span } from '../list/change.ts'
import { isEnd, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import type { Ref } from '../whom/refs.ts'
import { groupsIn } from '../whom/whom.ts'

const strikes = phrasesOf(listed.changes.strikes)
const strikesOff = phrasesOf(listed.changes.strikesOff)
const leads: readonly string[] = listed.changes.strikeLeads
const offWords: readonly string[] = listed.changes.off

export type Struck = { readonly refs: readonly Ref[]; readonly taken: ReadonlySet<number> }

/** Nothing is told of who is taken off but why: "bin 44, she moved"; not "cut Quill is fine with M". */
const endsThere = (tokens: readonly Token[], at: number): boolean => {
  const token = tokens[at]
  return token === undefined || isEnd(token) || token.kind === 'sign' || isWord(token, ...listed.changes.strikeEnds)
}

/** "Forget 44, make it 45": something else is said of them, and they stay. */
const isSaidAnew = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === ',' && isWord(tokens[at + 1], ...listed.anew.changing)

const struckAt = (tokens: readonly Token[], at: number, scene: Scene): Struck | null => {
  const plain = phraseEnd(tokens, at, strikes)
  const verb = plain ?? phraseEnd(tokens, at, strikesOff)
  if (verb === null) return null
  let from = verb
  while (isWord(tokens[from], ...leads)) from += 1
  const group = groupsIn(tokens.slice(from), scene.draft)[0]
  const [first, last] = [group?.refs[0], group?.refs.at(-1)]
  if (group === undefined || first === undefined || last === undefined || first.from > 0) return null
  const to = from + last.to
  const off = tokens.slice(verb, from).some((token) => isWord(token, ...offWords)) || isWord(tokens[to], ...offWords)
  if (!endsThere(tokens, to) || isSaidAnew(tokens, to) || (plain === null && !off)) return null
  return { refs: group.refs, taken: span(at, isWord(tokens[to], ...offWords) ? to + 1 : to) }
}

/** "scrub the 44", "cross Quill off", "we don't need 9 and 12": who stands right behind words that take off, and nothing else is told of them. */
export const readStruck = (tokens: readonly Token[], scene: Scene): Struck | null => {
  for (const at of tokens.keys()) {
    const found = struckAt(tokens, at, scene)
    if (found !== null) return found
  }
  return null
}
