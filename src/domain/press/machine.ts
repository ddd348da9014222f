import * as z from 'zod'
import { idSchema } from '../garment/garment.ts'
import { pressureWords } from '../material/material.ts'

/**
 * A press of the shop. `swingTenthsC` is how far its platen strays from the set point (the shop's own measurement);
 * `correctionTenthsC` is added to what is set today after the morning probe. A gauge number is true for this press only.
 */
export const machineSchema = z.strictObject({
  id: idSchema,
  platenWidthMicrometres: z.int().positive(),
  platenDepthMicrometres: z.int().positive(),
  swingTenthsC: z.int().min(0),
  correctionTenthsC: z.int(),
  /** Smallest step its thermostat can be set by, in its own unit. */
  step: z.strictObject({ unit: z.enum(['C', 'F']), degrees: z.int().positive() }),
  gauge: z.record(z.enum(pressureWords), z.string().min(1)).nullable(),
  /** Pressure under the platen by word, where the shop has measured it. */
  kilopascals: z
    .record(z.enum(pressureWords), z.strictObject({ least: z.number().positive(), most: z.number().positive() }))
    .optional(),
  maxTenthsC: z.int().positive(),
  threads: z.boolean(),
})
export type Machine = z.infer<typeof machineSchema>
