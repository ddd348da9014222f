import type { Draft } from '../draft.ts'
import { listed } from '../words/languages.ts'
import { type Ref, refsIn } from './refs.ts'
import { isWord, type Token } from './tokens.ts'

/** Those of the list who are spoken of together: the rows, and the place of the words that name them. */
export type Group = { readonly refs: readonly Ref[]; readonly from: number; readonly to: number }

const joinedBy = (tokens: readonly Token[], before: Ref, next: Ref): boolean =>
  tokens
    .slice(before.to, next.from)
    .every((token) => isWord(token, ...listed.again.joins) || [',', '&', '#'].includes(token.text))

/** "7 thru 12", "del 4 al 9", "7-12": everybody of the list from one number to another. */
const isRange = (tokens: readonly Token[], before: Ref, next: Ref): boolean => {
  const between = tokens.slice(before.to, next.from)
  const [only] = between
  return (
    before.by === 'number' &&
    next.by === 'number' &&
    between.length === 1 &&
    (only?.text === '-' || isWord(only, ...listed.told.through))
  )
}

const ranged = (tokens: readonly Token[], [first, last]: readonly [Ref, Ref], draft: Draft): Group => {
  const [low, high] = [Number(tokens[first.from]?.text), Number(tokens[last.from]?.text)]
  const refs = Object.entries(draft.rows).flatMap(([key, { number }]): readonly Ref[] =>
    number !== undefined && Number(number) >= low && Number(number) <= high
      ? [{ keys: [key], from: first.from, to: last.to, by: 'number' }]
      : [],
  )
  return { refs, from: first.from, to: last.to }
}

const keysOf = (group: Group): readonly string[] => group.refs.flatMap(({ keys }) => keys)

/** "la 14 sí es Paty": the same one named twice. */
const isSame = (a: Group, ref: Ref): boolean =>
  a.refs.length === 1 && ref.keys.length === 1 && keysOf(a).includes(ref.keys[0] ?? '')

/** Who of the list is named in a stretch of tokens, those named together as one. */
export const groupsIn = (tokens: readonly Token[], draft: Draft): readonly Group[] => {
  const groups: Group[] = []
  for (const ref of refsIn(tokens, draft.rows)) {
    const last = groups.at(-1)
    const before = last?.refs.at(-1)
    const alone: Group = { refs: [ref], from: ref.from, to: ref.to }
    if (last === undefined || before === undefined) groups.push(alone)
    else if (isRange(tokens, before, ref)) groups.splice(-1, 1, ranged(tokens, [before, ref], draft))
    else if (isSame(last, ref)) groups.splice(-1, 1, { ...last, to: ref.to })
    else if (joinedBy(tokens, before, ref)) groups.splice(-1, 1, { refs: [...last.refs, ref], from: last.from, to: ref.to })
    else groups.push(alone)
  }
  return groups
}
