import { describe, expect, it } from 'vitest'
import type { Row } from '../../../src/domain/order/order.ts'
import type { JobGarment } from '../../../src/domain/press/job.ts'
import { planPress } from '../../../src/domain/press/plan-press.ts'
import type { Gate } from '../../../src/domain/press/press-plan.ts'
import { cloth, garment, glitter, job, mesh, place, stones } from './builders.ts'
import { bench, starter } from './workbench.ts'

const gates = (...garments: readonly JobGarment[]): readonly Gate[] => {
  const plan = planPress(job(...garments), bench)
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems))
  return plan.value.gates
}
const codes = (...garments: readonly JobGarment[]): readonly string[] => gates(...garments).map((gate) => gate.code)

const { coupon: _coupon, ...newLot } = stones()

describe('a new lot of stones (common practice: a coupon of 5 × 5 holes at three sizes comes first)', () => {
  it('opens with a coupon before anything is cut, once however many garments wear it', () => {
    const home = garment([place([newLot])])
    const away = garment([place([newLot], { lines: [2] })], { id: 'away', at: '/garments/1' })
    expect(gates(home, away).filter((gate) => gate.code === 'coupon')).toEqual([
      { code: 'coupon', garment: null, subject: 'stone-ss10-crystal S-1', blocks: 'cutting', waitMinutes: 0 },
    ])
    expect(codes(home)[0]).toBe('coupon')
  })

  it('needs none once its record holds the hole it got', () => {
    expect(codes(garment([place([stones()])]))).not.toContain('coupon')
  })

  it('is told apart by lot: one of two stones of the order may be new', () => {
    const both = garment([
      place([stones()]),
      place([{ ...newLot, id: 'stone-ss6-jet', lot: 'S-9' }], { place: 'back-number', side: 'back' }),
    ])
    expect(gates(both).flatMap((gate) => (gate.code === 'coupon' ? [gate.subject] : []))).toEqual(['stone-ss6-jet S-9'])
  })

  it('stands in the starter shop on the one lot that has come in since', () => {
    expect(starter.stones.filter((stone) => stone.coupon === undefined).map((stone) => stone.id)).toEqual(['stone-ss20-gold'])
  })
})

describe("strings at the hood of children's wear (16 CFR 1120, quoted)", () => {
  const hooded = (age: Row['age'], features: JobGarment['features'] = ['hood'], fit: Row['fit'] = 'men'): JobGarment => {
    const plain = garment([place([glitter()])])
    return { ...plain, features, lines: plain.lines.map((line) => ({ ...line, age, fit })) }
  }

  it('are looked at before anything is pressed', () => {
    const gate = { code: 'strings', garment: hooded('3-12').id, subject: hooded('3-12').id, blocks: 'pressing', waitMinutes: 0 }
    expect(gates(hooded('3-12'))).toContainEqual(gate)
    expect(gates(hooded('under-3'))).toContainEqual(gate)
  })

  it.each([
    ['unknown', 'youth', ['hood'], true],
    ['unknown', 'toddler', ['hood'], true],
    ['unknown', 'youth', ['strings'], true],
    ['unknown', 'men', ['hood'], false],
    ['unknown', 'women', ['hood', 'strings'], false],
    ['13-up', 'youth', ['hood'], false],
    ['unknown', 'youth', ['pocket'], false],
  ] as const)('age %s in the cut %s with %s: looked at %s', (age, fit, features, isLooked) => {
    expect(codes(hooded(age, features, fit)).includes('strings')).toBe(isLooked)
  })

  it('a child’s cut of unknown age wants the certificate of its stones, too', () => {
    const stoned = garment([place([stones()])])
    const aged = (fit: Row['fit']) => ({
      ...stoned,
      lines: stoned.lines.map((line) => ({ ...line, age: 'unknown' as const, fit })),
    })
    expect(codes(aged('youth'))).toContain('certificate')
    expect(codes(aged('men'))).not.toContain('certificate')
  })

  it('are nobody’s concern on grown-ups, or where there is no hood', () => {
    expect(codes(hooded('13-up'))).not.toContain('strings')
    expect(codes(hooded('3-12', []))).not.toContain('strings')
  })
})

describe('the care label (ISO 3758, 2012 edition, quoted)', () => {
  it('asks for a test press where the press gets hotter than its iron, and not where it does not', () => {
    expect(codes(garment([place([glitter()])], { cloth: cloth({ careDots: 2 }) }))).toContain('test-press')
    expect(codes(garment([place([glitter()])], { cloth: cloth({ careDots: 3 }) }))).not.toContain('test-press')
  })
})

it('the gates stand in the order in which they are opened', () => {
  const dressed = garment([place([glitter(), newLot])], { cloth: mesh({ finish: 'unknown', careDots: 1 }) })
  const child = { ...dressed, lines: dressed.lines.map((line) => ({ ...line, age: '3-12' as const })) }
  expect(codes(child)).toEqual(['coupon', 'count-in', 'water-drops', 'test-press', 'bleed-test', 'certificate', 'first-piece'])
})
