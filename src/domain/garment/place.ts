import * as z from 'zod'
import { features, fits, sizes } from './garment.ts'

/** Left and right are the wearer's. */
export const placeIds = [
  'front-number',
  'back-number',
  'name',
  'nape',
  'yoke',
  'left-chest',
  'right-chest',
  'full-front',
  'below-number',
  'left-sleeve',
  'right-sleeve',
  'left-shoulder',
  'right-shoulder',
  'left-leg',
  'right-leg',
  'hood',
  'other',
] as const
export type PlaceId = (typeof placeIds)[number]

export const sides = ['front', 'back', 'left-sleeve', 'right-sleeve'] as const
export type Side = (typeof sides)[number]

/** A row of figures for one fit and a run of sizes, in whole micrometres. */
const bySizeSchema = z.strictObject({
  fit: z.enum(fits),
  sizes: z.array(z.enum(sizes)).min(1),
  heightMicrometres: z.int().positive(),
  freeWidthMicrometres: z.int().positive(),
})

/**
 * A place on a garment: which side is up when it is pressed, how far its top edge lies below the collar seam (or, for
 * sleeves and legs, above the hem), how wide the flat free cloth is there, and the usual height by size.
 */
export const placeSchema = z.strictObject({
  id: z.enum(placeIds),
  side: z.enum(sides),
  measuredFrom: z.enum(['collar', 'hem']),
  offsetMicrometres: z.int().min(0),
  /** When that place is decorated on the same garment, this one's top edge lies the gap under its bottom edge instead. */
  follows: z.strictObject({ place: z.enum(placeIds), gapMicrometres: z.int().min(0) }).nullable(),
  /** Obstacles that lie within reach of this place on garments that have the feature. */
  near: z.array(z.enum(features)),
  bySize: z.array(bySizeSchema).min(1),
})
export type Place = z.infer<typeof placeSchema>
