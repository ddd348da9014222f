import { type LateRow, lateRows, type RowProgress } from '../domain/order/late-rows.ts'
import type { Order, Row } from '../domain/order/order.ts'
import type { Shop } from '../domain/shop/shop.ts'
import type { LateChange, Quote } from '../domain/understanding/conversation.ts'
import { type Asked, type Workshop, workOut } from './work-out.ts'

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

/** A quote with what late changes add: one more part of the price, and the lines that it is for. */
export const withLateChanges = (quote: Quote, late: readonly LateChange[]): Quote => {
  const amount = late.reduce((sum, change) => sum + change.amount, 0)
  if (quote.price === null || late.length === 0) return quote
  const remade = late.filter((change) => change.amount > 0).length
  const parts =
    amount === 0 ? quote.price.parts : [...quote.price.parts, { code: 'remake', what: null, quantity: remade, amount } as const]
  return { ...quote, late, price: { total: quote.price.total + amount, parts } }
}
