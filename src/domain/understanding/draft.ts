import * as z from 'zod'
import { dyes, features, fibresSchema, finishes, fits, idSchema, knits, sizes } from '../garment/garment.ts'
import { placeIds } from '../garment/place.ts'
import { stoneSizes, vinylClasses } from '../material/material.ts'
import { ages, uses } from '../order/order.ts'

const text = z.string().min(1).max(200)
const hour = z.string().regex(/^\d{2}:\d{2}$/)

export const garmentKinds = ['jersey', 't-shirt', 'hoodie', 'polo', 'shorts', 'jacket', 'bodysuit'] as const
export type GarmentKind = (typeof garmentKinds)[number]

const garmentWishSchema = z.strictObject({
  kind: z.enum(garmentKinds).optional(),
  catalogue: idSchema.optional(),
  fibres: fibresSchema.optional(),
  knit: z.enum(knits).optional(),
  finish: z.enum(finishes).optional(),
  dye: z.enum(dyes).optional(),
  features: z.array(z.enum(features)).optional(),
  colour: idSchema.optional(),
  from: z.enum(['shop', 'customer']).optional(),
  fit: z.enum(fits).optional(),
  /** One size for all of them: "8 black tees, adult M". */
  size: z.enum(sizes).optional(),
  count: z.int().min(1).max(500).optional(),
  /** Every player of the roster gets one. */
  each: z.boolean().optional(),
})
export type GarmentWish = z.infer<typeof garmentWishSchema>

/** `wanted: false` is a plain no ("no stones", "without the outline"). */
const stoneWishSchema = z.strictObject({
  wanted: z.boolean().optional(),
  size: z.enum(stoneSizes).optional(),
  colour: idSchema.optional(),
  style: z.enum(['outline', 'rows', 'solid', 'single-line']).optional(),
  rows: z.int().min(1).max(12).optional(),
  contours: z.enum(['both', 'outer']).optional(),
})
export type StoneWish = z.infer<typeof stoneWishSchema>

/** An outline or a shadow: how wide or how far, when that was said. */
const edgeSchema = z.strictObject({ colour: idSchema.optional(), micrometres: z.int().min(500).max(50_000).optional() })
export type Edge = z.infer<typeof edgeSchema>

const styleSchema = z.strictObject({
  /** `false`: stones alone, no vinyl under them. */
  vinyl: z.boolean().optional(),
  class: z.enum(vinylClasses).optional(),
  colour: idSchema.optional(),
  /** From the figure outwards; an empty list is a plain no. */
  outlines: z.array(edgeSchema).max(3).optional(),
  shadow: z.union([edgeSchema, z.literal(false)]).optional(),
  blocker: z.boolean().optional(),
  stones: stoneWishSchema.optional(),
  face: idSchema.optional(),
  micrometres: z.int().min(5_000).max(600_000).optional(),
  line: z.enum(['straight', 'arc', 'slope']).optional(),
})
/** How something is made, as far as it was said. */
export type Style = z.infer<typeof styleSchema>

export const contentKinds = ['number', 'name', 'text', 'artwork'] as const
export type ContentKind = (typeof contentKinds)[number]

const markSchema = z.strictObject({
  content: z.enum(contentKinds),
  text: text.optional(),
  place: z.enum(placeIds).optional(),
  on: z.array(idSchema).optional(),
  style: styleSchema.optional(),
  /** `false`: it was said that this place stays free. */
  wanted: z.boolean().optional(),
})
/** One thing to be put on at one place. */
export type Mark = z.infer<typeof markSchema>

const playerSchema = z.strictObject({
  garment: idSchema.optional(),
  fit: z.enum(fits).optional(),
  size: z.enum(sizes).optional(),
  number: z
    .string()
    .regex(/^\d{1,3}$/)
    .optional(),
  name: z.string().min(1).max(60).optional(),
  quantity: z.int().min(1).max(500).optional(),
  age: z.enum(ages).optional(),
  extras: z.record(idSchema, markSchema).optional(),
  without: z.array(idSchema).optional(),
  note: text.optional(),
})
/** One line of the roster as it was said; without a garment it stands for each of the players' garments. */
export type Player = z.infer<typeof playerSchema>

const tallySchema = z.strictObject({
  garment: idSchema.optional(),
  fit: z.enum(fits).optional(),
  size: z.enum(sizes),
  quantity: z.int().min(1).max(500),
  age: z.enum(ages).optional(),
})

/** Everything said so far and nothing else: no assumption stands in here. Rows and tallies are keyed r1, r2, … and t1, t2, … */
export const draftSchema = z.strictObject({
  /** The signed order this one was taken over from. */
  from: z.strictObject({ order: z.string(), revision: z.int().min(1) }).optional(),
  team: text.optional(),
  sport: idSchema.optional(),
  use: z.enum(uses).optional(),
  rulebook: idSchema.optional(),
  day: z.iso.date().optional(),
  hour: hour.optional(),
  needFor: text.optional(),
  gameDay: z.iso.date().optional(),
  handOver: z.enum(['collect', 'field', 'post']).optional(),
  orders: text.optional(),
  signsOff: text.optional(),
  pays: text.optional(),
  collects: text.optional(),
  money: z
    .strictObject({
      state: z.enum(['none', 'deposit', 'paid', 'order-number', 'on-account']).optional(),
      amount: z.int().min(0).optional(),
      reference: text.optional(),
      taxExempt: z.boolean().optional(),
    })
    .optional(),
  count: z.int().min(1).max(500).optional(),
  /** What goes for every line that says nothing else; of `names` only the last ones are to stand there. */
  common: z
    .strictObject({ fit: z.enum(fits).optional(), size: z.enum(sizes).optional(), names: z.literal('last').optional() })
    .optional(),
  ages: z.enum(['13-up', '3-12', 'under-3', 'mixed', 'unknown']).optional(),
  garments: z.record(idSchema, garmentWishSchema),
  /** By content ('number', 'name', 'text', 'all'), by place ('front-number'), or by one of these and a garment ('number@away'). */
  styles: z.record(z.string(), styleSchema),
  marks: z.record(idSchema, markSchema),
  rows: z.record(z.string(), playerSchema),
  tally: z.record(z.string(), tallySchema),
  /** Names, numbers or sizes that the customer said will follow. */
  later: z.partialRecord(z.enum(['names', 'numbers', 'sizes']), z.literal(true)),
  /** What was raised and is meant as it stands: 'duplicate-number:12', 'same-surname:santos', 'count:6'. */
  agreed: z.record(z.string(), z.literal(true)),
  notes: z.array(text).max(20),
})
export type Draft = z.infer<typeof draftSchema>

export const emptyDraft: Draft = { garments: {}, styles: {}, marks: {}, rows: {}, tally: {}, later: {}, agreed: {}, notes: [] }
