import * as z from 'zod'
import { idSchema } from '../garment/garment.ts'

const leastSchema = z.int().positive().nullable()

/**
 * One body's rule on numbers, as published. Lengths in micrometres; `mark` says how we know: 'read' on the body's own page,
 * 'quoted' on a second page, 'memory' (never a stop).
 */
export const rulebookSchema = z.strictObject({
  id: idSchema,
  body: z.string().min(1),
  clause: z.string().min(1),
  edition: z.string().min(1),
  editionYear: z.int(),
  mark: z.enum(['read', 'quoted', 'memory']),
  sports: z.array(idSchema).min(1),
  number: z.strictObject({
    frontLeastMicrometres: leastSchema,
    frontMostMicrometres: leastSchema,
    backLeastMicrometres: leastSchema,
    backMostMicrometres: leastSchema,
    sleeveLeastMicrometres: leastSchema,
    strokeLeastMicrometres: leastSchema,
    strokeMostMicrometres: leastSchema,
    borderMostMicrometres: leastSchema,
    borderCountsToHeight: z.enum(['yes', 'no', 'unknown']),
    borderCountsToStroke: z.enum(['yes', 'no', 'unknown']),
  }),
  /** Numbers allowed, as text ("07" is not "7"); `clash` pairs may not stand on one roster. `null`: the text gives none. */
  legal: z
    .strictObject({
      numbers: z.array(z.string().regex(/^\d{1,3}$/)).min(1),
      clash: z.array(z.tuple([z.string(), z.string()])),
      mark: z.enum(['read', 'quoted', 'memory']),
    })
    .nullable(),
  duplicates: z.enum(['forbidden', 'unknown']),
  failingPairs: z.array(z.tuple([idSchema, idSchema])),
  ornaments: z.strictObject({ text: z.string(), bans: z.enum(['reflective', 'none']) }).nullable(),
  /** Figures of this record that are from memory though the rest was read: field names of `number`. */
  fromMemory: z.array(z.string()),
})
export type Rulebook = z.infer<typeof rulebookSchema>
