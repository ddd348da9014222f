import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { sentenceWords } from '../list/sentence-words.ts'
import { isPlainSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isGivenName } from '../text/given-names.ts'
import { type Lexicon, type Term, termsOf } from '../text/lexicon.ts'
import { stated } from '../text/statements.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'
import { nameAt, type Ref, refAt } from '../whom/refs.ts'

/** A value said in a clause, whether a word before it marks it as the one that is no more, and whether it ends its phrase. */
export type Said<Value> = {
  readonly value: Value
  readonly at: number
  readonly to: number
  readonly old: boolean
  readonly ends: boolean
}

/** What a clause says, of the list that is there: who it names, and the values beside them. */
export type Telling = {
  readonly tokens: readonly Token[]
  readonly terms: readonly Term[]
  readonly refs: readonly Ref[]
  readonly sizes: readonly Said<SizeFound>[]
  readonly figures: readonly Said<string>[]
  readonly names: readonly Said<string>[]
  readonly unsure: boolean
}

const words = listed.clauses
const unsure = phrasesOf(words.unsure)

/** "was a", "instead of", "no es": a word right before a value, small words between them, that says it is no more. */
const isOld = (tokens: readonly Token[], at: number): boolean => {
  let before = at - 1
  while (before >= 0 && isWord(tokens[before], ...words.small) && !isWord(tokens[before], ...words.old)) before -= 1
  return isWord(tokens[before], ...words.old)
}

/** Nothing stands behind a value but the end, a sign, or a word with which something else begins. */
const endsAt = (tokens: readonly Token[], to: number): boolean => {
  const next = tokens[to]
  return next === undefined || next.kind === 'sign' || next.kind === 'break' || isWord(next, ...words.closing)
}

const isLoose = (tokens: readonly Token[], at: number): boolean => isWord(tokens[at - 1], ...words.plural)

const isFigure = (tokens: readonly Token[], at: number): boolean => {
  const [token, next, before] = [tokens[at], tokens[at + 1], tokens[at - 1]]
  const joined = next?.kind === 'word' && next.start === token?.end
  return isNumber(token) && /^\d{1,3}$/.test(token?.text ?? '') && !joined && !['$', '/', '-'].includes(before?.text ?? '')
}

const isUnsure = (tokens: readonly Token[], at: number): boolean =>
  phraseEnd(tokens, at, unsure) !== null && !/[íÍ]/u.test(tokens[at]?.text ?? '')

/** A question, a condition, a doubt, or of somebody's kin. */
const statesNothing = (tokens: readonly Token[]): boolean => {
  const left = stated(tokens)
  return tokens.some((token, at) => left[at]?.kind !== token.kind)
}

/** A size among words that make it another word ("a small question") ends nothing: nothing is told with it. */
const plainly = (tokens: readonly Token[], one: Said<SizeFound>): Said<SizeFound> => ({
  ...one,
  ends: one.ends && (isLoose(tokens, one.at) || isPlainSize(tokens, one.at, one.value)),
})

const noName =
  ({ entries }: Lexicon, first: boolean) =>
  (token: Token): boolean =>
    !isGivenName(token) && (sentenceWords.has(token.key) || entries.has(token.key) || (first && isWord(token, ...words.closing)))

type Part =
  | { readonly kind: 'ref'; readonly to: number; readonly ref: Ref }
  | { readonly kind: 'size'; readonly to: number; readonly size: SizeFound }
  | { readonly kind: 'name'; readonly to: number; readonly name: string }
  | { readonly kind: 'figure'; readonly to: number; readonly figure: string }

type Scene = { readonly tokens: readonly Token[]; readonly rows: Draft['rows']; readonly lexicon: Lexicon }

/** What stands at a token; null for a word of no matter. */
const partAt = ({ tokens, rows, lexicon }: Scene, at: number): Part | null => {
  const ref = refAt(tokens, at, rows)
  if (ref !== null) return { kind: 'ref', to: ref.to, ref }
  const size = sizeAt(tokens, at, isLoose(tokens, at))
  if (size?.size !== undefined) return { kind: 'size', to: size.to, size }
  const name = nameAt(tokens, at, noName(lexicon, at === 0))
  if (name !== null) return { kind: 'name', ...name }
  return isFigure(tokens, at) ? { kind: 'figure', to: at + 1, figure: tokens[at]?.text ?? '' } : null
}

type Placed = { readonly at: number; readonly part: Part }

const partsOf = (scene: Scene): readonly Placed[] => {
  const parts: Placed[] = []
  let at = 0
  while (at < scene.tokens.length) {
    const part = partAt(scene, at)
    if (part !== null) parts.push({ at, part })
    at = part?.to ?? at + 1
  }
  return parts
}

/** What a clause tells; nothing of it is changed by this. */
export const tellingOf = (text: string, rows: Draft['rows'], lexicon: Lexicon): Telling => {
  const tokens = tokensOf(text)
  const parts = partsOf({ tokens, rows, lexicon })
  const said = <Value>(value: Value, { at, part: { to } }: Placed): Said<Value> => ({
    value,
    at,
    to,
    old: isOld(tokens, at),
    ends: endsAt(tokens, to),
  })
  return {
    tokens,
    terms: termsOf(lexicon, tokens),
    refs: parts.flatMap(({ part }) => (part.kind === 'ref' ? [part.ref] : [])),
    sizes: parts.flatMap((one) => (one.part.kind === 'size' ? [plainly(tokens, said(one.part.size, one))] : [])),
    figures: parts.flatMap((one) => (one.part.kind === 'figure' ? [said(one.part.figure, one)] : [])),
    names: parts.flatMap((one) => (one.part.kind === 'name' ? [said(one.part.name, one)] : [])),
    unsure: statesNothing(tokens) || [...tokens.keys()].some((at) => isUnsure(tokens, at)),
  }
}

/** Who is named stands alone, nothing told of them: "3", "Pryce", "el 4". */
export const isBare = ({ refs, tokens, sizes, figures, names }: Telling): boolean =>
  refs.length > 0 &&
  sizes.length + figures.length + names.length === 0 &&
  tokens.every(
    (token, at) =>
      refs.some((ref) => at >= ref.from && at < ref.to) ||
      token.kind === 'sign' ||
      isWord(token, ...words.small, ...words.they, ...listed.players.loose),
  )
