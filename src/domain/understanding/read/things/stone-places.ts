import type { PlaceId } from '../../../garment/place.ts'
import type { Draft, StoneWish } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { span } from '../list/change.ts'
import { isDrop } from '../players/drops.ts'
import type { Term } from '../text/lexicon.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { placesAt } from './groups.ts'
import type { ThingsFound } from './things.ts'

/** Places with stones and places that stay without, as the words have it, and the tokens that say so. */
export type StonePlaces = {
  readonly on: readonly PlaceId[]
  readonly off: readonly PlaceId[]
  readonly only: boolean
  readonly taken: ReadonlySet<number>
}

type Scene = { readonly tokens: readonly Token[]; readonly terms: readonly Term[] }
type Phrase = {
  readonly places: readonly PlaceId[]
  readonly only: boolean
  readonly said: readonly number[]
  readonly to: number
}

const small: readonly string[] = listed.things.small
const having: readonly string[] = listed.things.having
const bareWords: readonly string[] = listed.things.bare

const kindAt = ({ terms }: Scene, at: number): Term | undefined => terms.find((term) => term.from === at)

const spotsOf = (term: Term): readonly PlaceId[] => (term.meaning.kind === 'place' ? placesAt('number', term.meaning.id) : [])

/** Places behind a word, with "and" between them and an "only" before or behind: "only on the front", "adelante y atrás". */
const placesBehind = (scene: Scene, from: number): Phrase => {
  const places: PlaceId[] = []
  const said: number[] = []
  let loose: number[] = []
  let only = false
  let to = from
  let at = from
  for (;;) {
    const term = kindAt(scene, at)
    const kind = term?.meaning.kind
    const skipped = kind === 'in' || (kind === 'and' && places.length > 0) || isWord(scene.tokens[at], ...small)
    const adjective = places.length === 0 && (kind === 'stone-size' || kind === 'colour' || kind === 'content')
    if (term !== undefined && (kind === 'place' || kind === 'only')) {
      places.push(...spotsOf(term))
      only ||= kind === 'only'
      loose.push(...span(at, term.to))
      said.push(...loose)
      loose = []
      to = term.to
    } else if (skipped) loose.push(at)
    else if (!adjective) break
    at = term?.to ?? at + 1
  }
  return { places, only, said, to }
}

/** The place that ends right before a word, over "with", "has", "is": "atrás sin piedras", "the back plain". */
const placeBefore = (scene: Scene, before: number): { readonly places: readonly PlaceId[]; readonly from: number } | null => {
  let at = before
  while (isWord(scene.tokens[at - 1], ...having) || scene.terms.some(({ meaning, to }) => to === at && meaning.kind === 'with'))
    at -= 1
  const last = scene.terms.find(({ meaning, to }) => to === at && meaning.kind === 'place')
  if (last === undefined) return null
  const twin = scene.terms.find(({ meaning, to }) => to === last.from - 1 && meaning.kind === 'place')
  const joined = twin !== undefined && kindAt(scene, last.from - 1)?.meaning.kind === 'and'
  return { places: [...(joined ? spotsOf(twin) : []), ...spotsOf(last)], from: joined ? twin.from : last.from }
}

/** A clause begins at a token, small words left out: what stands there says where, and is no place of the thing before. */
const opens = ({ tokens }: Scene, from: number): boolean => {
  let at = from
  while (isWord(tokens[at - 1], ...small, ...listed.things.and)) at -= 1
  const before = tokens[at - 1]
  return before === undefined || before.kind !== 'word'
}

/** Where a "no" begins that stands before a token: "no stones", "without any stones", "quita las piedras"; null without one. */
const noBefore = (scene: Scene, at: number): number | null => {
  const from = isWord(scene.tokens[at - 1], ...listed.things.any) ? at - 1 : at
  const verb = scene.tokens[from - 1]
  if (verb !== undefined && isDrop(verb)) return from - 1
  return scene.terms.find(({ meaning, to }) => to === from && meaning.kind === 'no')?.from ?? null
}

