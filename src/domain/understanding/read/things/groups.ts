import type { PlaceId } from '../../../garment/place.ts'
import { playersGarments } from '../../compose/garments.ts'
import type { ContentKind, Draft, Mark, StoneWish, Style } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import type { Spot } from '../../words/word-list.ts'
import { isMakeOnly, letteringPatches } from './lettering.ts'
import { isEmpty, stylePatches } from './style-patches.ts'

type Loose<T> = { -readonly [K in keyof T]: T[K] }

/** What is being said of one thing to put on: its make, its places, the garment it was said of. */
export type Group = {
  readonly content: ContentKind
  text: string | undefined
  readonly places: Set<PlaceId>
  readonly style: Loose<Style>
  readonly heights: Map<PlaceId, number>
  /** Garments named in the same sentence. */
  readonly on: Set<string>
  /** They were named before this thing was, and give way to a garment that is named with it. */
  inherited: boolean
  everywhere: boolean
  /** Only a make was spoken of ("print"): nothing is put anywhere for it. */
  makeOnly: boolean
  /** Only here: the other usual places, or the other garments, stay free. */
  only: boolean
}

export const newGroup = (content: ContentKind, on: string | null): Group => ({
  content,
  text: undefined,
  places: new Set(),
  style: {},
  heights: new Map(),
  on: new Set(on === null ? [] : [on]),
  inherited: on !== null,
  everywhere: false,
  makeOnly: false,
  only: false,
})

export const stonesOf = (group: Group): Loose<StoneWish> => {
  const stones = group.style.stones ?? {}
  group.style.stones = stones
  return stones
}

const numberSpots: Partial<Record<Spot, readonly PlaceId[]>> = {
  front: ['front-number'],
  back: ['back-number'],
  'both-sides': ['front-number', 'back-number'],
  sleeves: ['left-sleeve', 'right-sleeve'],
  shoulders: ['left-shoulder', 'right-shoulder'],
  chest: ['front-number'],
}
const nameSpots: Partial<Record<Spot, readonly PlaceId[]>> = {
  yoke: ['name'],
  front: ['full-front'],
  back: ['name'],
  above: ['name'],
  below: ['below-number'],
  sleeves: ['left-sleeve', 'right-sleeve'],
  shoulders: ['left-shoulder', 'right-shoulder'],
  chest: ['left-chest'],
}
const textSpots: Partial<Record<Spot, readonly PlaceId[]>> = {
  front: ['full-front'],
  chest: ['full-front'],
  back: ['yoke'],
  above: ['yoke'],
  below: ['below-number'],
  'both-sides': ['full-front', 'yoke'],
  sleeves: ['left-sleeve', 'right-sleeve'],
  shoulders: ['left-shoulder', 'right-shoulder'],
}
const spots: Readonly<Record<ContentKind, Partial<Record<Spot, readonly PlaceId[]>>>> = {
  number: numberSpots,
  name: nameSpots,
  text: textSpots,
  artwork: textSpots,
}

const generic: readonly Spot[] = ['front', 'back', 'both-sides', 'above', 'below', 'sleeves', 'shoulders', 'chest']

const isPlace = (spot: Spot): spot is PlaceId => !generic.includes(spot)

/** The places that a word means for this kind of thing: "back" is the back number of numbers and the name's place of names. */
export const placesAt = (content: ContentKind, spot: Spot): readonly PlaceId[] =>
  spots[content][spot] ?? (isPlace(spot) ? [spot] : [])

/** The key of a mark: its place, or its place and a running number when another text stands there. */
const markId = (draft: Draft, group: Group, place: PlaceId): string => {
  const taken = (id: string): boolean => {
    const mark = draft.marks[id]
    if (mark === undefined || mark.wanted === false) return false
    return mark.content !== group.content || (group.content === 'text' && mark.text !== group.text && sharesGarment(mark, group))
  }
  if (!taken(place)) return place
  const wholly = draft.marks[place]?.content === group.content
  return wholly && group.on.size === 0 ? place : `${place}-2`
}

const sharesGarment = (mark: Mark, group: Group): boolean => group.on.size > 0 && !(mark.on ?? []).some((id) => group.on.has(id))

/** Made alike on all garments that were named. */
const isAlike = ({ everywhere, on }: Group): boolean => everywhere && on.size > 0

/** Where the make of a mark is kept: with the mark, or apart for a garment when the mark stands on several. */
const styleRoots = (id: string, group: Group, apart: boolean): readonly (readonly string[])[] => {
  if (isAlike(group)) return [...group.on].map((garment) => ['styles', `${group.content}@${garment}`])
  return apart ? [...group.on].map((garment) => ['styles', `${id}@${garment}`]) : [['marks', id, 'style']]
}

/** What is made alike everywhere is so at one place only in its height. */
const ownHeight = (group: Group, id: string, height: number | undefined): readonly Patch[] =>
  isAlike(group) && height !== undefined ? [{ path: ['marks', id, 'style', 'micrometres'], value: height }] : []

