import type { Stone } from '../material/material.ts'
import type { Bench, JobLayer } from './job.ts'
import { bestAuxiliary } from './limits.ts'
import { allowsInsidePress, hasStones, type SetUp } from './set-ups.ts'

/** What the inside press is left out for. */
export type LeftOut = 'glue-would-pass' | 'other-side-finished' | 'record-says-no' | 're-press-spent' | 'no-pad' | 'over-margin'

export type InsidePress =
  | { readonly kind: 'press'; readonly tenthsC: number; readonly seconds: number }
  | { readonly kind: 'left-out'; readonly reason: LeftOut }
  | { readonly kind: 'none' }

/**
 * What lies round a set-up on the same garment: how many came before, and how many full presses of the other side will still
 * go through its layers because the garment is not threaded.
 */
export type Around = { readonly earlier: number; readonly pressesToCome: number }

const leftOut = (reason: LeftOut): InsidePress => ({ kind: 'left-out', reason })

/** How often and how long a layer of the set-up meets the press after it is finished, the inside press not yet counted. */
const rePressed = (setUp: SetUp, layer: JobLayer): number =>
  setUp.heats.filter((heat) => heat.finished.includes(layer)).reduce((sum, heat) => sum + heat.group.rungs.length, 0)

const secondsFor = (stones: readonly Stone[]): number | null => {
  const least = Math.max(...stones.map((stone) => stone.insideSeconds.least))
  const most = Math.min(...stones.map((stone) => stone.insideSeconds.most))
  return most > 0 && least <= most ? Math.max(least, 1) : null
}

/**
 * Whether the stones of a set-up are pressed once more from the inside, at the temperature of the last press: only where
 * glue cannot pass, nothing is finished on another side, and every vinyl of the set-up stands one more press.
 */
export const insidePressOf = (bench: Bench, setUp: SetUp, around: Around): InsidePress => {
  if (!hasStones(setUp.places)) return { kind: 'none' }
  const layers = setUp.heats.flatMap((heat) => heat.group.members)
  const last = setUp.heats[setUp.heats.length - 1]
  if (last === undefined) return { kind: 'none' }
  if (!allowsInsidePress(setUp.garment)) return leftOut('glue-would-pass')
  if (around.earlier > 0) return leftOut('other-side-finished')
  if (setUp.heats.some((heat) => heat.overMargin)) return leftOut('over-margin')
  const seconds = secondsFor(layers.flatMap(({ material }) => (material.kind === 'stone' ? [material] : [])))
  if (seconds === null) return leftOut('record-says-no')
  const pad = bestAuxiliary(bench.auxiliaries, 'pillow')
  if (pad === null || pad.capTenthsC - setUp.machine.swingTenthsC < last.tenthsC) return leftOut('no-pad')
  const spent = layers.some(
    (layer) =>
      layer.material.kind === 'vinyl' &&
      (rePressed(setUp, layer) + 1 + around.pressesToCome > layer.material.rePress.times ||
        seconds > layer.material.rePress.seconds),
  )
  return spent ? leftOut('re-press-spent') : { kind: 'press', tenthsC: last.tenthsC, seconds }
}
