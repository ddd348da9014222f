import * as z from 'zod'
import { fibres, finishes, idSchema } from '../garment/garment.ts'

export const vinylClasses = [
  'standard',
  'glitter',
  'low-temperature',
  'stretch',
  'flock',
  'puff',
  'foil',
  'reflective',
  'printed',
  'blocker',
] as const
export type VinylClass = (typeof vinylClasses)[number]

/** Stone sizes of the trade's SS scale that the shop can work with. */
export const stoneSizes = ['SS6', 'SS8', 'SS10', 'SS12', 'SS16', 'SS20', 'SS30', 'SS34'] as const
export type StoneSize = (typeof stoneSizes)[number]

export const pressureWords = ['light', 'medium', 'firm'] as const
export type PressureWord = (typeof pressureWords)[number]

const sourceSchema = z.strictObject({ sheet: z.string().min(1), date: z.iso.date() })

/** What the maker's sheet allows in one exposure and in all, and the maker's usual point. Tenths of °C, seconds. */
export const windowSchema = z
  .strictObject({
    tenthsC: z.strictObject({ least: z.int(), most: z.int(), usual: z.int() }),
    seconds: z.strictObject({ least: z.int().positive(), most: z.int().positive(), usual: z.int().positive() }),
    pressure: z.enum(pressureWords),
  })
  .refine(
    (w) => w.tenthsC.least <= w.tenthsC.usual && w.tenthsC.usual <= w.tenthsC.most,
    'the usual temperature lies outside the window',
  )
  .refine(
    (w) => w.seconds.least <= w.seconds.usual && w.seconds.usual <= w.seconds.most,
    'the usual seconds lie outside the window',
  )
export type HeatWindow = z.infer<typeof windowSchema>

const common = {
  id: idSchema,
  colour: idSchema,
  lot: z.string().min(1),
  window: windowSchema,
  /** How often the finished layer may meet the press again, and for how long each time at most. */
  rePress: z.strictObject({ times: z.int().min(0), seconds: z.int().min(0) }),
  /** Fibres the sheet names as fit, and fibres it expressly refuses; anything else wants a test press. */
  takesFibres: z.array(z.enum(fibres)).min(1),
  refusesFibres: z.array(z.enum(fibres)).optional(),
  takesFinishes: z.array(z.enum(finishes)).min(1),
  source: sourceSchema,
}

export const vinylSchema = z.strictObject({
  kind: z.literal('vinyl'),
  ...common,
  class: z.enum(vinylClasses),
  peel: z.enum(['hot', 'warm', 'cold']),
  /** The sheet allows a short tack, the carrier off, then the full dwell under a cover sheet. */
  tackPeel: z.boolean(),
  /** How long a tack may take where the sheet says so; otherwise the shop's own 2-5 s. */
  tackSeconds: z.strictObject({ least: z.int().positive(), most: z.int().positive() }).optional(),
  cut: z.enum(['mirrored', 'as-read']),
  grain: z.boolean(),
  /** What this vinyl's face takes: other vinyl classes, 'stones'. */
  takesOnTop: z.array(z.union([z.enum(vinylClasses), z.literal('stones')])),
  rollWidthMicrometres: z.int().positive(),
  rollLengthMicrometres: z.int().positive(),
})
export type Vinyl = z.infer<typeof vinylSchema>

export const stoneSchema = z.strictObject({
  kind: z.literal('stone'),
  ...common,
  size: z.enum(stoneSizes),
  peel: z.literal('cold'),
  /** Lead certificate of this lot, when the shop holds one. */
  leadFreeCertificate: z.string().min(1).nullable(),
  glass: z.enum(['leaded', 'lead-free']),
  /** Weight of one gross (144 pieces) of this lot, in milligrams. */
  grossMilligrams: z.int().positive(),
  insideSeconds: z.strictObject({ least: z.int().min(0), most: z.int().min(0) }),
  /**
   * The coupon this lot was tried on, 5 × 5 holes at three sizes, and the hole it got: the smallest in which 24 of 25 dropped.
   * A lot without one is new to the shop.
   */
  coupon: z.strictObject({ date: z.iso.date(), holeMicrometres: z.int().positive() }).optional(),
})
export type Stone = z.infer<typeof stoneSchema>

/** Sheets, tapes and pads: what they stand and what one is used for. */
export const auxiliarySchema = z.strictObject({
  kind: z.enum(['tape', 'cover-sheet', 'pillow', 'flock-sheet']),
  id: idSchema,
  capTenthsC: z.int().positive(),
  widthMicrometres: z.int().positive(),
  heightMicrometres: z.int().positive(),
  source: sourceSchema,
})
export type Auxiliary = z.infer<typeof auxiliarySchema>

/** How the shop sets a size out: stone diameter, hole it drops into, web between holes, room to the vinyl's edge. */
export const stoneSettingSchema = z.strictObject({
  size: z.enum(stoneSizes),
  stoneMicrometres: z.int().positive(),
  holeMicrometres: z.int().positive(),
  webMicrometres: z.int().positive(),
  edgeGapMicrometres: z.int().min(0),
})
export type StoneSettingRecord = z.infer<typeof stoneSettingSchema>

/** A colour of the shop: what it is called in each language, among the trade, on screen, and what to expect of its dye. */
export const colourSchema = z.strictObject({
  id: idSchema,
  names: z.strictObject({ en: z.array(z.string()).min(1), es: z.array(z.string()).min(1) }),
  hex: z.string().regex(/^#[0-9a-f]{6}$/),
  /** Families the rules ask about. */
  families: z.array(z.enum(['light', 'dark', 'red', 'heather', 'camouflage', 'neon', 'metallic'])),
})
export type Colour = z.infer<typeof colourSchema>
