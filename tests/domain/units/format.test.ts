import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  formatGivenLength,
  formatLength,
  formatSwing,
  formatTemperature,
  formatTemperatureFrom,
} from '../../../src/domain/units/format.ts'
import { fromFahrenheit, fromInches, micrometres, tenthsC } from '../../../src/domain/units/units.ts'

const readBack = (text: string): number => {
  const degrees = Number.parseFloat(text)
  return text.endsWith('F') ? fromFahrenheit(degrees) : Math.round(degrees * 10)
}

describe('a temperature as people read it', () => {
  it('is the whole degree Fahrenheit that a dial was set to', () => {
    for (let degrees = 200; degrees <= 400; degrees += 1)
      expect(formatTemperature(fromFahrenheit(degrees), 'F')).toBe(`${degrees} °F`)
  })

  it('says 165 °C as 329 °F, never as 330 (165 °C is 329 °F exactly)', () => {
    expect(formatTemperature(tenthsC(1650), 'F')).toBe('329 °F')
    expect(formatTemperature(tenthsC(1650), 'C')).toBe('165 °C')
  })

  it('does not round 165.5 °C up to 166 °C, which may be over a limit', () => {
    expect(formatTemperature(tenthsC(1655), 'C')).toBe('165.5 °C')
    expect(formatTemperature(tenthsC(1655), 'F')).toBe('329.9 °F')
  })

  it('reads back as the tenth of a degree it stands for, in either unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: -500, max: 2500 }), fc.constantFrom('F' as const, 'C' as const), (tenths, unit) => {
        expect(readBack(formatTemperature(tenthsC(tenths), unit))).toBe(tenths)
      }),
    )
  })

  it('is in whole degrees, and no higher, where it is one from which something happens: 138 °C is 280 °F', () => {
    expect(formatTemperatureFrom(tenthsC(1380), 'F')).toBe('280 °F')
    expect(formatTemperatureFrom(tenthsC(1380), 'C')).toBe('138 °C')
    expect(formatTemperatureFrom(tenthsC(1389), 'C')).toBe('138 °C')
    for (let degrees = 200; degrees <= 400; degrees += 1)
      expect(formatTemperatureFrom(fromFahrenheit(degrees), 'F')).toBe(`${degrees} °F`)
  })

  it('has no zero point where it is a difference: a swing of 5 °C is 9 °F, one of 3 °C 5.4 °F', () => {
    expect(formatSwing(tenthsC(50), 'F')).toBe('9 °F')
    expect(formatSwing(tenthsC(30), 'F')).toBe('5.4 °F')
    expect(formatSwing(tenthsC(30), 'C')).toBe('3 °C')
  })
})

describe('a length as people read it', () => {
  it('does not say 4 in for 100 mm, which falls short of a rule of 4 in', () => {
    expect(formatLength(micrometres(100_000), 'in')).toBe('3.93 in')
    expect(formatLength(micrometres(101_600), 'in')).toBe('4 in')
    expect(formatLength(micrometres(101_590), 'in')).toBe('3.99 in')
    expect(formatLength(fromInches(6.8), 'in')).toBe('6.8 in')
  })

  it('says a least that is asked no smaller than it is: 10 cm are 3.94 in', () => {
    expect(formatLength(micrometres(100_000), 'in', 'up')).toBe('3.94 in')
    expect(formatLength(micrometres(101_600), 'in', 'up')).toBe('4 in')
    expect(formatLength(micrometres(101_610), 'in', 'up')).toBe('4.01 in')
  })

  it('lies within a hundredth, on the side it is rounded to', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 700_000 }),
        fc.constantFrom('in' as const, 'cm' as const),
        fc.constantFrom('down' as const, 'up' as const),
        (length, unit, round) => {
          const per = unit === 'in' ? 25_400 : 10_000
          const off =
            (Number.parseFloat(formatLength(micrometres(length), unit, round)) * per - length) * (round === 'up' ? 1 : -1)
          expect(off).toBeGreaterThanOrEqual(-0.51)
          expect(off).toBeLessThan(per * 0.0101)
        },
      ),
    )
  })
})

describe('a length that a customer gave', () => {
  it('is said in their unit, with the shop’s beside it', () => {
    expect(formatGivenLength(micrometres(200_000), 'in')).toBe('20 cm (7.87 in)')
    expect(formatGivenLength(micrometres(75_000), 'in')).toBe('7.5 cm (2.95 in)')
    expect(formatGivenLength(fromInches(8), 'cm')).toBe('8 in (20.32 cm)')
  })

  it('is said once where it was given in the shop’s unit', () => {
    for (const inches of [2.5, 4, 5, 6.8, 8, 10, 12]) expect(formatGivenLength(fromInches(inches), 'in')).toBe(`${inches} in`)
    for (const cm of [5, 7.5, 10, 12.7, 20, 25]) expect(formatGivenLength(micrometres(cm * 10_000), 'cm')).toBe(`${cm} cm`)
  })

  it('is never whole eighths of an inch and a half centimetre at once, up to 24 in', () => {
    for (let length = 5_000; length <= 609_600; length += 5_000) expect(length % 3_175).not.toBe(0)
  })
})
