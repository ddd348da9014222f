import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { isAlike } from '../text/near-names.ts'
import { isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'
import { nameAt, type Ref, refAt } from '../whom/refs.ts'

type Told = { readonly from: number; readonly to: number; readonly words: string }

const said = listed.likeOthers
const instead = phrasesOf(said.insteadOf)
const isOther = (token: Token): boolean => isWord(token, ...listed.players.opening)

const whomAt = (tokens: readonly Token[], at: number, { rows }: Draft): Ref | null => {
  const skip = isWord(tokens[at], ...listed.told.article, ...listed.players.added, ...listed.players.loose) ? at + 1 : at
  const ref = refAt(tokens, at, rows) ?? refAt(tokens, skip, rows)
  return ref?.keys.length === 1 ? ref : null
}

const called = (tokens: readonly Token[], { from, to }: Ref): string =>
  tokens
    .slice(from, to)
    .map(({ text }) => text)
    .join(' ')

/** A new name that is not only the old one spelled otherwise. */
const newcomerAt = (tokens: readonly Token[], at: number, { ref, draft }: { readonly ref: Ref; readonly draft: Draft }) => {
  const skip = isWord(tokens[at], ...listed.players.added) ? at + 1 : at
  const named = refAt(tokens, skip, draft.rows) === null ? nameAt(tokens, skip, isOther) : null
  const had = draft.rows[ref.keys[0] ?? '']?.name ?? ''
  return named === null || isAlike(named.name, had) ? null : named
}

const leaves = (old: string, name: string): string => `${old} ${said.leavesFor[0] ?? ''} ${name}`

/** "replace Bo with Dee", "cambien a Beto por Dina". */
const replacedAt = (tokens: readonly Token[], at: number, draft: Draft): Told | null => {
  const ref = isWord(tokens[at], ...said.replacing) ? whomAt(tokens, at + 1, draft) : null
  if (ref === null || !isWord(tokens[ref.to], ...said.by)) return null
  const named = newcomerAt(tokens, ref.to + 1, { ref, draft })
  return named === null ? null : { from: at, to: named.to, words: leaves(called(tokens, ref), named.name) }
}

/** "Dee instead of Bo", "Dina en lugar de Beto". */
const insteadAt = (tokens: readonly Token[], at: number, draft: Draft): Told | null => {
  const named = refAt(tokens, at, draft.rows) === null ? nameAt(tokens, at, isOther) : null
  const to = named === null ? null : phraseEnd(tokens, named.to, instead)
  const ref = to === null ? null : whomAt(tokens, to, draft)
  if (named === null || ref?.by !== 'name' || isAlike(named.name, draft.rows[ref.keys[0] ?? '']?.name ?? '')) return null
  return { from: at, to: ref.to, words: leaves(called(tokens, ref), named.name) }
}

/** "no polo for Lu", "sin playera para Lu": where all wear one garment, somebody who is to have none is off the list. */
const noneAt = (tokens: readonly Token[], at: number, draft: Draft): Told | null => {
  const piece =
    isWord(tokens[at], ...said.none) && isWord(tokens[at + 1], ...said.pieces) && isWord(tokens[at + 2], ...listed.changes.hands)
  const ref = piece && Object.keys(draft.garments).length < 2 ? whomAt(tokens, at + 3, draft) : null
  return ref === null ? null : { from: at, to: ref.to, words: `${listed.changes.drop[0] ?? ''} ${called(tokens, ref)}` }
}

/** Who takes whose place, and who is to have nothing, in the words that the readers of the list know. */
export const withInsteadOf = (text: string, draft: Draft): string => {
  if (Object.keys(draft.rows).length === 0) return text
  const tokens = tokensOf(text)
  const found: Told[] = []
  for (const at of tokens.keys()) {
    const one = replacedAt(tokens, at, draft) ?? insteadAt(tokens, at, draft) ?? noneAt(tokens, at, draft)
    if (one !== null && one.from >= (found.at(-1)?.to ?? 0)) found.push(one)
  }
  return found.reduceRight(
    (left, { from, to, words }) => `${left.slice(0, tokens[from]?.start)}${words}${left.slice(tokens[to - 1]?.end)}`,
    text,
  )
}
