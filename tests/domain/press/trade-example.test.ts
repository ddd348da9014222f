import { describe, expect, it } from 'vitest'
import { checkSequence } from '../../../src/domain/press/check-sequence.ts'
import type { Bench, JobGarment, PressJob } from '../../../src/domain/press/job.ts'
import { planPress } from '../../../src/domain/press/plan-press.ts'
import type { PressPlan } from '../../../src/domain/press/press-plan.ts'
import type { LookForCode } from '../../../src/domain/press/step-codes.ts'
import { cloth, f, garment, glitter, job, mesh, place, stones, windowOf } from './builders.ts'
import { bench } from './workbench.ts'

const planned = (work: PressJob, with_: Bench = bench): PressPlan => {
  const plan = planPress(work, with_)
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
  expect(checkSequence(work, with_, plan.value.steps)).toEqual([])
  return plan.value
}

const told = (plan: PressPlan): readonly string[] => plan.steps.map((step) => step.action)
const closings = (plan: PressPlan) =>
  plan.steps.flatMap((step) =>
    step.tenthsC === null ? [] : [{ action: step.action, tenthsC: step.tenthsC, seconds: step.seconds }],
  )

const onMesh = (parts: Partial<JobGarment> = {}): PressJob =>
  job(garment([place([glitter(), stones()])], { cloth: mesh(), ...parts }))

describe('glitter vinyl with a stone outline on polyester mesh (common practice)', () => {
  it('waits for a bleed test of 24 h before it is pressed', () => {
    const gate = planned(onMesh()).gates.find((one) => one.code === 'bleed-test')
    expect(gate).toMatchObject({ garment: 'home', blocks: 'pressing', waitMinutes: 1440 })
  })

  it('goes pad, vinyl tacked, carrier off, stones, joint press, slid off flat, cool, tape off', () => {
    expect(told(planned(onMesh()))).toEqual([
      'pre-press',
      'protect',
      'place',
      'tack',
      'peel',
      'place',
      'press',
      'lift',
      'cool',
      'peel',
      'inspect',
    ])
  })

  it('has a pad inside, because glue would pass through the mesh', () => {
    const plan = planned(onMesh())
    const protect = plan.steps.find((step) => step.action === 'protect')
    expect(protect).toMatchObject({ inside: 'pillow' })
    expect(protect?.why).toContain('glue-passes-through')
    expect(plan.steps.filter((step) => step.action === 'press').map((step) => step.inside)).toEqual(['pillow'])
  })

  it('lays a sheet on the pad before it looks whether that sheet comes free', () => {
    const { steps } = planned(onMesh())
    const at = (code: LookForCode): number => steps.findIndex((step) => step.lookFor.includes(code))
    expect(at('sheet-on-pillow')).toBeGreaterThan(-1)
    expect(at('inside-free-of-glue')).toBeGreaterThan(at('sheet-on-pillow'))
  })

  it('tacks a couple of seconds at the joint temperature and dwells 15 s at 320-325 °F', () => {
    const [prePress, tack, press] = closings(planned(onMesh()))
    expect(prePress?.seconds).toBeGreaterThanOrEqual(3)
    expect(prePress?.seconds).toBeLessThanOrEqual(5)
    expect(tack).toMatchObject({ action: 'tack', tenthsC: press?.tenthsC })
    expect(tack?.seconds).toBeGreaterThanOrEqual(2)
    expect(tack?.seconds).toBeLessThanOrEqual(5)
    expect(press).toMatchObject({ action: 'press', seconds: 15 })
    expect(press?.tenthsC).toBeGreaterThanOrEqual(f(320))
    expect(press?.tenthsC).toBeLessThanOrEqual(f(325))
  })

  it('sets at most 329 °F with stones under the platen, a swing of 10 °F below their cap of 170 °C', () => {
    const [heat] = planned(onMesh()).heats
    expect(heat).toMatchObject({
      mostTenthsC: f(329),
      mostBy: 'stone-ss10-crystal',
      leastTenthsC: 1517,
      leastBy: 'vinyl-glitter-white',
    })
  })

  it('adds tack and dwell of the vinyl and leaves 2 of its 20 s', () => {
    const vinyl = planned(onMesh()).exposures.filter((one) => one.layer === 'front-number-1')
    expect(vinyl.map(({ kind, seconds, leftSeconds }) => ({ kind, seconds, leftSeconds }))).toEqual([
      { kind: 'tack', seconds: 3, leftSeconds: 17 },
      { kind: 'dwell', seconds: 15, leftSeconds: 2 },
    ])
  })

  it('presses nothing from the inside of a mesh', () => {
    const plan = planned(onMesh())
    expect(told(plan)).not.toContain('press-inside')
    expect(plan.problems).toContainEqual(
      expect.objectContaining({ code: 'inside-press-left-out', facts: expect.objectContaining({ reason: 'glue-would-pass' }) }),
    )
  })

  it('peels the tape cold, after a minute at least, once everything was slid off flat', () => {
    const { steps } = planned(onMesh())
    const after = steps.slice(steps.findIndex((step) => step.action === 'press') + 1)
    expect(after.map(({ action, peel }) => ({ action, peel })).slice(0, 3)).toEqual([
      { action: 'lift', peel: null },
      { action: 'cool', peel: null },
      { action: 'peel', peel: 'cold' },
    ])
    expect(after[1]?.seconds).toBeGreaterThanOrEqual(60)
    expect(after[1]?.seconds).toBeLessThanOrEqual(180)
  })
})

