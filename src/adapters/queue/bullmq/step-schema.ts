import * as z from 'zod'
import { orderSteps, type Step } from '../../../ports/queue.ts'

const id = z.string().regex(/^[A-Za-z0-9_-]{1,80}$/)

/** A job's data as they come back from the queue. */
export const stepSchema: z.ZodType<Step> = z.union([
  z.strictObject({
    step: z.enum(orderSteps),
    shopId: id,
    orderId: id,
    revision: z.int().positive(),
    attempt: z.int().positive(),
  }),
  z.strictObject({ step: z.literal('remind'), shopId: id, minute: z.int() }),
])
