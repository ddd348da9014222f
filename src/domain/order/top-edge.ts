import { type Micrometres, micrometres } from '../units/units.ts'
import type { Application } from './resolve.ts'

/**
 * How far the top edge of a decoration lies from what its place is measured from (collar seam or hem), in µm: the place's own
 * offset, or the gap under the place it follows when that one is decorated on the same row too.
 */
export const topEdge = (application: Application, sameRow: readonly Application[]): Micrometres => {
  const { place } = application
  const above = sameRow.find((mate) => mate.place.id === place.follows?.place && mate !== application)
  if (above === undefined || place.follows === null) return micrometres(place.offsetMicrometres)
  const others = sameRow.filter((mate) => mate !== application)
  return micrometres(topEdge(above, others) + above.height + place.follows.gapMicrometres)
}
