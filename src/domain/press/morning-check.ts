import { type TenthsC, tenthsC } from '../units/units.ts'

/** Off by more than 5 °C / 10 °F, a correction stands on the day's tickets; corners that differ as much: no pressing (common practice). */
const mostOffTenthsC = 50

export type MorningCheck = { readonly correctionTenths: TenthsC; readonly verdict: 'fit' | 'corrected' | 'not-fit' }

const mean = (readings: readonly number[]): number => readings.reduce((sum, one) => sum + one, 0) / readings.length

/**
 * What five readings of a platen (centre and four corners, tenths of °C) say about the day: what to add to every set point of that
 * press, or that nothing is pressed on it, because no correction mends a platen that is hot on one side only.
 */
export const morningCheck = (setTenths: number, readings: readonly number[]): MorningCheck => {
  if (readings.length === 0) return { correctionTenths: tenthsC(0), verdict: 'not-fit' }
  if (Math.max(...readings) - Math.min(...readings) > 2 * mostOffTenthsC)
    return { correctionTenths: tenthsC(0), verdict: 'not-fit' }
  const off = Math.round(setTenths - mean(readings))
  return Math.abs(off) > mostOffTenthsC
    ? { correctionTenths: tenthsC(off), verdict: 'corrected' }
    : { correctionTenths: tenthsC(0), verdict: 'fit' }
}
