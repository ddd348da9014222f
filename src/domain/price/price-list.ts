import * as z from 'zod'
import { idSchema } from '../garment/garment.ts'
import { stoneSizes, vinylClasses } from '../material/material.ts'

const amountSchema = z.int().min(0)

/** The shop's prices in minor units of its currency (ISO 4217). */
export const priceListSchema = z.strictObject({
  currency: z.string().regex(/^[A-Z]{3}$/),
  minorDigits: z.int().min(0).max(3),
  setUp: amountSchema,
  garment: z.array(z.strictObject({ garment: idSchema, amount: amountSchema })),
  pressOwnGarment: amountSchema,
  number: amountSchema,
  name: amountSchema,
  text: amountSchema,
  extraLayer: amountSchema,
  /** Percent of the plain price by vinyl class, 100 = the plain price. */
  classPercent: z.partialRecord(z.enum(vinylClasses), z.int().min(50).max(400)),
  stonePer100: z.partialRecord(z.enum(stoneSizes), amountSchema),
  template: amountSchema,
  nameTemplate: amountSchema,
  rush: z.strictObject({ withinDays: z.int().min(0), percent: z.int().min(0).max(200) }),
  quantityBreaks: z.array(z.strictObject({ from: z.int().min(2), percentOff: z.int().min(0).max(60) })),
  taxPercentTimes100: z.int().min(0),
})
export type PriceList = z.infer<typeof priceListSchema>
