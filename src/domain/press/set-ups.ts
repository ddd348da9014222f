import { type GroupHeat, solveHeat } from './heat.ts'
import type { Bench, JobGarment, JobLayer, JobPlace } from './job.ts'
import type { Machine } from './machine.ts'
import type { HeatContext, HeatFailure } from './solved.ts'
import { fitsPlaten, isThreaded, obstaclesNear, opposite, type Zone, zoneOf } from './zones.ts'

/** Places of one garment that lie under the platen together, with the heat of every press they need. */
export type SetUp = {
  readonly garment: JobGarment
  readonly zone: Zone
  readonly places: readonly JobPlace[]
  readonly machine: Machine
  readonly inside: 'pillow' | 'none'
  readonly heats: readonly GroupHeat[]
  /** Pressed on a pad of its own size, because other places of the zone are pressed by themselves. */
  readonly apart: boolean
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

type Trial = {
  readonly garment: JobGarment
  readonly bench: Bench
  readonly machine: Machine
  /** What is finished on the other side and lies below, because the garment is not threaded. */
  readonly below: readonly JobLayer[]
}

const contextOf = (trial: Trial, inside: 'pillow' | 'none'): HeatContext => ({
  cloth: trial.garment.cloth,
  machine: trial.machine,
  auxiliaries: trial.bench.auxiliaries,
  settings: trial.bench.settings,
  inside,
  below: trial.below,
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

/** Solves places as one set-up; `apart` when other places of the zone are pressed by themselves. */
const trySetUp = (trial: Trial, places: readonly JobPlace[], apart: boolean): Tried<SetUp> => {
  const { garment, machine } = trial
  const fail = (failure: SetUpFailure) => ({ ok: false as const, failed: { garment, places, machine, failure } })
  const over = vinylOverStones(places)
  if (over !== null) return fail({ code: 'vinyl-over-stones', layer: over })
  if (!fitsPlaten(machine, places)) return fail({ code: 'platen-too-small' })
  const inside = apart ? 'pillow' : insideFor(garment, machine, places)
  const heats = solveHeat(contextOf(trial, inside), places)
  if (!heats.ok) return fail(heats.failure)
  const [first] = places
  if (first === undefined) throw new Error('a set-up without places')
  return {
    ok: true,
    value: { garment, zone: zoneOf(first), places, machine, inside, heats: heats.value, apart },
  }
}

const pressesIn = (setUps: readonly SetUp[]): number => setUps.reduce((sum, setUp) => sum + setUp.heats.length, 0)

/** Places that lie on one spot of one garment cannot be kept off each other's pad: they stay together. */
const spotsOf = (places: readonly JobPlace[]): readonly (readonly JobPlace[])[] =>
  places.reduce<readonly (readonly JobPlace[])[]>((spots, place) => {
    const meets = (spot: readonly JobPlace[]): boolean =>
      spot.some((one) => one.place === place.place && one.lines.some((line) => place.lines.includes(line)))
    const joined = spots.filter(meets).flat()
    return [...spots.filter((spot) => !meets(spot)), [...joined, place]]
  }, [])

type Grouping = readonly (readonly JobPlace[])[]

/** Every way to put spots into groups, each spot in turn into one of the groups so far or into a new one. */
const partitions = (spots: Grouping): readonly Grouping[] =>
  spots.reduce<readonly Grouping[]>(
    (all, spot) =>
      all.flatMap((groups) => [...groups.map((group, at) => groups.with(at, [...group, ...spot])), [...groups, spot]]),
    [[]],
  )

/** No garment of a group bears another group's decoration on a spot of this one: its steps could not tell them apart. */
const isClear = (groups: Grouping): boolean =>
  groups.every((group) => {
    const lines = new Set(group.flatMap((place) => place.lines))
    const spots = new Set(group.map((place) => place.place))
    const others = groups.filter((other) => other !== group).flat()
    return others.every((other) => !spots.has(other.place) || other.lines.every((line) => !lines.has(line)))
  })

/** Above this many spots on one zone they are pressed one by one; five give 52 ways to group them. */
const groupedMost = 5

/** Set-ups beside each other, each on its own pad, in as few presses as the records and the platen allow. */
const beside = (trial: Trial, places: readonly JobPlace[]): Tried<readonly SetUp[]> => {
  const spots = spotsOf(places.toSorted((a, b) => Number(hasStones([a])) - Number(hasStones([b]))))
  if (spots.length === 1) return collectSetUps([trySetUp(trial, places, false)])
  const known = new Map<string, Tried<SetUp>>()
  const groupOf = (group: readonly JobPlace[]): Tried<SetUp> => {
    const key = group.map((place) => place.decoration).join(' ')
    const tried = known.get(key) ?? trySetUp(trial, group, true)
    known.set(key, tried)
    return tried
  }
  const alone = collectSetUps(spots.map(groupOf))
  if (!alone.ok || spots.length > groupedMost) return alone
  const solved = partitions(spots)
    .filter(isClear)
    .flatMap((groups) => {
      const setUps = collectSetUps(groups.map(groupOf))
      return setUps.ok ? [setUps.value] : []
    })
  const [best] = solved.toSorted((a, b) => pressesIn(a) - pressesIn(b) || a.length - b.length)
  return { ok: true, value: best ?? alone.value }
}

const collectSetUps = (tried: readonly Tried<SetUp>[]): Tried<readonly SetUp[]> => {
  const failure = tried.find((one) => !one.ok)
  if (failure !== undefined && !failure.ok) return failure
  return { ok: true, value: tried.flatMap((one) => (one.ok ? [one.value] : [])) }
}

const inZone = (trial: Trial, places: readonly JobPlace[]): Tried<readonly SetUp[]> => {
  const together = trySetUp(trial, places, false)
  if (together.ok) return { ok: true, value: [together.value] }
  return places.length === 1 ? together : beside(trial, places)
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

const rePressesOf = (setUps: readonly SetUp[], layer: JobLayer): number =>
  setUps
    .flatMap((setUp) => setUp.heats.filter((heat) => heat.finished.includes(layer)))
    .reduce((sum, heat) => sum + heat.group.rungs.length, 0)

/** Without threading, what is finished on the other side of the body lies under every full press, on the pad. */
const sufferedBelow = (trial: Trial, done: readonly SetUp[], later: readonly SetUp[]): SetUpFailure | null => {
  const seconds = Math.max(0, ...later.flatMap((setUp) => setUp.heats.map((heat) => heat.seconds)))
  for (const layer of trial.below) {
    const times = rePressesOf(done, layer) + pressesIn(later)
    const allowed = layer.material.rePress
    if (times > allowed.times || seconds > allowed.seconds) return { code: 're-press-not-allowed', layer, times, seconds }
  }
  return null
}

const layersBelow = (machine: Machine, done: readonly SetUp[], zone: Zone): readonly JobLayer[] => {
  if (isThreaded(machine, zone)) return []
  return done
    .filter((setUp) => setUp.zone === opposite(zone))
    .flatMap((setUp) => setUp.heats.flatMap((heat) => heat.group.members))
}

/**
 * The set-ups of one garment on one machine, in the order they are pressed: the places of a zone together where one setting
 * and the platen hold them, beside each other on pads of their own where not.
 */
export const setUpsOf = (bench: Bench, garment: JobGarment, machine: Machine): Tried<readonly SetUp[]> => {
  const done: SetUp[] = []
  for (const zone of zonesInOrder(garment, machine)) {
    const trial = { garment, bench, machine, below: layersBelow(machine, done, zone) }
    const places = garment.places.filter((place) => zoneOf(place) === zone)
    const setUps = inZone(trial, places)
    if (!setUps.ok) return setUps
    const failure = sufferedBelow(trial, done, setUps.value)
    if (failure !== null) return { ok: false, failed: { garment, places, machine, failure } }
    done.push(...setUps.value)
  }
  return { ok: true, value: done }
}
