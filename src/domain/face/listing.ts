import * as z from 'zod'

const faceFileSchema = z.strictObject({ file: z.string().min(1), sha256: z.string().regex(/^[0-9a-f]{64}$/) })

const faceListingSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  kind: z.enum(['numeral', 'script']),
  name: z.string().min(1),
  package: z.string().min(1),
  licence: z.string().min(1),
  author: z.string().min(1),
  files: z.array(faceFileSchema).min(1),
})

/** The list of faces a shop offers. */
export const faceListingsSchema = z.array(faceListingSchema).min(1)

/** A face the shop offers: where its files lie and the SHA-256 sums that pin them. */
export type FaceListing = z.infer<typeof faceListingSchema>
