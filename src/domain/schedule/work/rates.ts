import * as z from 'zod'

const labour = z.number().min(0).max(600)
const rate = z.number().positive()

/**
 * The shop's labour minutes (common practice to begin with, the shop edits them). `…Each` counts per piece or garment, `…PerMinute`
 * is a speed; percentages are added to the work.
 */
export const ratesSchema = z.strictObject({
  proof: z.strictObject({ firstMinutes: labour, reorderMinutes: labour }),
  countIn: z.strictObject({ minutes: labour, garmentEach: labour }),
  waterDropsMinutes: labour,
  bleedTest: z.strictObject({ minutes: labour, waitMinutes: z.int().min(0).max(10_080) }),
  testPressMinutes: labour,
  couponMinutes: labour,
  cutter: z.strictObject({ loadMinutes: labour, pieceEach: labour }),
  weed: z.strictObject({ numberEach: labour, nameEach: labour, markEach: labour, glitterFactor: rate, secondColourFactor: rate }),
  template: z.strictObject({ cutEach: labour, plugsPer400Holes: labour, boardEach: labour }),
  brush: z.strictObject({
    usualPerMinute: rate,
    smallPerMinute: rate,
    rightingPercent: z.number().min(0).max(200),
    tapeEach: labour,
  }),
  press: z.strictObject({ plainEach: labour, twoColourEach: labour, stonedSideEach: labour, firstPieceMinutes: labour }),
  coolMinutes: z.int().min(0).max(1_440),
  inspectAndBagEach: labour,
  remake: z.strictObject({ plainPercent: z.number().min(0).max(100), stonesPercent: z.number().min(0).max(100) }),
  /** Nobody works longer at one piece of work than this before a colleague can share it. */
  turnMinutes: z.int().min(15).max(600),
})
export type Rates = z.infer<typeof ratesSchema>
