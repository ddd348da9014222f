import type { MoveKind, Need, StockChange } from '../domain/stock/ledger.ts'
import type { Minutes } from '../domain/units/units.ts'

export type StockMove = {
  readonly item: string
  /** What it does to the free pile, in pieces or micrometres of roll; negative takes away. */
  readonly amount: number
  readonly kind: MoveKind
  readonly orderId: string | null
  readonly at: Minutes
  readonly lot?: string
  readonly by?: string | null
  readonly why?: string | null
}

/** What is known of one lot beside its amount. `bin` is where it lies. */
export type StockLot = {
  readonly item: string
  readonly lot: string
  readonly certificate: string | null
  readonly grossMilligrams: number | null
  readonly bin: string | null
}
/** Ordered from a seller; due in epoch minutes. */
export type ComingStock = {
  readonly comingId: string
  readonly item: string
  readonly amount: number
  readonly due: Minutes
  readonly by: string
}
/** A template on the shelf; `key` names its layout, `made` is the day it was cut. */
export type ShelfTemplate = { readonly key: string; readonly box: string; readonly made: string; readonly brushed: number }

/** A part of the ledger: some items, or all; what is not in the name of a holder stands in nobody's. */
export type LedgerPart = { readonly items?: readonly string[]; readonly holders: readonly string[] }

export type StockBook = {
  move(moves: readonly StockMove[]): Promise<void>
  /** What is free of every item. */
  sums(): Promise<ReadonlyMap<string, number>>
  ofOrder(orderId: string): Promise<readonly StockMove[]>
  /** All moves added up by item, lot, order and kind; the whole ledger grows with the orders, a part with its items and holders. */
  ledger(part?: LedgerPart): Promise<readonly StockChange[]>
  needs(): Promise<readonly Need[]>
  wantedBy(orderId: string): Promise<readonly Need[]>
  /** The needs of these items that are not reserved in full. */
  lacking(items: readonly string[]): Promise<readonly Need[]>
  /** In place of whatever the order wanted before. */
  want(orderId: string, needs: readonly Omit<Need, 'orderId'>[]): Promise<void>
  lots(): Promise<readonly StockLot[]>
  /** What is given stands in place of what was known; null leaves it. */
  putLot(lot: StockLot): Promise<void>
  coming(): Promise<readonly ComingStock[]>
  order(coming: ComingStock): Promise<void>
  arrived(comingId: string): Promise<void>
  templates(): Promise<readonly ShelfTemplate[]>
  putTemplate(template: ShelfTemplate): Promise<void>
  dropTemplate(key: string): Promise<void>
}
