import type { Language } from '../domain/units/language.ts'
import type { Minutes } from '../domain/units/units.ts'
import type { Kept, Seen } from './keeping.ts'
import type { OrderStepName } from './queue.ts'

export const orderStates = [
  'asked',
  'quoted',
  'signed-off',
  'planned',
  'ticketed',
  'on-bench',
  'checked',
  'bagged',
  'collected',
  'cancelled',
] as const
export type OrderState = (typeof orderStates)[number]

export type Hold = { readonly why: string; readonly by: string; readonly since: Minutes }
export type StoredOrder = {
  readonly orderId: string
  readonly conversationId: string | null
  readonly state: OrderState
  readonly hold: Hold | null
  /** The newest revision, 0 before the first. */
  readonly revision: number
  readonly version: number
  readonly handedOverAt: Minutes | null
}
export type StoredRevision = {
  readonly orderId: string
  readonly revision: number
  readonly hash: string
  readonly document: unknown
  readonly signed: { readonly by: string; readonly at: Minutes } | null
}
export type OrderChange = { readonly state?: OrderState; readonly hold?: Hold | null; readonly handedOverAt?: Minutes }
export const rowStates = ['not-cut', 'cut', 'pressed', 'bagged'] as const
export type RowState = { readonly line: number; readonly state: (typeof rowStates)[number] }

export type Orders = {
  add(order: { readonly orderId: string; readonly conversationId: string | null }): Kept<StoredOrder>
  read(orderId: string): Promise<StoredOrder | null>
  list(states: readonly OrderState[]): Promise<readonly StoredOrder[]>
  /** Adds the next revision. */
  revise(seen: Seen, revision: { readonly document: unknown; readonly hash: string }): Kept<StoredRevision>
  revision(orderId: string, revision: number): Promise<StoredRevision | null>
  revisions(orderId: string): Promise<readonly StoredRevision[]>
  /** An order and its newest revision; null before the first. */
  newest(orderId: string): Promise<{ readonly order: StoredOrder; readonly revision: StoredRevision } | null>
  change(seen: Seen, change: OrderChange): Kept<Seen>
  /** Marks the newest revision as signed and the order as signed off. */
  sign(seen: Seen, signed: { readonly by: string; readonly at: Minutes }): Kept<StoredOrder>
  rows(orderId: string): Promise<readonly RowState[]>
  setRows(orderId: string, rows: readonly RowState[]): Promise<void>
}

export type QuoteKey = { readonly orderId: string; readonly revision: number; readonly hash: string }
export type Quotes = {
  /** Keeps the first body given for a key: a step that runs twice changes nothing. */
  put(key: QuoteKey, body: unknown): Promise<void>
  read(key: QuoteKey): Promise<unknown>
  /** The quote of a revision as it was asked for; null before it is kept. */
  ofRevision(key: Pick<QuoteKey, 'orderId' | 'revision'>): Promise<unknown>
}
/** Layouts by content hash. A piece stays as long as an order uses it. */
export type Pieces = {
  put(orderId: string, pieces: readonly { readonly hash: string; readonly body: unknown }[]): Promise<void>
  use(orderId: string, hashes: readonly string[]): Promise<void>
  read(hashes: readonly string[]): Promise<ReadonlyMap<string, unknown>>
}