const placePatches = (draft: Draft, group: Group, { place, several }: { place: PlaceId; several: boolean }): readonly Patch[] => {
  const id = markId(draft, group, place)
  const before = draft.marks[id]
  const height = group.heights.get(place)
  const alike = isAlike(group)
  const style: Style = height === undefined || alike ? group.style : { ...group.style, micrometres: height }
  const named = several && group.on.size > 0 && !group.everywhere
  const was = before?.wanted === false || group.only ? undefined : before?.on
  const on = named ? [...new Set([...(was ?? []), ...group.on])] : undefined
  const apart = named && (was ?? []).some((garment) => !group.on.has(garment))
  return [
    { path: ['marks', id, 'content'], value: group.content },
    { path: ['marks', id, 'place'], value: place },
    { path: ['marks', id, 'wanted'], value: null },
    ...(group.text === undefined ? [] : [{ path: ['marks', id, 'text'], value: group.text }]),
    ...(on === undefined ? [] : [{ path: ['marks', id, 'on'], value: on }]),
    ...(style.stones === undefined || draft.styles[place]?.stones === undefined || place === 'name'
      ? []
      : [{ path: ['styles', place, 'stones'], value: null }]),
    ...ownHeight(group, id, height),
    ...(isEmpty(style) ? [] : styleRoots(id, group, apart).flatMap((path) => stylePatches(path, style))),
  ]
}

/** The places of this content where stones were said apart. */
const stonedPlaces = (draft: Draft, content: ContentKind): readonly string[] =>
  Object.values(spots[content]).flatMap((places) =>
    places.filter((place) => draft.styles[place]?.stones !== undefined && place !== 'name'),
  )

/** "… and hoodies with the name": a garment that is none of the players' is named as wearing it too. */
const besidesPlayers = (draft: Draft, { content, on }: Group, marks: readonly (readonly [string, Mark])[]): readonly Patch[] => {
  const players = playersGarments(draft)
  const others = [...on].filter((id) => draft.garments[id] !== undefined && !players.includes(id))
  if (others.length === 0 || others.length < on.size) return []
  if (marks.length === 0) return [{ path: ['marks', content, 'on'], value: others }]
  return marks.map(
    ([id, mark]): Patch => ({ path: ['marks', id, 'on'], value: [...new Set([...(mark.on ?? players), ...others])] }),
  )
}

/** A make said of all numbers or all names holds for those at their places too. */
const everyPatches = (draft: Draft, group: Group, several: boolean): readonly Patch[] => {
  const marks = Object.entries(draft.marks).filter(([, mark]) => mark.content === group.content && mark.wanted !== false)
  const known: Patch[] = marks.length > 0 ? [] : [{ path: ['marks', group.content, 'content'], value: group.content }]
  if (several && group.on.size > 0 && !group.everywhere) {
    if (!group.only) known.push(...besidesPlayers(draft, group, marks))
    const on = group.only ? marks.map(([id]): Patch => ({ path: ['marks', id, 'on'], value: [...group.on] })) : []
    return [...known, ...on, ...[...group.on].flatMap((id) => stylePatches(['styles', `${group.content}@${id}`], group.style))]
  }
  const keys = Object.keys(group.style)
  const overruled = marks.filter(
    ([, mark]) => mark.style !== undefined && keys.some((key) => Object.hasOwn(mark.style ?? {}, key)),
  )
  return [
    ...known,
    ...stylePatches(['styles', group.content], group.style),
    ...overruled.flatMap(([id]) => stylePatches(['marks', id, 'style'], group.style)),
    ...(group.style.stones?.wanted === false
      ? stonedPlaces(draft, group.content).map((place): Patch => ({ path: ['styles', place, 'stones'], value: null }))
      : []),
  ]
}

const freeText = (draft: Draft, group: Group): Group => {
  const texts = Object.values(draft.marks).filter((mark) => mark.content === 'text' && mark.wanted !== false)
  const there = texts.find((mark) => mark.text !== undefined && mark.text === group.text) ?? texts[0]
  return { ...group, places: new Set([there?.place ?? 'full-front']) }
}

/** "Only on the back": the other usual place stays free. */
const onlyPatches = (group: Group): readonly Patch[] => {
  if (!group.only || group.content !== 'number') return []
  const usual: readonly PlaceId[] = ['front-number', 'back-number']
  if (!usual.some((place) => group.places.has(place))) return []
  return usual.filter((place) => !group.places.has(place)).flatMap((place) => refusal(place, 'number'))
}

const nameLines: readonly PlaceId[] = ['name', 'below-number']

/** A name stands once on the back: said of the other side of the number it moves there, with its make. */
const movedName = (draft: Draft, { content, places }: Group): readonly Patch[] => {
  const [to, ...more] = nameLines.filter((place) => places.has(place))
  const from = nameLines.find((place) => place !== to)
  const old = draft.marks[from ?? '']
  if (content !== 'name' || to === undefined || more.length > 0 || old?.content !== 'name' || old.wanted === false) return []
  const kept = Object.entries({ style: old.style, on: old.on }).filter(([, value]) => value !== undefined)
  return [
    ...kept.map(([key, value]): Patch => ({ path: ['marks', to, key], value: value ?? null })),
    ...refusal(from ?? to, 'name'),
  ]
}

/** A place that stays free. */
export const refusal = (place: PlaceId, content: ContentKind): readonly Patch[] => [
  { path: ['marks', place, 'content'], value: content },
  { path: ['marks', place, 'place'], value: place },
  { path: ['marks', place, 'wanted'], value: false },
]

/** The changes of the draft that a finished group means. `several`: the order has more than one garment. */
export const groupPatches = (draft: Draft, group: Group, several: boolean): readonly Patch[] => {
  if (group.makeOnly && group.text === undefined && isEmpty(group.style)) return []
  if (isMakeOnly(group)) return letteringPatches(draft, group, several)
  if (group.content === 'text' && group.places.size === 0) return groupPatches(draft, freeText(draft, group), several)
  if (group.places.size === 0) return everyPatches(draft, group, several)
  const placed = [...group.places].flatMap((place) => placePatches(draft, group, { place, several }))
  return [...movedName(draft, group), ...placed, ...onlyPatches(group)]
}
