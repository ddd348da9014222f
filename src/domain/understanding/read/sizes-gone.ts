import { listed } from '../words/languages.ts'
import { type Change, joined, nothing, type Scene, span } from './change.ts'
import { amountOf } from './drop-sized.ts'
import { isDrop } from './drops.ts'
import { isOfSize, type SizeFound, sizeAt } from './sizes.ts'
import { type Stretch, sentencesOf } from './statements.ts'
import { isWord, phraseEnd, phrasesOf, type Token } from './tokens.ts'

const refusing = phrasesOf(listed.changes.sizeGone)
const beside: readonly string[] = [...listed.changes.besideGone, ...listed.clauses.small, ...listed.clauses.plural]

type Part =
  | { readonly kind: 'size'; readonly size: SizeFound; readonly to: number }
  | { readonly kind: 'gone' | 'small'; readonly to: number }

/** A counted size, a refusal that is not refused itself, or a small word; null for any other word. */
const partAt = (tokens: readonly Token[], at: number): Part | null => {
  const size = sizeAt(tokens, at, isWord(tokens[at - 1], ...listed.clauses.plural))
  if (size?.size !== undefined) return { kind: 'size', size, to: size.to }
  const token = tokens[at]
  const gone = phraseEnd(tokens, at, refusing)
  if (gone !== null) return isWord(tokens[at - 1], ...listed.changes.not) ? null : { kind: 'gone', to: gone }
  if (token === undefined || isDrop(token)) return token === undefined ? null : { kind: 'gone', to: at + 1 }
  // "One of the mediums" is an amount of them, not all.
  if (amountOf(token) !== null) return null
  const small = token.kind === 'sign' || token.kind === 'break' || isWord(token, ...beside)
  return small ? { kind: 'small', to: at + 1 } : null
}

/** The sizes of a sentence of nothing but a refusal, counted sizes and small words; none where it says anything else. */
const sizesRefused = (tokens: readonly Token[], { from, to }: Stretch): readonly SizeFound[] => {
  const parts: Part[] = []
  for (let at = from; at < to; at = parts.at(-1)?.to ?? to) {
    const part = partAt(tokens, at)
    if (part === null) return []
    parts.push(part)
  }
  return parts.some(({ kind }) => kind === 'gone') ? parts.flatMap((part) => (part.kind === 'size' ? [part.size] : [])) : []
}

/** The clauses of a sentence, each without the word or sign that joins it to the one before; `joined` by "and" rather than a comma. */
const clausesIn = (tokens: readonly Token[], { from, to }: Stretch): readonly (Stretch & { readonly joined: boolean })[] => {
  const joints = [...tokens.keys()].filter((at) => at >= from && at < to && (tokens[at]?.text === ',' || isJoin(tokens[at])))
  const starts = [from, ...joints.map((at) => at + 1)]
  return starts.flatMap((start, index) => {
    const end = joints[index] ?? to
    return end > start ? [{ from: start, to: end, joined: isJoin(tokens[start - 1]) }] : []
  })
}

const isJoin = (token: Token | undefined): boolean => isWord(token, ...listed.again.and)

/** "…, not M": a refusal by a small word behind a comma corrects what stands before it and takes nothing off. */
const isPlainNo = (tokens: readonly Token[], { from }: Stretch): boolean => isWord(tokens[from], ...listed.changes.not)

/** Refusals of counted sizes in a sentence, by themselves or in a clause beside others: "6 of the ladies M, and forget the 3T". */
const refusalsIn = (
  tokens: readonly Token[],
  sentence: Stretch,
): readonly (Stretch & { readonly sizes: readonly SizeFound[] })[] => {
  const whole = sizesRefused(tokens, sentence)
  if (whole.length > 0) return [{ ...sentence, sizes: whole }]
  return clausesIn(tokens, sentence).flatMap((clause, index, all) => {
    const next = all[index + 1]
    const corrected = next !== undefined && sizeAt(tokens, next.from)?.to === next.to
    const sizes = corrected || (!clause.joined && isPlainNo(tokens, clause)) ? [] : sizesRefused(tokens, clause)
    return sizes.length === 0 ? [] : [{ ...clause, sizes }]
  })
}

/** "Forget the 3T", "we don't need the ladies M anymore", "las 3T ya no": counted sizes that are wanted no more; no player is taken off by it. */
export const readSizesGone = (tokens: readonly Token[], { draft }: Scene): Change => {
  const refusals = sentencesOf(tokens).flatMap((sentence) => refusalsIn(tokens, sentence))
  const found = refusals.flatMap(({ sizes, from, to }): readonly Change[] => {
    const lines = sizes.map((size) => Object.entries(draft.tally).filter(([, line]) => isOfSize(size, line)))
    const keys = lines.flatMap(([only, ...more]) => (only === undefined || more.length > 0 ? [] : [only[0]]))
    if (keys.length === 0 || keys.length < sizes.length) return []
    return [
      {
        ...nothing,
        patches: keys.map((key) => ({ path: ['tally', key], value: null })),
        taken: span(from, to),
      },
    ]
  })
  return found.length === 0 ? nothing : joined(found)
}
