import type { Feature, Fibres, Fit, Garment, Knit, Size } from '../garment/garment.ts'
import type { PlaceId, Side } from '../garment/place.ts'
import type { StoneStyle } from '../layout/layout.ts'
import type { StoneSize, VinylClass } from '../material/material.ts'
import type { Order, Use } from '../order/order.ts'
import type { Machine } from '../press/machine.ts'
import type { Gate, PressStep } from '../press/press-plan.ts'
import type { PressureUnit } from '../press/shown.ts'
import type { Severity } from '../result/result.ts'
import type { Art, ColourShown } from './art.ts'
import type { Change, ThrowAway } from './changes.ts'
import type { LocalMinute, PlanFacts } from './plan-facts.ts'

export type Language = Order['language']

/** How the shop writes figures. */
export type Show = {
  readonly temperature: 'F' | 'C'
  readonly length: 'in' | 'cm'
  readonly pressure: PressureUnit
  readonly paper: 'letter' | 'a4'
  readonly dateOrder: 'month-first' | 'day-first'
}

export type SizeCount = { readonly fit: Fit; readonly size: Size; readonly quantity: number }

/** One kind of garment of the order; `sizes` adds up the roster. */
export type GarmentFacts = {
  readonly id: string
  readonly name: string
  readonly kind: Garment['kind']
  readonly colour: ColourShown
  readonly fibres: Fibres
  readonly knit: Knit
  readonly finish: Order['garments'][number]['finish']
  readonly dye: Order['garments'][number]['dye']
  readonly features: readonly Feature[]
  readonly from: 'shop' | 'customer'
  readonly sizes: readonly SizeCount[]
}

/** A layer by the id that press steps name. */
export type LayerFacts =
  | {
      readonly id: string
      readonly decoration: string
      readonly kind: 'vinyl'
      readonly class: VinylClass
      readonly colour: ColourShown
      readonly material: string
      readonly shape: 'face' | 'surround' | 'shadow'
    }
  | {
      readonly id: string
      readonly decoration: string
      readonly kind: 'stones'
      readonly size: StoneSize
      readonly colour: ColourShown
      readonly material: string
      readonly style: StoneStyle
    }

/** The sizes of a placement that share one drawing: lengths in whole µm, `offset` from what the place is measured from. */
export type CutGroup = {
  readonly fit: Fit
  readonly sizes: readonly Size[]
  readonly heightMicrometres: number
  /** The heights as they are cut, where a text is set lower to fit. */
  readonly lowestMicrometres?: number
  readonly highestMicrometres?: number
  readonly offsetMicrometres: number
  /** The text drawn as a sample and its curves; null when nothing can be drawn (artwork kept as a file). */
  readonly sample: string
  readonly art: Art | null
}

export type PlacementFacts = {
  readonly decoration: string
  readonly garment: string
  readonly place: PlaceId
  readonly side: Side
  readonly content: 'number' | 'name' | 'text' | 'artwork'
  readonly face: string
  readonly measuredFrom: 'collar' | 'hem' | 'other-place'
  readonly groups: readonly CutGroup[]
}

/** One vinyl sheet as it is cut; `pieces` are in the order in which they are weeded. */
export type VinylSheet = {
  readonly file: string
  readonly widthMicrometres: number
  readonly lengthMicrometres: number
  readonly pieces: number
}

export type VinylFacts = {
  readonly class: VinylClass
  readonly colour: ColourShown
  readonly material: string
  readonly lot: string
  readonly bin: string | null
  readonly places: readonly PlaceId[]
  readonly lengthMicrometres: number
  readonly widthMicrometres: number
  readonly cut: 'mirrored' | 'as-read'
  readonly peel: 'hot' | 'warm' | 'cold'
  readonly sheets: readonly VinylSheet[]
}

/** How often each digit is cut at one height for one place. */
export type DigitTally = {
  readonly place: PlaceId
  readonly face: string
  readonly heightMicrometres: number
  readonly digits: readonly { readonly digit: string; readonly count: number }[]
}

