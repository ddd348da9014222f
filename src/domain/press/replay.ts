import type { JobGarment, JobLayer, JobPlace } from './job.ts'

/**
 * The state of one garment of the roster while a sequence is replayed. Nothing here is shared with the planner: the checker
 * does not trust it.
 */
export type LayerState = {
  readonly layer: JobLayer
  readonly place: JobPlace
  on: boolean
  /** Carrier of a vinyl, tape of stones. */
  covered: boolean
  /** Seconds of tack and dwell together. */
  made: number
  tacked: boolean
  finished: boolean
  rePresses: number
  /** Seconds of the inside press. */
  inside: number
  /** Pressed since it was last let cool. */
  warm: boolean
  lifted: boolean
}

export type LineState = {
  readonly garment: JobGarment
  readonly line: number
  readonly layers: readonly LayerState[]
  /** The part of the garment that lies on the press; null before the first. */
  part: string | null
  /** Places of that part which are kept off the pad because they are pressed by themselves. */
  apart: boolean
  /** Turned inside out for the inside press. */
  insideOut: boolean
}

export type BreachCode =
  | 'too-hot'
  | 'too-cool'
  | 'too-long'
  | 'too-short'
  | 'too-soft'
  | 're-pressed-too-often'
  | 're-pressed-too-long'
  | 'tack-out-of-range'
  | 'cold-peel-tacked'
  | 'glue-unprotected'
  | 'nothing-over-it'
  | 'vinyl-after-stones'
  | 'laid-over-carrier'
  | 'laid-before-what-lies-below'
  | 'laid-twice'
  | 'peel-too-early'
  | 'wrong-peel'
  | 'not-lifted'
  | 'finished-stones-under-load'
  | 'turned-too-soon'
  | 'turned-without-saying'
  | 'inside-not-allowed'
  | 'wrong-side-out'
  | 'off-the-platen'
  | 'off-the-dial'
  | 'not-finished'
  | 'unknown-layer'

export type Breach = { readonly code: BreachCode; readonly step: number; readonly line: number; readonly layer: string | null }

const freshLayer = (place: JobPlace, layer: JobLayer): LayerState => ({
  layer,
  place,
  on: false,
  covered: false,
  made: 0,
  tacked: false,
  finished: false,
  rePresses: 0,
  inside: 0,
  warm: false,
  lifted: false,
})

export const startLines = (garments: readonly JobGarment[]): readonly LineState[] =>
  garments.flatMap((garment) =>
    garment.lines.map(({ line }) => ({
      garment,
      line,
      layers: garment.places
        .filter((place) => place.lines.includes(line))
        .flatMap((place) => place.layers.map((layer) => freshLayer(place, layer))),
      part: null,
      apart: false,
      insideOut: false,
    })),
  )

const limbs: readonly string[] = ['left-sleeve', 'right-sleeve', 'left-leg', 'right-leg', 'hood']

/** The part of the garment a place belongs to. */
export const partOf = (place: JobPlace): string => (limbs.includes(place.place) ? place.place : place.side)

export const isBody = (part: string | null): boolean => part === 'front' || part === 'back'
