import * as z from 'zod'

/** Fibre names as they stand on a content label (ISO/TR 11827 and the FTC's generic names, in lower case). */
export const fibres = [
  'acetate',
  'acrylic',
  'cotton',
  'elastane',
  'linen',
  'lyocell',
  'modacrylic',
  'modal',
  'nylon',
  'polyester',
  'polypropylene',
  'silk',
  'triacetate',
  'vinyon',
  'viscose',
  'wool',
] as const
export const knits = ['mesh', 'interlock', 'jersey', 'tricot', 'woven', 'fleece', 'unknown'] as const
export const finishes = ['plain', 'repellent', 'unknown'] as const
export const dyes = ['plain', 'sublimated', 'unknown'] as const
export const features = ['hood', 'full-zip', 'half-zip', 'pocket', 'collar', 'snaps', 'piping', 'centre-seam', 'strings'] as const
export const fits = ['toddler', 'youth', 'women', 'men'] as const
export const sizes = ['2T', '3T', '4T', '5T', 'XS', 'S', 'M', 'L', 'XL', '2XL', '3XL', '4XL', 'later'] as const

export type Fibre = (typeof fibres)[number]
export type Knit = (typeof knits)[number]
export type Feature = (typeof features)[number]
export type Fit = (typeof fits)[number]
export type Size = (typeof sizes)[number]

/** Ids are lower-case ASCII words joined by hyphens, so that they are safe in file names and links. */
export const idSchema = z
  .string()
  .max(60)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)

const fibreShareSchema = z.strictObject({ fibre: z.enum(fibres), percent: z.int().min(1).max(100) })

/** A content label: shares in percent that add up to 100, or not known. */
export const fibresSchema = z.union([
  z.literal('unknown'),
  z
    .array(fibreShareSchema)
    .min(1)
    .refine((shares) => shares.reduce((sum, share) => sum + share.percent, 0) === 100, 'the percents must add up to 100'),
])
export type Fibres = z.infer<typeof fibresSchema>

/** What a garment is made of, as far as anybody knows. */
export const clothSchema = z.strictObject({
  fibres: fibresSchema,
  knit: z.enum(knits),
  finish: z.enum(finishes),
  dye: z.enum(dyes),
})
export type Cloth = z.infer<typeof clothSchema>

/** Dots in the iron of a care label (ISO 3758); 0: do not iron. */
export const careDotsSchema = z.union([z.literal(0), z.literal(1), z.literal(2), z.literal(3)])

/**
 * A fabric of the shop: a cloth with a name; `capTenthsC` is the mill's own limit where its sheet gives one, `careDots` the
 * dots in the iron of its care label (0: do not iron), `marks` whether a press leaves a shine or a box on it.
 */
export const fabricSchema = clothSchema.extend({
  id: idSchema,
  perforated: z.boolean(),
  thin: z.boolean(),
  capTenthsC: z.int().positive().optional(),
  careDots: careDotsSchema.optional(),
  marks: z.boolean().optional(),
  source: z.string(),
})
export type Fabric = z.infer<typeof fabricSchema>

const sizeCutSchema = z.strictObject({ fit: z.enum(fits), size: z.enum(sizes) })

/** A garment the shop sells: fabric, colours, size cuts it can be had in, features, days until it arrives. */
export const garmentSchema = z.strictObject({
  id: idSchema,
  name: z.strictObject({ en: z.string().min(1), es: z.string().min(1) }),
  kind: z.enum(['jersey', 't-shirt', 'hoodie', 'polo', 'shorts', 'jacket', 'bodysuit']),
  fabric: idSchema,
  features: z.array(z.enum(features)),
  colours: z.array(idSchema).min(1),
  cuts: z.array(sizeCutSchema).min(1),
  arrivesInDays: z.int().min(0),
})
export type Garment = z.infer<typeof garmentSchema>