export const ticketStates = ['open', 'closed', 'done', 'replaced', 'cancelled'] as const
export type TicketState = (typeof ticketStates)[number]
export type StoredTicket = {
  readonly ticketId: string
  readonly orderId: string
  readonly revision: number
  readonly number: number
  readonly state: TicketState
  readonly replacedBy: number | null
  readonly body: unknown
  readonly version: number
}
export const tickStates = ['waiting', 'taken', 'started', 'done', 'spoiled'] as const
/** The state of one step for one line of the roster. */
export type Tick = {
  readonly step: number
  readonly line: number
  readonly state: (typeof tickStates)[number]
  readonly by: string | null
}
export type Finding = { readonly code: string; readonly facts: unknown; readonly by: string; readonly at: Minutes }
/** A ticket, its order and what was done with it. */
export type TicketRecord = {
  readonly ticket: StoredTicket
  readonly order: StoredOrder
  readonly findings: readonly Finding[]
  readonly ticks: readonly Tick[]
  /** Garments that are to be made again, still. */
  readonly openRemakes: number
}
export type Tickets = {
  /** Gives it the shop's next number. One ticket per order and revision. */
  add(ticket: Pick<StoredTicket, 'ticketId' | 'orderId' | 'revision' | 'body'>): Kept<StoredTicket>
  read(ticketId: string): Promise<StoredTicket | null>
  /** The same with all that belongs to it, in one look. */
  record(ticketId: string): Promise<TicketRecord | null>
  ofOrder(orderId: string): Promise<readonly StoredTicket[]>
  list(states: readonly TicketState[]): Promise<readonly StoredTicket[]>
  change(seen: Seen, change: { readonly state?: TicketState; readonly replacedBy?: number; readonly body?: unknown }): Kept<Seen>
  ticks(ticketId: string): Promise<readonly Tick[]>
  /** Raises the ticket's version with them. */
  tick(seen: Seen, ticks: readonly Tick[]): Kept<Seen>
  find(ticketId: string, finding: Finding): Promise<void>
  findings(ticketId: string): Promise<readonly Finding[]>
}

/** A row that is never changed or deleted: ids and facts, no names. */
export type ShopEvent = {
  readonly code: string
  readonly orderId: string | null
  readonly ticketId: string | null
  readonly by: string
  readonly at: Minutes
  readonly facts: unknown
}
export type Events = {
  add(event: ShopEvent): Promise<void>
  ofOrder(orderId: string): Promise<readonly ShopEvent[]>
  between(from: Minutes, to: Minutes): Promise<readonly ShopEvent[]>
}

export type PlanBook = {
  /** Version 0 and body null before the first. */
  read(): Promise<{ readonly version: number; readonly body: unknown }>
  write(version: number, body: unknown): Kept<number>
  /** Inside `together`: holds the shop's plan until the end of the transaction; others wait. */
  alone(): Promise<void>
  /** The same, and the plan as it is then. */
  hold(): Promise<{ readonly version: number; readonly body: unknown }>
}

/** What became of a queued step of one order's revision. `attempt` is part of its job's id. */
export type StepRecord = {
  readonly step: OrderStepName
  readonly orderId: string
  readonly revision: number
  readonly attempt: number
  readonly state: 'due' | 'done' | 'given-up'
  readonly reason: string | null
}
export type StepKey = Pick<StepRecord, 'step' | 'orderId' | 'revision'>
/** Whether a step was done by an earlier run, and what it is about. */
export type StepAbout = {
  readonly isDone: boolean
  readonly order: StoredOrder | null
  readonly revision: StoredRevision | null
  /** The language of the order's conversation, where it has one. */
  readonly language: Language | null
}
export type Steps = {
  /** Writes that the step is due and its row in the outbox; nothing when it was wanted before. */
  want(key: StepKey): Promise<void>
  /** As `want`, and due once more when it was done before: the same revision may be priced in another make again. */
  renew(key: StepKey): Promise<void>
  done(key: StepKey): Promise<void>
  giveUp(key: StepKey, reason: string): Promise<void>
  /** One more attempt, with a new job id. */
  again(key: StepKey): Promise<void>
  read(key: StepKey): Promise<StepRecord | null>
  /** What every step begins with, in one look. */
  about(key: StepKey): Promise<StepAbout>
  ofOrder(orderId: string): Promise<readonly StepRecord[]>
  /** Due steps whose last attempt was sent at least so many seconds ago. */
  overdue(seconds: number): Promise<readonly StepRecord[]>
  givenUp(): Promise<readonly StepRecord[]>
}
