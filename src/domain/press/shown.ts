import type { PressureWord } from '../material/material.ts'
import type { Machine } from './machine.ts'

/** One pound-force per square inch in kilopascals and in bar (NIST SP 811). */
const kilopascalsPerPsi = 6.894757
const kilopascalsPerBar = 100

export type PressureUnit = 'gauge' | 'psi' | 'bar'

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
export const shownPressure = (machine: Machine, word: PressureWord, unit: PressureUnit): ShownPressure => {
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
