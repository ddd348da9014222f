import type { Draft, Mark, Style } from '../../draft.ts'
import { type Group, newGroup } from './groups.ts'

/** What may be said anew of things that have it: an outline, a shadow, stones. */
export type Part = 'outlines' | 'shadow' | 'stones'

const has = (style: Style | undefined, part: Part): boolean => {
  if (style === undefined) return false
  if (part === 'outlines') return (style.outlines ?? []).length > 0
  if (part === 'shadow') return style.shadow !== undefined && style.shadow !== false
  return style.stones !== undefined && style.stones.wanted !== false
}

const groupOf = (mark: Mark): Group => {
  const group = newGroup(mark.content, null)
  group.text = mark.text
  if (mark.place !== undefined) group.places.add(mark.place)
  return group
}

/** Stones that were there, were refused and keep their make: what is spoken of when they come back. */
export const refusedStones = (draft: Draft): readonly Group[] =>
  Object.values(draft.marks).flatMap((mark) =>
    mark.wanted !== false && mark.style?.stones?.wanted === false ? [groupOf(mark)] : [],
  )

/** The marks of a draft that have such a part of their own, as what is being spoken of; none where it is said of a whole kind, or of all of them. */
export const having = (draft: Draft, part: Part): readonly Group[] => {
  const marks = Object.values(draft.marks).filter((mark) => mark.wanted !== false)
  const own = marks.filter((mark) => has(mark.style, part))
  const shared = Object.values(draft.styles).some((style) => has(style, part))
  return shared || own.length === 0 ? [] : own.map(groupOf)
}
