import type { Language } from '../domain/units/language.ts'
import type { GuildSettings, Postings, Talk } from './platform-desk.ts'

/** Which server of the platform this shop lives in, as its owner set it up. */
export type ServerBook = {
  /** Inside `together` it is held until the end. */
  read(): Promise<GuildSettings | null>
  save(settings: Omit<GuildSettings, 'shop'>): Promise<void>
}

/** Whether it is over is known by its order. */
export type KeptTalk = Omit<Talk, 'over'>

/** Conversations of this shop that are held on the platform, the one used last first. */
export type Talks = {
  of(conversationId: string): Promise<KeptTalk | null>
  ofPerson(person: string): Promise<readonly KeptTalk[]>
  /** Inside `together`: others that open a talk with this person wait. */
  alone(person: string): Promise<void>
  /** Keeps where it is held, and that it is the one in use. */
  use(talk: Omit<KeptTalk, 'shop'>): Promise<void>
}

/** Ids of events that were heard: the same id is new once. */
export type HeardBook = {
  isNew(deliveryId: string): Promise<boolean>
  count(): Promise<number>
  /** Forgets those heard so many hours ago or earlier. */
  clear(hours: number): Promise<void>
}

/** Messages that wait to be delivered, in the order of their channel. */
export type DeliveryBook = {
  /** The message with this nonce is delivered once more; as a new one where it stood before. */
  again(nonce: string): Promise<boolean>
}

/** A message whose newest body is to be put on the platform; `changed` says which body that is. */
export type WaitingDelivery = {
  readonly shopId: string
  readonly nonce: string
  readonly channel: string
  readonly changed: number
  readonly tries: number
  readonly body: unknown
}
export type ShopDeliveries = {
  /**
   * The next message of every channel that has one, for so many seconds: nobody else gets these meanwhile. Later messages of
   * a channel wait for the earlier ones.
   */
  claim(atMost: number, seconds: number): Promise<readonly WaitingDelivery[]>
  /** It stands there; a newer body that came meanwhile waits on. */
  done(delivery: WaitingDelivery): Promise<void>
  later(delivery: WaitingDelivery, seconds: number): Promise<void>
  /** Nobody tries it again until it is wanted once more. */
  drop(delivery: WaitingDelivery): Promise<void>
}

/** Across shops, because the platform's ids name the shop. */
export type PlatformRecords = {
  servers(): Promise<
    readonly { readonly guild: string; readonly shop: string; readonly name: string; readonly language: Language }[]
  >
  shopOf(guild: string): Promise<string | null>
  /** Every talk that is or was held in this channel, the one used last first. */
  talksIn(channel: string): Promise<readonly KeptTalk[]>
  /** In every shop, the one used last first. */
  talksOf(person: string): Promise<readonly KeptTalk[]>
  /** Which shop's message of ours this is. */
  shopOfMessage(channel: string, message: string): Promise<string | null>
  readonly postings: Postings
  readonly deliveries: ShopDeliveries
}
export const deliveryTopic = 'delivery'
