import type { Bench } from './job.ts'
import type { PressProblem } from './problems.ts'
import type { Failed } from './set-ups.ts'
import { waysOut } from './ways-out.ts'
import { spanOf } from './zones.ts'

const swingSource = "the shop keeps its press's swing below every hard cap (common practice)"
const recordSource = "the maker's sheet named in the material's record"

/** The refusal for a set-up that cannot be pressed, with the ways out that were tried and work. */
export const failureProblem = (bench: Bench, failed: Failed): PressProblem => {
  const { failure, garment, machine, places } = failed
  const base = {
    garment: garment.id,
    places: places.map((place) => place.place),
    ways: waysOut(bench, failed),
  }
  const common = { at: places[0]?.at ?? garment.at, severity: 'stop' } as const
  switch (failure.code) {
    case 'no-common-heat': {
      const { leastTenthsC, leastBy, mostTenthsC, mostBy } = failure
      const swingTenthsC = machine.swingTenthsC
      const source = `${mostBy.source}; ${swingSource}`
      return {
        ...common,
        code: failure.code,
        facts: { ...base, source, leastTenthsC, leastBy, mostTenthsC, mostBy: mostBy.by, swingTenthsC },
      }
    }
    case 'no-setting': {
      const { leastTenthsC, mostTenthsC } = failure
      return {
        ...common,
        code: failure.code,
        facts: { ...base, source: 'steps of the thermostat', machine: machine.id, leastTenthsC, mostTenthsC },
      }
    }
    case 'asked-over-cap': {
      const { askedTenthsC, cap } = failure
      return {
        ...common,
        code: failure.code,
        facts: { ...base, source: cap.source, askedTenthsC, capTenthsC: cap.tenthsC, capBy: cap.by },
      }
    }
    case 'no-common-time': {
      const { leastSeconds, leastBy, mostSeconds, mostBy } = failure
      return {
        ...common,
        code: failure.code,
        facts: { ...base, source: recordSource, leastSeconds, leastBy, mostSeconds, mostBy },
      }
    }
    case 're-press-not-allowed': {
      const { layer, times, seconds } = failure
      const { rePress, id } = layer.material
      const allowed = { allowedTimes: rePress.times, allowedSeconds: rePress.seconds }
      return {
        ...common,
        code: failure.code,
        facts: { ...base, source: recordSource, layer: layer.id, material: id, times, seconds, ...allowed },
      }
    }
    case 'auxiliary-missing':
      return { ...common, code: failure.code, facts: { ...base, source: "the shop's auxiliaries", kind: failure.kind } }
    case 'platen-too-small':
      return { ...common, code: failure.code, facts: { ...base, source: "the presses' platens", ...spanOf(places) } }
    case 'vinyl-over-stones':
      return {
        ...common,
        code: failure.code,
        facts: { ...base, source: 'common practice: vinyl before stones', layer: failure.layer },
      }
  }
}
