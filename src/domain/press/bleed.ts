import type { ClothFacts, JobGarment, JobLayer, JobPlace } from './job.ts'

/** Dye of polyester begins to wander at a garment temperature of 138 °C / 280 °F and may show up to 72 h later (quoted). */
export const bleedsFromTenthsC = 1380

const bleeding: readonly string[] = ['dark', 'red', 'heather', 'camouflage', 'neon']

export const mayHold = (cloth: ClothFacts, fibre: string): boolean =>
  cloth.fibres === 'unknown' || cloth.fibres.some((share) => share.fibre === fibre)

export type Bleed = { readonly layer: JobLayer; readonly place: JobPlace; readonly dye: 'sublimated' | 'dark' }

const isBlocked = (place: JobPlace, index: number): boolean =>
  place.layers.slice(0, index).some((layer) => layer.material.kind === 'vinyl' && layer.material.class === 'blocker')

/**
 * Vinyl that dye may show through on a garment: any on sublimated polyester, light ones on dark, red, heather, camouflage or
 * neon polyester; a blocker below shields what lies over it.
 */
export const bleedsUnder = (garment: JobGarment): readonly Bleed[] => {
  const { cloth } = garment
  if (!mayHold(cloth, 'polyester')) return []
  const sublimated = cloth.dye === 'sublimated'
  if (!sublimated && !cloth.families.some((family) => bleeding.includes(family))) return []
  return garment.places.flatMap((place) =>
    place.layers.flatMap((layer, index) => {
      const { material } = layer
      if (material.kind !== 'vinyl' || material.class === 'blocker' || isBlocked(place, index)) return []
      if (!sublimated && !layer.families.includes('light')) return []
      return [{ layer, place, dye: sublimated ? 'sublimated' : 'dark' } as const]
    }),
  )
}
