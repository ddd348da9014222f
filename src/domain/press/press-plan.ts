import type { Side } from '../garment/place.ts'
import type { PressureWord } from '../material/material.ts'
import type { Seconds, TenthsC } from '../units/units.ts'

/** What is done at the press, one line of the ticket each. */
export type PressAction =
  | 'pre-press'
  | 'protect'
  | 'place'
  | 'tack'
  | 'press'
  | 'lift'
  | 'cool'
  | 'peel'
  | 'inspect'
  | 'press-inside'
  | 'turn'

export type Pressure = { readonly word: PressureWord; readonly gauge: string | null }

/**
 * One step of the press sequence. `layers` are ids of the layers concerned, bottom first; `tenthsC` is the set point of
 * `machine` with the day's correction left out; `lines` are the roster lines the step covers (a batch). `lookFor`, `why` and
 * `cautions` are codes whose words stand in templates/ticket.
 */
export type PressStep = {
  readonly no: number
  readonly side: Side | 'inside'
  readonly place: string
  readonly action: PressAction
  readonly layers: readonly string[]
  readonly tenthsC: TenthsC | null
  readonly seconds: Seconds | null
  readonly pressure: Pressure | null
  readonly peel: 'hot' | 'warm' | 'cold' | null
  readonly inside: 'pillow' | 'sheet' | 'none'
  readonly cover: 'sheet' | 'carrier' | 'tape' | 'none'
  readonly lookFor: readonly string[]
  readonly why: readonly string[]
  readonly cautions: readonly string[]
  readonly machine: string | null
  readonly lines: readonly number[]
}

/** A thing that must be found right before pressing may go on; `blocks` says what may not be done while it is closed. */
export type Gate = {
  readonly code: 'count-in' | 'water-drops' | 'test-press' | 'bleed-test' | 'certificate' | 'coupon' | 'first-piece'
  readonly garment: string | null
  readonly subject: string
  readonly blocks: 'cutting' | 'pressing' | 'run'
  readonly waitMinutes: number
}

/** One exposure of one layer as it adds up: what it meets, what its record allows, and the margin that is left. */
export type Exposure = {
  readonly layer: string
  readonly step: number
  readonly tenthsC: TenthsC
  readonly seconds: Seconds
}
