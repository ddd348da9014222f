import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkSequence } from '../../../src/domain/press/check-sequence.ts'
import type { Bench, PressJob } from '../../../src/domain/press/job.ts'
import { changeBetween, orderSetUps } from '../../../src/domain/press/order-set-ups.ts'
import { planPress } from '../../../src/domain/press/plan-press.ts'
import type { PressPlan } from '../../../src/domain/press/press-plan.ts'
import { type SetUp, setUpsOf } from '../../../src/domain/press/set-ups.ts'
import { cloth, f, garment, glitter, job, mesh, place, stones, windowOf } from './builders.ts'
import { bench, starter } from './workbench.ts'

const planned = (work: PressJob, with_: Bench = bench): PressPlan => {
  const plan = planPress(work, with_)
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
  expect(checkSequence(work, with_, plan.value.steps)).toEqual([])
  return plan.value
}

const back = { decoration: 'back', place: 'back-number', side: 'back' } as const
const name = { decoration: 'name', place: 'name', side: 'back' } as const
const low = glitter({
  id: 'low',
  class: 'low-temperature',
  window: windowOf({ least: 1300, most: 1500, usual: 1350 }, { least: 10, most: 15, usual: 12 }),
  tackPeel: false,
  peel: 'cold',
})

describe('set-ups', () => {
  it('name and number of one back are pressed together', () => {
    const plan = planned(job(garment([place([glitter()], name), place([glitter()], back)])))
    expect(plan.steps.filter((step) => step.action === 'press').map((step) => step.place)).toEqual(['name+back-number'])
  })

  it('a name without stones waits for the joint press of the number with stones', () => {
    const plan = planned(job(garment([place([glitter()], name), place([glitter(), stones()], back)], { cloth: mesh() })))
    expect(plan.steps.filter((step) => step.tenthsC !== null).map((step) => [step.action, step.layers])).toEqual([
      ['pre-press', []],
      ['tack', ['name-1', 'back-1']],
      ['press', ['name-1', 'back-1', 'back-2']],
    ])
  })

  it('places that share no temperature are pressed beside each other on pads of their own', () => {
    const plan = planned(job(garment([place([low], name), place([glitter()], back)])))
    expect(plan.steps.filter((step) => step.action === 'press').map((step) => [step.place, step.inside])).toEqual([
      ['name', 'pillow'],
      ['back-number', 'pillow'],
    ])
    expect(plan.steps.filter((step) => step.action === 'protect').every((step) => step.why.includes('places-kept-apart'))).toBe(
      true,
    )
  })

  it('lines that lack a place are left out of its steps and stay in the others', () => {
    const places = [place([glitter()], { ...name, lines: [2] }), place([glitter()], { ...back, lines: [1, 2] })]
    const plan = planned(job(garment(places)))
    const linesAt = (id: string) =>
      plan.steps.filter((step) => step.action === 'place' && step.layers.includes(id)).map((step) => step.lines)
    expect([linesAt('name-1'), linesAt('back-1')]).toEqual([[[2]], [[1, 2]]])
  })

  it('stones come on the first side where an inside press follows, and on the last where none may', () => {
    const sides = [place([glitter()]), place([stones()], back)]
    const first = (plan: PressPlan) => plan.steps[0]?.side
    expect(first(planned(job(garment(sides))))).toBe('back')
    expect(first(planned(job(garment(sides, { cloth: mesh() }))))).toBe('front')
  })

  it('a zip, a pocket or a collar within reach gets a pad; a full zip is pressed in two halves', () => {
    const near = place([glitter()], { near: ['full-zip', 'pocket'], place: 'full-front', decoration: 'front' })
    const zipped = planned(job(garment([near], { features: ['full-zip'] })))
    expect(zipped.steps.find((step) => step.action === 'protect')).toMatchObject({ inside: 'pillow' })
    expect(zipped.problems.map((problem) => problem.code)).toEqual(['obstacle-near', 'zip-two-halves'])
    expect(planned(job(garment([near]))).problems).toEqual([])
  })

  it('sleeves are never threaded: they get a pad', () => {
    const sleeve = place([glitter()], { place: 'left-sleeve', side: 'left-sleeve', decoration: 'sleeve' })
    expect(planned(job(garment([sleeve]))).steps.find((step) => step.action === 'press')?.inside).toBe('pillow')
    expect(planned(job(garment([place([glitter()])]))).steps.find((step) => step.action === 'press')?.inside).toBe('none')
  })

  it('takes the press whose platen holds the number, and refuses what fits on none', () => {
    const tall = (heightMicrometres: number) =>
      job(garment([place([glitter()], { widthMicrometres: 300_000, heightMicrometres })]))
    const [large, small] = starter.presses
    const machines = [small, large].flatMap((machine) => machine ?? [])
    expect(planned(tall(406_400), { ...bench, machines }).times[0]?.machine).toBe('press-2')
    expect(planned(tall(406_401), { ...bench, machines }).times[0]?.machine).toBe('press-1')
    const over = planPress(tall(508_001), bench)
    expect(over.ok ? [] : over.problems.map((problem) => problem.code)).toEqual(['platen-too-small'])
  })

  it('light and firm layers under one platen are cautioned', () => {
    const light = glitter({ id: 'puff', class: 'puff', window: { ...glitter().window, pressure: 'light' } })
    const plan = planned(job(garment([place([light], name), place([glitter()], back)])))
    expect(plan.problems).toContainEqual(expect.objectContaining({ code: 'pressure-differs', severity: 'caution' }))
    expect(plan.steps.find((step) => step.action === 'press')?.pressure).toEqual({ word: 'firm', gauge: '8' })
  })
})

