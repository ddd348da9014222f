import type { Patch } from '../../patch.ts'
import { put, type Walk } from './walk.ts'

/** "Home kelly numbers, away white numbers, front and back": places said last hold for the garment whose numbers were said without. */
export const spreadPlaces = (walk: Walk): void => {
  const numbers = Object.entries(walk.draft.marks).filter(([, mark]) => mark.content === 'number' && mark.wanted !== false)
  // A placed number that is on all garments leaves none without.
  if (numbers.some(([, { place, on }]) => place !== undefined && on === undefined)) return
  const marks = numbers.filter(([, { on }]) => on !== undefined)
  const worn = new Set(marks.flatMap(([, mark]) => mark.on ?? []))
  const bare = Object.keys(walk.draft.garments).filter(
    (id) => walk.draft.styles[`number@${id}`] !== undefined && !worn.has(id) && worn.size === 1,
  )
  if (bare.length === 0) return
  put(
    walk,
    marks.flatMap(([id, mark]): readonly Patch[] => [
      ...(mark.on ?? []).map((garment): Patch => ({ path: ['styles', `${id}@${garment}`], value: mark.style ?? {} })),
      { path: ['marks', id, 'style'], value: null },
      { path: ['marks', id, 'on'], value: [...(mark.on ?? []), ...bare] },
    ]),
  )
}
