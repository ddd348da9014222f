import { describe, expect, it } from 'vitest'
import { checkSequence } from '../../../src/domain/press/check-sequence.ts'
import type { PressJob } from '../../../src/domain/press/job.ts'
import { planPress } from '../../../src/domain/press/plan-press.ts'
import type { PressStep } from '../../../src/domain/press/press-plan.ts'
import { seconds, tenthsC } from '../../../src/domain/units/units.ts'
import { garment, glitter, job, mesh, place, stones } from './builders.ts'
import { bench } from './workbench.ts'

const both: PressJob = job(
  garment(
    [
      place([glitter(), stones()], { lines: [1, 2] }),
      place([glitter()], { decoration: 'back', place: 'back-number', side: 'back', lines: [1, 2] }),
    ],
    { cloth: mesh() },
  ),
)

const stepsOf = (work: PressJob): readonly PressStep[] => {
  const plan = planPress(work, bench)
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
  return plan.value.steps
}

type Tamper = (steps: readonly PressStep[]) => readonly PressStep[]

const codesAfter = (tamper: Tamper, work = both): readonly string[] => [
  ...new Set(checkSequence(work, bench, tamper(stepsOf(work))).map((breach) => breach.code)),
]

const edit =
  (action: PressStep['action'], change: Partial<PressStep>): Tamper =>
  (steps) =>
    steps.map((step) => (step.action === action ? { ...step, ...change } : step))

const drop =
  (action: PressStep['action']): Tamper =>
  (steps) =>
    steps.filter((step) => step.action !== action)

/** Moves the first step of a kind to just before the first of another. */
const moveAhead =
  (moved: (step: PressStep) => boolean, target: (step: PressStep) => boolean): Tamper =>
  (steps) => {
    const step = steps.find(moved)
    if (step === undefined) throw new Error('nothing to move')
    const rest = steps.filter((one) => one !== step)
    return rest.toSpliced(rest.findIndex(target), 0, step)
  }

const lays = (id: string) => (step: PressStep) => step.action === 'place' && step.layers.includes(id)
const does = (action: PressStep['action']) => (step: PressStep) => step.action === action

describe('the checker', () => {
  it('finds nothing in a sound sequence', () => {
    expect(codesAfter((steps) => steps)).toEqual([])
  })

  it.each<readonly [string, Tamper, string]>([
    ['0.1 °C over the window less the swing', edit('press', { tenthsC: tenthsC(1651) }), 'too-hot'],
    ['under the window', edit('press', { tenthsC: tenthsC(1516) }), 'too-cool'],
    ['between two steps of the thermostat', edit('press', { tenthsC: tenthsC(1603) }), 'off-the-dial'],
    ['a dwell that makes the vinyl’s total longer than its sheet allows', edit('press', { seconds: seconds(18) }), 'too-long'],
    ['a dwell shorter than the stones’ least', edit('press', { seconds: seconds(9) }), 'too-short'],
    ['softer than the firmest layer asks', edit('press', { pressure: { word: 'medium', gauge: null } }), 'too-soft'],
    ['a tack of 6 s', edit('tack', { seconds: seconds(6) }), 'tack-out-of-range'],
    ['no pad inside a mesh', edit('press', { inside: 'none' }), 'glue-unprotected'],
    ['no sheet over bare vinyl', edit('press', { cover: 'carrier' }), 'nothing-over-it'],
    ['the tape not let cool', drop('cool'), 'peel-too-early'],
    ['the tape cooled for half a minute only', edit('cool', { seconds: seconds(30) }), 'peel-too-early'],
    ['not slid off flat', drop('lift'), 'not-lifted'],
    ['the tape peeled hot', edit('peel', { peel: 'hot' }), 'wrong-peel'],
    ['turned without saying so', drop('turn'), 'turned-without-saying'],
    ['turned before the first side is finished', moveAhead(does('turn'), does('lift')), 'turned-too-soon'],
    ['the carrier never taken off', drop('peel'), 'not-finished'],
    ['the vinyl laid after the stones', moveAhead(lays('front-number-2'), lays('front-number-1')), 'vinyl-after-stones'],
    ['a layer nobody ordered', edit('place', { layers: ['somebody-else-1'] }), 'unknown-layer'],
    [
      'a line of the roster left out',
      (steps) => steps.map((step) => ({ ...step, lines: step.lines.filter((line) => line !== 2) })),
      'not-finished',
    ],
  ])('finds %s', (_what, tamper, code) => {
    expect(codesAfter(tamper)).toContain(code)
  })

  it('finds finished stones pressed once more', () => {
    const again: Tamper = (steps) => [
      ...steps,
      ...steps.filter((step) => does('press')(step) && step.layers.includes('front-number-2')),
    ]
    expect(codesAfter(again)).toContain('finished-stones-under-load')
  })

  it('finds cold-peel vinyl tacked and peeled', () => {
    const cold = glitter({ tackPeel: false, peel: 'cold' })
    const relabelled = job(garment([place([cold, stones()])], { cloth: mesh() }))
    const asTacked = stepsOf(job(garment([place([glitter(), stones()])], { cloth: mesh() })))
    expect(checkSequence(relabelled, bench, asTacked).map((breach) => breach.code)).toContain('cold-peel-tacked')
  })

  it('finds a press from the inside where glue passes, and after the other side is finished', () => {
    const cottonBack = job(
      garment([
        place([stones()], { lines: [1] }),
        place([stones()], { decoration: 'back', place: 'back-number', side: 'back', lines: [1] }),
      ]),
    )
    const sound = stepsOf(cottonBack)
    expect(sound.filter(does('press-inside'))).toHaveLength(1)
    expect(checkSequence(cottonBack, bench, sound)).toEqual([])
    const asLeft = (action: PressStep['action']): readonly string[] =>
      checkSequence(
        cottonBack,
        bench,
        sound.filter((step) => !does(action)(step)),
      ).map((breach) => breach.code)
    expect(asLeft('turn-out')).toContain('wrong-side-out')
    expect(asLeft('turn-back')).toContain('wrong-side-out')
    const inside = sound.find(does('press-inside'))
    const late = inside === undefined ? [] : [...sound, { ...inside, place: 'back-number', layers: ['back-1'] }]
    expect(checkSequence(cottonBack, bench, late).map((breach) => breach.code)).toContain('inside-not-allowed')
  })

  it('finds stones of the other side under the load where the garment is neither threaded nor padded', () => {
    const flat = { ...bench, machines: bench.machines.map((machine) => ({ ...machine, threads: false })) }
    const work = job(
      garment([
        place([stones({ rePress: { times: 2, seconds: 15 } })]),
        place([glitter()], { decoration: 'back', place: 'back-number', side: 'back' }),
      ]),
    )
    const plan = planPress(work, flat)
    const steps = plan.ok ? plan.value.steps : []
    expect(steps.length).toBeGreaterThan(0)
    expect(checkSequence(work, flat, steps)).toEqual([])
    const reversed = [...steps.filter((step) => step.side === 'back' && step.action !== 'turn')]
    const front = steps.filter((step) => step.side !== 'back')
    const turn = { ...(steps.find(does('turn')) ?? front[0]), place: 'back-number', action: 'turn' as const }
    const bare = [...front, turn, ...reversed].flatMap((step) =>
      step.no === undefined ? [] : [{ ...step, inside: 'none' as const }],
    )
    expect(checkSequence(work, flat, bare as readonly PressStep[]).map((breach) => breach.code)).toContain(
      'finished-stones-under-load',
    )
  })
})
