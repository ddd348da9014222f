import type { Language } from '../domain/units/language.ts'
import type { Minutes } from '../domain/units/units.ts'
import type { Kept, Seen } from './keeping.ts'

export type StoredConversation = {
  readonly conversationId: string
  readonly state: unknown
  readonly version: number
}
export type Conversations = {
  add(conversationId: string, state: unknown): Kept<StoredConversation>
  read(conversationId: string): Promise<StoredConversation | null>
  save(seen: Seen, state: unknown): Kept<Seen>
  /** Its language alone. */
  language(conversationId: string): Promise<Language | null>
  /** The conversation that a customer's key opens, by the key's hash. */
  openedBy(hash: string, now: Minutes): Promise<{ readonly conversationId: string; readonly language: Language } | null>
}

/** A message of a channel. `seq` is its place; `changed` is raised by every edit, so that readers can ask what is new. */
export type StoredMessage = {
  readonly messageId: string
  readonly channel: string
  readonly seq: number
  readonly changed: number
  readonly edits: number
  readonly by: string
  /** When it was first said, in epoch milliseconds of the shop's time. */
  readonly at: number
  readonly body: unknown
}
export type Posting = { readonly channel: string; readonly nonce: string; readonly by: string; readonly body: unknown }
export type Messages = {
  /** The same nonce is the same message for good: an equal body changes nothing, another one edits it in place. */
  put(posting: Posting): Promise<{ readonly messageId: string; readonly outcome: 'posted' | 'edited' | 'already-there' }>
  /** The same, for who need not know what became of it. */
  say(posting: Posting): Promise<void>
  of(nonce: string): Promise<StoredMessage | null>
  /** In their places' order. */
  after(channel: string, changed: number): Promise<readonly StoredMessage[]>
  /** What stands in a channel with any of these words in it. */
  naming(channel: string, words: readonly string[]): Promise<readonly { readonly nonce: string; readonly body: unknown }[]>
}

/** What was posted in a chat that keeps its own messages: which nonce became which message there. */
export type PostedNotes = {
  read(nonce: string): Promise<{ readonly messageId: string; readonly hash: string } | null>
  note(nonce: string, posted: { readonly messageId: string; readonly hash: string }): Promise<void>
}

export type StoredBytes = { readonly name: string; readonly mime: string; readonly bytes: Uint8Array }
/** The kind of a file, and how many bytes it has. */
export type FileMark = { readonly mime: string; readonly size: number }
export type HashedFile = StoredBytes & { readonly hash: string }
/** Files by the hash of their bytes. `owner` is what shows it: a channel, or `order:<id>`. */
export type Files = {
  keep(owner: string, file: HashedFile): Promise<void>
  show(owner: string, hash: string): Promise<void>
  /** That owner shows it no more; the bytes go with the last one who did. */
  hide(owner: string, hash: string): Promise<void>
  /** Lets another owner show it by a name of its own; null when this owner shows no such file. */
  share(owner: string, hash: string, other: { readonly owner: string; readonly name: string }): Promise<FileMark | null>
  /** What it is, without its bytes. */
  mark(owner: string, hash: string): Promise<FileMark | null>
  /** null when that owner shows no such file. */
  read(owner: string, hash: string): Promise<StoredBytes | null>
  ofOwner(owner: string): Promise<readonly { readonly hash: string; readonly name: string; readonly mime: string }[]>
}

export const roles = ['owner', 'staff'] as const
export type StoredMember = { readonly memberId: string; readonly name: string; readonly role: (typeof roles)[number] }
export type Members = {
  add(member: StoredMember): Kept<StoredMember>
  read(memberId: string): Promise<StoredMember | null>
  list(): Promise<readonly StoredMember[]>
  /** Whoever is gone from the list is let in by nothing any more. */
  remove(memberId: string): Promise<void>
}

/** A secret by its hash: a one-time link, a pairing code, a session, a customer's link. `holder` is who it lets in. */
export type Key = {
  readonly hash: string
  readonly kind: 'owner-link' | 'pairing' | 'session' | 'customer' | 'calendar'
  readonly holder: string
  readonly until: Minutes | null
}
/** Keys let real people in: their minutes are the machine's. */
export type Keys = {
  add(key: Key): Promise<void>
  read(kind: Key['kind'], hash: string, now: Minutes): Promise<string | null>
  /** As `read`, and the key is gone afterwards: of two that use it at once one gets null. */
  use(kind: Key['kind'], hash: string, now: Minutes): Promise<string | null>
  drop(kind: Key['kind'], hash: string): Promise<void>
  /** Deletes every key whose time is over; answers how many. */
  sweep(now: Minutes): Promise<number>
  /** Takes all keys of a kind away that let this holder in. */
  revoke(kind: Key['kind'], holder: string): Promise<void>
}
