import type { Order } from '../order/order.ts'
import type { PricePart } from '../price/price.ts'
import type { Problem } from '../result/result.ts'
import type { Language } from '../units/language.ts'
import { type Draft, emptyDraft } from './draft.ts'
import type { Json, Patch } from './patch.ts'

/** `earlier`: taken over from an earlier order and not said again. */
export type How = 'said' | 'assumed' | 'chosen' | 'corrected' | 'earlier'

/** Where in the order document a value stands, how we came by it, and the customer's words for it. */
export type Fact = { readonly path: string; readonly value: Json; readonly how: How; readonly quote: string }

/** One way to understand what was said, and what it would change. `say` names the reading for people, by code. */
export type Reading = { readonly value: string; readonly kind: ReadingKind; readonly patches: readonly Patch[] }
export type ReadingKind = 'moment' | 'day' | 'colour' | 'row' | 'fit' | 'word' | 'count' | 'class' | 'place' | 'face' | 'text'

/** A question with two or more answers that the customer's words leave open; nothing of it stands in the draft yet. */
export type Open = {
  readonly about: string
  readonly path: string
  readonly quote: string
  readonly readings: readonly Reading[]
}

export type Asked = { readonly code: string; readonly path: string; readonly readings?: readonly Reading[] }

export type Version = { readonly revision: number; readonly hash: string }

/** "Without the stones?": what would change, in the customer's words, and the order it would be. */
export type Variant = {
  readonly number: number
  readonly patches: readonly Patch[]
  readonly quote: string
  readonly order: Order
}

/** A word about the order that is not the order: kept, shown to staff. */
export type Kept = { readonly file: string; readonly kind: 'photo' | 'voice' | 'artwork' | 'other' }

/** What a turn can be taken back to. */
export type Past = Pick<Conversation, 'draft' | 'facts' | 'open'>

/** One customer's talk about one order; plain JSON, stored between messages. */
export type Conversation = {
  readonly version: 1
  readonly id: string
  readonly person: { readonly id: string; readonly name: string | null }
  readonly language: Language
  /** The customer has spoken, so the language is theirs. */
  readonly settled: boolean
  readonly draft: Draft
  readonly facts: readonly Fact[]
  readonly open: readonly Open[]
  readonly asked: Asked | null
  /** Questions put so far by code, so that none is put twice without need. */
  readonly put: { readonly [code: string]: number }
  /** What went out to be worked out and is not back yet. */
  readonly sent: Version | null
  readonly shown: Version | null
  /** All that was said when a proof was shown last, for the next one to say first what is different. */
  readonly read?: { readonly revision: number; readonly draft: Draft } | null
  /** What the proof shown last costs, in minor units. */
  readonly priced?: number | null
  /** Another make whose price was asked for; nothing of it stands in the draft. */
  readonly variant?: Variant | null
  readonly signed: Version | null
  readonly cancelled: boolean
  readonly kept: readonly Kept[]
  /** How an earlier order was asked for; the shop may hand it over later. */
  readonly earlier?: EarlierAsked | null
  /** What went wrong with an earlier order, as far as it was told in the messages just before. */
  readonly complaint?: Complaint | null
  readonly past: readonly Past[]
  readonly seen: readonly string[]
}

export const startConversation = (start: Pick<Conversation, 'id' | 'person' | 'language'>): Conversation => ({
  version: 1,
  ...start,
  settled: false,
  draft: emptyDraft,
  facts: [],
  open: [],
  asked: null,
  put: {},
  sent: null,
  shown: null,
  signed: null,
  cancelled: false,
  kept: [],
  past: [],
  seen: [],
})

/** An earlier order that this customer may see again: which one, all that was said of it, and the words that asked for it. */
export type Earlier = {
  readonly from: { readonly order: string; readonly revision: number }
  readonly draft: Draft
  readonly text: string
  /** One piece again ("he lost his jersey"), and not the whole list. */
  readonly single: boolean
  readonly without: readonly string[]
}

