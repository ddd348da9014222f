import type { Draft, Player } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { isCapital, isEnd, isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'
import { type Ref, refAt, rowsByName } from '../whom/refs.ts'

type Found = { readonly from: number; readonly to: number; readonly size: string }

const said = listed.likeOthers
const sameAs = phrasesOf(said.sameAs)
const alike = phrasesOf(said.alike)
const whatever = phrasesOf(said.whatever)
const sizeOf = phrasesOf(said.sizeOf)
const articles: readonly string[] = listed.told.article

const cuts: Readonly<Record<NonNullable<Player['fit']>, string>> = { men: 'adult', women: 'womens', youth: 'youth', toddler: '' }

const sizeOfRow = (ref: Ref | null, { rows }: Draft): string | null => {
  const [key, ...more] = ref?.keys ?? []
  const row = rows[key ?? '']
  if (row?.size === undefined || row.size === 'later' || more.length > 0) return null
  return `${row.fit === undefined ? '' : cuts[row.fit]} ${row.size}`.trim()
}

/** The player at a token, an article before them skipped. */
const whomAt = (tokens: readonly Token[], at: number, { rows }: Draft): Ref | null =>
  refAt(tokens, at, rows) ?? (isWord(tokens[at], ...articles) || tokens[at]?.text === '#' ? refAt(tokens, at + 1, rows) : null)

const speaksOfSize = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(Math.max(0, at - 6), at + 6).some((token) => isWord(token, ...listed.changes.sizeNoun, ...listed.changes.sizes))

/** "same size as Bo", "la misma talla que la 7", "whatever size 7 is". */
const phrasedAt = (tokens: readonly Token[], at: number, draft: Draft): Found | null => {
  const plain = phraseEnd(tokens, at, sameAs) ?? (speaksOfSize(tokens, at) ? phraseEnd(tokens, at, alike) : null)
  const open = plain === null ? phraseEnd(tokens, at, whatever) : null
  const ref = plain === null && open === null ? null : whomAt(tokens, plain ?? open ?? at, draft)
  const size = sizeOfRow(ref, draft)
  if (ref === null || size === null) return null
  const tail = open !== null && isWord(tokens[ref.to], ...said.wears) ? ref.to + 1 : ref.to
  return { from: isWord(tokens[at - 1], ...listed.changes.the, ...articles) ? at - 1 : at, to: tail, size }
}

/** "in Bo's size", "Rosalinds size": the owner right before the word, and a word that leads to them. */
const ownedAt = (tokens: readonly Token[], at: number, draft: Draft): Found | null => {
  const lead = isWord(tokens[at - 1], ...said.into)
  const ref = lead ? refAt(tokens, at, draft.rows) : null
  const bare = tokens[at]?.text ?? ''
  const keys =
    ref === null && lead && /\p{L}{2}s$/u.test(bare) && isCapital(tokens[at]) ? rowsByName(draft.rows, bare.slice(0, -1)) : []
  const owner: Ref | null = ref ?? (keys.length === 0 ? null : { keys, from: at, to: at + 1, by: 'name' })
  const size = sizeOfRow(owner, draft)
  if (owner === null || size === null || !isWord(tokens[owner.to], ...listed.changes.sizeNoun)) return null
  return { from: at, to: owner.to + 1, size }
}

/** "usa la talla de Beto"; "la talla de Beto es G" and "cambia la talla de Beto" are of him. */
const spokenAt = (tokens: readonly Token[], at: number, draft: Draft): Found | null => {
  const to = isWord(tokens[at - 1], ...said.into) ? phraseEnd(tokens, at, sizeOf) : null
  const ref = to === null ? null : whomAt(tokens, to, draft)
  const size = sizeOfRow(ref, draft)
  return ref === null || size === null || isWord(tokens[ref.to], ...said.isTold) ? null : { from: at, to: ref.to, size }
}

/** Whether the sentence asks, refuses or trades, so that nobody takes over a size. */
const isIdle = (tokens: readonly Token[], at: number): boolean => {
  const start = tokens.slice(0, at).findLastIndex((token) => isEnd(token) || token.text === '?') + 1
  const end = tokens.findIndex((token, index) => index >= at && (isEnd(token) || token.text === '?'))
  if (tokens[end]?.text === '?') return true
  return tokens
    .slice(start, at)
    .some((token) => isWord(token, ...listed.changes.swap, ...listed.changes.not, ...listed.told.conditional))
}

/** "Imogen is in Rosalind's size these days", "Cira usa la misma talla que Beto": the size of the other, told as itself. */
export const withSameSizes = (text: string, draft: Draft): string => {
  if (Object.keys(draft.rows).length === 0) return text
  const tokens = tokensOf(text)
  const found: Found[] = []
  for (const at of tokens.keys()) {
    const one = phrasedAt(tokens, at, draft) ?? ownedAt(tokens, at, draft) ?? spokenAt(tokens, at, draft)
    if (one !== null && one.from >= (found.at(-1)?.to ?? 0) && !isIdle(tokens, at)) found.push(one)
  }
  return found.reduceRight(
    (left, { from, to, size }) => `${left.slice(0, tokens[from]?.start)}${size}${left.slice(tokens[to - 1]?.end)}`,
    text,
  )
}
