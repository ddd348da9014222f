import { type PressureWord, pressureWords } from '../material/material.ts'
import type { JobLayer } from './job.ts'
import type { Machine } from './machine.ts'
import type { Pressure } from './press-plan.ts'

const firmness = (word: PressureWord): number => pressureWords.indexOf(word)

export const pressuresAsked = (layers: readonly JobLayer[]): readonly PressureWord[] => [
  ...new Set(layers.map((layer) => layer.material.window.pressure)),
]

/** Layers pressed together take the firmest pressure one of them asks for (common practice). */
export const joinedPressure = (layers: readonly JobLayer[]): PressureWord =>
  pressuresAsked(layers).reduce<PressureWord>((most, word) => (firmness(word) > firmness(most) ? word : most), 'light')

/** Light and firm on one platen: one of them is pressed wrong. */
export const pressuresDiffer = (layers: readonly JobLayer[]): boolean => {
  const asked = pressuresAsked(layers)
  return asked.includes('light') && asked.includes('firm')
}

/** A gauge number is true for one machine; where it has none, the word stands alone. */
export const pressureOn = (machine: Machine, word: PressureWord): Pressure => ({ word, gauge: machine.gauge?.[word] ?? null })
