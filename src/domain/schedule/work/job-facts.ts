import type { Minutes } from '../../units/units.ts'
import type { StationKind } from '../book/operation.ts'

/** Pieces of one vinyl; `over` when it lies on another vinyl of the same piece. `colour` is the cutter's set-up family. */
export type VinylFacts = {
  readonly colour: string
  readonly names: number
  readonly numbers: number
  readonly marks: number
  readonly glitter: boolean
  readonly over: boolean
}

/** What is pressed on one side, in the order of pressing; `family` = temperature, pressure, pillow and platen in one word. */
export type SideFacts = {
  readonly side: string
  readonly family: string
  readonly garments: number
  readonly plainPlaces: number
  readonly twoColourPlaces: number
  readonly stoned: boolean
}

/** What the layout and the press sequence say about a job, in plain numbers. A null arrival: it lies in the shop. */
export type JobFacts = {
  readonly garments: number
  readonly styles: number
  readonly ownGarments: boolean
  readonly garmentsArrive: Minutes | null
  readonly materialsArrive: Minutes | null
  readonly vinyl: readonly VinylFacts[]
  readonly templates: readonly { readonly holes: number }[]
  readonly stones: { readonly small: number; readonly usual: number }
  readonly tapes: number
  readonly sides: readonly SideFacts[]
  readonly proof: 'none' | 'first' | 'reorder'
  readonly waterDrops: boolean
  readonly testPress: boolean
  readonly bleedTest: boolean
  readonly coupon: boolean
}

/** Who can be asked: the stations of the shop and what each person does. */
export type Crew = readonly {
  readonly id: string
  readonly kind: StationKind
  readonly does?: readonly ('cutter' | 'press' | 'bench')[] | undefined
}[]
