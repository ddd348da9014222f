import type { Decoration, Order, OrderGarment, Row } from '../order/order.ts'

/** The order document as far as it is known; what stands in it has the document's shape. */
export type KnownGarment = Partial<OrderGarment> & Pick<OrderGarment, 'id'>
export type KnownDecoration = Partial<Decoration> & Pick<Decoration, 'id'>
export type KnownRow = Partial<Omit<Row, 'extras'>> & Pick<Row, 'line'> & { readonly extras?: readonly KnownDecoration[] }

export type Known = Partial<Omit<Order, 'garments' | 'decorations' | 'roster' | 'people'>> & {
  readonly people: Partial<Order['people']>
  readonly garments: readonly KnownGarment[]
  readonly decorations: readonly KnownDecoration[]
  readonly roster: readonly KnownRow[]
}

/** A thing the document still needs before it can be worked out; `code` is the question that gets it. */
export type Missing = { readonly code: QuestionCode; readonly path: string; readonly of?: string }

/** The questions, the most valuable first: what the job is, when, for whom, then the rest. */
export const questionCodes = [
  'ask-garment',
  'ask-decoration',
  'ask-text',
  'ask-day',
  'ask-roster',
  'ask-garment-colour',
  'ask-vinyl-colour',
  'ask-numbers',
  'ask-names',
  'ask-garment-sizes',
  'ask-sizes',
  'ask-fit',
  'ask-hour',
  'ask-cloth',
  'ask-team',
  'ask-sport',
  'ask-ages',
  'ask-who',
] as const
export type QuestionCode = (typeof questionCodes)[number]
