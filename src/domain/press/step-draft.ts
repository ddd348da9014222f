import type { Side } from '../garment/place.ts'
import type { Seconds, TenthsC } from '../units/units.ts'
import type { InsidePress } from './inside-press.ts'
import type { BenchSettings, JobLayer, JobPlace } from './job.ts'
import type { PressStep } from './press-plan.ts'
import { joinedPressure, pressureOn } from './pressure.ts'
import type { SetUp } from './set-ups.ts'

export type Draft = Omit<PressStep, 'no'>

/**
 * A set-up with what came before it on the same garment: roster lines whose garment lies on another part and is turned, and
 * lines whose cloth was not pre-pressed here yet.
 */
export type Turn = {
  readonly setUp: SetUp
  readonly settings: BenchSettings
  readonly turned: readonly number[]
  readonly fresh: readonly number[]
  readonly stonesBelow: boolean
  readonly inside: InsidePress
}

export const isStone = (layer: JobLayer): boolean => layer.material.kind === 'stone'
export const ids = (layers: readonly JobLayer[]): readonly string[] => layers.map((layer) => layer.id)

export const linesOf = (places: readonly JobPlace[]): readonly number[] =>
  [...new Set(places.flatMap((place) => place.lines))].toSorted((a, b) => a - b)

export const placesWith = (turn: Turn, layers: readonly JobLayer[]): readonly JobPlace[] =>
  turn.setUp.places.filter((place) => place.layers.some((layer) => layers.includes(layer)))

const placeName = (places: readonly JobPlace[]): string => [...new Set(places.map((place) => place.place))].join('+')

const sideOf = (turn: Turn): Side => turn.setUp.places[0]?.side ?? 'front'

/** A step of a set-up over the given places; what is not said is empty. */
export const step = (turn: Turn, places: readonly JobPlace[], rest: Partial<Draft> & Pick<Draft, 'action'>): Draft => ({
  side: sideOf(turn),
  place: placeName(places),
  layers: [],
  tenthsC: null,
  seconds: null,
  pressure: null,
  peel: null,
  inside: turn.setUp.inside,
  cover: 'none',
  lookFor: [],
  why: [],
  cautions: [],
  machine: null,
  lines: linesOf(places),
  ...rest,
})

type Pressed = { readonly tenthsC: TenthsC; readonly seconds: Seconds; readonly layers: readonly JobLayer[] }

export const atPress = (turn: Turn, pressed: Pressed) => {
  const { machine } = turn.setUp
  const pressure = pressureOn(machine, joinedPressure(pressed.layers))
  return { tenthsC: pressed.tenthsC, seconds: pressed.seconds, pressure, machine: machine.id }
}
