import { describe, expect, it } from 'vitest'
import type { Bench } from '../../../src/domain/press/job.ts'
import { planPress } from '../../../src/domain/press/plan-press.ts'
import { platenPoundsForce, shownPressure, wordOnGauge } from '../../../src/domain/press/shown.ts'
import { settingNear } from '../../../src/domain/press/thermostat.ts'
import { hazards } from '../../../src/domain/ticket/hazards.ts'
import { cloth, f, garment, glitter, job, mesh, place, stones, windowOf } from './builders.ts'
import { bench, starter } from './workbench.ts'

const polyester = [{ fibre: 'polyester' as const, percent: 100 }]
const stops = (materials: Parameters<typeof place>[0], fabric = cloth(), with_: Bench = bench): readonly string[] => {
  const plan = planPress(job(garment([place(materials)], { cloth: fabric })), with_)
  return plan.ok ? [] : plan.problems.filter((problem) => problem.severity === 'stop').map((problem) => problem.code)
}
const setting = (materials: Parameters<typeof place>[0], fabric = cloth(), with_: Bench = bench): number | null => {
  const plan = planPress(job(garment([place(materials)], { cloth: fabric })), with_)
  return plan.ok ? (plan.value.heats[0]?.tenthsC ?? null) : null
}
const fixed = (least: number, most: number, usual = least) =>
  glitter({ window: windowOf({ least, most, usual }, { least: 10, most: 15, usual: 12 }) })
const shares = (fibre: 'acrylic' | 'elastane' | 'polypropylene' | 'nylon' | 'vinyon', percent: number) => [
  { fibre, percent },
  ...(percent < 100 ? [{ fibre: 'cotton' as const, percent: 100 - percent }] : []),
]

describe('limits of the cloth, each at its limit and just over it (swing 5 °C)', () => {
  it('polypropylene is a hard stop at any share (quoted)', () => {
    expect(stops([glitter()], cloth({ fibres: shares('polypropylene', 100) }))).toEqual(['fibre-melts'])
    expect(stops([glitter()], cloth({ fibres: shares('polypropylene', 5) }))).toEqual(['fibre-melts'])
    expect(stops([fixed(1000, 1150)], cloth({ fibres: shares('polypropylene', 5) }))).toEqual(['fibre-melts'])
  })

  it('acrylic takes 145 °C and not 145.1 °C: its limit of 150 °C (quoted) less the swing', () => {
    expect(stops([fixed(1450, 1600)], cloth({ fibres: shares('acrylic', 100) }))).toEqual([])
    expect(stops([fixed(1451, 1600)], cloth({ fibres: shares('acrylic', 100) }))).toEqual(['no-common-heat'])
  })

  it('elastane takes 175 °C and not 175.1 °C: its limit of 180 °C (quoted) less the swing', () => {
    expect(stops([fixed(1750, 1900)], cloth({ fibres: shares('elastane', 5) }))).toEqual([])
    expect(stops([fixed(1751, 1900)], cloth({ fibres: shares('elastane', 5) }))).toEqual(['no-common-heat'])
  })

  it('trap: polyester does not melt at 120-150 °C; it is pressed at 160 °C, 90 °C below PET’s 250 °C (quoted)', () => {
    expect(setting([glitter()], cloth({ fibres: polyester }))).toBe(f(320))
    for (const tenths of [1200, 1350, 1500])
      expect(stops([fixed(tenths, tenths + 100)], cloth({ fibres: polyester }))).toEqual([])
  })

  it('nylon’s 213 °C is from memory: over it a test press, never a stop', () => {
    const hot = fixed(2090, 2200)
    const strong = {
      ...bench,
      machines: bench.machines.map((one) => ({ ...one, maxTenthsC: 2500 })),
      auxiliaries: bench.auxiliaries.map((one) => ({ ...one, capTenthsC: 2500 })),
    }
    const plan = planPress(job(garment([place([hot])], { cloth: cloth({ fibres: shares('nylon', 100) }) })), strong)
    expect(plan.ok ? plan.value.problems : []).toContainEqual(
      expect.objectContaining({ code: 'fibre-may-suffer', severity: 'needs-test' }),
    )
  })

  it('vinyon asks for a test press at any transfer temperature (from memory)', () => {
    const plan = planPress(job(garment([place([glitter()])], { cloth: cloth({ fibres: shares('vinyon', 20) }) })), bench)
    expect(plan.ok ? plan.value.gates.map((gate) => gate.code) : []).toContain('test-press')
  })

  it("a mill's own limit binds as well", () => {
    expect(stops([glitter()], cloth({ capTenthsC: 1567 }))).toEqual([])
    expect(stops([glitter()], cloth({ capTenthsC: 1566 }))).toEqual(['no-common-heat'])
  })
})

