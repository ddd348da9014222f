import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { spokenAt } from '../text/spoken-figures.ts'
import { isEnd, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { refAt, rowsByNumber } from '../whom/refs.ts'

type Figure = { readonly figure: string; readonly to: number }
type Told = { readonly from: number; readonly to: number; readonly words: string }
type Scene = { readonly tokens: readonly Token[]; readonly draft: Draft }

/** A number in figures or in words, over an article or a word that leads to it. */
const figureAt = (tokens: readonly Token[], from: number): Figure | null => {
  let at = from
  while (at < from + 3 && isWord(tokens[at], ...listed.changes.the, ...listed.dictation.lead, ...listed.dictation.being)) at += 1
  if (isNumber(tokens[at]) && /^\d{1,3}$/.test(tokens[at]?.text ?? '')) return { figure: tokens[at]?.text ?? '', to: at + 1 }
  return spokenAt(tokens, at)
}

const past = (tokens: readonly Token[], at: number): number => (tokens[at]?.text === ',' ? at + 1 : at)

/** Whether the only one who has the number is named before, or a word leads to it; nobody has the new one. */
const isOf = (
  { tokens, draft }: Scene,
  at: number,
  { old, fresh }: { readonly old: string; readonly fresh: string },
): boolean => {
  const [key, ...more] = rowsByNumber(draft.rows, old)
  if (key === undefined || more.length > 0 || rowsByNumber(draft.rows, fresh).length > 0) return false
  const start = tokens.slice(0, at).findLastIndex(isEnd) + 1
  const named = tokens.slice(start, at).some((_, index) => refAt(tokens, start + index, draft.rows)?.keys.includes(key) === true)
  return named || isWord(tokens[at - 1], ...listed.dictation.lead)
}

/** "Not 11 but 12", "no es la catorce sino la veinticuatro". */
const butNowAt = (scene: Scene, at: number): Told | null => {
  const { tokens } = scene
  const old = isWord(tokens[at], ...listed.changes.not) ? figureAt(tokens, at + 1) : null
  const but = old === null ? -1 : past(tokens, old.to)
  const fresh = old !== null && isWord(tokens[but], ...listed.changes.butNow) ? figureAt(tokens, but + 1) : null
  if (old === null || fresh === null || !isOf(scene, at, { old: old.figure, fresh: fresh.figure })) return null
  return { from: at, to: fresh.to, words: `${fresh.figure} ${tokens[at]?.text ?? ''} ${old.figure}` }
}

/** "Number twelve, not eleven", "la treinta y siete, no la veintisiete". */
const notAt = (scene: Scene, at: number): Told | null => {
  const { tokens } = scene
  const fresh = spokenAt(tokens, at)
  const not = fresh === null ? -1 : past(tokens, fresh.to)
  const old = fresh !== null && isWord(tokens[not], ...listed.changes.not) ? figureAt(tokens, not + 1) : null
  if (old === null || fresh === null || !isOf(scene, at, { old: old.figure, fresh: fresh.figure })) return null
  return { from: at, to: old.to, words: `${fresh.figure} ${tokens[not]?.text ?? ''} ${old.figure}` }
}

const opensThere = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens[at - 1]
  return before === undefined || before.kind !== 'word' || isWord(before, ...listed.players.takenBack)
}

/** "Sorry, not eleven, twelve": at the beginning of what is said, the new number behind a comma and nothing behind it. */
const commaAt = ({ tokens, draft }: Scene, at: number): Told | null => {
  const not = isWord(tokens[at], ...listed.changes.not) && opensThere(tokens, at)
  const old = not ? figureAt(tokens, at + 1) : null
  const fresh = old !== null && tokens[old.to]?.text === ',' ? figureAt(tokens, old.to + 1) : null
  const next = fresh === null ? undefined : tokens[fresh.to]
  if (old === null || fresh === null || !(next === undefined || isEnd(next))) return null
  const known = rowsByNumber(draft.rows, old.figure).length === 1 && rowsByNumber(draft.rows, fresh.figure).length === 0
  return known ? { from: at, to: fresh.to, words: `${fresh.figure} ${tokens[at]?.text ?? ''} ${old.figure}` } : null
}

const correctedAt = (scene: Scene, at: number): Told | null => butNowAt(scene, at) ?? notAt(scene, at) ?? commaAt(scene, at)

/** Numbers of the list that are put right, in the words that the readers of the list know: "12 not 11". */
export const withCorrectedNumbers = (text: string, draft: Draft): string => {
  if (Object.keys(draft.rows).length === 0) return text
  const tokens = tokensOf(text)
  const found: Told[] = []
  for (const at of tokens.keys()) {
    const one = at < (found.at(-1)?.to ?? 0) ? null : correctedAt({ tokens, draft }, at)
    if (one !== null) found.push(one)
  }
  return found.reduceRight(
    (left, { from, to, words }) => `${left.slice(0, tokens[from]?.start)}${words}${left.slice(tokens[to - 1]?.end)}`,
    text,
  )
}
