import { type TenthsC, tenthsC } from '../units/units.ts'
import type { Machine } from './machine.ts'

export type Range = { readonly leastTenthsC: number; readonly mostTenthsC: number }

/** Degrees of the thermostat's own unit, from exact tenths of °C: 9/50 of a degree Fahrenheit to a tenth of °C. */
const toDegrees = (unit: 'C' | 'F', tenths: number): number => (unit === 'C' ? tenths / 10 : (tenths * 9) / 50 + 32)
const toTenths = (unit: 'C' | 'F', degrees: number): number => (unit === 'C' ? degrees * 10 : ((degrees - 32) * 50) / 9)

/**
 * Limits are kept in whole tenths of °C, so a limit of 305 °F stands as 151.7 °C: a degree counts as inside when its own
 * tenths do. Just under half a tenth, because half is rounded up.
 */
const half = 0.5 - 1e-6
const slack = 1e-6

/**
 * The step of the thermostat nearest to `wanted` that lies inside the range; of two equally near the cooler one; null when no
 * step lies inside.
 */
export const settingNear = (step: Machine['step'], range: Range, wanted: number): TenthsC | null => {
  const { unit, degrees } = step
  const lowest = Math.ceil(toDegrees(unit, range.leastTenthsC - half) / degrees)
  const highest = Math.floor(toDegrees(unit, range.mostTenthsC + half) / degrees)
  if (lowest > highest) return null
  const below = Math.floor(toDegrees(unit, wanted) / degrees + slack)
  const near = [below, below + 1].map((count) => Math.min(Math.max(count, lowest), highest))
  const [first = lowest, second = lowest] = near.map((count) => toTenths(unit, count * degrees))
  const best = Math.abs(first - wanted) <= Math.abs(second - wanted) + slack ? first : second
  return tenthsC(Math.min(Math.max(best, range.leastTenthsC), range.mostTenthsC))
}
