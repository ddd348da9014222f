import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  correctionText,
  lengthText,
  runsText,
  supplyText,
  temperatureText,
  weightText,
} from '../../../src/domain/ticket/figures.ts'
import { fromFahrenheit, tenthsC } from '../../../src/domain/units/units.ts'

describe('temperatures on paper', () => {
  it('says the whole degree Fahrenheit that a dial was set to', () => {
    for (let degrees = 200; degrees <= 400; degrees += 1)
      expect(temperatureText(fromFahrenheit(degrees), 'F')).toBe(`${degrees} °F`)
  })

  it('says 165 °C as 329 °F, never as 330 (165 °C is 329 °F exactly)', () => {
    expect(temperatureText(tenthsC(1650), 'F')).toBe('329 °F')
    expect(temperatureText(tenthsC(1650), 'C')).toBe('165 °C')
  })

  it('moves no figure by more than a tenth of a degree Celsius', () => {
    fc.assert(
      fc.property(fc.integer({ min: 800, max: 2300 }), (tenths) => {
        const said = Number.parseFloat(temperatureText(tenthsC(tenths), 'F'))
        expect(Math.abs(((said - 32) * 50) / 9 - tenths)).toBeLessThan(0.55)
        expect(Number.parseFloat(temperatureText(tenthsC(tenths), 'C')) * 10).toBeCloseTo(tenths, 6)
      }),
    )
  })

  it('signs a correction', () => {
    expect(correctionText(28, 'F')).toBe('+5 °F')
    expect(correctionText(-30, 'C')).toBe('−3 °C')
  })
})

describe('lengths on paper', () => {
  it('does not say 4 in for 100 mm, which falls short of a rule of 4 in', () => {
    expect(lengthText(100_000, 'in')).toBe('3.93 in')
    expect(lengthText(101_600, 'in')).toBe('4 in')
    expect(lengthText(101_590, 'in')).toBe('3.99 in')
  })

  it('says no more than is there and at most a hundredth less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 700_000 }), fc.constantFrom('in', 'cm'), (length, unit) => {
        const per = unit === 'in' ? 25_400 : 10_000
        const said = Number.parseFloat(lengthText(length, unit)) * per
        expect(said).toBeLessThanOrEqual(length + 0.51)
        expect(said).toBeGreaterThan(length - per * 0.0101)
      }),
    )
  })

  it('rounds what is to be fetched up', () => {
    expect(supplyText(254_001, 'in')).toBe('10.1 in')
    expect(supplyText(254_000, 'in')).toBe('10 in')
    expect(supplyText(101, 'cm')).toBe('0.1 cm')
  })
})

describe('weights and runs of lines', () => {
  it('weighs in tenths of a gram', () => {
    expect(weightText(221_190)).toBe('221.2 g')
  })

  it('joins neighbouring lines', () => {
    expect(runsText([3, 1, 2, 7, 9, 10, 7])).toBe('1–3, 7, 9–10')
    expect(runsText([])).toBe('')
  })
})