describe('each material by itself (common practice)', () => {
  it('presses glitter vinyl at 320 °F for 15 s', () => {
    expect(closings(planned(job(garment([place([glitter()])])))).at(-1)).toEqual({
      action: 'press',
      tenthsC: f(320),
      seconds: 15,
    })
  })

  it('never chooses 335 °F for stones: it sets 329 °F and says why', () => {
    const plan = planned(job(garment([place([stones()])])))
    expect(closings(plan).map((one) => one.tenthsC)).toEqual([f(329), f(329), f(329)])
    expect(plan.problems).toContainEqual({
      code: 'usual-over-margin',
      at: '/decorations/0',
      severity: 'note',
      facts: expect.objectContaining({ usualTenthsC: f(335), setTenthsC: f(329), capTenthsC: 1700, swingTenthsC: 50 }),
    })
  })

  it('sets 335 °F for stones when a person asks for it, and shows it as over the margin', () => {
    const plan = planned(job(garment([place([stones()], { askedTenthsC: f(335) })])))
    expect(closings(plan).at(-1)?.tenthsC).toBe(f(335))
    expect(plan.problems).toContainEqual(expect.objectContaining({ code: 'asked-over-margin', severity: 'caution' }))
    expect(plan.steps.find((step) => step.action === 'press')?.cautions).toContain('over-margin')
  })

  it('says so when what is asked for is cooler than a layer needs, and sets the least it needs', () => {
    const plan = planned(job(garment([place([glitter()], { askedTenthsC: f(250) })])))
    expect(closings(plan).at(-1)?.tenthsC).toBe(f(305))
    expect(plan.problems).toContainEqual(
      expect.objectContaining({
        code: 'asked-too-cool',
        facts: expect.objectContaining({ askedTenthsC: f(250), leastTenthsC: 1517, leastBy: 'vinyl-glitter-white' }),
      }),
    )
  })

  it('names the usual setting as the first way out of one that is asked for and cannot be kept', () => {
    const over = planPress(job(garment([place([stones()], { askedTenthsC: f(339) })])), bench)
    const ways = over.ok ? [] : over.problems[0]?.facts.ways
    expect(ways?.[0]).toEqual({ way: 'usual-setting', subject: null, inStock: null })
  })

  it('refuses to set stones over their cap of 170 °C even when asked (338 °F passes, 339 °F does not)', () => {
    expect(planPress(job(garment([place([stones()], { askedTenthsC: f(338) })])), bench).ok).toBe(true)
    const over = planPress(job(garment([place([stones()], { askedTenthsC: f(339) })])), bench)
    expect(over.ok ? [] : over.problems.map((problem) => problem.code)).toEqual(['asked-over-cap'])
  })

  it('presses stones on cotton from the inside as well, 10-15 s at the same setting', () => {
    const inside = closings(planned(job(garment([place([stones()])])))).at(-1)
    expect(inside).toEqual({ action: 'press-inside', tenthsC: f(329), seconds: 10 })
  })

  it('turns the garment inside out for it, stones down into the pad, and back when they are cool', () => {
    const { steps } = planned(job(garment([place([stones()])])))
    const out = steps.findIndex((step) => step.action === 'turn-out')
    expect(steps.slice(out).map((step) => step.action)).toEqual(['turn-out', 'press-inside', 'cool', 'turn-back'])
    expect(steps[out]?.lookFor).toEqual(['stones-face-into-pillow', 'sheet-on-cloth'])
  })

  it('speaks of no sheet to free on a threaded garment, where none was laid', () => {
    const said = planned(job(garment([place([stones()])]))).steps.flatMap((step) => step.lookFor)
    expect(said).not.toContain('sheet-on-pillow')
    expect(said).not.toContain('inside-free-of-glue')
  })
})

