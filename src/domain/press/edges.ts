import type { JobPlace } from './job.ts'

/** Where a decoration begins and ends below the collar, accents and tails included, in µm; null where it is not laid out. */
export const edgesOf = (place: JobPlace): { readonly top: number; readonly bottom: number } | null => {
  const { topMicrometres: at, aboveMicrometres: above, belowMicrometres: below } = place
  return at === null || above === null || below === null ? null : { top: at - above, bottom: at + below }
}
