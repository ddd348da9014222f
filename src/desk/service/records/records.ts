import type { PieceStones } from '../../../domain/layout/layout.ts'
import type { Order } from '../../../domain/order/order.ts'
import type { BookOrder, Slot } from '../../../domain/schedule/book/operation.ts'
import type { PlanReason } from '../../../domain/schedule/book/plan-reason.ts'
import type { ExtraHours } from '../../../domain/schedule/explain/extra-hours.ts'
import { type LearnedRates, type Reckoned, ratesAsSet } from '../../../domain/schedule/work/learned-rates.ts'
import type { TemplateFacts, TicketFacts } from '../../../domain/ticket/facts.ts'
import type { Ticket } from '../../../domain/ticket/ticket.ts'
import type { Conversation, Quote } from '../../../domain/understanding/conversation.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { Attachment, Message } from '../../../ports/chat.ts'
import type { StockUse } from '../../stock-uses.ts'

/** So many garments of all that are collected before the rest. */
export type FirstPart = { readonly at: Minutes; readonly garments: number; readonly of: number }

/**
 * The documents that the desk keeps in the store. They were written by this program and carry a version; a document of another
 * version is refused loudly, because guessing at a stored order is worse than stopping.
 */
/** An order in the shop's plan, and the pace at which its minutes were reckoned; left out where that was the shop's own. */
export type PlacedOrder = BookOrder & {
  readonly revision: number
  readonly reckoned?: Reckoned
  /** Work that waits for stock now, and the release it had of its own before. */
  readonly waits?: { readonly [operation: string]: Minutes | null }
  /** Its customer agreed to collect in two parts: how many garments come first, and when. */
  readonly first?: FirstPart
  /** Nothing of it is worked on before its customer signs something else: it has no place in the plan, and no hour to be asked about. */
  readonly onHold?: true
}

/** A place that a shown promise holds until `until` (epoch minutes). */
export type HeldPlace = PlacedOrder & { readonly until: number }

/** A question about a promise that a customer has not answered yet; nothing changes until they do. */
export type Proposal = {
  readonly orderId: string
  readonly kind: 'move-promise' | 'split-collection' | 'drop-stones'
  readonly at: Minutes
  /** What part is ready then, in the words of the plan, and when the rest is. */
  readonly ready: string
  readonly rest?: Minutes
  /** The first of two parts, in garments. */
  readonly first?: FirstPart
}

/** Why a plan took another's place; about one order, or all of them. */
export type PlanChange = {
  readonly reason: PlanReason
  readonly at: Minutes
  readonly orderId: string | null
}

export type ShopPlan = {
  readonly version: 1
  readonly sold: readonly PlacedOrder[]
  readonly held: readonly HeldPlace[]
  /** The execution plan of what is sold; a sold order without slots is not planned yet. */
  readonly slots: readonly Slot[]
  /** Hours the owner added to the shop's. */
  readonly extra: readonly ExtraHours[]
  /** How long work takes here, as far as tickets have shown. */
  readonly pace: LearnedRates
  readonly proposals: readonly Proposal[]
  /** The newest last, the last twenty. */
  readonly changes: readonly PlanChange[]
}

/** What a quote leaves behind for the ticket, so that nothing is computed twice. */
export type QuoteBody = {
  readonly version: 1
  readonly quote: Quote
  readonly placed: PlacedOrder | null
  readonly facts: TicketFacts | null
  readonly stock: readonly StockUse[]
  /** Hashes of files that the order keeps: all for the cutter in one archive, and the new templates one to one on paper. */
  readonly cutArchive: string | null
  readonly templatePrint?: string | null
  /** The customer's own papers, composed: they are printed when the order is signed. */
  readonly slips?: { readonly price: Ticket; readonly care: Ticket } | null
  readonly picture: string | null
}

/** A printed ticket: its file, what else lies beside it at the bench, and what it was composed from. */
export type TicketBody = {
  readonly version: 1
  readonly pdf: string
  readonly papers?: readonly Attachment[]
  readonly facts: TicketFacts
}

const isVersion1 = (document: unknown): boolean =>
  typeof document === 'object' && document !== null && 'version' in document && document.version === 1

const readVersion1 = <T>(document: unknown, what: string): T => {
  if (!isVersion1(document)) throw new Error(`a stored ${what} is not of version 1; restore a backup or upgrade the program`)
  return document as T
}

/** How templates were kept before they had numbers: one place each, and the texts alone that they are brushed for. */
type UnnumberedTemplate = Omit<TemplateFacts, 'no' | 'places' | 'on'> & {
  readonly place: TemplateFacts['places'][number]
  readonly on: readonly string[]
}

const numbered = (template: TemplateFacts | UnnumberedTemplate, at: number): TemplateFacts => {
  if (!('place' in template)) return template
  const { place, on, ...same } = template
  return { ...same, no: at + 1, places: [place], on: on.length === 0 ? [] : [{ place, texts: on }] }
}

const withNumberedTemplates = (facts: TicketFacts): TicketFacts => ({ ...facts, templates: facts.templates.map(numbered) })

/** Makers: the store keeps what this program wrote. */
export const conversationFrom = (document: unknown): Conversation => readVersion1(document, 'conversation')
export const orderFrom = (document: unknown): Order => readVersion1(document, 'order')
export const quoteFrom = (document: unknown): QuoteBody => {
  const quote = readVersion1<QuoteBody>(document, 'quote')
  return quote.facts === null ? quote : { ...quote, facts: withNumberedTemplates(quote.facts) }
}
export const ticketFrom = (document: unknown): TicketBody => {
  const ticket = readVersion1<TicketBody>(document, 'ticket')
  return { ...ticket, facts: withNumberedTemplates(ticket.facts) }
}
export const pieceFrom = (document: unknown): PieceStones => readVersion1<{ piece: PieceStones }>(document, 'piece').piece
export const messageFrom = (document: unknown): Message => document as Message

const emptyShopPlan: ShopPlan = {
  version: 1,
  sold: [],
  held: [],
  slots: [],
  extra: [],
  pace: ratesAsSet,
  proposals: [],
  changes: [],
}
/** What a plan of an earlier day did not have yet is empty. */
export const shopPlanFrom = (document: unknown): ShopPlan =>
  document === null ? emptyShopPlan : { ...emptyShopPlan, ...readVersion1<Partial<ShopPlan>>(document, 'plan') }

const mostChanges = 20

/** The plan with one more reason for what it is now. */
export const withChange = (plan: ShopPlan, change: PlanChange): ShopPlan => ({
  ...plan,
  changes: [...plan.changes, change].slice(-mostChanges),
})
