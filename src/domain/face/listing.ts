import * as z from 'zod'

const named = {
  id: z.string().regex(/^[a-z0-9-]+$/),
  kind: z.enum(['numeral', 'script']),
  name: z.string().min(1),
}

const faceFileSchema = z.strictObject({ file: z.string().min(1), sha256: z.string().regex(/^[0-9a-f]{64}$/) })

const packagedFaceSchema = z.strictObject({
  ...named,
  package: z.string().min(1),
  licence: z.string().min(1),
  author: z.string().min(1),
  files: z.array(faceFileSchema).min(1),
})

const ownFaceSchema = z.strictObject({ ...named, own: z.string().regex(/^[A-Za-z0-9][\w.-]*\.(?:ttf|otf|woff)$/i) })

/** The list of faces a shop offers. */
export const faceListingsSchema = z.array(z.union([packagedFaceSchema, ownFaceSchema])).min(1)

/** A face that ships with the program: the package its files lie in and the SHA-256 sums that pin them. */
export type PackagedFace = z.infer<typeof packagedFaceSchema>

/** A face a shop adds: a TTF, OTF or WOFF file in the folder `faces` of its shop folder. */
export type OwnFace = z.infer<typeof ownFaceSchema>

export type FaceListing = PackagedFace | OwnFace
