import { formatSwing } from '../units/format.ts'
import { tenthsC } from '../units/units.ts'

const MICROMETRES = { in: 25_400, cm: 10_000 } as const

/** A correction of the thermostat, with its sign. */
export const correctionText = (tenths: number, unit: 'F' | 'C'): string =>
  `${tenths < 0 ? '−' : '+'}${formatSwing(tenthsC(Math.abs(tenths)), unit)}`

/** A length of material to fetch, in tenths, rounded up. */
export const supplyText = (lengthMicrometres: number, unit: 'in' | 'cm'): string =>
  `${Math.ceil((lengthMicrometres / MICROMETRES[unit]) * 10 - 1e-9) / 10} ${unit}`

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
