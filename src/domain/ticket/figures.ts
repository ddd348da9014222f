import type { TenthsC } from '../units/units.ts'

const MICROMETRES = { in: 25_400, cm: 10_000 } as const

/** Half of the least that a thermostat figure can hide in a whole tenth of a degree Celsius, in °F. */
const TENTH_F = 0.091

const plain = (value: number, digits: number): string => String(Number(value.toFixed(digits)))

/**
 * A temperature in °F or °C as its dial shows it: whole where the tenths of °C stand for a whole degree, else with one
 * decimal. Never moves a figure by more than the tenth of a degree Celsius it is kept in.
 */
export const temperatureText = (temperature: TenthsC, unit: 'F' | 'C'): string => {
  if (unit === 'C') return `${plain(temperature / 10, 1)} °C`
  const fahrenheit = (temperature * 9) / 50 + 32
  const nearest = Math.round(fahrenheit)
  if (Math.abs(fahrenheit - nearest) <= TENTH_F) return `${nearest} °F`
  return `${plain(fahrenheit, 1)} °F`
}

/** A difference of temperatures, signed, in whole or tenths of a degree. */
export const correctionText = (tenths: number, unit: 'F' | 'C'): string => {
  const value = unit === 'C' ? tenths / 10 : (tenths * 9) / 50
  const whole = Math.abs(value - Math.round(value)) <= TENTH_F ? Math.round(value) : Number(value.toFixed(1))
  return `${whole < 0 ? '−' : '+'}${Math.abs(whole)} °${unit}`
}

/**
 * A length in hundredths of an inch or of a centimetre, cut down and never rounded up: a height of 100 mm must not read as
 * 4 in where the rule asks for 4 in (101.6 mm).
 */
export const lengthText = (lengthMicrometres: number, unit: 'in' | 'cm'): string => {
  const hundredths = (lengthMicrometres / MICROMETRES[unit]) * 100
  const nearest = Math.round(hundredths)
  const isThere = Math.abs(hundredths - nearest) * (MICROMETRES[unit] / 100) <= 0.5
  const kept = isThere ? nearest : Math.floor(hundredths)
  return `${plain(kept / 100, 2)} ${unit}`
}

/** A length of material to fetch, in tenths, rounded up. */
export const supplyText = (lengthMicrometres: number, unit: 'in' | 'cm'): string =>
  `${plain(Math.ceil((lengthMicrometres / MICROMETRES[unit]) * 10 - 1e-9) / 10, 1)} ${unit}`

/** A weight in tenths of a gram. */
export const weightText = (milligrams: number): string => `${(milligrams / 1000).toFixed(1)} g`

/** Line numbers as runs: 1-5, 7, 9-10. */
export const runsText = (numbers: readonly number[]): string => {
  const sorted = [...new Set(numbers)].sort((a, b) => a - b)
  const runs: { from: number; to: number }[] = []
  for (const number of sorted) {
    const last = runs.at(-1)
    if (last !== undefined && last.to === number - 1) last.to = number
    else runs.push({ from: number, to: number })
  }
  return runs.map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`)).join(', ')
}
