import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, wordValues } from '../../words/languages.ts'
import { type Change, nothing, type Scene, span } from '../list/change.ts'
import { isOfSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'
import { choose, dropRow } from './drop-rows.ts'
import { isStop, leavesAt } from './leaving.ts'

const countWords = wordValues.dropped

/** An amount in figures or in words. */
export const amountOf = (token: Token | undefined): number | null => {
  if (token === undefined) return null
  if (isNumber(token)) return /^\d{1,2}$/.test(token.text) ? Number(token.text) : null
  return countWords[token.key] ?? null
}

type Sized = { readonly amount: number; readonly size: SizeFound; readonly to: number }

/** "Uno de los dos 2XL": of how many. */
const isOfThem = (tokens: readonly Token[], at: number, next: number): boolean =>
  next > at + 1 && amountOf(tokens[next]) !== null && sizeAt(tokens, next) === null

/** "2 of the mediums", "una de las medianas", "a small". */
const sizedAt = (tokens: readonly Token[], at: number): Sized | null => {
  const amount = amountOf(tokens[at])
  if (amount === null || sizeAt(tokens, at)?.size !== undefined) return null
  let next = at + 1
  while (isWord(tokens[next], ...listed.changes.ofSize) || isOfThem(tokens, at, next)) next += 1
  const size = sizeAt(tokens, next)
  return size?.size === undefined ? null : { amount, size, to: size.to }
}

export const fewer = (amount: number, [key, { quantity }]: Counted): readonly Patch[] => {
  const left = quantity - amount
  return [left > 0 ? { path: ['tally', key, 'quantity'], value: left } : { path: ['tally', key], value: null }]
}

export type Counted = readonly [string, Draft['tally'][string]]

/** Of two kinds counted in that size it must be asked of which: their lines stand behind the players'. */
export const whichCounted = (entries: readonly Counted[], amount: number, scene: Scene): Open => {
  const { rows, tally } = scene.draft
  const line = (key: string) => Object.keys(rows).length + Object.keys(tally).indexOf(key) + 1
  const readings = entries.map(
    (entry) => ({ value: String(line(entry[0])), kind: 'row', patches: fewer(amount, entry) }) as const,
  )
  return { about: 'drop', path: '/roster', quote: scene.quote, readings }
}

/** Of counted pieces so many fewer; of named players it must be asked which. Nothing where nobody has that size. */
const dropSized = ({ amount, size }: Sized, scene: Scene): Pick<Change, 'patches' | 'open'> | null => {
  const { draft } = scene
  const rows = Object.entries(draft.rows).flatMap(([key, row]) => (isOfSize(size, row) ? [key] : []))
  const tallied = Object.entries(draft.tally).filter(([, entry]) => isOfSize(size, entry))
  const [only] = tallied
  if (rows.length === amount) return { patches: rows.map(dropRow), open: [] }
  if (rows.length > 0) return { patches: [], open: [choose(rows, scene)] }
  if (only === undefined) return null
  if (tallied.length === 1) return { patches: fewer(amount, only), open: [] }
  return { patches: [], open: [whichCounted(tallied, amount, scene)] }
}

/** "drop 2 of the mediums". */
export const readSized = (tokens: readonly Token[], at: number, scene: Scene): Change | null => {
  const sized = sizedAt(tokens, at)
  const found = sized === null ? null : dropSized(sized, scene)
  return sized === null || found === null ? null : { ...found, taken: span(at - 1, sized.to) }
}

const leading: readonly string[] = [
  ...listed.changes.ofSize,
  ...listed.changes.wholeSeveral,
  ...listed.changes.oneOfSize,
  ...listed.changes.theOneOfSize,
]
const ending: readonly string[] = [...listed.anew.ends, ...listed.changes.wholly]

/** "Quita al de la XL": the one who has that size; of several it is asked which. */
const soleOfSize = (size: SizeFound, scene: Scene, taken: ReadonlySet<number>): Change | null => {
  const tallied = Object.values(scene.draft.tally).some((entry) => isOfSize(size, entry))
  const found = tallied ? null : dropSized({ amount: 1, size, to: size.to }, scene)
  return found === null ? null : { ...found, taken }
}

/** "get rid of the youth larges altogether", "quita las grandes": all that were counted in a size; not "drop the larges to 3". */
export const readWholeSize = (tokens: readonly Token[], at: number, scene: Scene): Change | null => {
  let next = at + 1
  while (isWord(tokens[next], ...leading) && sizeAt(tokens, next) === null) next += 1
  const size = next > at + 1 ? sizeAt(tokens, next) : null
  const end = tokens[size?.to ?? 0]
  if (size?.size === undefined || !(isStop(end) || end?.text === ',' || isWord(end, ...ending))) return null
  const single = tokens.slice(at + 1, next).some((token) => isWord(token, ...listed.changes.oneOfSize))
  if (single) return soleOfSize(size, scene, span(at, size.to))
  if (tokens.slice(at + 1, next).some((token) => isWord(token, ...listed.changes.theOneOfSize))) return null
  const [found, ...more] = Object.entries(scene.draft.tally).filter(([, entry]) => isOfSize(size, entry))
  const to = isWord(end, ...listed.changes.wholly) ? size.to + 1 : size.to
  return found === undefined || more.length > 0
    ? null
    : { ...nothing, patches: [{ path: ['tally', found[0]], value: null }], taken: span(at, to) }
}

/** "one of the mediums is out", "una de las medianas ya no va". */
export const readSizedGone = (tokens: readonly Token[], scene: Scene): Change => {
  for (const at of tokens.keys()) {
    const sized = sizedAt(tokens, at)
    const to = sized === null ? null : leavesAt(tokens, sized.to)
    const found = sized === null || to === null ? null : dropSized(sized, scene)
    if (found !== null && to !== null) return { ...found, taken: span(at, to) }
  }
  return nothing
}
