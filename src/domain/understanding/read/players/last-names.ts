import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { fold, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'

const said = spoken.rowMarks
const last = new RegExp(`(?<!\\p{L})(?:${said.lastOnly})(?!\\p{L})`, 'u')
const full = new RegExp(`(?<!\\p{L})(?:${said.fullNames})(?!\\p{L})`, 'u')

const namesNobody = (sentence: string, { rows }: Draft): boolean => refsIn(tokensOf(sentence), rows).length === 0

/**
 * "Last names only", "solo apellidos": of all names of the list, there or to come, the given ones are left out; "full names" takes it
 * back. A sentence that names somebody is of theirs alone.
 */
export const readLastNames = (text: string, draft: Draft): readonly Patch[] => {
  const all = (pattern: RegExp): boolean =>
    [...text.matchAll(/[^.\n!?;]+/g)].some(([sentence]) => pattern.test(fold(sentence)) && namesNobody(sentence, draft))
  if (draft.common?.names === 'last' && all(full)) return [{ path: ['common', 'names'], value: null }]
  return draft.common?.names !== 'last' && all(last) ? [{ path: ['common', 'names'], value: 'last' }] : []
}
