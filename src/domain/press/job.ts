import type { CareDots } from '../garment/fibre-limits.ts'
import type { Cloth, Feature } from '../garment/garment.ts'
import type { PlaceId, Side } from '../garment/place.ts'
import type { Auxiliary, Stone, Vinyl } from '../material/material.ts'
import type { Row } from '../order/order.ts'
import type { Machine } from './machine.ts'

export type Material = Vinyl | Stone

/** One layer of a decoration. `lies`: on the cloth (or beside the vinyl), or on the layer below it. */
export type JobLayer = {
  readonly id: string
  readonly at: string
  readonly material: Material
  readonly lies: 'on-cloth' | 'on-layer-below'
  /** The colour's families, for dye that may show through. */
  readonly families: readonly string[]
}

/** One decoration where it is pressed. Sizes are the greatest over its lines; null where nobody has laid it out yet. */
export type JobPlace = {
  readonly decoration: string
  readonly at: string
  readonly place: PlaceId
  readonly side: Side
  readonly near: readonly Feature[]
  readonly lines: readonly number[]
  /** Bottom first. */
  readonly layers: readonly JobLayer[]
  /** The top of the flat capital or figure below the collar: accents stand above it, tails hang lower. */
  readonly topMicrometres: number | null
  /** How far anything of it stands above that top, and how far it reaches below. */
  readonly aboveMicrometres: number | null
  readonly belowMicrometres: number | null
  readonly widthMicrometres: number | null
  readonly heightMicrometres: number | null
  /** A set point a person asked for against the usual one; null as a rule. */
  readonly askedTenthsC: number | null
}

export type JobLine = Pick<Row, 'line' | 'quantity' | 'age' | 'fit'>

/** What is known of the cloth: from the label, and from the fabric's record when the shop has it. */
export type ClothFacts = Cloth & {
  readonly perforated: boolean
  readonly thin: boolean
  readonly marks: boolean
  readonly capTenthsC: number | null
  readonly careDots: CareDots | null
  readonly families: readonly string[]
  readonly colour: string
}

export type JobGarment = {
  readonly id: string
  readonly at: string
  readonly cloth: ClothFacts
  readonly features: readonly Feature[]
  readonly lines: readonly JobLine[]
  readonly places: readonly JobPlace[]
}

export type PressJob = { readonly garments: readonly JobGarment[] }

/** What lies on the shelf, for ways out: records, and by material id the µm of roll or the pieces. */
export type Shelf = { readonly materials: readonly Material[]; readonly stock: Readonly<Record<string, number>> }

/** The shop's own habits at the press, in seconds. */
export type BenchSettings = {
  readonly prePressSeconds: number
  readonly tackSeconds: { readonly least: number; readonly most: number; readonly usual: number }
  readonly coolSeconds: { readonly vinyl: number; readonly stones: number }
  readonly bleedWaitMinutes: number
}

/** Common practice: pre-press 3-5 s, tack 2-5 s, stones cool 1-3 min, a bleed test is looked at again after 24 h. */
export const usualBenchSettings: BenchSettings = {
  prePressSeconds: 4,
  tackSeconds: { least: 2, most: 5, usual: 3 },
  coolSeconds: { vinyl: 30, stones: 120 },
  bleedWaitMinutes: 1440,
}

export type Bench = {
  readonly machines: readonly Machine[]
  readonly auxiliaries: readonly Auxiliary[]
  readonly shelf: Shelf
  readonly settings: BenchSettings
}

/** How large a decoration comes out on one roster line (null: on every line alike), from its laid-out outline. */
export type Extent = {
  readonly decoration: string
  readonly line: number | null
  readonly text: string
  readonly widthMicrometres: number
  /** Height and stroke of the body, borders excluded. */
  readonly heightMicrometres: number
  /** So much of the height stands above the flat capital or figure, as accents do; negative where it begins lower. */
  readonly aboveMicrometres: number
  readonly strokeMicrometres: number | null
  readonly freeWidthMicrometres: number | null
}
