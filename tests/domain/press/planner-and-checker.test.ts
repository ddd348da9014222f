import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkSequence } from '../../../src/domain/press/check-sequence.ts'
import type { Bench, JobGarment, JobLayer, PressJob } from '../../../src/domain/press/job.ts'
import { planPress } from '../../../src/domain/press/plan-press.ts'
import { shownTemperature } from '../../../src/domain/press/shown.ts'
import { tenthsC } from '../../../src/domain/units/units.ts'
import { randomBench, randomJob } from './random-jobs.ts'

const isLong = process.env['LONG'] !== undefined
/** Three orders in ten can be pressed, so that the long form replays more than 10,000 sequences. */
const numRuns = isLong ? 40_000 : 500
const seed = 20261125
const patience = isLong ? 1_200_000 : 30_000

const eachLayer = (job: PressJob, change: (layer: JobLayer) => JobLayer): PressJob => ({
  garments: job.garments.map((garment) => ({
    ...garment,
    places: garment.places.map((place) => ({ ...place, layers: place.layers.map(change) })),
  })),
})

const eachGarment = (job: PressJob, change: (garment: JobGarment) => JobGarment): PressJob => ({
  garments: job.garments.map(change),
})

type Window = JobLayer['material']['window']

const clamp = (window: Window): Window => {
  const inside = ({ least, most, usual }: Window['tenthsC']) => ({ least, most, usual: Math.min(Math.max(usual, least), most) })
  return { ...window, tenthsC: inside(window.tenthsC), seconds: inside(window.seconds) }
}

const withWindow = (layer: JobLayer, change: (window: Window) => Window): JobLayer => ({
  ...layer,
  material: { ...layer.material, window: clamp(change(layer.material.window)) },
})

type Case = { readonly job: PressJob; readonly bench: Bench }

/** Ways to make a case stricter by an amount; each leaves every record valid. */
const tightenings: readonly ((made: Case, by: number) => Case)[] = [
  ({ job, bench }, by) => ({
    bench,
    job: eachLayer(job, (layer) =>
      withWindow(layer, ({ tenthsC: range, ...rest }) => ({
        ...rest,
        tenthsC: { ...range, most: Math.max(range.least, range.most - by) },
      })),
    ),
  }),
  ({ job, bench }, by) => ({
    bench,
    job: eachLayer(job, (layer) =>
      withWindow(layer, ({ tenthsC: range, ...rest }) => ({
        ...rest,
        tenthsC: { ...range, least: Math.min(range.most, range.least + by) },
      })),
    ),
  }),
  ({ job, bench }, by) => ({
    bench,
    job: eachLayer(job, (layer) =>
      withWindow(layer, ({ seconds, ...rest }) => ({
        ...rest,
        seconds: { ...seconds, most: Math.max(seconds.least, seconds.most - (by % 7)) },
      })),
    ),
  }),
  ({ job, bench }, by) => ({
    bench,
    job: eachLayer(job, (layer) => ({
      ...layer,
      material: {
        ...layer.material,
        rePress: {
          times: Math.max(0, layer.material.rePress.times - (by % 3)),
          seconds: Math.max(0, layer.material.rePress.seconds - (by % 8)),
        },
      },
    })),
  }),
  ({ job, bench }) => ({
    bench,
    job: eachLayer(job, (layer) =>
      layer.material.kind === 'vinyl' ? { ...layer, material: { ...layer.material, tackPeel: false } } : layer,
    ),
  }),
  ({ job, bench }, by) => ({
    bench,
    job: eachGarment(job, (garment) => ({
      ...garment,
      cloth: { ...garment.cloth, capTenthsC: Math.min(garment.cloth.capTenthsC ?? 2500, 1900 - by * 3) },
    })),
  }),
  ({ job, bench }, by) => ({
    job,
    bench: { ...bench, machines: bench.machines.map((one) => ({ ...one, swingTenthsC: one.swingTenthsC + by })) },
  }),
  ({ job, bench }, by) => ({
    job,
    bench: { ...bench, auxiliaries: bench.auxiliaries.map((one) => ({ ...one, capTenthsC: one.capTenthsC - by })) },
  }),
  ({ job, bench }, by) => ({
    job,
    bench: { ...bench, machines: bench.machines.map((one) => ({ ...one, maxTenthsC: one.maxTenthsC - by })) },
  }),
]

describe('the planner against the checker', () => {
  it(
    'never plans a sequence that breaches a limit or the order of work',
    () => {
      let planned = 0
      fc.assert(
        fc.property(randomJob, randomBench, (job, bench) => {
          const plan = planPress(job, bench)
          if (!plan.ok) {
            expect(plan.problems.some((problem) => problem.severity === 'stop')).toBe(true)
            return
          }
          planned += 1
          expect(plan.value.problems.filter((problem) => problem.severity === 'stop')).toEqual([])
          expect(checkSequence(job, bench, plan.value.steps)).toEqual([])
        }),
        { numRuns, seed },
      )
      expect(planned).toBeGreaterThan(numRuns / 4)
    },
    patience,
  )

  it(
    'never lets a refused order pass when a limit gets tighter',
    () => {
      let refused = 0
      fc.assert(
        fc.property(
          randomJob,
          randomBench,
          fc.nat(tightenings.length - 1),
          fc.integer({ min: 1, max: 60 }),
          (job, bench, which, by) => {
            if (planPress(job, { ...bench, shelf: { materials: [], stock: {} } }).ok) return
            refused += 1
            const made = tightenings[which]?.({ job, bench: { ...bench, shelf: { materials: [], stock: {} } } }, by)
            expect(made === undefined || planPress(made.job, made.bench).ok).toBe(false)
          },
        ),
        { numRuns: isLong ? 20_000 : 400, seed },
      )
      expect(refused).toBeGreaterThan(100)
    },
    patience,
  )

  it(
    'shows every setting in °F and in °C without leaving its window, so that the unit changes no verdict',
    () => {
      let shown = 0
      fc.assert(
        fc.property(randomJob, randomBench, fc.constantFrom('F' as const, 'C' as const), (job, bench, unit) => {
          const plan = planPress(job, bench)
          if (!plan.ok) return
          const { heats, steps } = plan.value
          const readOf = (heat: (typeof heats)[number]): number => {
            const { value } = shownTemperature(heat.tenthsC, unit, heat)
            return unit === 'C' ? value * 10 : ((value - 32) * 50) / 9
          }
          for (const heat of heats) {
            const read = readOf(heat)
            const isDial = tenthsC(read) === heat.tenthsC
            expect(isDial || (read >= heat.leastTenthsC - 1e-6 && read <= heat.mostTenthsC + 1e-6)).toBe(true)
            shown += 1
          }
          const asRead = steps.map((step) => {
            const heat = heats.find(
              (one) => one.tenthsC === step.tenthsC && one.layers.some((layer) => step.layers.includes(layer)),
            )
            return step.tenthsC === null || heat === undefined ? step : { ...step, tenthsC: tenthsC(readOf(heat)) }
          })
          expect(checkSequence(job, bench, asRead)).toEqual([])
        }),
        { numRuns: isLong ? 10_000 : 300, seed },
      )
      expect(shown).toBeGreaterThan(100)
    },
    patience,
  )
})
