import type { PlaceId } from '../../garment/place.ts'
import type { Decoration } from '../../order/order.ts'
import type { Shop } from '../../shop/shop.ts'
import { canonical } from '../content-hash.ts'
import type { ContentKind, Draft, Mark, Style } from '../draft.ts'
import type { KnownDecoration } from '../known.ts'
import { playersGarments } from './garments.ts'
import { composeLayers } from './layers.ts'

export type ComposedDecoration = {
  readonly known: KnownDecoration
  readonly assumed: readonly string[]
  readonly missing: readonly string[]
}

/** A mark on a garment, with the make that holds there. */
type Worn = {
  readonly id: string
  readonly mark: Mark
  readonly place: PlaceId
  readonly garment: string
  readonly style: Style
  readonly lent: boolean
}

const over = (below: Style, above: Style): Style => {
  const stones = above.stones === undefined ? below.stones : { ...below.stones, ...above.stones }
  return Object.assign({}, below, above, stones === undefined ? {} : { stones })
}

const merged = (styles: readonly (Style | undefined)[]): Style =>
  styles.reduce<Style>((below, above) => (above === undefined ? below : over(below, above)), {})

const ownStyle = (draft: Draft, content: ContentKind, garment: string): Style =>
  merged([draft.styles['all'], draft.styles[`all@${garment}`], draft.styles[content], draft.styles[`${content}@${garment}`]])

/** A name without a colour of its own is cut from the number's vinyl, and the other way round. */
const lenders: Readonly<Record<ContentKind, readonly ContentKind[]>> = {
  number: ['name'],
  name: ['number'],
  text: ['number', 'name'],
  artwork: [],
}

const lentBy = (draft: Draft, content: ContentKind, garment: string): Style => {
  const lender = lenders[content].map((other) => ownStyle(draft, other, garment)).find((style) => style.colour !== undefined)
  const fromMark = Object.values(draft.marks).find(
    (mark) =>
      mark.style?.colour !== undefined &&
      mark.wanted !== false &&
      (lenders[content].includes(mark.content) || (mark.content === content && content === 'number')),
  )
  const { colour, class: vinylClass } = lender ?? fromMark?.style ?? {}
  return { ...(colour === undefined ? {} : { colour }), ...(vinylClass === undefined ? {} : { class: vinylClass }) }
}

/** Where something goes when nobody said where. */
const usualPlaces = (shop: Shop, draft: Draft, content: ContentKind): readonly PlaceId[] => {
  if (content === 'name') return ['name']
  if (content !== 'number') return ['full-front']
  const books = shop.rulebooks.filter((book) => draft.sport !== undefined && book.sports.includes(draft.sport))
  const front = books.some((book) => book.number.frontLeastMicrometres !== null)
  return front ? ['front-number', 'back-number'] : ['back-number']
}

const garmentsOf = (draft: Draft, mark: Mark): readonly string[] => {
  const ids = Object.keys(draft.garments)
  if (ids.length < 2) return ids
  const named = (mark.on ?? []).filter((id) => ids.includes(id))
  if (named.length > 0) return named
  if (mark.content === 'text' || mark.content === 'artwork') return ids
  const players = playersGarments(draft)
  const kinds = players.map((id) => draft.garments[id]?.kind)
  return ids.filter((id) => players.includes(id) || kinds.includes(draft.garments[id]?.kind))
}

export type PlacedMark = { readonly id: string; readonly mark: Mark; readonly place: PlaceId }

/** The marks with their places settled: one without a place takes the usual places that no other mark of its kind has. */
const placedMarks = (shop: Shop, draft: Draft): readonly PlacedMark[] =>
  Object.entries(draft.marks).flatMap(([id, mark]): readonly PlacedMark[] => {
    if (mark.wanted === false) return []
    if (mark.place !== undefined) return [{ id, mark, place: mark.place }]
    const others = Object.values(draft.marks).filter((other) => other.content === mark.content && other.place !== undefined)
    if (others.some((other) => other.wanted !== false)) return []
    const refused = others.map((other) => other.place)
    return usualPlaces(shop, draft, mark.content)
      .filter((place) => !refused.includes(place))
      .map((place) => ({ id: place, mark, place }))
  })

