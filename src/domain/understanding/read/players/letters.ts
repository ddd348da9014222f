import type { Draft } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { type Token, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'

/** One letter with those who wear it. */
export type Worn = { readonly letter: string; readonly keys: readonly string[] }

/** "the C", "an A", "una C". */
const letterMarks = new RegExp(`\\b${spoken.rowMarks.letter} (?:[\\p{L}]+'s )?["']?[CA]["']?(?![\\p{L}'])`, 'gu')

/** "C for 17", "A al 9". */
const letterFor = new RegExp(`(?:^|[\\s,:])([CA])(?:'?s)? ${spoken.rowMarks.letterFor} `, 'u')

export const letterIn = (clause: string): string | undefined =>
  /[CA](?=["']?$)/u.exec(clause.match(letterMarks)?.[0] ?? '')?.[0] ?? letterFor.exec(clause)?.[1]

export const letterId = (letter: string): string => `letter-${letter.toLowerCase()}`

/** Nobody wears both letters: who gets one gives up the other that they had. */
export const oneEach = (before: Draft, patches: readonly Patch[]): readonly Patch[] => {
  const after = preview(before, patches)
  return Object.entries(after.rows).flatMap(([key, { extras }]) => {
    const had = [letterId('C'), letterId('A')].filter((id) => before.rows[key]?.extras?.[id] !== undefined)
    const both = extras?.[letterId('C')] !== undefined && extras[letterId('A')] !== undefined
    return both && had.length === 1 ? had.map((id): Patch => ({ path: ['rows', key, 'extras', id], value: null })) : []
  })
}

/** Rows that a stretch of tokens names for sure. */
export const refKeys = (tokens: readonly Token[], draft: Draft): readonly string[] =>
  refsIn(tokens, draft.rows).flatMap((ref) => (ref.keys.length === 1 ? ref.keys : []))

/** A clause with a letter, and somebody of the list. */
export const isOwnLetter = (clause: string, draft: Draft): boolean =>
  letterIn(clause) !== undefined && refKeys(tokensOf(clause), draft).length > 0
