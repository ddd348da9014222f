import { type Fit, sizes as order, type Size } from '../garment/garment.ts'
import type { PlaceId } from '../garment/place.ts'
import type { PressStep } from '../press/press-plan.ts'
import { formatLength } from '../units/format.ts'
import { micrometres } from '../units/units.ts'
import type { GarmentFacts, LayerFacts, RosterFacts, TicketFacts } from './facts.ts'
import { namedMoment } from './moment.ts'
import type { LocalMinute } from './plan-facts.ts'
import type { TicketWords } from './words.ts'

/** What a ticket is about and the words it is said in: what every part of it is composed from. */
export type Scene = { readonly facts: TicketFacts; readonly words: TicketWords }

/** The garment of an id; a ticket about a garment it does not list is a bug and thrown. */
const garmentOf = (facts: TicketFacts, id: string): GarmentFacts => {
  const found = facts.garments.find((garment) => garment.id === id)
  if (found === undefined) throw new RangeError(`the ticket lists no garment ${id}`)
  return found
}

const isRole = (words: TicketWords, id: string): id is 'home' | 'away' => Object.hasOwn(words.garment.roles, id)

/** A garment with its colour; where another is called the same, home or away, else its place among the ticket's garments. */
export const garmentName = ({ facts, words }: Scene, id: string): string => {
  const called = ({ colour, name }: GarmentFacts): string => words.pick.vinylName(colour.name, name)
  const own = called(garmentOf(facts, id))
  const same = facts.garments.filter((garment) => called(garment) === own).map((garment) => garment.id)
  if (same.length < 2) return own
  return `${own} (${isRole(words, id) ? words.garment.roles[id] : same.indexOf(id) + 1})`
}

export const whenText = ({ facts, words }: Scene, minute: LocalMinute): string => {
  const moment = namedMoment(minute, words.language)
  return words.at(words.date(moment, facts.show.dateOrder), words.time(moment))
}

/** A minute in few words, for tables. */
export const shortWhen = ({ facts, words }: Scene, minute: LocalMinute): string => {
  const moment = namedMoment(minute, words.language)
  return `${words.shortDate(moment, facts.show.dateOrder)} ${words.time(moment)}`
}

export const sizeText = (words: TicketWords, fit: Fit, size: Size): string =>
  `${words.garment.fits[fit]} ${words.garment.sizes[size]}`.trim()

/** The sizes of one fit, named once: 'men S, M, L'. */
export const sizesText = (words: TicketWords, fit: Fit, sizes: readonly Size[]): string =>
  `${words.garment.fits[fit]} ${[...sizes]
    .sort((a, b) => order.indexOf(a) - order.indexOf(b))
    .map((size) => words.garment.sizes[size])
    .join(', ')}`.trim()

const isPlace = (words: TicketWords, id: string): id is PlaceId => Object.hasOwn(words.place.ids, id)

/** The words of a place id, or of several joined by '+' because they are pressed together. */
export const placeText = (words: TicketWords, place: string): string =>
  place
    .split('+')
    .map((id) => (isPlace(words, id) ? words.place.ids[id] : id))
    .join(' + ')

export const layerText = (words: TicketWords, layer: LayerFacts): string => {
  if (layer.kind === 'stones') return `${layer.size} ${layer.colour.name}`
  return words.pick.vinylName(layer.colour.name, words.pick.classes[layer.class])
}

/** A layer that press steps name by its id; an id the ticket does not list is a bug and thrown. */
export const layerOf = (facts: TicketFacts, id: string): LayerFacts => {
  const found = facts.layers.find((layer) => layer.id === id)
  if (found === undefined) throw new RangeError(`the ticket lists no layer ${id}`)
  return found
}

/** The roster lines that a press step covers. */
export const rowsOf = (facts: TicketFacts, step: PressStep): readonly RosterFacts[] =>
  facts.roster.filter((row) => step.lines.includes(row.line))

export const piecesIn = (rows: readonly RosterFacts[]): number => rows.reduce((sum, row) => sum + row.quantity, 0)

export const lengthOf = ({ facts }: Scene, inMicrometres: number): string =>
  formatLength(micrometres(inMicrometres), facts.show.length)

/** The values in the order in which they first stand, each once. */
export const once = <T>(values: readonly T[]): readonly T[] => [...new Set(values)]
