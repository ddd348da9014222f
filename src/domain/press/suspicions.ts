import { mayHold } from './bleed.ts'
import type { ClothFacts, JobGarment } from './job.ts'

/** Cloth that often repels though nobody said so: nylon, and red polyester (common practice). */
export const repellenceSuspected = (cloth: ClothFacts): 'nylon' | 'red' | null => {
  if (cloth.fibres !== 'unknown' && cloth.fibres.some((share) => share.fibre === 'nylon')) return 'nylon'
  return cloth.families.includes('red') && mayHold(cloth, 'polyester') ? 'red' : null
}

/** Fibres of the cloth that a material's sheet does not name. */
export const unnamedFibres = (garment: JobGarment, takes: readonly string[]) =>
  garment.cloth.fibres === 'unknown' ? [] : garment.cloth.fibres.filter((share) => !takes.includes(share.fibre))

/** Shares below this are left to the maker's word on blends: a few per cent of elastane need not be named (common practice). */
export const smallSharePercent = 10
