import type { Feature } from '../garment/garment.ts'
import type { PlaceId } from '../garment/place.ts'
import type { JobGarment, JobPlace } from './job.ts'
import type { Machine } from './machine.ts'

/** A flat part of the garment that comes under the platen by itself. */
export type Zone = 'front' | 'back' | 'left-sleeve' | 'right-sleeve' | 'left-leg' | 'right-leg' | 'hood'

const ownZone: Partial<Readonly<Record<PlaceId, Zone>>> = {
  'left-sleeve': 'left-sleeve',
  'right-sleeve': 'right-sleeve',
  'left-leg': 'left-leg',
  'right-leg': 'right-leg',
  hood: 'hood',
}

export const zoneOf = (place: JobPlace): Zone => ownZone[place.place] ?? place.side

/** Only the body can be threaded over the lower platen; sleeves, legs and hoods are too narrow for it. */
export const isThreaded = (machine: Machine, zone: Zone): boolean => machine.threads && (zone === 'front' || zone === 'back')

export const opposite = (zone: Zone): Zone | null => {
  if (zone === 'front') return 'back'
  return zone === 'back' ? 'front' : null
}

const standsUp: readonly Feature[] = ['full-zip', 'half-zip', 'pocket', 'collar', 'snaps', 'piping', 'centre-seam']

/** What would hold the platen up near a place: the garment's features among those within reach of the place. */
export const obstaclesNear = (garment: JobGarment, place: JobPlace): readonly Feature[] =>
  place.near.filter((feature) => standsUp.includes(feature) && garment.features.includes(feature))

export const hasStrings = (garment: JobGarment): boolean =>
  garment.features.includes('hood') || garment.features.includes('strings')

const centredOnFront: readonly PlaceId[] = ['front-number', 'full-front', 'below-number']

/** A full zip runs through the middle of the front: what is centred there is pressed in two halves. */
export const crossesZip = (garment: JobGarment, place: JobPlace): boolean =>
  garment.features.includes('full-zip') && place.side === 'front' && centredOnFront.includes(place.place)

/** Room left between two places of one side where the layout has not said it. */
const usualGapMicrometres = 25_400

/** Width and height of several places together, as far as they are laid out. */
export const spanOf = (
  places: readonly JobPlace[],
): { readonly widthMicrometres: number; readonly heightMicrometres: number } => {
  const heights = places.map((place) => place.heightMicrometres ?? 0)
  const tops = places.map((place) => place.topMicrometres)
  const known = tops.every((top) => top !== null)
  const bottoms = places.map((place, index) => (place.topMicrometres ?? 0) + (heights[index] ?? 0))
  const stacked = heights.reduce((sum, height) => sum + height, 0) + usualGapMicrometres * (places.length - 1)
  const span = known ? Math.max(...bottoms) - Math.min(...tops.map((top) => top ?? 0)) : stacked
  return { widthMicrometres: Math.max(0, ...places.map((place) => place.widthMicrometres ?? 0)), heightMicrometres: span }
}

export const fitsPlaten = (machine: Machine, places: readonly JobPlace[]): boolean => {
  const span = spanOf(places)
  return span.widthMicrometres <= machine.platenWidthMicrometres && span.heightMicrometres <= machine.platenDepthMicrometres
}
