import type { ColumnType, Generated, Kysely } from 'kysely'
import type { Language } from '../../../domain/units/language.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { PressCheck, Remake } from '../../../ports/floor-records.ts'
import type { GuildSettings } from '../../../ports/platform-desk.ts'
import type { OrderStepName } from '../../../ports/queue.ts'
import type { ComingStock, ShelfTemplate, StockLot, StockMove } from '../../../ports/stock-records.ts'
import type { Key, StoredMember } from '../../../ports/talk-records.ts'
import type { OrderState, RowState, StepKey, StepRecord, Tick, TicketState } from '../../../ports/work-records.ts'

/** Written as JSON text, read back as what it says. */
type Document = ColumnType<unknown, string, string>
type Nullable<T> = ColumnType<T | null, T | null | undefined, T | null>

type OfShop = { readonly shopId: string }

export type Tables = {
  simulatedClock: { one: Generated<boolean>; real: number; simulated: number; speed: number }
  shop: OfShop & { house: string; ticketNumber: Generated<number> }
  member: OfShop & StoredMember
  key: OfShop & Key
  conversation: OfShop & { conversationId: string; state: Document; version: Generated<number> }
  message: OfShop & {
    messageId: string
    channel: string
    nonce: string
    seq: number
    changed: number
    edits: Generated<number>
    by: string
    at: Date
    body: Document
  }
  posted: OfShop & { nonce: string; messageId: string; hash: string }
  order: OfShop & {
    orderId: string
    conversationId: string | null
    state: OrderState
    hold: ColumnType<unknown, string | null | undefined, string | null>
    revision: Generated<number>
    handedOverAt: Nullable<Minutes>
    forgotten: Generated<boolean>
    version: Generated<number>
  }
  orderRevision: OfShop & {
    orderId: string
    revision: number
    hash: string
    document: ColumnType<unknown, string, string | null>
    signedBy: Nullable<string>
    signedAt: Nullable<Minutes>
  }
  rowState: OfShop & RowState & { orderId: string }
  quote: OfShop & { orderId: string; revision: number; hash: string; body: Document }
  piece: OfShop & { hash: string; body: Document }
  pieceUse: OfShop & { orderId: string; hash: string }
  ticket: OfShop & {
    ticketId: string
    orderId: string
    revision: number
    number: number
    state: TicketState
    replacedBy: Nullable<number>
    body: ColumnType<unknown, string, string | null>
    version: Generated<number>
  }
  ticketStep: OfShop & Tick & { ticketId: string }
  finding: OfShop & { findingId: Generated<number>; ticketId: string; code: string; facts: Document; by: string; at: Minutes }
  event: OfShop & {
    eventId: Generated<number>
    code: string
    orderId: string | null
    ticketId: string | null
    by: string
    at: Minutes
    facts: Document
  }
  stockMove: OfShop &
    Omit<StockMove, 'lot' | 'by' | 'why'> & {
      moveId: Generated<number>
      lot: Generated<string>
      by: Nullable<string>
      why: Nullable<string>
    }
  stockSum: OfShop & { item: string; lot: string; kind: string; less: boolean; amount: number }
  stockNeed: OfShop & { orderId: string; item: string; amount: number; due: number; held: Generated<number> }
  stockLot: OfShop & StockLot
  stockComing: OfShop & ComingStock & { arrived: Generated<boolean> }
  shelfTemplate: OfShop & ShelfTemplate
  pressCheck: OfShop & Omit<PressCheck, 'readings'> & { readings: ColumnType<readonly number[], string, string> }
  remake: OfShop & Omit<Remake, 'doneAt'> & { doneAt: Nullable<Minutes> }
  plan: OfShop & { version: number; body: Buffer; writtenAt: Generated<Date> }
  step: OfShop &
    StepKey & {
      attempt: Generated<number>
      state: StepRecord['state']
      reason: Nullable<string>
      sentAt: Generated<Date>
      wantedAt: Generated<Date>
      doneAt: Nullable<Date>
    }
  outbox: OfShop & {
    outboxId: Generated<number>
    step: OrderStepName
    orderId: string
    revision: number
    attempt: number
    sentAt: Nullable<Date>
  }
  server: OfShop & Omit<GuildSettings, 'shop' | 'staffRoles' | 'ownerRoles'> & { staffRoles: string[]; ownerRoles: string[] }
  talk: OfShop & { conversationId: string; person: string; channel: string; language: Language; usedAt: Generated<Date> }
  heard: OfShop & { deliveryId: string; at: Generated<Date> }
  posting: OfShop & {
    nonce: string
    part: number
    channel: string | null
    round: Generated<number>
    firstAttemptAt: Nullable<number>
    message: Nullable<string>
    body: Nullable<string>
    fence: number
    until: number
  }
  delivery: OfShop & {
    nonce: string
    channel: string
    seq: number
    changed: number
    tries: Generated<number>
    dueAt: Generated<Date>
  }
  file: OfShop & { hash: string; bytes: Uint8Array }
  fileUse: OfShop & { owner: string; hash: string; name: string; mime: string }
}

export type Database = Kysely<Tables>

/** A connection or transaction, the one shop it is used for, and the shop's time in epoch milliseconds. */
export type Scope = {
  readonly db: Database
  readonly shopId: string
  readonly time: () => number
  /** A transaction that is tried again when a change of it met another version: changes are not waited for. */
  readonly hopeful?: boolean
}