/** A stone template: `box` is where one lies on the shelf, null when it must be cut. `key` names it in the layout. */
export type TemplateFacts = {
  readonly key: string
  readonly text: string
  /** Its number on this ticket, its cut sheet and its print. */
  readonly no: number
  readonly places: readonly PlaceId[]
  /** What it is brushed for; empty when that is all that has its letters. */
  readonly on: readonly { readonly place: PlaceId; readonly texts: readonly string[] }[]
  readonly face: string
  readonly heightMicrometres: number
  readonly size: StoneSize
  readonly colour: ColourShown
  readonly holes: number
  readonly brushed: number
  readonly box: string | null
}

/** Stones to fetch; `milligrams` is the weight of pieces and spare together by the lot's own gross weight. */
export type StoneFacts = {
  readonly size: StoneSize
  readonly colour: ColourShown
  readonly material: string
  readonly bin: string | null
  readonly lot: string
  readonly pieces: number
  readonly spare: number
  readonly gross: number
  readonly milligrams: number
}

/** What stands on one roster line at one place, with the text as it is cut. */
export type RowMark = {
  readonly decoration: string
  readonly place: PlaceId
  readonly text: string
  /** How it is set where it would not fit as asked: lower than its placement says, or narrower, in percent. */
  readonly fitted?: { readonly heightMicrometres: number | null; readonly percent: number | null }
}

/** One roster line. `marks` are all its decorations, extras included; `extras` names those that only this line has. */
export type RosterFacts = {
  readonly line: number
  readonly garment: string
  readonly fit: Fit
  readonly size: Size
  readonly number: string | null
  readonly name: string | null
  readonly quantity: number
  readonly age: 'under-3' | '3-12' | '13-up' | 'unknown'
  readonly marks: readonly RowMark[]
  readonly extras: readonly string[]
  readonly without: readonly PlaceId[]
  readonly note: string | null
}

export type ProblemSaid = { readonly code: string; readonly severity: Severity; readonly text: string }

/** The rulebook the numbers were checked against, as data of its record; `notes` are finished sentences. */
export type RulebookFacts = {
  readonly body: string
  readonly clause: string
  readonly edition: string
  readonly mark: 'read' | 'quoted' | 'memory'
  readonly notes: readonly string[]
}

/** A source the figures rest on: a maker's sheet with its date. */
export type SourceFacts = { readonly of: string; readonly sheet: string; readonly date: string }

export type PeopleFacts = {
  readonly orders: string
  readonly signsOff: string | null
  readonly collects: string | null
}

/** Everything a printed ticket is about. Names are finished in the ticket's language; figures are data in the unit their name ends with. */
export type TicketFacts = {
  readonly now: LocalMinute
  readonly language: Language
  readonly show: Show
  readonly shop: { readonly name: string; readonly ask: string }
  readonly ticket: string
  readonly revision: number
  readonly replaces: number | null
  readonly order: string
  /** The address the code leads to: the bench channel's link, else the counter's; null: the plain code `<ticket>-<revision>`. */
  readonly link: string | null
  readonly team: string
  readonly sport: string
  readonly use: Use
  readonly needBy: LocalMinute
  readonly needFor: string | null
  readonly gameDay: string | null
  readonly handOver: Order['handOver']
  readonly people: PeopleFacts
  readonly notes: string | null
  readonly garments: readonly GarmentFacts[]
  readonly layers: readonly LayerFacts[]
  readonly placements: readonly PlacementFacts[]
  readonly machines: readonly Machine[]
  readonly press: readonly PressStep[]
  readonly gates: readonly Gate[]
  readonly vinyl: readonly VinylFacts[]
  readonly tally: readonly DigitTally[]
  readonly templates: readonly TemplateFacts[]
  readonly stones: readonly StoneFacts[]
  readonly roster: readonly RosterFacts[]
  readonly changes: readonly Change[]
  readonly throwAway: readonly ThrowAway[]
  readonly problems: readonly ProblemSaid[]
  readonly plan: PlanFacts
  readonly rulebook: RulebookFacts | null
  readonly sources: readonly SourceFacts[]
  /** Hours the glue rests before the first wash, counted from the end of the last press. */
  readonly restBeforeWashHours: number
}
