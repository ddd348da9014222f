import { type GroupHeat, type HeatContext, type HeatFailure, solveHeat } from './heat.ts'
import type { Bench, JobGarment, JobPlace } from './job.ts'
import type { Machine } from './machine.ts'
import { fitsPlaten, isThreaded, obstaclesNear, opposite, type Zone, zoneOf } from './zones.ts'

/** Places of one garment that lie under the platen together, with the heat of every press they need. */
export type SetUp = {
  readonly garment: JobGarment
  readonly zone: Zone
  readonly places: readonly JobPlace[]
  readonly machine: Machine
  readonly inside: 'pillow' | 'none'
  readonly heats: readonly GroupHeat[]
  /** False when another set-up of the same zone came before: the cloth is pre-pressed already, and kept off the pad. */
  readonly firstOfZone: boolean
}

export type SetUpFailure =
  | HeatFailure
  | { readonly code: 'platen-too-small' }
  | { readonly code: 'vinyl-over-stones'; readonly layer: string }

export type Failed = {
  readonly garment: JobGarment
  readonly places: readonly JobPlace[]
  readonly machine: Machine
  readonly failure: SetUpFailure
}

type Tried<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly failed: Failed }

export const hasStones = (places: readonly JobPlace[]): boolean =>
  places.some((place) => place.layers.some((layer) => layer.material.kind === 'stone'))

/** A pad goes inside wherever glue could pass, something would hold the platen up, or the garment is not threaded. */
const insideFor = (garment: JobGarment, machine: Machine, places: readonly JobPlace[]): 'pillow' | 'none' => {
  const { perforated, thin } = garment.cloth
  const threaded = places.every((place) => isThreaded(machine, zoneOf(place)))
  const heldUp = places.some((place) => obstaclesNear(garment, place).length > 0)
  return perforated || thin || heldUp || !threaded ? 'pillow' : 'none'
}

type Trial = { readonly garment: JobGarment; readonly bench: Bench; readonly machine: Machine }

const contextOf = (trial: Trial, inside: 'pillow' | 'none'): HeatContext => ({
  cloth: trial.garment.cloth,
  machine: trial.machine,
  auxiliaries: trial.bench.auxiliaries,
  settings: trial.bench.settings,
  inside,
})

/** A vinyl that lies on stones: the platen would stand on the stones and never reach it. */
const vinylOverStones = (places: readonly JobPlace[]): string | null => {
  const layers = places.flatMap((place) =>
    place.layers.filter((layer, index) => {
      const below = place.layers[index - 1]
      return layer.material.kind === 'vinyl' && layer.lies === 'on-layer-below' && below?.material.kind === 'stone'
    }),
  )
  return layers[0]?.id ?? null
}

/** Solves places as one set-up; `apart` when another set-up of the zone must be kept off the pad. */
const trySetUp = (trial: Trial, places: readonly JobPlace[], apart: boolean): Tried<SetUp> => {
  const { garment, machine } = trial
  const fail = (failure: SetUpFailure) => ({ ok: false as const, failed: { garment, places, machine, failure } })
  const over = vinylOverStones(places)
  if (over !== null) return fail({ code: 'vinyl-over-stones', layer: over })
  if (!fitsPlaten(machine, places)) return fail({ code: 'platen-too-small' })
  const inside = apart ? 'pillow' : insideFor(garment, machine, places)
  const heats = solveHeat(contextOf(trial, inside), places)
  if (!heats.ok) return fail(heats.failure)
  const first = places[0]
  if (first === undefined) throw new Error('a set-up without places')
  return { ok: true, value: { garment, zone: zoneOf(first), places, machine, inside, heats: heats.value, firstOfZone: !apart } }
}

/** Adds a place to the first set-up of its zone that takes it, else opens another one beside it. */
const joinOrOpen = (trial: Trial, open: readonly SetUp[], place: JobPlace): Tried<readonly SetUp[]> => {
  for (const [index, setUp] of open.entries()) {
    const joined = trySetUp(trial, [...setUp.places, place], index > 0)
    if (joined.ok) return { ok: true, value: open.with(index, joined.value) }
  }
  const alone = trySetUp(trial, [place], open.length > 0)
  return alone.ok ? { ok: true, value: [...open, alone.value] } : alone
}

const inZone = (trial: Trial, places: readonly JobPlace[]): Tried<readonly SetUp[]> => {
  const together = trySetUp(trial, places, false)
  if (together.ok) return { ok: true, value: [together.value] }
  let open: readonly SetUp[] = []
  const flatFirst = places.toSorted((a, b) => Number(hasStones([a])) - Number(hasStones([b])))
  for (const place of flatFirst) {
    const next = joinOrOpen(trial, open, place)
    if (!next.ok) return next
    open = next.value
  }
  return { ok: true, value: open }
}

/** Stones want their side first where an inside press may follow, since nothing may be finished below it; else last. */
const zonesInOrder = (garment: JobGarment, machine: Machine): readonly Zone[] => {
  const zones = [...new Set(garment.places.map(zoneOf))]
  const stonesIn = (zone: Zone): boolean => hasStones(garment.places.filter((place) => zoneOf(place) === zone))
  const early = allowsInsidePress(garment) && machine.threads ? -1 : 1
  return zones.toSorted((a, b) => early * (Number(stonesIn(a)) - Number(stonesIn(b))))
}

/** Glue may be pressed from the inside only where it cannot pass through to it. */
export const allowsInsidePress = (garment: JobGarment): boolean => !garment.cloth.perforated && !garment.cloth.thin

/** Without threading, what is finished on the other side of the body lies under the load, on the pad. */
const otherSideSuffers = (setUps: readonly SetUp[], later: SetUp): SetUpFailure | null => {
  const below = setUps.filter((one) => one.zone === opposite(later.zone))
  const layers = below.flatMap((one) => one.heats.flatMap((heat) => heat.group.members))
  for (const layer of layers) {
    const own = below.flatMap((one) => one.heats.filter((heat) => heat.finished.includes(layer)))
    const times = own.reduce((sum, heat) => sum + heat.group.rungs.length, 0) + later.heats.length
    const seconds = Math.max(...later.heats.map((heat) => heat.seconds))
    const allowed = layer.material.rePress
    if (times > allowed.times || seconds > allowed.seconds) return { code: 're-press-not-allowed', layer, times, seconds }
  }
  return null
}

/**
 * The set-ups of one garment on one machine, in the order they are pressed: the places of a zone together where one setting
 * and the platen hold them, beside each other on a smaller pad where not.
 */
export const setUpsOf = (bench: Bench, garment: JobGarment, machine: Machine): Tried<readonly SetUp[]> => {
  const trial = { garment, bench, machine }
  const done: SetUp[] = []
  for (const zone of zonesInOrder(garment, machine)) {
    const setUps = inZone(
      trial,
      garment.places.filter((place) => zoneOf(place) === zone),
    )
    if (!setUps.ok) return setUps
    for (const setUp of setUps.value) {
      const failure = isThreaded(machine, setUp.zone) ? null : otherSideSuffers(done, setUp)
      if (failure !== null) return { ok: false, failed: { garment, places: setUp.places, machine, failure } }
    }
    done.push(...setUps.value)
  }
  return { ok: true, value: done }
}
