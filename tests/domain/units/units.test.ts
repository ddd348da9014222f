import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  fromFahrenheit,
  fromInches,
  micrometres,
  minorUnits,
  seconds,
  tenthsC,
  toCelsius,
  toFahrenheit,
  toInches,
  toMillimetres,
} from '../../../src/domain/units/units.ts'

describe('the units of the shop', () => {
  test('an inch is exactly 25.4 mm (international yard and pound agreement, 1959)', () => {
    expect(toMillimetres(fromInches(1))).toBe(25.4)
    expect(fromInches(4)).toBe(101_600)
    expect(toInches(micrometres(254_000))).toBe(10)
  })

  test('10 cm is short of 4 in', () => {
    expect(micrometres(100_000)).toBeLessThan(fromInches(4))
  })

  test('Fahrenheit and Celsius meet at −40 and follow °C = (°F − 32) · 5/9', () => {
    expect(fromFahrenheit(-40)).toBe(-400)
    expect(fromFahrenheit(32)).toBe(0)
    expect(fromFahrenheit(212)).toBe(1_000)
    expect(fromFahrenheit(320)).toBe(1_600)
    expect(toFahrenheit(tenthsC(1_700))).toBe(338)
    expect(toCelsius(tenthsC(1_572))).toBe(157.2)
  })

  test('a temperature read in Fahrenheit and shown again is off by less than a tenth of a degree Celsius', () => {
    fc.assert(
      fc.property(fc.double({ min: 32, max: 500, noNaN: true }), (degrees) => {
        expect(Math.abs(toFahrenheit(fromFahrenheit(degrees)) - degrees)).toBeLessThanOrEqual(0.0901)
      }),
    )
  })

  test('are whole, and never minus zero', () => {
    expect(micrometres(1.4)).toBe(1)
    expect(Object.is(minorUnits(-0.2), 0)).toBe(true)
    expect(() => seconds(Number.NaN)).toThrow(RangeError)
    expect(() => tenthsC(Number.POSITIVE_INFINITY)).toThrow(RangeError)
  })
})
