import type { PlaceId } from '../../../garment/place.ts'
import { playersGarments } from '../../compose/garments.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { placesAt, refusal } from './groups.ts'
import type { Item } from './items.ts'
import { flush, put, type Walk } from './walk.ts'

/** "Polos black, nothing on the back of those": of several garments only the one that is spoken of stays free; null where it is all. */
export const refusedOn = ({ draft, scope, several }: Walk, place: PlaceId): readonly Patch[] | null => {
  const mark = draft.marks[place]
  if (scope === null || !several || mark === undefined || mark.wanted === false) return null
  const worn = mark.on ?? playersGarments(draft)
  if (!worn.includes(scope)) return []
  return worn.length > 1 ? [{ path: ['marks', place, 'on'], value: worn.filter((id) => id !== scope) }] : null
}

/** "On the back? no, on the front": the last place was meant otherwise. "Nothing on front": that place stays free. */
export const negatedPlace = (walk: Walk, item: Extract<Item, { kind: 'place' }>, at: number): boolean => {
  const no = [at - 1, at - 2, at - 3].find((index) => walk.items[index]?.kind === 'no')
  if (no === undefined) return false
  const word = walk.items[no]?.key ?? ''
  const group = walk.groups[0]
  if (listed.things.nothing.includes(word) || group === undefined || group.places.size === 0) {
    if (no < at - 2) return false
    const content = group?.content ?? 'number'
    flush(walk)
    put(
      walk,
      placesAt(content, item.id).flatMap((place) => refusedOn(walk, place) ?? refusal(place, content)),
    )
    return true
  }
  const own = placesAt(group.content, item.id)
  if (no === at - 1 && !own.some((place) => group.places.has(place))) return true
  for (const one of walk.groups) {
    for (const place of walk.lastPlaces) one.places.delete(place)
  }
  return false
}
