import type { PressureWord } from '../material/material.ts'
import type { Machine } from './machine.ts'
import type { Range } from './thermostat.ts'

export type ShownTemperature = { readonly value: number; readonly digits: 0 | 1 | 2; readonly unit: 'F' | 'C' }

const inUnit = (tenths: number, unit: 'F' | 'C'): number => (unit === 'C' ? tenths / 10 : (tenths * 9) / 50 + 32)

/** Hundredths of a degree, as a whole number: exact, since a tenth of °C is 18 hundredths of °F. */
const hundredths = (tenths: number, unit: 'F' | 'C'): number => Math.round(inUnit(tenths, unit) * 100)

const tenthsOf = (degrees: number, unit: 'F' | 'C'): number => Math.round(unit === 'C' ? degrees * 10 : ((degrees - 32) * 50) / 9)

/** The multiple of `step` hundredths nearest to a value that lies inside the range, the cooler of two; null when none does. */
const nearestInside = (value: number, range: Range, step: number): number | null => {
  const [low, high] = [Math.ceil(range.leastTenthsC / step), Math.floor(range.mostTenthsC / step)]
  if (low > high) return null
  const below = Math.min(Math.max(Math.floor(value / step), low), high) * step
  const above = Math.min(Math.max(Math.ceil(value / step), low), high) * step
  return value - below <= above - value ? below : above
}

/**
 * A set point as people read it, in °F or °C: a whole degree where one lies inside the window, else tenths, else hundredths.
 * What is shown never lies outside the window (already less the press's swing), whichever unit the shop has chosen; a whole
 * degree that is the set point itself stands, since limits are kept in whole tenths of °C.
 */
export const shownTemperature = (setTenthsC: number, unit: 'F' | 'C', window: Range): ShownTemperature => {
  const value = hundredths(setTenthsC, unit)
  const dial = Math.round(value / 100)
  if (tenthsOf(dial, unit) === setTenthsC) return { value: dial, digits: 0, unit }
  const range = { leastTenthsC: hundredths(window.leastTenthsC, unit), mostTenthsC: hundredths(window.mostTenthsC, unit) }
  const whole = nearestInside(value, range, 100)
  if (whole !== null && Math.abs(whole - value) <= 100) return { value: whole / 100, digits: 0, unit }
  const tenth = nearestInside(value, range, 10)
  if (tenth !== null) return { value: tenth / 100, digits: 1, unit }
  return { value: value / 100, digits: 2, unit }
}

/** One pound-force per square inch in kilopascals and in bar (NIST SP 811). */
const kilopascalsPerPsi = 6.894757
const kilopascalsPerBar = 100

export type ShownPressure =
  | { readonly kind: 'word'; readonly word: PressureWord }
  | { readonly kind: 'gauge'; readonly word: PressureWord; readonly machine: string; readonly gauge: string }
  | {
      readonly kind: 'range'
      readonly word: PressureWord
      readonly machine: string
      readonly unit: 'psi' | 'bar'
      readonly least: number
      readonly most: number
    }

/** Whole psi or tenths of a bar, rounded into the range and never out of it; one figure where none lies inside. */
const rounded = (least: number, most: number, steps: number): { readonly least: number; readonly most: number } => {
  const [low, high] = [Math.ceil(least * steps - 1e-9) / steps, Math.floor(most * steps + 1e-9) / steps]
  return low <= high ? { least: low, most: high } : { least, most }
}

/** The pressure of a named press as the shop reads it: its gauge, psi or bar where it was measured, otherwise the word alone. */
export const shownPressure = (machine: Machine, word: PressureWord, unit: 'gauge' | 'psi' | 'bar'): ShownPressure => {
  const gauge = machine.gauge?.[word]
  if (unit === 'gauge') return gauge === undefined ? { kind: 'word', word } : { kind: 'gauge', word, machine: machine.id, gauge }
  const measured = machine.kilopascals?.[word]
  if (measured === undefined) return { kind: 'word', word }
  const [per, steps] = unit === 'psi' ? [kilopascalsPerPsi, 1] : [kilopascalsPerBar, 10]
  return { kind: 'range', word, machine: machine.id, unit, ...rounded(measured.least / per, measured.most / per, steps) }
}

/** Gauges of nine steps: 1-3 light, 4-6 medium, 7-9 firm (quoted); null for anything else. */
export const wordOnGauge = (gauge: number): PressureWord | null => {
  if (gauge < 1 || gauge > 9) return null
  if (gauge < 4) return 'light'
  return gauge < 7 ? 'medium' : 'firm'
}

/** Load on a platen in pounds-force: pressure over its whole area. 20 psi over 16 × 20 in is 6,400 lbf (computed). */
export const platenPoundsForce = (
  psi: number,
  machine: Pick<Machine, 'platenWidthMicrometres' | 'platenDepthMicrometres'>,
): number => psi * (machine.platenWidthMicrometres / 25_400) * (machine.platenDepthMicrometres / 25_400)