const contentOf = (mark: Mark): Decoration['content'] | undefined => {
  switch (mark.content) {
    case 'number':
      return { kind: 'number' }
    case 'name':
      return { kind: 'name' }
    case 'text':
      return mark.text === undefined ? undefined : { kind: 'text', text: mark.text }
    case 'artwork':
      return mark.text === undefined ? undefined : { kind: 'artwork', file: mark.text }
  }
}

const usualFace = (shop: Shop, content: ContentKind): string =>
  content === 'number' ? shop.profile.usual.numberFace : shop.profile.usual.nameFace

const lineOf = (style: Style): NonNullable<Decoration['line']> =>
  style.line === undefined || style.line === 'straight' ? { kind: 'straight' } : { kind: style.line, rise: 25_400 }

/** One decoration of the document from marks that are made alike; `worn` holds at least one. */
const composeOne = (shop: Shop, id: string, worn: readonly Worn[]): ComposedDecoration | null => {
  const first = worn[0]
  if (first === undefined) return null
  const { mark, style, place } = first
  const { layers, assumed, missing } = composeLayers(shop, style)
  const content = contentOf(mark)
  const known: KnownDecoration = {
    id,
    on: worn.map((one) => one.garment),
    place,
    ...(content === undefined ? {} : { content }),
    face: style.face ?? usualFace(shop, mark.content),
    height: style.micrometres === undefined ? { by: 'size' } : { micrometres: style.micrometres },
    line: lineOf(style),
    layers: [...layers],
  }
  const lent = first.lent
    ? layers.flatMap((layer, index) => (layer.kind === 'vinyl' ? [`/layers/${index}/colour`, `/layers/${index}/class`] : []))
    : []
  return {
    known,
    assumed: [
      ...assumed,
      ...lent,
      ...(style.face === undefined ? ['/face'] : []),
      ...(style.micrometres === undefined ? ['/height/by'] : []),
      ...(style.line === undefined ? ['/line/kind'] : []),
      ...(mark.place === undefined ? ['/place'] : []),
      ...(mark.on === undefined ? worn.map((_, index) => `/on/${index}`) : []),
    ],
    missing: [...missing, ...(content === undefined ? ['/content/text'] : [])],
  }
}

/** What was said of one place; the names' own place bears the key of all names. */
const placeStyle = (draft: Draft, place: PlaceId): Style | undefined => (place === 'name' ? undefined : draft.styles[place])

const wornOf = (shop: Shop, draft: Draft): readonly Worn[] =>
  placedMarks(shop, draft).flatMap(({ id, mark, place }) =>
    garmentsOf(draft, mark).map((garment) => {
      const own = merged([
        ownStyle(draft, mark.content, garment),
        mark.style,
        placeStyle(draft, place),
        draft.styles[`${id}@${garment}`],
      ])
      const lent = own.colour === undefined && own.vinyl !== false
      return { id, mark, place, garment, style: lent ? merged([lentBy(draft, mark.content, garment), own]) : own, lent }
    }),
  )

/** The decorations of the document: marks made alike on several garments are one, marks made differently are one for each make. */
export const composeDecorations = (shop: Shop, draft: Draft): readonly ComposedDecoration[] => {
  const groups = new Map<string, Worn[]>()
  for (const worn of wornOf(shop, draft)) {
    const key = canonical([worn.id, worn.style])
    groups.set(key, [...(groups.get(key) ?? []), worn])
  }
  const list = [...groups.values()]
  return list.flatMap((worn) => {
    const id = worn[0]?.id ?? ''
    const split = list.filter((other) => other[0]?.id === id).length > 1
    const one = composeOne(shop, split ? `${id}-${worn[0]?.garment ?? ''}` : id, worn)
    return one === null ? [] : [one]
  })
}

/** A mark that only one row wears, as the document wants it: its place is settled, its make is the draft's where it has none. */
export const composeExtra = (
  shop: Shop,
  draft: Draft,
  extra: { readonly id: string; readonly mark: Mark; readonly garment: string },
): ComposedDecoration | null => {
  const { id, mark, garment } = extra
  const own = merged([ownStyle(draft, 'text', garment), mark.style])
  const lent = own.colour === undefined
  const style = lent ? merged([lentBy(draft, 'text', garment), own]) : own
  return composeOne(shop, id, [{ id, mark, place: mark.place ?? 'left-chest', garment, style, lent }])
}