describe('limits of tools and layers', () => {
  const withTape = (capTenthsC: number): Bench => ({
    ...bench,
    auxiliaries: bench.auxiliaries.map((one) => (one.kind === 'tape' ? { ...one, capTenthsC } : one)),
  })

  it('the tape over the stones keeps the setting a swing below its own cap', () => {
    expect(setting([stones()], cloth(), withTape(1650))).toBeLessThanOrEqual(1600)
    expect(setting([stones()], cloth(), withTape(1250))).toBe(1200)
    expect(stops([stones()], cloth(), withTape(1249))).toEqual(['no-common-heat'])
  })

  it('without any tape stones are not pressed, without a pad mesh is not', () => {
    const without = (kind: string): Bench => ({ ...bench, auxiliaries: bench.auxiliaries.filter((one) => one.kind !== kind) })
    expect(stops([stones()], cloth(), without('tape'))).toEqual(['auxiliary-missing'])
    expect(stops([glitter()], mesh(), without('pillow'))).toEqual(['auxiliary-missing'])
    expect(stops([glitter()], cloth(), without('pillow'))).toEqual([])
  })

  it('vinyl that must have more than 329 °F has no temperature in common with stones: separate presses if its record allows, else a stop', () => {
    const once = { rePress: { times: 0, seconds: 0 } }
    expect(stops([{ ...fixed(1650, 1750), ...once }, stones()])).toEqual([])
    expect(stops([{ ...fixed(1651, 1750), ...once }, stones()])).toEqual(['no-common-heat'])
    const plan = planPress(job(garment([place([fixed(1651, 1750), stones()])])), bench)
    expect(plan.ok ? plan.value.heats.map((heat) => heat.tenthsC) : []).toEqual([f(330), f(329)])
    expect(plan.ok ? plan.value.problems : []).toContainEqual(
      expect.objectContaining({ code: 'separate-presses', severity: 'note' }),
    )
  })

  it('a press that cannot reach the window is said', () => {
    const cool = { ...bench, machines: bench.machines.map((one) => ({ ...one, maxTenthsC: 1500 })) }
    expect(stops([glitter()], cloth(), cool)).toEqual(['no-common-heat'])
  })

  it('a correction of the morning counts against what the machine can be set to', () => {
    const machine = (correctionTenthsC: number): Bench => ({
      ...bench,
      machines: bench.machines.map((one) => ({ ...one, maxTenthsC: 1600, correctionTenthsC })),
    })
    expect(setting([glitter()], cloth(), machine(0))).toBe(1600)
    expect(setting([glitter()], cloth(), machine(30))).toBeLessThanOrEqual(1570)
  })

  it.each([30, -30, 17])(
    'a correction of %d tenths of °C leaves the figure to set on a step of the dial, and the platen in the window',
    (correctionTenthsC) => {
      const machines = bench.machines.map((one) => ({ ...one, correctionTenthsC, step: { unit: 'F' as const, degrees: 5 } }))
      const platen = setting([glitter()], cloth(), { ...bench, machines }) ?? 0
      const dial = ((platen + correctionTenthsC) * 9) / 50 + 32
      expect(Math.abs(dial - 5 * Math.round(dial / 5))).toBeLessThan(0.1)
      expect(platen).toBeGreaterThanOrEqual(glitter().window.tenthsC.least)
      expect(Math.abs(platen - f(320))).toBeLessThanOrEqual(14)
    },
  )

  it('vinyl that lies on stones is refused, since the platen would stand on the stones', () => {
    const stack = place([stones(), glitter()])
    expect(planPress(job(garment([stack])), bench).ok).toBe(false)
    const beside = { ...stack, layers: stack.layers.map((layer) => ({ ...layer, lies: 'on-cloth' as const })) }
    const plan = planPress(job(garment([beside])), bench)
    expect(plan.ok ? plan.value.steps.flatMap((step) => (step.action === 'place' ? step.layers : [])) : []).toEqual([
      'front-number-2',
      'front-number-1',
    ])
  })
})

