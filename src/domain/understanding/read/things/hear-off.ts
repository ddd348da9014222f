import type { ContentKind } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import type { Spot } from '../../words/word-list.ts'
import { fold } from '../text/tokens.ts'
import { placesAt, refusal } from './groups.ts'
import type { Content, Item } from './items.ts'
import { refusedOn } from './refused-place.ts'
import { flush, put, sentence, type Walk } from './walk.ts'

const refuse = (walk: Walk, content: 'number' | 'name'): void => {
  flush(walk)
  const places = content === 'number' ? (['front-number', 'back-number'] as const) : (['name'] as const)
  const marks = Object.entries(walk.draft.marks).filter(([, mark]) => mark.content === content && mark.wanted !== false)
  const scope = walk.scope
  if (scope !== null && marks.length > 0 && walk.several) {
    const others = (on: readonly string[] | undefined) => (on ?? Object.keys(walk.draft.garments)).filter((id) => id !== scope)
    put(
      walk,
      marks.flatMap(([id, mark]): readonly Patch[] => [{ path: ['marks', id, 'on'], value: others(mark.on) }]),
    )
    return
  }
  put(walk, [
    ...marks.map(([id]): Patch => ({ path: ['marks', id, 'wanted'], value: false })),
    ...places.flatMap((place) => refusal(place, content)),
  ])
}

/** "The coach: COACH on the chest, no number": where the others wear one, a single "no number" speaks of one of them. */
const isOfOne = (walk: Walk, content: 'number' | 'name', at: number): boolean => {
  const single = listed.things.single.includes(walk.items[at]?.key ?? '')
  const worn = Object.values(walk.draft.marks).some((mark) => mark.content === content && mark.wanted !== false)
  return single && worn && walk.scope === null && Object.keys(walk.draft.rows).length > 0
}

const extraWords: readonly string[] = listed.things.extra

/** "2 extra, no name or number": said of some pieces, not of all. */
const isOfExtras = (walk: Walk): boolean => sentence(walk).some((item) => extraWords.includes(item.key))

/** "No names for Ana": said of players of the list, not of all. */
const isOfPlayers = (walk: Walk): boolean => {
  const names = Object.values(walk.draft.rows).flatMap(({ name = '' }) => fold(name).split(' '))
  return sentence(walk).some(({ kind, key }) => kind === 'other' && key.length > 2 && names.includes(key.replace(/'s$/, '')))
}

/** No numbers, or no names, wherever they stand. */
export const hearRefused = (walk: Walk, content: Content, at: number): void => {
  if (!isOfOne(walk, content, at) && !isOfExtras(walk) && !isOfPlayers(walk)) refuse(walk, content)
}

const refuseAt = (walk: Walk, content: ContentKind, spots: readonly Spot[]): void => {
  flush(walk)
  const places = spots.flatMap((spot) => placesAt(content, spot))
  put(
    walk,
    places.flatMap((place) => refusedOn(walk, place) ?? refusal(place, content)),
  )
}

const everyContent: readonly ContentKind[] = ['number', 'name', 'text']

/** What stands at these places; numbers where nothing does. */
const standing = ({ draft }: Walk, spots: readonly Spot[]): readonly ContentKind[] => {
  const marks = Object.values(draft.marks).filter((mark) => mark.wanted !== false)
  const there = everyContent.filter((content) => {
    const places = spots.flatMap((spot) => placesAt(content, spot))
    return marks.some((mark) => mark.content === content && mark.place !== undefined && places.includes(mark.place))
  })
  return there.length > 0 ? there : ['number']
}

/** "No numbers on the front": there alone. "Leave the back blank": whatever stands there. */
export const hearOff = (walk: Walk, { contents, spots, both }: Extract<Item, { kind: 'off' }>, at: number): void => {
  if (both === true) walk.scope = null
  if (contents.length === 0) {
    for (const content of standing(walk, spots)) refuseAt(walk, content, spots)
    return
  }
  for (const content of contents) {
    if (spots.length === 0) hearRefused(walk, content, at)
    else if (!isOfPlayers(walk) && !isOfExtras(walk)) refuseAt(walk, content, spots)
  }
}
