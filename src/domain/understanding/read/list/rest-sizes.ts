import type { Fit } from '../../../garment/garment.ts'
import type { Draft, Player } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, wordValues } from '../../words/languages.ts'
import { type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { addCounted } from './merge-players.ts'

const counts = wordValues.apart

const amountOf = (token: Token | undefined): number | null => {
  if (token === undefined) return null
  if (isNumber(token)) return /^[1-9]\d?$/.test(token.text) ? Number(token.text) : null
  return counts[token.key] ?? null
}

const except: readonly string[] = listed.players.except
const linking: readonly string[] = listed.players.apart

/** The size that follows over small words. */
const sizeBehind = (tokens: readonly Token[], at: number): SizeFound | null => {
  let next = at
  while (next < at + 5 && isWord(tokens[next], ...linking) && sizeAt(tokens, next) === null) next += 1
  const size = sizeAt(tokens, next)
  return size?.size === undefined ? null : size
}

type Counted = { readonly size: Player['size']; readonly fit: Fit | undefined; readonly quantity: number }

/** "… all large except two that are XL": so many of another size. */
const exceptions = (tokens: readonly Token[]): readonly Counted[] =>
  [...tokens.keys()].flatMap((at) => {
    if (!isWord(tokens[at], ...except)) return []
    const amount = amountOf(tokens[at + 1])
    const size = amount === null ? null : sizeBehind(tokens, at + 2)
    return amount === null || size === null ? [] : [{ size: size.size, fit: size.fit, quantity: amount }]
  })

const rests = phrasesOf(listed.players.rest)

/** "… and the rest medium": the size of all that were not counted. */
const restSize = (tokens: readonly Token[]): SizeFound | null => {
  for (const at of tokens.keys()) {
    const to = phraseEnd(tokens, at, rests)
    const size = to === null ? null : sizeBehind(tokens, to)
    if (size !== null) return size
  }
  return null
}

const totalOf = (draft: Draft): number | undefined => {
  const counted = Object.values(draft.garments).flatMap((wish) => wish.count ?? [])
  return draft.count ?? (counted.length === 1 ? counted[0] : undefined)
}

/** "The 1 and the 8 are L, the rest M": the size of those on the list who have none. */
const restOfRows = (tokens: readonly Token[], { rows, common }: Draft): readonly Patch[] => {
  const rest = common?.size === undefined ? restSize(tokens) : null
  if (rest?.size === undefined) return []
  const { size, fit } = rest
  return Object.entries(rows).flatMap(([key, row]): readonly Patch[] => {
    if (row.size !== undefined) return []
    return [
      { path: ['rows', key, 'size'], value: size },
      ...(fit === undefined ? [] : [{ path: ['rows', key, 'fit'], value: fit }]),
    ]
  })
}

/** What is left of the pieces when some were counted apart: nothing where the whole is not known or somebody is on the list. */
export const readRestSizes = (tokens: readonly Token[], draft: Draft): readonly Patch[] => {
  const total = totalOf(draft)
  if (Object.keys(draft.rows).length > 0) return restOfRows(tokens, draft)
  if (total === undefined) return []
  const rest = restSize(tokens)
  const counted = Object.values(draft.tally).reduce((sum, entry) => sum + entry.quantity, 0)
  if (rest !== null && counted > 0 && counted < total)
    return addCounted(draft, [
      { size: rest.size, ...(rest.fit === undefined ? {} : { fit: rest.fit }), quantity: total - counted },
    ])
  const apart = exceptions(tokens)
  const size = draft.common?.size
  const others = apart.reduce((sum, one) => sum + one.quantity, 0)
  if (size === undefined || others === 0 || others >= total || counted > 0) return []
  const players = apart.map(({ fit, ...one }): Player => ({ ...one, ...(fit === undefined ? {} : { fit }) }))
  return addCounted(draft, [{ size, quantity: total - others }, ...players])
}