describe('the thermostat', () => {
  it.each([
    ['F', 5, 1600, 320],
    ['F', 5, 1650, 325],
    ['F', 1, 1650, 329],
    ['C', 5, 1650, 165],
    ['C', 5, 1649, 160],
    ['C', 1, 1649, 164],
  ] as const)('of °%s in steps of %d never passes %d tenths of °C: %d', (unit, degrees, most, expected) => {
    const set = settingNear({ unit, degrees }, { leastTenthsC: 1500, mostTenthsC: most }, most)
    expect(set).toBe(unit === 'F' ? f(expected) : expected * 10)
  })

  it('has no setting where no step lies inside the window', () => {
    expect(settingNear({ unit: 'C', degrees: 5 }, { leastTenthsC: 1501, mostTenthsC: 1549 }, 1520)).toBeNull()
    expect(settingNear({ unit: 'F', degrees: 5 }, { leastTenthsC: 1501, mostTenthsC: 1549 }, 1520)).toBe(f(305))
  })
})

describe('what people read', () => {
  it.each([
    [1, 'light'],
    [3, 'light'],
    [4, 'medium'],
    [6, 'medium'],
    [7, 'firm'],
    [9, 'firm'],
    [0, null],
    [10, null],
  ] as const)('a gauge of %d is %s (1-3 light, 4-6 medium, 7-9 firm, quoted)', (gauge, word) => {
    expect(wordOnGauge(gauge)).toBe(word)
  })

  it('gives the gauge of a named press, psi or bar rounded into what was measured, or the word alone', () => {
    const [machine] = starter.presses
    if (machine === undefined) throw new Error('the starter shop has a press')
    expect(shownPressure(machine, 'firm', 'gauge')).toEqual({ kind: 'gauge', word: 'firm', machine: 'press-1', gauge: '8' })
    expect(shownPressure({ ...machine, gauge: null }, 'firm', 'gauge')).toEqual({ kind: 'word', word: 'firm' })
    const measured = {
      ...machine,
      kilopascals: { light: { least: 100, most: 200 }, medium: { least: 200, most: 300 }, firm: { least: 300, most: 400 } },
    }
    expect(shownPressure(measured, 'firm', 'psi')).toMatchObject({ kind: 'range', unit: 'psi', least: 44, most: 58 })
    expect(shownPressure(measured, 'firm', 'bar')).toMatchObject({ unit: 'bar', least: 3, most: 4 })
  })
})

describe("people's safety", () => {
  it('20 psi over 16 × 20 in is 6,400 lbf (computed)', () => {
    expect(platenPoundsForce(20, { platenWidthMicrometres: 406_400, platenDepthMicrometres: 508_000 })).toBe(6400)
  })

  it('every closing runs far above the 65 °C at which bare metal burns in a second (ISO 13732-1, from memory) and says so', () => {
    const plan = planPress(job(garment([place([glitter(), stones()])], { cloth: mesh() })), bench)
    const closings = plan.ok ? plan.value.steps.filter((step) => step.tenthsC !== null) : []
    expect(closings.length).toBe(3)
    for (const step of closings) {
      expect(step.tenthsC).toBeGreaterThan(650)
      expect(step.cautions).toEqual(expect.arrayContaining(['hot-platen', 'hands-out-before-closing', 'never-leave-closed']))
    }
  })

  it.each([
    ['hot-platen', 'warning', 'hot'],
    ['hands-out-before-closing', 'warning', 'crush'],
    ['gloves-for-pillow-and-stones', 'caution', 'gloves'],
    ['do-not-move-tape', 'notice', 'mark'],
  ] as const)('%s is a %s (ANSI Z535.4, quoted) with its sign (ISO 7010, from memory)', (code, word, symbol) => {
    expect(hazards[code]).toEqual({ word, symbol })
  })
})
