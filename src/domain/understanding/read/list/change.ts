import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import type { SizeFound } from '../sizes/sizes.ts'
import { isWord, type Token } from '../text/tokens.ts'

/** What a message changes of the roster, with the tokens that say so. */
export type Change = {
  readonly patches: readonly Patch[]
  readonly open: readonly Open[]
  readonly taken: ReadonlySet<number>
}

export type Scene = { readonly draft: Draft; readonly quote: string }

export const nothing: Change = { patches: [], open: [], taken: new Set() }

export const span = (from: number, to: number): ReadonlySet<number> =>
  new Set(Array.from({ length: Math.max(0, to - from) }, (_, index) => from + index))

/** Several changes as one. */
export const joined = (found: readonly Change[]): Change => ({
  patches: found.flatMap(({ patches }) => patches),
  open: found.flatMap(({ open }) => open),
  taken: new Set(found.flatMap(({ taken }) => [...taken])),
})

/** What a size that was said sets in a player's line. */
export const sized = (key: string, { size, fit }: SizeFound): readonly Patch[] => [
  ...(size === undefined ? [] : [{ path: ['rows', key, 'size'], value: size }]),
  ...(fit === undefined ? [] : [{ path: ['rows', key, 'fit'], value: fit }]),
]

const addWords: readonly string[] = listed.changes.add
const addVerb = new RegExp(`^${spoken.changes.addVerb}$`)

/** A word that puts somebody or something on the list: "add", "agréguenle". */
export const isAdd = (token: Token | undefined): boolean =>
  isWord(token, ...addWords) || (token?.kind === 'word' && addVerb.test(token.key))
