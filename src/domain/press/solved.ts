import type { Auxiliary } from '../material/material.ts'
import type { BenchSettings, ClothFacts, JobLayer } from './job.ts'
import type { Cap } from './limits.ts'
import type { Machine } from './machine.ts'
import type { Group } from './rungs.ts'

/** Where a set-up is pressed: the cloth under the platen, the machine, and what lies inside the garment. */
export type HeatContext = {
  readonly cloth: ClothFacts
  readonly machine: Machine
  readonly auxiliaries: readonly Auxiliary[]
  readonly settings: BenchSettings
  readonly inside: 'pillow' | 'sheet' | 'none'
  /** Finished on the other side of a garment that is not threaded: every dwell is one more press for them. */
  readonly below: readonly JobLayer[]
}

/** Why a set-up cannot be pressed as it stands. */
export type HeatFailure =
  | {
      readonly code: 'no-common-heat'
      readonly leastTenthsC: number
      readonly leastBy: string
      readonly mostTenthsC: number
      readonly mostBy: Cap
    }
  | { readonly code: 'no-setting'; readonly leastTenthsC: number; readonly mostTenthsC: number }
  | { readonly code: 'asked-over-cap'; readonly askedTenthsC: number; readonly cap: Cap }
  | {
      readonly code: 'no-common-time'
      readonly leastSeconds: number
      readonly leastBy: string
      readonly mostSeconds: number
      readonly mostBy: string
    }
  | {
      readonly code: 're-press-not-allowed'
      readonly layer: JobLayer
      readonly times: number
      readonly seconds: number
    }
  | { readonly code: 'auxiliary-missing'; readonly kind: string }

export type Solved<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly failure: HeatFailure }

export const failed = (failure: HeatFailure): { readonly ok: false; readonly failure: HeatFailure } => ({ ok: false, failure })

const bounds = <T extends { readonly value: number; readonly by: string }>(
  all: readonly T[],
  better: (a: number, b: number) => boolean,
) => all.reduce<T | null>((best, one) => (best === null || better(one.value, best.value) ? one : best), null)

export const least = <T extends { readonly value: number; readonly by: string }>(all: readonly T[]) =>
  bounds(all, (a, b) => a < b)
export const greatest = <T extends { readonly value: number; readonly by: string }>(all: readonly T[]) =>
  bounds(all, (a, b) => a > b)

export type Under = { readonly group: Group; readonly finished: readonly JobLayer[]; readonly asked: number | null }
