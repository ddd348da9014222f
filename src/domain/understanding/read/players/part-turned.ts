import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, wordValues } from '../../words/languages.ts'
import { type Change, nothing, type Scene, span } from '../list/change.ts'
import { addCounted } from '../list/merge-players.ts'
import { isOfSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'
import { whichRow } from './drop-rows.ts'

const turning: readonly string[] = [...listed.changes.turning, ...listed.again.turning]
const ofSize: readonly string[] = listed.changes.ofSize

type Part = { readonly amount: number; readonly was: SizeFound; readonly now: SizeFound; readonly to: number }

const amountOf = (token: Token | undefined): number | null => {
  if (token === undefined) return null
  if (isNumber(token)) return /^[1-9]\d?$/.test(token.text) ? Number(token.text) : null
  return wordValues.dropped[token.key] ?? null
}

const over = (tokens: readonly Token[], from: number, words: readonly string[]): number => {
  let at = from
  while (at < from + 6 && isWord(tokens[at], ...words) && sizeAt(tokens, at) === null) at += 1
  return at
}

/** "One of the mens XL should be a 3XL", "2 of the mediums become larges", "una de las medianas que sea grande". */
const partAt = (tokens: readonly Token[], at: number): Part | null => {
  const amount = amountOf(tokens[at])
  const first = over(tokens, at + 1, ofSize)
  const was = amount === null || first < at + 2 ? null : sizeAt(tokens, first)
  if (amount === null || was?.size === undefined) return null
  const next = over(tokens, was.to, turning)
  const now = next === was.to ? null : sizeAt(tokens, next)
  return now?.size === undefined ? null : { amount, was, now, to: now.to }
}

const turnedCount = (draft: Draft, { amount, was, now }: Part): readonly Patch[] => {
  const [found, ...more] = Object.entries(draft.tally).filter(([, entry]) => isOfSize(was, entry))
  if (found === undefined || more.length > 0 || now.size === undefined) return []
  const [key, entry] = found
  const fit = now.fit ?? entry.fit
  const { quantity: all, size: _, fit: __, ...same } = entry
  const left: Patch =
    all > amount ? { path: ['tally', key, 'quantity'], value: all - amount } : { path: ['tally', key], value: null }
  const moved = Math.min(all, amount)
  const there = Object.entries(draft.tally).find(
    ([other, line]) => other !== key && line.size === now.size && line.fit === fit && line.garment === entry.garment,
  )
  if (there !== undefined) return [left, { path: ['tally', there[0], 'quantity'], value: there[1].quantity + moved }]
  const fresh = { ...same, size: now.size, ...(fit === undefined ? {} : { fit }), quantity: moved }
  return [left, ...addCounted(draft, [fresh])]
}

/** So many of one size that become another: of counted pieces, or of one of those who have it, who is asked for. */
export const readPartTurned = (tokens: readonly Token[], scene: Scene): Change => {
  for (const at of tokens.keys()) {
    const part = partAt(tokens, at)
    if (part === null) continue
    const { size, fit } = part.now
    const rows = Object.entries(scene.draft.rows).flatMap(([key, row]) => (isOfSize(part.was, row) ? [key] : []))
    const taken = span(at, part.to)
    const changed = rows.map((key) => ({
      key,
      patches: [
        { path: ['rows', key, 'size'], value: size },
        { path: ['rows', key, 'fit'], value: fit },
      ],
    }))
    if (rows.length > part.amount) return { ...nothing, open: [whichRow(changed, scene)], taken }
    const patches = rows.length > 0 ? changed.flatMap((one) => one.patches) : turnedCount(scene.draft, part)
    if (patches.length > 0) return { ...nothing, patches, taken }
  }
  return nothing
}
