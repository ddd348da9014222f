import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import type { Scene } from '../list/change.ts'

const fromAway = new RegExp(`\\b${spoken.changes.fromAway}\\b`, 'i')
const fromHome = new RegExp(`\\b${spoken.changes.fromHome}\\b`, 'i')

/** Whether words name one of two jerseys that a player may have. */
export const namesSet = (quote: string): boolean => fromAway.test(quote) || fromHome.test(quote)

const lineOf = (draft: Draft, key: string): number => Object.keys(draft.rows).indexOf(key) + 1

export const dropRow = (key: string): Patch => ({ path: ['rows', key], value: null })

/** "quita a Gil del visitante": the other jersey stays. */
export const dropFrom = (key: string, quote: string): Patch => {
  if (fromAway.test(quote)) return { path: ['rows', key, 'garment'], value: 'home' }
  if (fromHome.test(quote)) return { path: ['rows', key, 'garment'], value: 'away' }
  return dropRow(key)
}

/** Rows that words may mean, with what would be changed of each: which of them is it? */
export const whichRow = (
  rows: readonly { readonly key: string; readonly patches: readonly Patch[] }[],
  { draft, quote }: Scene,
): Open => ({
  about: 'drop',
  path: '/roster',
  quote,
  readings: rows.map(({ key, patches }) => ({ value: String(lineOf(draft, key)), kind: 'row', patches })),
})

/** Which of several named alike leaves. */
export const choose = (keys: readonly string[], scene: Scene): Open =>
  whichRow(
    keys.map((key) => ({ key, patches: [dropRow(key)] })),
    scene,
  )
