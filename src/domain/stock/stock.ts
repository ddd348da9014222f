import * as z from 'zod'
import { fits, idSchema, sizes } from '../garment/garment.ts'

/** What lies on the shelf. Vinyl in mm of roll, stones in pieces, templates one a box. */
export const stockSchema = z.strictObject({
  vinyl: z.array(z.strictObject({ material: idSchema, lengthMicrometres: z.int().min(0), bin: z.string() })),
  stones: z.array(z.strictObject({ material: idSchema, pieces: z.int().min(0), bin: z.string() })),
  garments: z.array(
    z.strictObject({ garment: idSchema, colour: idSchema, fit: z.enum(fits), size: z.enum(sizes), quantity: z.int().min(0) }),
  ),
  /** Tape in µm of roll, cover and flock sheets in pieces, by the record's id. */
  auxiliaries: z.array(z.strictObject({ item: idSchema, amount: z.int().min(0), bin: z.string() })).default([]),
  /** Templates on the shelf: `key` is the layout's content key of the piece. */
  templates: z.array(z.strictObject({ key: z.string().min(1), box: z.string(), made: z.iso.date(), brushed: z.int().min(0) })),
  /** Packs the seller of stones and vinyl ships, and the days they take. */
  supply: z.strictObject({
    stonePackGross: z.array(z.int().positive()).min(1),
    stoneDays: z.int().min(0),
    vinylDays: z.int().min(0),
  }),
})
export type Stock = z.infer<typeof stockSchema>
