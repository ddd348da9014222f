import type { Draft } from '../../draft.ts'
import { listed, spoken } from '../../words/languages.ts'
import { isOfSize, sizeAt } from '../sizes/sizes.ts'
import { isWord, type Token } from '../text/tokens.ts'
import type { Ref } from '../whom/refs.ts'
import { newNumber } from './new-number.ts'

const alters = new RegExp(`^(?:${spoken.changes.alters})$`)
const namesAndSizes: readonly string[] = [...listed.changes.names, ...listed.changes.sizes]

const isJoint = (token: Token | undefined): boolean =>
  token === undefined || token.kind !== 'word'
    ? token?.text !== '#' && token?.kind !== 'number'
    : isWord(token, ...listed.again.and)

/** A word that changes something of somebody, so that they stay. */
const isAltering = (token: Token): boolean => (token.kind === 'word' && alters.test(token.key)) || isWord(token, ...namesAndSizes)

/** A size or a number that is not theirs yet: "20 García an XL", "Dov wears 7 now". */
const isToldAnew = (
  tokens: readonly Token[],
  ref: Ref,
  { draft, end }: { readonly draft: Draft; readonly end: number },
): boolean => {
  const rows = ref.keys.flatMap((key) => draft.rows[key] ?? [])
  const sized = Array.from({ length: end - ref.to }, (_, index) => sizeAt(tokens, ref.to + index)).find(
    (one) => one?.size !== undefined,
  )
  return (sized?.size !== undefined && !rows.some((row) => isOfSize(sized, row))) || newNumber(tokens, ref.to) !== null
}

/** Whether the words around one who is named say what becomes of them, so that they are not among those who are dropped. */
const isChanged = (tokens: readonly Token[], ref: Ref, draft: Draft): boolean => {
  const from = tokens.slice(0, ref.from).findLastIndex((token, at) => isJoint(token) && at < ref.from) + 1
  const behind = tokens.findIndex((token, at) => at >= ref.to && isJoint(token))
  const end = behind < 0 ? tokens.length : behind
  return (
    isWord(tokens[ref.to], ...listed.told.tells) ||
    tokens.slice(from, end).some(isAltering) ||
    isToldAnew(tokens, ref, { draft, end })
  )
}

/** Of those behind a word that drops, up to whom something else is told: "quita a Soto, y el nombre de Nuñez …", "drop Bo and make Ana L". */
export const droppedTogether = (tokens: readonly Token[], refs: readonly Ref[], draft: Draft): readonly Ref[] => {
  const other = refs.findIndex((ref, index) => index > 0 && isChanged(tokens, ref, draft))
  return other < 0 ? refs : refs.slice(0, other)
}
