import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { stoneSizes, vinylClasses } from '../../../src/domain/material/material.ts'
import { type PriceFacts, priceOf } from '../../../src/domain/price/price.ts'
import { type PriceList, priceListSchema } from '../../../src/domain/price/price-list.ts'

const list: PriceList = priceListSchema.parse({
  currency: 'USD',
  minorDigits: 2,
  setUp: 2000,
  garment: [{ garment: 'mesh-jersey', amount: 2500 }],
  pressOwnGarment: 300,
  number: 400,
  name: 500,
  text: 450,
  extraLayer: 350,
  classPercent: { standard: 100, glitter: 130 },
  stonePer100: { SS10: 160 },
  template: 600,
  nameTemplate: 900,
  rush: { withinDays: 3, percent: 25 },
  quantityBreaks: [
    { from: 12, percentOff: 5 },
    { from: 24, percentOff: 10 },
  ],
  taxPercentTimes100: 825,
})

const facts = (parts: Partial<PriceFacts> = {}): PriceFacts => ({
  garments: [{ garment: 'mesh-jersey', quantity: 2 }],
  work: [{ kind: 'number', classes: ['glitter'], quantity: 4 }],
  stones: [],
  templates: 0,
  nameTemplates: 0,
  daysUntilNeeded: 10,
  ...parts,
})

const amountOf = (price: ReturnType<typeof priceOf>, code: string) => price.parts.find((one) => one.code === code)?.amount

describe('a price', () => {
  test('worked by hand: set-up, two jerseys, four glitter numbers, 8.25 % tax', () => {
    const price = priceOf(facts(), list)
    expect(price.parts.map(({ code, amount }) => [code, amount])).toEqual([
      ['set-up', 2000],
      ['garment', 5000],
      ['number', 2080],
      ['tax', 749],
    ])
    expect(price.total).toBe(9829)
  })

  test('charges stones by the hundred begun', () => {
    expect(amountOf(priceOf(facts({ stones: [{ size: 'SS10', pieces: 101 }] }), list), 'stones')).toBe(320)
    expect(amountOf(priceOf(facts({ stones: [{ size: 'SS10', pieces: 100 }] }), list), 'stones')).toBe(160)
  })

  test('charges own garments for pressing only', () => {
    const price = priceOf(facts({ garments: [{ garment: null, quantity: 3 }] }), list)
    expect(amountOf(price, 'own-garment')).toBe(900)
    expect(amountOf(price, 'garment')).toBeUndefined()
  })

  test('grants a quantity break exactly from its number on', () => {
    const at = (quantity: number) => priceOf(facts({ garments: [{ garment: 'mesh-jersey', quantity }] }), list)
    expect(amountOf(at(11), 'quantity-break')).toBeUndefined()
    expect(amountOf(at(12), 'quantity-break')).toBe(-Math.round((2000 + 12 * 2500 + 2080) * 0.05))
    expect(at(24).parts.find((one) => one.code === 'quantity-break')?.what).toBe('10 %')
  })

  test('asks for rush up to and including the last rush day', () => {
    expect(amountOf(priceOf(facts({ daysUntilNeeded: 3 }), list), 'rush')).toBe(2270)
    expect(amountOf(priceOf(facts({ daysUntilNeeded: 4 }), list), 'rush')).toBeUndefined()
  })

  test('is always the sum of its parts, and never falls when a stone is added', () => {
    const anyFacts = fc.record({
      garments: fc.array(
        fc.record({ garment: fc.constantFrom('mesh-jersey', null), quantity: fc.integer({ min: 1, max: 90 }) }),
        { minLength: 1, maxLength: 4 },
      ),
      work: fc.array(
        fc.record({
          kind: fc.constantFrom('number' as const, 'name' as const, 'text' as const),
          classes: fc.array(fc.constantFrom(...vinylClasses), { maxLength: 3 }),
          quantity: fc.integer({ min: 1, max: 90 }),
        }),
        { maxLength: 4 },
      ),
      stones: fc.array(fc.record({ size: fc.constantFrom(...stoneSizes), pieces: fc.integer({ min: 1, max: 50_000 }) }), {
        maxLength: 3,
      }),
      templates: fc.integer({ min: 0, max: 40 }),
      nameTemplates: fc.integer({ min: 0, max: 40 }),
      daysUntilNeeded: fc.integer({ min: 0, max: 60 }),
    })
    fc.assert(
      fc.property(anyFacts, (some) => {
        const price = priceOf(some, list)
        expect(price.total).toBe(price.parts.reduce((sum, one) => sum + one.amount, 0))
        const more = { ...some, stones: [...some.stones, { size: 'SS10' as const, pieces: 1 }] }
        expect(priceOf(more, list).total).toBeGreaterThan(price.total)
      }),
    )
  })
})
