import * as z from 'zod'
import { careDotsSchema, dyes, features, fibresSchema, finishes, fits, idSchema, knits, sizes } from '../garment/garment.ts'
import { placeIds } from '../garment/place.ts'
import { stoneSizes, vinylClasses } from '../material/material.ts'
import { languageCodes } from '../units/language.ts'

/** Wall-clock minute in the shop's zone. */
const localMinuteSchema = z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/)
const textSchema = z.string().min(1).max(200)

export const uses = ['game', 'fan', 'practice', 'cheer', 'staff', 'keepsake'] as const
export type Use = (typeof uses)[number]

const moneySchema = z.strictObject({
  state: z.enum(['none', 'deposit', 'paid', 'order-number', 'on-account']),
  amount: z.int().min(0).optional(),
  reference: textSchema.optional(),
  taxExempt: z.boolean().optional(),
})

/**
 * A garment of the order, as its labels say as far as anybody has read them. `careDots` are the dots in the iron of the care
 * label (0: do not iron); it counts before what the shop's own record of the fabric says.
 */
export const orderGarmentSchema = z.strictObject({
  id: idSchema,
  catalogue: idSchema.optional(),
  fibres: fibresSchema,
  knit: z.enum(knits),
  finish: z.enum(finishes),
  dye: z.enum(dyes),
  careDots: careDotsSchema.optional(),
  features: z.array(z.enum(features)),
  colour: idSchema,
  from: z.enum(['shop', 'customer']),
})
export type OrderGarment = z.infer<typeof orderGarmentSchema>

const offsetSchema = z.int().min(-50_000).max(50_000)

const stoneStyleSchema = z.discriminatedUnion('style', [
  z.strictObject({
    style: z.literal('outline'),
    rows: z.union([z.literal(1), z.literal(2), z.literal(3)]),
    contours: z.enum(['both', 'outer']),
  }),
  z.strictObject({ style: z.literal('rows'), rows: z.int().min(1).max(12) }),
  z.strictObject({ style: z.literal('solid') }),
  z.strictObject({ style: z.literal('single-line') }),
])

const vinylLayerSchema = z.strictObject({
  kind: z.literal('vinyl'),
  class: z.enum(vinylClasses),
  colour: idSchema,
  material: idSchema.optional(),
  shape: z.union([
    z.literal('face'),
    z.strictObject({ surround: z.int().min(500).max(50_000) }),
    z.strictObject({ shadow: z.tuple([offsetSchema, offsetSchema]) }),
  ]),
})
const stoneLayerSchema = z.strictObject({
  kind: z.literal('stones'),
  size: z.enum(stoneSizes),
  colour: idSchema,
  material: idSchema.optional(),
  layout: stoneStyleSchema,
})
export const layerSchema = z.discriminatedUnion('kind', [vinylLayerSchema, stoneLayerSchema])
export type Layer = z.infer<typeof layerSchema>
export type VinylLayer = z.infer<typeof vinylLayerSchema>
export type StoneLayer = z.infer<typeof stoneLayerSchema>

/**
 * What is put on one place, layers bottom first. `askedTenthsC` is the set point of the press that the customer or the owner asks
 * for against the usual one, in tenths of °C: it is set and shown as over the margin where it lies within the press's swing of a
 * limit, and never above one.
 */
export const decorationSchema = z.strictObject({
  id: idSchema,
  on: z.array(idSchema).min(1),
  place: z.enum(placeIds),
  content: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('number') }),
    z.strictObject({ kind: z.literal('name') }),
    z.strictObject({ kind: z.literal('text'), text: textSchema }),
    z.strictObject({ kind: z.literal('artwork'), file: textSchema }),
  ]),
  face: idSchema,
  height: z.union([z.strictObject({ by: z.literal('size') }), z.strictObject({ micrometres: z.int().min(5_000).max(600_000) })]),
  line: z
    .union([
      z.strictObject({ kind: z.literal('straight') }),
      z.strictObject({ kind: z.enum(['arc', 'slope']), rise: z.int().min(-300_000).max(300_000) }),
    ])
    .default({ kind: 'straight' }),
  layers: z.array(layerSchema).min(1).max(6),
  askedTenthsC: z.int().min(600).max(2_500).optional(),
})
export type Decoration = z.infer<typeof decorationSchema>

export const ages = ['under-3', '3-12', '13-up', 'unknown'] as const

export const rowSchema = z.strictObject({
  line: z.int().min(1),
  garment: idSchema,
  fit: z.enum(fits),
  size: z.enum(sizes),
  number: z
    .string()
    .regex(/^\d{1,3}$/)
    .optional(),
  name: z.string().min(1).max(60).optional(),
  quantity: z.int().min(1).max(500),
  age: z.enum(ages),
  extras: z.array(decorationSchema).max(8).optional(),
  without: z.array(idSchema).optional(),
  note: textSchema.optional(),
})
export type Row = z.infer<typeof rowSchema>

/** The order document, version 1. Numbers are strings ("07" is not "7"); lengths are whole micrometres. */
export const orderSchema = z.strictObject({
  version: z.literal(1),
  team: textSchema,
  language: z.enum(languageCodes),
  sport: idSchema,
  use: z.enum(uses),
  rulebook: idSchema.optional(),
  needBy: localMinuteSchema,
  needFor: textSchema.optional(),
  gameDay: z.iso.date().optional(),
  handOver: z.enum(['collect', 'field', 'post']),
  from: z.strictObject({ order: z.string(), revision: z.int().min(1) }).optional(),
  people: z.strictObject({
    orders: textSchema,
    signsOff: textSchema.optional(),
    pays: textSchema.optional(),
    collects: textSchema.optional(),
  }),
  money: moneySchema,
  garments: z.array(orderGarmentSchema).min(1).max(12),
  decorations: z.array(decorationSchema).min(1).max(30),
  roster: z.array(rowSchema).min(1).max(500),
  notes: z.string().max(2_000).optional(),
})
export type Order = z.infer<typeof orderSchema>