/** `text`: the customer's words, cut short; `single`: one piece of it again. */
export type EarlierAsked = Pick<Earlier, 'text' | 'single' | 'without'> & { readonly team: string | null }

export type SaidFile = {
  readonly name: string
  readonly mediaType: string
  readonly bytes: number
  /** Cells of a table, read elsewhere under limits. */
  readonly table?: readonly (readonly string[])[]
  readonly unread?: 'too-large' | 'broken' | 'not-a-table'
}

/** A line changed after its work had begun, what that takes, and what it costs in minor units. */
export type LateChange = {
  readonly row: {
    readonly line: number
    readonly number: string | null
    readonly name: string | null
    readonly fit: string | null
    readonly size: string | null
  }
  readonly needs: 'piece' | 'garment' | 'made'
  readonly amount: number
}

export type Quote = {
  /** Left out where nothing was begun. */
  readonly late?: readonly LateChange[]
  readonly price: {
    readonly total: number
    readonly parts: readonly {
      readonly code: PricePart['code']
      readonly what: string | null
      readonly quantity: number
      readonly amount: number
    }[]
  } | null
  readonly promise: {
    readonly feasible: boolean
    /** Wall-clock minutes in the shop's zone. */
    readonly promised: string | null
    readonly hangsOn: readonly { readonly code: 'sign-off' | 'garments' | 'materials'; readonly by: string }[]
    readonly freezesAt: string | null
  } | null
  readonly problems: readonly Problem[]
  readonly picture: string | null
}

export type Button = 'sign-off' | 'undo' | 'change' | 'person' | 'start-over' | 'cancel' | 'status'

export type Said = { readonly id: string } & (
  | { readonly kind: 'said'; readonly text: string; readonly files?: readonly SaidFile[] }
  | { readonly kind: 'pressed'; readonly action: Button; readonly revision?: number; readonly hash?: string }
  | { readonly kind: 'chose'; readonly value: string }
  | { readonly kind: 'filled'; readonly values: { readonly [field: string]: string } }
  | {
      readonly kind: 'priced'
      readonly number: number
      readonly total: number | null
      readonly promised: string | null
      readonly problems: readonly Problem[]
    }
  | { readonly kind: 'quoted'; readonly revision: number; readonly hash: string; readonly quote: Quote }
  /** The desk found the earlier order that was asked for, and this customer may see it. */
  | ({ readonly kind: 'earlier' } & Earlier)
  /** The shop found something out about the customer's things and proposes what to change; `quote` says what was done. */
  | { readonly kind: 'found'; readonly patches: readonly Patch[]; readonly quote: string }
)

export const complaintKinds = ['lift', 'stones-lost', 'crack', 'bleed', 'shine', 'shrink', 'wrong-name', 'other'] as const
export type Complaint = {
  readonly kind: (typeof complaintKinds)[number]
  readonly text: string
  readonly team?: string
  readonly numbers?: readonly string[]
  readonly names?: readonly string[]
  readonly washes?: number
  readonly drying?: string
}

/** What the conversation asks of the desk. */
export type Want =
  | { readonly kind: 'quote'; readonly order: Order; readonly revision: number; readonly hash: string }
  /** What the order would cost as the conversation's `variant` has it; `revision` is the one shown. */
  | { readonly kind: 'variant'; readonly revision: number }
  | { readonly kind: 'sign-off'; readonly order: Order; readonly revision: number; readonly hash: string }
  | { readonly kind: 'person'; readonly about: 'asked' | 'document' }
  | { readonly kind: 'status' }
  | { readonly kind: 'cancel' }
  /** `text`: the customer's words, cut short. */
  | { readonly kind: 'earlier-order'; readonly asks: EarlierAsked }
  /** `adds`: more about the complaint that is known already. */
  | { readonly kind: 'complaint'; readonly complaint: Complaint; readonly adds: boolean }
