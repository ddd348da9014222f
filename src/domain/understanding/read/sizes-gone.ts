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

/** "Forget the 3T", "we don't need the ladies M anymore", "las 3T ya no": counted sizes that are wanted no more; no player is taken off by it. */
export const readSizesGone = (tokens: readonly Token[], { draft }: Scene): Change => {
  const found = sentencesOf(tokens).flatMap((sentence): readonly Change[] => {
    const sizes = sizesRefused(tokens, sentence)
    const lines = sizes.map((size) => Object.entries(draft.tally).filter(([, line]) => isOfSize(size, line)))
    const keys = lines.flatMap(([only, ...more]) => (only === undefined || more.length > 0 ? [] : [only[0]]))
    if (keys.length === 0 || keys.length < sizes.length) return []
    return [
      {
        ...nothing,
        patches: keys.map((key) => ({ path: ['tally', key], value: null })),
        taken: span(sentence.from, sentence.to),
      },
    ]
  })
  return found.length === 0 ? nothing : joined(found)
}
