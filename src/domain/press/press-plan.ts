import type { Side } from '../garment/place.ts'
import type { PressureWord } from '../material/material.ts'
import type { Seconds, TenthsC } from '../units/units.ts'
import type { PressProblem } from './problems.ts'
import type { CautionCode, LookForCode, WhyCode } from './step-codes.ts'

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
  | 'turn-out'
  | 'turn-back'

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
  readonly lookFor: readonly LookForCode[]
  readonly why: readonly WhyCode[]
  readonly cautions: readonly CautionCode[]
  readonly machine: string | null
  readonly lines: readonly number[]
}

/** A thing that must be found right before pressing may go on; `blocks` says what may not be done while it is closed. */
export type Gate = {
  readonly code: 'count-in' | 'strings' | 'water-drops' | 'test-press' | 'bleed-test' | 'certificate' | 'coupon' | 'first-piece'
  readonly garment: string | null
  readonly subject: string
  readonly blocks: 'cutting' | 'pressing' | 'run'
  readonly waitMinutes: number
}

/**
 * One exposure of one layer: the step it meets, and what kind it is. Tack and dwell together finish a layer; whatever comes
 * after is a re-press. `leftSeconds` is what its record still allows of that kind, `leftTenthsC` the distance to its cap.
 */
export type Exposure = {
  readonly layer: string
  readonly step: number
  readonly kind: 'tack' | 'dwell' | 're-press' | 'inside'
  readonly tenthsC: TenthsC
  readonly seconds: Seconds
  readonly leftSeconds: number
  readonly leftTenthsC: number
}

/** One setting and the room around it: the window is already less the press's swing; `leastBy` and `mostBy` say who limits. */
export type Heat = {
  readonly garment: string
  readonly side: Side
  readonly places: readonly string[]
  readonly layers: readonly string[]
  readonly machine: string
  readonly tenthsC: TenthsC
  readonly seconds: Seconds
  readonly leastTenthsC: number
  readonly leastBy: string
  readonly mostTenthsC: number
  readonly mostBy: string
  readonly swingTenthsC: number
}

/** Time at one set-up: per garment, and once for the batch (change of temperature, pillow or platen; first piece). */
export type SetUpTime = {
  readonly garment: string
  readonly side: Side
  readonly places: readonly string[]
  readonly lines: readonly number[]
  readonly machine: string
  /** Press, temperature, pressure, pillow: set-ups of one family follow each other without a change. */
  readonly family: string
  readonly labourSeconds: number
  readonly machineSeconds: number
  readonly setUpSeconds: number
}

/** The whole work at the press for one order. `problems` holds no stop; every garment's seconds are means over its lines. */
export type PressPlan = {
  readonly steps: readonly PressStep[]
  readonly gates: readonly Gate[]
  readonly problems: readonly PressProblem[]
  readonly exposures: readonly Exposure[]
  readonly heats: readonly Heat[]
  readonly times: readonly SetUpTime[]
  readonly secondsPerGarment: { readonly labour: number; readonly machine: number }
}
