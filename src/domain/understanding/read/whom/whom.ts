import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import type { Stretch } from '../text/statements.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { type Ref, refsIn } from './refs.ts'

/** Those of the list who are spoken of together: the rows, and the places of the words that name them. */
export type Group = { readonly refs: readonly Ref[]; readonly places: readonly Stretch[]; readonly range?: true }

const joinedBy = (tokens: readonly Token[], before: Ref, next: Ref): boolean =>
  tokens
    .slice(before.to, next.from)
    .every((token) => isWord(token, ...listed.again.joins) || [',', '&', '#'].includes(token.text))

/** "7 thru 12", "del 4 al 9", "7-12": everybody of the list from one number to another. */
const isRange = (tokens: readonly Token[], before: Ref, next: Ref): boolean => {
  const [only] = tokens.slice(before.to, next.from)
  if (before.by !== 'number' || next.by !== 'number' || next.from !== before.to + 1) return false
  const opened = [1, 2].some((back) => isWord(tokens[before.from - back], ...listed.told.rangeFrom))
  return only?.text === '-' || isWord(only, ...listed.told.through) || (opened && isWord(only, ...listed.told.rangeTo))
}

const ranged = (tokens: readonly Token[], [first, last]: readonly [Ref, Ref], draft: Draft): Group => {
  const [low, high] = [Number(tokens[first.from]?.text), Number(tokens[last.from]?.text)]
  const refs = Object.entries(draft.rows).flatMap(([key, { number }]): readonly Ref[] =>
    number !== undefined && Number(number) >= low && Number(number) <= high
      ? [{ keys: [key], from: first.from, to: last.to, by: 'number' }]
      : [],
  )
  return { refs, places: [{ from: first.from, to: last.to }], range: true }
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
    const place = { from: ref.from, to: ref.to }
    if (last === undefined || before === undefined) groups.push({ refs: [ref], places: [place] })
    else if (isRange(tokens, before, ref)) groups.splice(-1, 1, ranged(tokens, [before, ref], draft))
    else if (isSame(last, ref)) groups.splice(-1, 1, { ...last, places: [...last.places, place] })
    else if (joinedBy(tokens, before, ref)) groups.splice(-1, 1, { refs: [...last.refs, ref], places: [...last.places, place] })
    else groups.push({ refs: [ref], places: [place] })
  }
  return groups
}

/** Those who are joined by a word, or who stands last: "Bo, Ana is out" is of Ana alone. */
export const togetherIn = (tokens: readonly Token[], { refs }: Group): readonly Ref[] => {
  const [before, last] = refs.slice(-2)
  const joined = tokens.slice(before?.to, last?.from).some((token) => isWord(token, ...listed.again.joins))
  return joined ? refs : refs.slice(-1)
}