/** Tokens that were read here, as words that say nothing. */
export const setAside = (tokens: readonly Token[], taken: ReadonlySet<number>): readonly Token[] =>
  taken.size === 0
    ? tokens
    : tokens.map((token, at) =>
        taken.has(at) && token.kind !== 'break' ? { ...token, kind: 'word', text: 'the', key: 'the' } : token,
      )

const nowhere: StonePlaces = { on: [], off: [], only: false, taken: new Set() }

/** "No stones on the back", "atrás sin piedras". */
const refusedAt = (scene: Scene, no: number, stones: Term): StonePlaces => {
  const behind = placesBehind(scene, stones.to)
  if (behind.places.length > 0)
    return { ...nowhere, off: behind.places, taken: new Set([...span(no, stones.to), ...behind.said]) }
  const before = placeBefore(scene, no)
  if (before === null) return nowhere
  const place = opens(scene, before.from) ? span(before.from, no) : nowhere.taken
  return { ...nowhere, off: before.places, taken: new Set([...place, ...span(no, stones.to)]) }
}

/** "Stones only on the front", "only the front has stones", "stones on the front, not the back". */
const wantedAt = (scene: Scene, stones: Term): StonePlaces => {
  const behind = placesBehind(scene, stones.to)
  const before = behind.places.length === 0 ? placeBefore(scene, stones.from) : null
  const only =
    before === null
      ? undefined
      : scene.terms.find(({ meaning, to }) => meaning.kind === 'only' && to >= before.from - 2 && to <= before.from)
  if (before !== null && only !== undefined)
    return { ...nowhere, on: before.places, only: true, taken: span(only.from, stones.from) }
  if (before !== null && opens(scene, before.from)) return { ...nowhere, on: before.places }
  if (behind.places.length === 0) return nowhere
  const pause = scene.tokens[behind.to]?.text === ',' ? behind.to + 1 : behind.to
  const no = kindAt(scene, isWord(scene.tokens[pause], ...listed.things.butNot) ? pause + 1 : pause)
  const not = no?.meaning.kind === 'no' ? placesBehind(scene, no.to) : null
  const refused = not !== null && not.places.length > 0 ? span(no?.from ?? 0, not.to) : nowhere.taken
  return { on: behind.places, off: not?.places ?? [], only: behind.only, taken: new Set([...behind.said, ...refused]) }
}

/** "Plain on the back", "the back plain", "nada atrás", beside words about stones. */
const bareAt = (scene: Scene, at: number): StonePlaces => {
  const behind = placesBehind(scene, at + 1)
  if (behind.places.length > 0) return { ...nowhere, off: behind.places, taken: new Set([at, ...behind.said]) }
  const before = placeBefore(scene, at)
  if (before === null || !opens(scene, before.from)) return nowhere
  return { ...nowhere, off: before.places, taken: span(before.from, at + 1) }
}

const isLast = ({ tokens }: Scene, at: number): boolean => {
  const next = tokens[at + 1]
  return next === undefined || next.kind === 'break' || [',', '.', ';', '!'].includes(next.text)
}

/** "Plain" anywhere; "without" and "no" where they end their clause: "front with stones, back without". */
const isBare = (scene: Scene, at: number): boolean =>
  isWord(scene.tokens[at], ...bareWords) || (isWord(scene.tokens[at], ...listed.things.without) && isLast(scene, at))

const together = (found: readonly StonePlaces[]): StonePlaces => ({
  on: found.flatMap(({ on }) => on),
  off: found.flatMap(({ off }) => off),
  only: found.some(({ only }) => only),
  taken: new Set(found.flatMap(({ taken }) => [...taken])),
})

const hasNumbers = ({ marks }: Draft): boolean =>
  Object.values(marks).some(({ content, wanted }) => content === 'number' && wanted !== false)

const hasStones = ({ styles, marks }: Draft): boolean =>
  [...Object.values(styles), ...Object.values(marks).map(({ style }) => style)].some((style) => style?.stones !== undefined)

