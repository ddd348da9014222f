import type { Bench } from './job.ts'
import type { PressProblem } from './problems.ts'
import type { Failed } from './set-ups.ts'
import type { HeatFailure } from './solved.ts'
import type { Way } from './way.ts'
import { waysOut } from './ways-out.ts'
import { spanOf } from './zones.ts'

const swingSource = "the shop keeps its press's swing below every hard cap (common practice)"
const recordSource = "the maker's sheet named in the material's record"

type Base = { readonly garment: string; readonly places: readonly string[]; readonly ways: readonly Way[] }
type Told = { readonly failed: Failed; readonly base: Base; readonly at: string }

type HeatLimit = Extract<HeatFailure, { code: 'no-common-heat' | 'no-setting' | 'asked-over-cap' }>
type PressLimit = Exclude<HeatFailure, HeatLimit>

const ofHeat = ({ failed, base, at }: Told, failure: HeatLimit): PressProblem => {
  const severity = 'stop'
  const { machine } = failed
  switch (failure.code) {
    case 'no-common-heat': {
      const { leastTenthsC, leastBy, mostTenthsC, mostBy } = failure
      const window = { leastTenthsC, leastBy, mostTenthsC, mostBy: mostBy.by, swingTenthsC: machine.swingTenthsC }
      return { code: failure.code, at, severity, facts: { ...base, ...window, source: `${mostBy.source}; ${swingSource}` } }
    }
    case 'no-setting': {
      const { leastTenthsC, mostTenthsC } = failure
      const source = 'steps of the thermostat'
      return { code: failure.code, at, severity, facts: { ...base, machine: machine.id, leastTenthsC, mostTenthsC, source } }
    }
    case 'asked-over-cap': {
      const { askedTenthsC, cap } = failure
      const facts = { ...base, askedTenthsC, capTenthsC: cap.tenthsC, capBy: cap.by, source: cap.source }
      return { code: failure.code, at, severity, facts }
    }
  }
}

const ofPress = ({ base, at }: Told, failure: PressLimit): PressProblem => {
  const severity = 'stop'
  switch (failure.code) {
    case 'no-common-time': {
      const { leastSeconds, leastBy, mostSeconds, mostBy } = failure
      return {
        code: failure.code,
        at,
        severity,
        facts: { ...base, leastSeconds, leastBy, mostSeconds, mostBy, source: recordSource },
      }
    }
    case 're-press-not-allowed': {
      const { layer, times, seconds } = failure
      const { rePress, id } = layer.material
      const limits = { times, allowedTimes: rePress.times, seconds, allowedSeconds: rePress.seconds }
      return {
        code: failure.code,
        at,
        severity,
        facts: { ...base, layer: layer.id, material: id, ...limits, source: recordSource },
      }
    }
    case 'auxiliary-missing':
      return { code: failure.code, at, severity, facts: { ...base, kind: failure.kind, source: "the shop's auxiliaries" } }
  }
}

/** The refusal for a set-up that cannot be pressed, with the ways out that were tried and work. */
export const failureProblem = (bench: Bench, failed: Failed): PressProblem => {
  const { failure, garment, places } = failed
  const base = { garment: garment.id, places: places.map((place) => place.place), ways: waysOut(bench, failed) }
  const at = places[0]?.at ?? garment.at
  const told = { failed, base, at }
  switch (failure.code) {
    case 'no-common-heat':
    case 'no-setting':
    case 'asked-over-cap':
      return ofHeat(told, failure)
    case 'platen-too-small':
      return { code: failure.code, at, severity: 'stop', facts: { ...base, source: "the presses' platens", ...spanOf(places) } }
    case 'vinyl-over-stones': {
      const facts = { ...base, source: 'common practice: vinyl before stones', layer: failure.layer }
      return { code: failure.code, at, severity: 'stop', facts }
    }
    default:
      return ofPress(told, failure)
  }
}
