import type { Language } from '../domain/units/language.ts'
/**
 * What people say and what they are told, whichever chat they use. `receive` lives in the service only; `deliver` may be
 * called by any process. Texts are finished and plain: an adapter escapes them for its own medium and renders nothing in them
 * as markup, link or mention.
 */
export type Attachment = { readonly file: string; readonly name: string; readonly mime: string; readonly bytes: number }

/** Something a person did. `id` is the delivery's own id: the same id may arrive twice and counts once. */
export type Incoming =
  | { readonly kind: 'said'; readonly id: string; readonly text: string; readonly files: readonly Attachment[] }
  | { readonly kind: 'pressed'; readonly id: string; readonly action: string }
  | { readonly kind: 'chose'; readonly id: string; readonly choice: string; readonly value: string }
  | { readonly kind: 'filled'; readonly id: string; readonly form: string; readonly values: { readonly [field: string]: string } }

export type Block =
  | { readonly kind: 'text'; readonly text: string; readonly tone: 'plain' | 'assumed' | 'caution' | 'stop' | 'good' }
  | { readonly kind: 'list'; readonly title: string | null; readonly items: readonly string[] }
  | {
      readonly kind: 'fields'
      readonly fields: readonly { readonly name: string; readonly value: string; readonly assumed: boolean }[]
    }
  | { readonly kind: 'table'; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] }
  | { readonly kind: 'progress'; readonly text: string; readonly done: number; readonly of: number }

/** An action carries ids only: `o:<order>:<action>:<revision>`, `t:<ticket>:<action>:<revision>` or `c:<word>`. */
export type Action = { readonly id: string; readonly label: string; readonly weight: 'main' | 'plain' | 'grave' }
export type Choice = {
  readonly id: string
  readonly label: string
  readonly options: readonly { readonly value: string; readonly label: string }[]
}
export type FormField = {
  readonly name: string
  readonly label: string
  readonly kind: 'line' | 'lines' | 'select' | 'file'
  readonly options: readonly { readonly value: string; readonly label: string }[]
  readonly required: boolean
}
export type Form = { readonly id: string; readonly title: string; readonly fields: readonly FormField[]; readonly submit: string }

export type Message = {
  readonly language: Language
  readonly blocks: readonly Block[]
  readonly picture: { readonly file: string; readonly alt: string } | null
  readonly file: Attachment | null
  /** Further papers beside the file, for chats that can show more than one. */
  readonly papers?: readonly Attachment[]
  readonly actions: readonly Action[]
  readonly choice: Choice | null
  readonly form: Form | null
}

/** Where a message goes: a customer's conversation, or a channel of the shop. */
export type Channel =
  | { readonly kind: 'conversation'; readonly id: string }
  | { readonly kind: 'shop'; readonly name: 'bench' | 'owner' }

/**
 * `nonce` names the message for good (same nonce, same message: delivering twice posts once; a new body with a known nonce
 * edits the message in place).
 */
export type Delivery = { readonly shop: string; readonly channel: Channel; readonly nonce: string; readonly message: Message }

export type Delivered = { readonly messageId: string; readonly outcome: 'posted' | 'edited' | 'already-there' }

export type Deliver = (delivery: Delivery) => Promise<Delivered>
