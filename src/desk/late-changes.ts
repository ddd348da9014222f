import { type LateRow, lateRows, type RowProgress } from '../domain/order/late-rows.ts'
import type { Order, Row } from '../domain/order/order.ts'
import type { Shop } from '../domain/shop/shop.ts'
import type { LateChange } from '../domain/understanding/conversation.ts'
import { minorUnits } from '../domain/units/units.ts'
import { type Asked, type WorkedOut, type Workshop, workOut } from './work-out.ts'

/** Only the piece itself: what is charged once an order, once a template or for the quantity is in the order's own price. */
const pieceOnly = (shop: Shop): Shop => ({
  ...shop,
  prices: {
    ...shop.prices,
    setUp: 0,
    template: 0,
    nameTemplate: 0,
    quantityBreaks: [],
    rush: { ...shop.prices.rush, percent: 0 },
  },
})

const garmentCodes: ReadonlySet<string> = new Set(['garment', 'own-garment'])

/** What one line costs to make again, in minor units with tax: its pieces, and its garment where that is pressed. */
const remakeCost = (
  asked: Asked & { readonly document: Order },
  workshop: Workshop,
  { row, garment }: { row: Row; garment: boolean },
): number => {
  const document = { ...asked.document, roster: [row] }
  const { work } = workOut({ ...asked, document }, { ...workshop, shop: pieceOnly(workshop.shop) })
  const parts = (work?.price.parts ?? []).filter(({ code }) => code !== 'tax' && (garment || !garmentCodes.has(code)))
  const bare = parts.reduce((sum, part) => sum + part.amount, 0)
  return bare + Math.round((bare * workshop.shop.prices.taxPercentTimes100) / 10_000)
}

const changeOf = ({ was, now, needs }: LateRow, amount: number): LateChange => {
  const { line, number, name, fit, size } = now ?? was
  return { row: { line, number: number ?? null, name: name ?? null, fit, size }, needs, amount }
}

type Signed = { readonly before: Order; readonly progressOf: (line: number) => RowProgress }

/** What the changes of a signed order cost where its work has begun, line by line; nothing where it has not. */
export const lateChanges = (
  asked: Asked & { readonly document: Order },
  workshop: Workshop,
  { before, progressOf }: Signed,
): readonly LateChange[] =>
  lateRows(before, asked.document, progressOf).map((late) => {
    const row = late.now
    const amount = row === null ? 0 : remakeCost(asked, workshop, { row, garment: late.needs === 'garment' })
    return changeOf(late, amount)
  })

/** The order's price with what late changes add as one more part, so that proof, slip and total say the same. */
export const chargeLate = (worked: WorkedOut, late: readonly LateChange[]): WorkedOut => {
  const amount = late.reduce((sum, change) => sum + change.amount, 0)
  if (worked.work === null || amount === 0) return worked
  const { price } = worked.work
  const quantity = late.filter((change) => change.amount > 0).length
  const remade = {
    code: 'remake',
    what: null,
    quantity,
    unit: minorUnits(Math.round(amount / quantity)),
    amount: minorUnits(amount),
  } as const
  const total = minorUnits(price.total + amount)
  return { ...worked, work: { ...worked.work, price: { ...price, total, parts: [...price.parts, remade] } } }
}
