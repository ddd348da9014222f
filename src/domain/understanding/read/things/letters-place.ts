import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'

/** "Letters go on the left chest": where players of the list have letters there, those were meant, and no other word is missing. */
export const withoutEmptyLetters = ({ marks, rows }: Draft): readonly Patch[] => {
  const places = new Set(Object.values(rows).flatMap(({ extras }) => Object.values(extras ?? {}).map(({ place }) => place)))
  return Object.entries(marks).flatMap(([id, { content, text, place, wanted }]) =>
    content === 'text' && text === undefined && wanted !== false && place !== undefined && places.has(place)
      ? [{ path: ['marks', id], value: null }]
      : [],
  )
}
