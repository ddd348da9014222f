import type { Problem, Result } from '../domain/result/result.ts'
import type { Minutes } from '../domain/units/units.ts'
import type { FloorBook } from './floor-records.ts'
import type { DeliveryBook, HeardBook, PlatformRecords, ServerBook, Talks } from './platform-records.ts'
import type { Step } from './queue.ts'
import type { StockBook } from './stock-records.ts'
import type { StoreFigures } from './store-figures.ts'
import type { Conversations, Files, Keys, Members, Messages, PostedNotes } from './talk-records.ts'
import type { Events, Orders, Pieces, PlanBook, Quotes, Steps, Tickets } from './work-records.ts'

/**
 * The records of one shop. Documents are kept as they are given and come back `unknown`: whoever reads one parses it.
 * Instants are the caller's.
 */
export type ShopStore = {
  readonly shopId: string
  readonly orders: Orders
  readonly quotes: Quotes
  readonly pieces: Pieces
  readonly tickets: Tickets
  readonly events: Events
  readonly stock: StockBook
  readonly floor: FloorBook
  readonly plan: PlanBook
  readonly steps: Steps
  readonly conversations: Conversations
  readonly messages: Messages
  readonly posted: PostedNotes
  readonly files: Files
  readonly members: Members
  readonly keys: Keys
  readonly server: ServerBook
  readonly talks: Talks
  readonly heard: HeardBook
  readonly deliveries: DeliveryBook
  /** How its steps and its plan stand, by the store's own clock. */
  readonly figures: () => Promise<StoreFigures>
  /** Live news to every process that listens, best effort; inside `together` it goes out with the transaction. */
  readonly tell: (topic: string, id: string) => Promise<void>
  /** Orders handed over at or before this instant whose people are not forgotten yet. */
  readonly toForget: (before: Minutes) => Promise<readonly string[]>
  /** Deletes documents, messages and files of an order; its events and figures stay. */
  readonly forget: (orderId: string) => Promise<void>
}

/** A row that waits to be handed to the queue. */
export type OutboxRow = { readonly outboxId: number; readonly step: Step }
export type Outbox = {
  readonly waiting: (atMost: number) => Promise<readonly OutboxRow[]>
  readonly sent: (outboxIds: readonly number[]) => Promise<void>
  /** Deletes rows that were sent so many seconds ago; answers how many. */
  readonly prune: (seconds: number) => Promise<number>
}

export type News = { readonly shopId: string; readonly topic: string; readonly id: string }
export const outboxTopic = 'outbox'
export const channelTopic = 'channel'

/** Shops are apart: `shop(id)` is the way in, and it sees that shop's rows alone; only the platform's ids name their shop. */
export type Store = {
  /** Tells these records from all others, those of a backup of theirs too. */
  readonly place: string
  /** Makes the shop's row when it is new. The house is whose records and workers serve it; a shop alone is its own. */
  readonly openShop: (shopId: string, house?: string) => Promise<ShopStore>
  readonly shop: (shopId: string) => ShopStore
  readonly shopsOf: (house: string) => Promise<readonly string[]>
  /** What waits for the workers of one house. */
  readonly outboxOf: (house: string) => Outbox
  /**
   * One transaction: kept when the work answers ok, undone when it refuses or throws. Inside, what is asked at once leaves at once and is
   * done in its order.
   */
  readonly together: <T, P extends Problem>(
    shopId: string,
    work: (shop: ShopStore) => Promise<Result<T, P>>,
  ) => Promise<Result<T, P>>
  /** Looks that are asked at once leave at once, without a transaction; for reading alone. */
  readonly look: <T>(shopId: string, work: (shop: ShopStore) => Promise<T>) => Promise<T>
  readonly platform: PlatformRecords
  /** Calls the listener with every piece of news of these topics; answers with a function that stops it. */
  readonly listen: (topics: readonly string[], listener: (news: News) => void) => Promise<() => Promise<void>>
  readonly close: () => Promise<void>
}
