import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkSequence } from '../../../src/domain/press/check-sequence.ts'
import type { Bench, JobGarment, JobLayer, PressJob } from '../../../src/domain/press/job.ts'
import { planPress } from '../../../src/domain/press/plan-press.ts'
import type { PressStep } from '../../../src/domain/press/press-plan.ts'
import { composeTicket } from '../../../src/domain/ticket/compose.ts'
import { fromFahrenheit, tenthsC } from '../../../src/domain/units/units.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { blocksOf } from '../ticket/ticket-text.ts'
import { pressFacts } from './on-paper.ts'
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

const show = fc.record({
  temperature: fc.constantFrom('F' as const, 'C' as const),
  length: fc.constantFrom('in' as const, 'cm' as const),
  pressure: fc.constantFrom('gauge' as const, 'psi' as const, 'bar' as const),
  paper: fc.constantFrom('letter' as const, 'a4' as const),
  dateOrder: fc.constant('month-first' as const),
})

/** Every temperature in a text, in tenths of °C. */
const degreesIn = (text: string): readonly number[] =>
  [...text.matchAll(/(\d+(?:\.\d)?) °([FC])/g)].map(([, value, unit]) =>
    unit === 'F' ? fromFahrenheit(Number(value)) : Math.round(Number(value) * 10),
  )

const correctionOf = (bench: Bench, step: PressStep): number =>
  bench.machines.find((machine) => machine.id === step.machine)?.correctionTenthsC ?? 0

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
    'prints every setting so that what is read at the dial, in °F or °C, is the one the checker passed',
    () => {
      let printed = 0
      fc.assert(
        fc.property(randomJob, randomBench, show, (job, bench, shown) => {
          const plan = planPress(job, bench)
          if (!plan.ok) return
          const { steps } = plan.value
          const ticket = composeTicket(pressFacts(job, { machines: bench.machines, steps }, shown), ticketWordsEn)
          const paper = blocksOf(ticket, 'steps').flatMap((block) => block.steps)
          const asRead = steps.map((step, at) => {
            const temperatures = degreesIn(JSON.stringify(paper[at]))
            const machine = bench.machines.find((one) => one.id === step.machine)
            if (step.tenthsC === null || machine === undefined) {
              expect(temperatures).toEqual([])
              return step
            }
            expect(temperatures).toHaveLength(machine.step.unit === shown.temperature ? 1 : 2)
            const platens = temperatures.map((one) => one - machine.correctionTenthsC)
            for (const platen of platens) expect(platen).toBe(step.tenthsC)
            printed += 1
            return { ...step, tenthsC: tenthsC(platens[0] ?? 0) }
          })
          expect(checkSequence(job, bench, asRead)).toEqual([])
          const boxed = blocksOf(ticket, 'press-box').flatMap((box) =>
            degreesIn(JSON.stringify(box.rows.map((row) => row.figures))),
          )
          const set = steps.flatMap((step) => (step.tenthsC === null ? [] : [step.tenthsC + correctionOf(bench, step)]))
          for (const figure of boxed) expect(set).toContain(figure)
        }),
        { numRuns: isLong ? 10_000 : 200, seed },
      )
      expect(printed).toBeGreaterThan(100)
    },
    patience,
  )
})
