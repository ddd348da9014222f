import type { Language } from '../domain/units/language.ts'
import type { Channel, Form, Incoming, Message } from './chat.ts'
import type { Role, StoredFile } from './counter-desk.ts'
import { Hopeless } from './queue.ts'

/**
 * What the chat platform's adapter asks of the desk. A server of the platform is one shop; ids of servers, channels, roles,
 * people and messages are the platform's own. Every right is decided by the desk from its own records.
 */
export type PlatformPerson = { readonly id: string; readonly name: string; readonly language: Language }

/** The shop that lives in a server, as its owner set it up. */
export type GuildSettings = {
  readonly guild: string
  readonly shop: string
  readonly name: string
  readonly language: Language
  /** Where customers talk: in direct messages, or in a private thread of their own below `orders`. */
  readonly talks: 'direct' | 'thread'
  readonly bench: string | null
  readonly owner: string | null
  readonly orders: string | null
  readonly staffRoles: readonly string[]
  readonly ownerRoles: readonly string[]
}
export type GuildChange = Partial<Omit<GuildSettings, 'guild' | 'shop' | 'name'>>

/** One customer's conversation with one shop, and the platform's channel it is held in. */
export type Talk = {
  readonly shop: string
  readonly conversation: string
  readonly person: string
  readonly channel: string
  readonly language: Language
  /** Its order was handed over or cancelled: what is said is still heard, and a new order is a new talk. */
  readonly over: boolean
}

/** Somebody in a shop's server; null: neither staff nor owner there. */
export type Actor = { readonly shop: string; readonly person: PlatformPerson; readonly role: Role | null }

/**
 * `refused`: not theirs to do, or not now; the desk has written it down. `known`: this delivery was heard before. `said` and
 * `shown` are for the one who did it, nobody else sees them.
 */
export type Outcome = {
  readonly outcome: 'done' | 'refused' | 'known'
  readonly said: string | null
  readonly shown: Message | null
}

export const commandWords = ['order', 'status', 'tickets', 'morning', 'load', 'setup'] as const
export type CommandWord = (typeof commandWords)[number]

/** What keeps a message from standing where it should; staff are told in words. */
export const postingTroubles = [
  'channel-not-chosen',
  'channel-gone',
  'no-access',
  'direct-closed',
  'message-gone',
  'refused-by-platform',
] as const
export type PostingTrouble = (typeof postingTroubles)[number]

/** A delivery that will never arrive as it is: trying again is of no use, a person has to look. */
export class Undeliverable extends Hopeless {
  readonly trouble: PostingTrouble
  constructor(trouble: PostingTrouble, options?: ErrorOptions) {
    super(`the message cannot be delivered: ${trouble}`, options)
    this.trouble = trouble
  }
}

/** One message of the platform. A long delivery has several parts; `nonce` is the delivery's. */
export type PostingKey = { readonly shop: string; readonly nonce: string; readonly part: number }
export type PostingRecord = {
  /** The channel of the first lease; the message stays there. */
  readonly channel: string
  /** 1, and one more each time staff have the message posted again. */
  readonly round: number
  /** Epoch ms of the first attempt of this round, null before it. */
  readonly firstAttemptAt: number | null
  readonly message: string | null
  /** Hash of the body that stands there. */
  readonly body: string | null
  /** Raised by every lease: whoever holds an older one may no longer write. */
  readonly fence: number
}
export type Held = PostingKey & { readonly fence: number }

/** Records of what was posted; each call is one committed transaction. */
export type Postings = {
  /** Makes the record when there is none and takes it; null while somebody else's lease runs (`until` is epoch ms). */
  lease(
    key: PostingKey,
    wanted: { readonly channel: string; readonly now: number; readonly until: number },
  ): Promise<PostingRecord | null>
  /** Commits the moment of the first attempt, unless one is there, and makes the lease longer; false: the lease was lost. */
  attempt(held: Held, at: number, until: number): Promise<boolean>
  record(held: Held, posted: { readonly message: string; readonly body: string }): Promise<boolean>
  release(held: Held): Promise<void>
  /** How many parts of a delivery have a record. */
  parts(shop: string, nonce: string): Promise<number>
  /** Forgets the record of one part whose message was taken away. */
  drop(held: Held): Promise<void>
}

export type PlatformDesk = {
  /** null: this server was not set up yet. */
  guild(guild: string): Promise<GuildSettings | null>
  /** Keeps what the set-up dialogue chose; the first time it makes the shop. */
  setUp(guild: { readonly id: string; readonly name: string }, by: PlatformPerson, change: GuildChange): Promise<GuildSettings>
  /** Shops in which this person has or had a conversation, the latest first. */
  shopsOf(person: string): Promise<readonly { readonly guild: string; readonly name: string }[]>
  /** All servers that are set up. */
  guilds(): Promise<readonly { readonly guild: string; readonly name: string }[]>
  /** The person's running conversation with this shop; with no shop given, the one used last. */
  talkOf(person: string, shop: string | null): Promise<Talk | null>
  /** The conversation held in a channel: the one that this message of ours belongs to, else the one used last there. */
  talkIn(channel: string, message: string | null): Promise<Talk | null>
  /** Starts a conversation, or goes on with the running one in this channel. The desk greets by a delivery. */
  openTalk(shop: string, person: PlatformPerson, channel: string): Promise<Talk>
  /** Something the customer did in their conversation. Attachments were kept before with `keepFile`. */
  hear(talk: Talk, by: PlatformPerson, incoming: Incoming): Promise<Outcome>
  /** Something done in the shop's own channels or by its commands (`c:<word>`, with options as a form of that id). */
  act(actor: Actor, incoming: Incoming): Promise<Outcome>
  /** Whether this action or form must show a form first; answered from the id alone, at once. */
  opensForm(id: string): boolean
  /** The form of an action or of a message, with its choices of now; null: not theirs, or gone. */
  form(asker: Talk | Actor, id: string): Promise<Form | null>
  /** Completions of a command's option, best first. */
  suggest(
    actor: Actor,
    typed: { readonly command: CommandWord; readonly option: string; readonly text: string },
  ): Promise<readonly string[]>
  /** Files are kept for the channel they came in, and read from a channel that shows them. */
  keepFile(shop: string, channel: Channel, file: StoredFile): Promise<{ readonly id: string }>
  file(shop: string, channel: Channel, id: string): Promise<StoredFile | null>
  /** The platform's channel for a channel of ours. */
  placeOf(shop: string, channel: Channel): Promise<{ readonly channel: string; readonly language: Language } | null>
  /** A message could not stand where it should; `about` names it for staff. */
  troubled(
    shop: string,
    trouble: { readonly code: PostingTrouble; readonly channel: Channel; readonly nonce: string },
  ): Promise<{ readonly about: string | null }>
  readonly postings: Postings
}