const permuted = (chains: readonly (readonly SetUp[])[]): readonly (readonly SetUp[])[] => {
  const open = chains.filter((chain) => chain.length > 0)
  if (open.length === 0) return [[]]
  return chains.flatMap((chain, at) => {
    const [head, ...rest] = chain
    return head === undefined ? [] : permuted(chains.with(at, rest)).map((order) => [head, ...order])
  })
}

const lost = (order: readonly SetUp[]): number =>
  order.slice(1).reduce((sum, after, index) => {
    const previous = order[index]
    return sum + (previous === undefined ? 0 : changeBetween(previous, after))
  }, 0)

describe('the order of set-ups over a roster', () => {
  const kinds = [
    glitter(),
    low,
    glitter({ id: 'other', window: windowOf({ least: 1517, most: 1700, usual: f(310) }, { least: 10, most: 20, usual: 12 }) }),
  ]
  const chain = (index: number, picks: readonly number[]): readonly SetUp[] => {
    const spots = [
      { decoration: 'front', place: 'front-number', side: 'front' },
      back,
      { decoration: 'sleeve', place: 'left-sleeve', side: 'left-sleeve' },
    ] as const
    const places = picks.flatMap((pick, at) => {
      const [spot, material] = [spots[at], kinds[pick]]
      return spot === undefined || material === undefined ? [] : [place([material], { ...spot, lines: [index] })]
    })
    const machine = bench.machines[0]
    if (machine === undefined) throw new Error('the starter shop has a press')
    const tried = setUpsOf(bench, garment(places, { id: `garment-${index}`, cloth: cloth() }), machine)
    return tried.ok ? tried.value : []
  }

  it('loses as few minutes to changes as the best of all orders that keep each garment’s own', () => {
    const picks = fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 1, maxLength: 3 })
    fc.assert(
      fc.property(fc.array(picks, { minLength: 1, maxLength: 3 }), (garments) => {
        const chains = garments.map((one, index) => chain(index + 1, one))
        const best = Math.min(...permuted(chains).map(lost))
        expect(lost(orderSetUps(chains))).toBe(best)
      }),
      { numRuns: 60, seed: 7 },
    )
  })

  it('keeps the order of each garment for large orders too, where it takes the nearest next', () => {
    const chains = Array.from({ length: 12 }, (_, index) => chain(index + 1, [index % 3, (index + 1) % 3]))
    const order = orderSetUps(chains)
    expect(order).toHaveLength(24)
    for (const own of chains) expect(order.filter((setUp) => own.includes(setUp))).toEqual(own)
    expect(lost(order)).toBeLessThan(lost(chains.flat()))
  })
})

describe('minutes at the press (common practice)', () => {
  const minutesOf = (plan: PressPlan): number => (plan.times[0]?.labourSeconds ?? 0) / 60

  it('a plain place takes 1.2-2 min, two colours 2-3', () => {
    const standard = glitter({ id: 'standard', class: 'standard', takesOnTop: ['standard'] })
    const plain = minutesOf(planned(job(garment([place([standard])]))))
    const two = minutesOf(planned(job(garment([place([standard, standard])]))))
    expect(plain).toBeGreaterThanOrEqual(1.2)
    expect(plain).toBeLessThanOrEqual(2)
    expect(two).toBeGreaterThanOrEqual(2)
    expect(two).toBeLessThanOrEqual(3)
  })

  it('a side with stones takes 3-4 min when two garments are worked in turn, 5-7 with the cooling waited for', () => {
    const plan = planned(job(garment([place([glitter(), stones()])], { cloth: mesh() })))
    const cooling = plan.steps.reduce((sum, step) => sum + (step.action === 'cool' ? (step.seconds ?? 0) : 0), 0) / 60
    expect(minutesOf(plan)).toBeGreaterThanOrEqual(3)
    expect(minutesOf(plan)).toBeLessThanOrEqual(4.2)
    expect(minutesOf(plan) + cooling).toBeGreaterThanOrEqual(5)
    expect(minutesOf(plan) + cooling).toBeLessThanOrEqual(7)
  })

  it('counts a mean per garment over all its set-ups', () => {
    const plan = planned(job(garment([place([glitter()], { lines: [1, 2] }), place([glitter()], { ...back, lines: [1] })])))
    const [one = 0, two = 0] = plan.times.map((time) => time.labourSeconds)
    expect(plan.secondsPerGarment.labour).toBe(Math.round((2 * one + two) / 2))
  })
})
