import * as z from 'zod'
import { idSchema } from '../garment/garment.ts'
import { placeIds } from '../garment/place.ts'

const limitSchema = z.int().positive().nullable()
const markSchema = z.enum(['read', 'quoted', 'memory'])
const numberSchema = z.string().regex(/^\d{1,3}$/)
const saidSchema = z.enum(['yes', 'no', 'unknown'])

/** Numbers allowed, as text ("07" is not "7"); `clash` pairs may not stand on one roster. */
const legalSchema = z.strictObject({
  numbers: z.array(numberSchema).min(1),
  clash: z.array(z.tuple([numberSchema, numberSchema])),
  mark: markSchema,
})

/**
 * One body's rule on numbers, as published. Lengths in micrometres; `mark` says how we know: 'read' on the body's own page,
 * 'quoted' on a second page, 'memory' (never a stop). `fromMemory` and `approximate` name single figures of `number` that
 * stand on weaker ground than the rest: they are never a stop either.
 */
export const rulebookSchema = z.strictObject({
  id: idSchema,
  body: z.string().min(1),
  clause: z.string().min(1),
  edition: z.string().min(1),
  editionYear: z.int(),
  mark: markSchema,
  sports: z.array(idSchema).min(1),
  number: z.strictObject({
    frontLeastMicrometres: limitSchema,
    frontMostMicrometres: limitSchema,
    backLeastMicrometres: limitSchema,
    backMostMicrometres: limitSchema,
    /** For women's cuts, where the body gives other figures for them. */
    womenBackLeastMicrometres: limitSchema,
    womenBackMostMicrometres: limitSchema,
    sleeveLeastMicrometres: limitSchema,
    strokeLeastMicrometres: limitSchema,
    strokeMostMicrometres: limitSchema,
    borderMostMicrometres: limitSchema,
    borderCountsToHeight: saidSchema,
    borderCountsToStroke: saidSchema,
    coloursMost: z.int().positive().nullable(),
    /** Places that must carry the number. */
    onPlaces: z.array(z.enum(placeIds)),
  }),
  name: z
    .strictObject({ leastMicrometres: limitSchema, mostMicrometres: limitSchema, fromNumberLeastMicrometres: limitSchema })
    .nullable(),
  /** `null`: the text gives none. */
  legal: legalSchema.nullable(),
  /** What is already known of a later edition. */
  coming: z.strictObject({ from: z.iso.date(), legal: legalSchema }).nullable(),
  /** Numbers that count as one and the same. */
  same: z.array(z.tuple([numberSchema, numberSchema])),
  /** Numbers for one position only. */
  onlyGoalkeeper: z.array(numberSchema),
  duplicates: z.enum(['forbidden', 'unknown']),
  /** Whether the body of the number may not be the jersey's own colour, border or not. */
  ownColour: z.enum(['forbidden', 'unknown']),
  /** Whether the body of the number must be one solid colour. */
  solidBody: z.boolean(),
  /** Jersey and number colours the body names as not contrasting, either way round. */
  failingPairs: z.array(z.tuple([idSchema, idSchema])),
  ornaments: z.strictObject({ text: z.string(), bans: z.enum(['reflective', 'reflective-ornaments', 'none']) }).nullable(),
  fromMemory: z.array(z.string()),
  approximate: z.array(z.string()),
  notes: z.array(z.string()),
})
export type Rulebook = z.infer<typeof rulebookSchema>
export type LegalNumbers = z.infer<typeof legalSchema>