describe('the records decide, not the program', () => {
  it('gives other settings from the records of a second shop', () => {
    const vinyl = glitter({
      window: windowOf({ least: f(310), most: f(330), usual: f(315) }, { least: 10, most: 18, usual: 12 }, 'firm'),
    })
    const stone = stones({ window: windowOf({ least: 1300, most: 1650, usual: f(310) }, { least: 10, most: 25, usual: 14 }) })
    const plan = planned(job(garment([place([vinyl, stone])], { cloth: mesh() })))
    expect(closings(plan).slice(1)).toEqual([
      { action: 'tack', tenthsC: f(310), seconds: 3 },
      { action: 'press', tenthsC: f(310), seconds: 14 },
    ])
    const alone = planned(job(garment([place([vinyl])])))
    expect(closings(alone).at(-1)).toEqual({ action: 'press', tenthsC: f(315), seconds: 12 })
  })

  it('gives a steadier press more room: with a swing of 1 °C stones alone are set at 335 °F', () => {
    const steady = { ...bench, machines: bench.machines.map((machine) => ({ ...machine, swingTenthsC: 10 })) }
    expect(closings(planned(job(garment([place([stones()])])), steady)).at(1)?.tenthsC).toBe(f(335))
  })

  it('gives cold-peel vinyl its full dwell, cools and peels it, and presses the stones as a second exposure', () => {
    const vinyl = glitter({ tackPeel: false, peel: 'cold' })
    const plan = planned(job(garment([place([vinyl, stones()])], { cloth: mesh() })))
    expect(told(plan)).toEqual([
      'pre-press',
      'protect',
      'place',
      'press',
      'cool',
      'peel',
      'place',
      'press',
      'lift',
      'cool',
      'peel',
      'inspect',
    ])
    const exposures = plan.exposures.filter((one) => one.layer === 'front-number-1')
    expect(exposures.map(({ kind, seconds }) => ({ kind, seconds }))).toEqual([
      { kind: 'dwell', seconds: 15 },
      { kind: 're-press', seconds: 15 },
    ])
    expect(plan.steps.filter((step) => step.action === 'press').map((step) => step.cover)).toEqual(['carrier', 'sheet'])
  })

  it('says the ways out when cold-peel vinyl allows no second exposure: another vinyl, separate places, no stones', () => {
    const vinyl = glitter({ tackPeel: false, peel: 'cold', rePress: { times: 0, seconds: 0 } })
    const plan = planPress(job(garment([place([vinyl, stones()])], { cloth: mesh() })), bench)
    expect(plan.ok).toBe(false)
    const [problem] = plan.ok ? [] : plan.problems
    expect(problem?.code).toBe('re-press-not-allowed')
    const ways = problem?.facts.ways.map((way) => way.way) ?? []
    expect(new Set(ways)).toEqual(new Set(['another-class', 'separate-places', 'no-stones']))
    expect(problem?.facts.ways.every((way) => way.way !== 'another-class' || way.subject !== vinyl.id)).toBe(true)
  })

  it('ranks ways out by what lies on the shelf', () => {
    const vinyl = glitter({ id: 'own-glitter', tackPeel: false, peel: 'cold', rePress: { times: 0, seconds: 0 } })
    const shelf = { materials: bench.shelf.materials, stock: { 'vinyl-standard-white': 1000 } }
    const plan = planPress(job(garment([place([vinyl, stones()])], { cloth: cloth() })), { ...bench, shelf })
    const ways = plan.ok ? [] : (plan.problems[0]?.facts.ways ?? [])
    expect(ways[0]).toEqual({ way: 'another-class', subject: 'vinyl-standard-white', inStock: 1000 })
    const empty = ways.findIndex((way) => way.inStock === 0)
    expect(ways.slice(empty).every((way) => way.inStock === 0)).toBe(true)
  })
})
