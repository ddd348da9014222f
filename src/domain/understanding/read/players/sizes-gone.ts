import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { type Change, joined, nothing, type Scene, span } from '../list/change.ts'
import { cutAt, isOfSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { type Stretch, sentencesOf } from '../text/statements.ts'
import { isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { severalPieces } from '../whom/refs.ts'
import { amountOf, type Counted, fewer, whichCounted } from './drop-sized.ts'
import { isDrop } from './drops.ts'

const refusing = phrasesOf([...listed.changes.sizeGone, ...listed.changes.strikes])
const takings = phrasesOf(listed.changes.strikesOff)
const lowering = phrasesOf(listed.changes.lowering)
const beside: readonly string[] = [...listed.changes.besideGone, ...listed.clauses.small, ...listed.clauses.plural]

/** A size or a cut that is refused, and so many of it where an amount is said. */
type Refused = { readonly size: SizeFound; readonly amount?: number }

type Part =
  | { readonly kind: 'size'; readonly size: SizeFound; readonly to: number }
  | { readonly kind: 'amount'; readonly amount: number; readonly to: number }
  | { readonly kind: 'gone' | 'taking' | 'off' | 'lowering' | 'small'; readonly to: number }

const isNoun = (token: Token | undefined): boolean => isWord(token, ...listed.clauses.ofCut) || isWord(token, ...severalPieces)

/** A counted size, or a cut with what is counted behind it: "the mediums", "the youth ones". */
const targetAt = (tokens: readonly Token[], at: number, counted: boolean): Part | null => {
  const size = sizeAt(tokens, at, isWord(tokens[at - 1], ...listed.clauses.plural))
  if (size?.size !== undefined) return { kind: 'size', size, to: size.to }
  const cut = cutAt(tokens, at)
  return cut === null || !(counted || isNoun(tokens[cut.to])) ? null : { kind: 'size', size: cut, to: cut.to }
}

const verbs = [
  ['lowering', lowering],
  ['taking', takings],
] as const

/** A word that refuses or takes off, unless it is refused itself; what takes off only with "off" beside it, or lowers. */
const verbAt = (tokens: readonly Token[], at: number): Part | null => {
  const gone = phraseEnd(tokens, at, refusing)
  if (gone !== null) return isWord(tokens[at - 1], ...listed.changes.not) ? null : { kind: 'gone', to: gone }
  if (tokens[at] !== undefined && isDrop(tokens[at])) return { kind: 'gone', to: at + 1 }
  if (isWord(tokens[at], ...listed.changes.off)) return { kind: 'off', to: at + 1 }
  const found = verbs.flatMap(([kind, phrases]) => {
    const to = phraseEnd(tokens, at, phrases)
    return to === null ? [] : [{ kind, to }]
  })
  return found[0] ?? null
}

/** A counted size, a refusal, an amount, or a small word; null for any other word. */
const partAt = (tokens: readonly Token[], at: number, counted: boolean): Part | null => {
  const target = targetAt(tokens, at, counted)
  if (target !== null) return target
  const verb = verbAt(tokens, at)
  if (verb !== null) return verb
  const token = tokens[at]
  const amount = amountOf(token)
  if (amount !== null && !isWord(token, ...listed.clauses.single)) return { kind: 'amount', amount, to: at + 1 }
  if (amount !== null || token === undefined) return null
  const small = token.kind === 'sign' || token.kind === 'break' || isWord(token, ...beside) || isNoun(token)
  return small ? { kind: 'small', to: at + 1 } : null
}

const partsIn = (tokens: readonly Token[], { from, to }: Stretch): readonly Part[] => {
  const parts: Part[] = []
  for (let at = from; at < to; at = parts.at(-1)?.to ?? to) {
    const part = partAt(
      tokens,
      at,
      parts.some(({ kind }) => kind === 'amount'),
    )
    if (part === null) return []
    parts.push(part)
  }
  return parts
}

/** The sizes of a sentence of nothing but a refusal, counted sizes, an amount and small words; none where it says anything else. */
const sizesRefused = (tokens: readonly Token[], stretch: Stretch): readonly Refused[] => {
  const parts = partsIn(tokens, stretch)
  const has = (kind: Part['kind']): boolean => parts.some((part) => part.kind === kind)
  const sizes = parts.flatMap((part) => (part.kind === 'size' ? [part.size] : []))
  const [amount, ...amounts] = parts.flatMap((part) => (part.kind === 'amount' ? [part.amount] : []))
  const takes = (has('taking') || has('lowering')) && has('off')
  const refuses = has('gone') || takes || (has('lowering') && amount !== undefined)
  if (!refuses || amounts.length > 0 || (amount !== undefined && (sizes.length > 1 || isPlainNo(tokens, stretch)))) return []
  return sizes.map((size) => (amount === undefined ? { size } : { size, amount }))
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
): readonly (Stretch & { readonly sizes: readonly Refused[] })[] => {
  const whole = sizesRefused(tokens, sentence)
  if (whole.length > 0) return [{ ...sentence, sizes: whole }]
  return clausesIn(tokens, sentence).flatMap((clause, index, all) => {
    const next = all[index + 1]
    const corrected = next !== undefined && sizeAt(tokens, next.from)?.to === next.to
    const sizes = corrected || (index > 0 && !clause.joined && isPlainNo(tokens, clause)) ? [] : sizesRefused(tokens, clause)
    return sizes.length === 0 ? [] : [{ ...clause, sizes }]
  })
}

/** Counted lines that a size or a cut means; none where it may mean one of several sizes. */
const linesOf = ({ tally, common }: Draft, { size, amount }: Refused): readonly Counted[] => {
  const usual = common?.fit ?? 'men'
  const own = Object.entries(tally).filter(([, line]) =>
    size.size === undefined ? (line.fit ?? usual) === size.fit : isOfSize(size, line),
  )
  return amount === undefined && size.size !== undefined && own.length > 1 ? [] : own
}

const takenFrom = (lines: readonly Counted[], amount: number | undefined, scene: Scene): Change => {
  const sum = lines.reduce((all, [, { quantity }]) => all + quantity, 0)
  const [only, ...more] = lines
  if (amount === undefined || amount === sum)
    return { ...nothing, patches: lines.map(([key]) => ({ path: ['tally', key], value: null })) }
  if (only !== undefined && more.length === 0) return { ...nothing, patches: fewer(amount, only) }
  return { ...nothing, open: [whichCounted(lines, amount, scene)] }
}

/** "Forget the 3T", "take 2 off the mediums", "cancel the two youth ones": counted pieces that are wanted no more; no player is taken off by it. */
export const readSizesGone = (tokens: readonly Token[], scene: Scene): Change => {
  const refusals = sentencesOf(tokens).flatMap((sentence) => refusalsIn(tokens, sentence))
  const found = refusals.flatMap(({ sizes, from, to }): readonly Change[] => {
    const lines = sizes.map((one) => ({ of: linesOf(scene.draft, one), amount: one.amount }))
    if (lines.length === 0 || lines.some(({ of }) => of.length === 0)) return []
    const change = joined(lines.map(({ of, amount }) => takenFrom(of, amount, scene)))
    return [{ ...change, taken: span(from, to) }]
  })
  return found.length === 0 ? nothing : joined(found)
}