/** Where the stones go, where that is said apart from where the numbers go: by "only", by a place without, or beside places said before. */
export const readStonePlaces = (scene: Scene, draft: Draft): StonePlaces => {
  const stones = scene.terms.filter(({ meaning }) => meaning.kind === 'stones')
  const refused = stones.flatMap((term) => {
    const no = noBefore(scene, term.from)
    return no === null ? [] : [refusedAt(scene, no, term)]
  })
  const wanted = stones.filter((term) => noBefore(scene, term.from) === null).map((term) => wantedAt(scene, term))
  const speaks = wanted.some(({ on }) => on.length > 0) || (stones.length === 0 && hasStones(draft))
  const bare = speaks ? scene.tokens.flatMap((_, at) => (isBare(scene, at) ? [bareAt(scene, at)] : [])) : []
  const all = together([...refused, ...wanted, ...bare])
  if (all.off.length === 0 && !all.only && all.taken.size === 0) return nowhere
  const others = scene.terms.some((term) => spotsOf(term).length > 0 && !all.taken.has(term.from))
  if (all.off.length === 0 && !all.only && !others && !hasNumbers(draft)) return nowhere
  return all
}

const usual: readonly PlaceId[] = ['front-number', 'back-number']

/** Numbers said without a place stand at both usual ones, where the stones are said by place. */
const settled = (draft: Draft, places: readonly PlaceId[]): readonly Patch[] => {
  const numbers = Object.entries(draft.marks).filter(([, { content, wanted }]) => content === 'number' && wanted !== false)
  const had = new Set(numbers.flatMap(([, { place }]) => place ?? []))
  const bare = numbers.filter(([, { place }]) => place === undefined)
  const missing = places.filter((place) => !had.has(place))
  const fresh = had.size === 0 ? [...new Set([...usual, ...missing])] : missing
  const style = bare[0]?.[1].style
  return [
    ...bare.map(([id]): Patch => ({ path: ['marks', id], value: null })),
    ...fresh.map(
      (place): Patch => ({
        path: ['marks', place],
        value: { content: 'number', place, ...(style === undefined ? {} : { style }) },
      }),
    ),
  ]
}

const stonesSaid = ({ styles, marks }: Draft): StoneWish =>
  Object.assign(
    {},
    ...Object.values(styles).map(({ stones }) => stones),
    ...Object.values(marks).map(({ style }) => style?.stones),
  )

/** Words across the front, where the front has no number: the stones said of the front are theirs. */
const isOfText = (draft: Draft, place: PlaceId): boolean => {
  const live = Object.values(draft.marks).filter(({ wanted }) => wanted !== false)
  return (
    place === 'front-number' && live.some((mark) => mark.place === 'full-front') && !live.some((mark) => mark.place === place)
  )
}

/** The changes that such places mean: a make of stones by place, over what all numbers have. `before`: without this message. */
const patchesOf = (before: Draft, draft: Draft, { on, off, only }: StonePlaces): readonly Patch[] => {
  if (on.length + off.length === 0) return []
  const texts = on.filter((place) => isOfText(draft, place))
  const numbers = on.filter((place) => !texts.includes(place))
  const known = Object.values(draft.marks).flatMap(({ content, place, wanted }) =>
    content === 'number' && wanted !== false ? (place ?? []) : [],
  )
  const kept = (place: PlaceId) => !only && before.styles[place]?.stones?.wanted === true
  const others = on.length === 0 ? [] : [...new Set([...usual, ...known])].filter((place) => !on.includes(place))
  const without = new Set([...others.filter((place) => !kept(place)), ...off])
  const given = [...numbers, ...others.filter((place) => kept(place) && !off.includes(place))]
  return [
    ...settled(draft, texts.length > 0 ? numbers : [...numbers, ...off.filter((place) => usual.includes(place))]),
    ...texts.map((): Patch => ({ path: ['styles', 'full-front', 'stones'], value: { ...stonesSaid(draft), wanted: true } })),
    ...given.map((place): Patch => ({ path: ['styles', place, 'stones', 'wanted'], value: true })),
    ...[...without].map((place): Patch => ({ path: ['styles', place, 'stones', 'wanted'], value: false })),
  ]
}

/** What was read, with the stones at their places. */
export const placeStones = (before: Draft, found: ThingsFound, stones: StonePlaces): ThingsFound => {
  const patches = patchesOf(before, found.draft, stones)
  return { ...found, draft: preview(found.draft, patches), patches: [...found.patches, ...patches] }
}
