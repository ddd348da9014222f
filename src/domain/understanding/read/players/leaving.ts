import { listed } from '../../words/languages.ts'
import type { Scene } from '../list/change.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isCapital, isEnd, isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { type Ref, refsIn } from '../whom/refs.ts'
import { newNumber } from './new-number.ts'

const leftSo = phrasesOf(listed.changes.leftSo)
const leftWords: readonly string[] = listed.changes.left

/** The end of a sentence or of the message. */
export const isStop = (token: Token | undefined): boolean => token === undefined || isEnd(token)

const isPause = (token: Token | undefined): boolean => isStop(token) || token?.text === ','

/** "Ana left", "Beto se salió", "Beto salió del equipo"; not "salió sin acento". */
export const isLeft = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...leftWords) ||
  (isWord(tokens[at], ...listed.changes.leftAtEnd) && isStop(tokens[at + 1]) && isCapital(tokens[at - 1])) ||
  phraseEnd(tokens, at, leftSo) !== null

const gone = phrasesOf(listed.changes.gone)
const goneAtEnd = phrasesOf(listed.changes.goneAtEnd)

/** "Quill's out" as "Quill is out": the verb may stand at the end of the name. */
const saidAt = (tokens: readonly Token[], at: number, phrases: readonly (readonly string[])[]): number | null => {
  const plain = phraseEnd(tokens, at, phrases)
  const before = tokens[at - 1]
  if (plain !== null || before === undefined || !/'s$/.test(before.text)) return plain
  const ahead = tokens.slice(at, at + 6)
  const ends = listed.changes.clipped.flatMap((key) => phraseEnd([{ ...before, key }, ...ahead], 0, phrases) ?? [])
  const [end] = ends
  return end === undefined ? null : at - 1 + end
}

/** "… ya no va", "… is out", "… dropped out": where the words end that say of who stands before that they leave. */
export const leavesAt = (tokens: readonly Token[], at: number): number | null => {
  const to = saidAt(tokens, at, gone)
  const end = saidAt(tokens, at, goneAtEnd)
  if (to !== null) return givesUp(tokens, to) ? null : to
  return end !== null && isPause(tokens[end]) ? end : null
}

/** "… ya no va con el 5", "… ya no quiere la M": a number or a size that is given up, and nobody leaves. */
const givesUp = (tokens: readonly Token[], from: number): boolean => {
  const ends = tokens.slice(from, from + 5).findIndex((token) => isPause(token) || isWord(token, ...listed.again.and))
  const said = ends < 0 ? from + 5 : from + ends
  return [...tokens.keys()].slice(from, said).some((at) => isNumber(tokens[at]) || sizeAt(tokens, at)?.size !== undefined)
}

/** "El 9 ya no, ahora Aitana va con el 19": who seemed to leave has another number. */
export const isNumberedAnew = (
  tokens: readonly Token[],
  from: number,
  { refs, scene }: { readonly refs: readonly Ref[]; readonly scene: Scene },
): boolean => {
  const keys = refs.flatMap((ref) => ref.keys)
  const again = refsIn(tokens.slice(from), scene.draft.rows).find(
    (ref) => ref.keys.length === 1 && keys.includes(ref.keys[0] ?? ''),
  )
  return again !== undefined && newNumber(tokens, from + again.to) !== null
}
