import type { Problem } from '../result/result.ts'
import type { Language } from '../units/language.ts'
import type { Button, Complaint, LateChange, Quote } from './conversation.ts'
import type { Known } from './known.ts'
import type { Json } from './patch.ts'

/** The list that is read back: the document as far as known, a day that has no hour yet, and what nobody said. */
export type Tidy = {
  readonly order: Known
  readonly day: string | null
  readonly assumed: readonly string[]
  /** Paths of what was taken over from an earlier order and not said again. */
  readonly taken: readonly string[]
  readonly later: readonly string[]
}

export type RowFacts = {
  readonly line: number
  readonly number: string | null
  readonly name: string | null
  readonly fit: string | null
  readonly size: string | null
}

/** `place`: where on the garment, of what is put on. */
export type Changed = {
  readonly path: string
  readonly was: Json
  readonly now: Json
  readonly row: RowFacts | null
  readonly place?: string | null
}

export type Since = { readonly revision: number; readonly changes: readonly Changed[] }

/** What the conversation can answer, by code, with the facts its sentence needs. */
export type Replies = {
  greeting: Record<never, never>
  understood: Tidy
  changed: { readonly changes: readonly Changed[] }
  /** What the order was before and is now: what nobody had said before is read back. */
  noted: { readonly before: Tidy; readonly now: Tidy }
  undone: Record<never, never>
  'nothing-to-undo': Record<never, never>
  'ask-garment': { readonly garments: readonly string[] }
  'ask-decoration': Record<never, never>
  'ask-text': { readonly place: string }
  'ask-day': Record<never, never>
  'ask-hour': { readonly day: string }
  'ask-roster': Record<never, never>
  'ask-garment-colour': { readonly garment: string; readonly colours: readonly string[] }
  'ask-vinyl-colour': { readonly content: string; readonly colours: readonly string[] }
  'ask-numbers': { readonly rows: readonly RowFacts[] }
  'ask-names': { readonly rows: readonly RowFacts[] }
  'ask-garment-sizes': { readonly garment: string }
  'ask-sizes': { readonly rows: readonly RowFacts[] }
  'ask-fit': { readonly rows: readonly RowFacts[] }
  'ask-cloth': { readonly garment: string }
  'ask-team': Record<never, never>
  'ask-sport': Record<never, never>
  'ask-ages': { readonly stones: boolean }
  'ask-ages-rows': { readonly rows: readonly RowFacts[] }
  'ask-who': Record<never, never>
  'ask-reading': { readonly about: string; readonly quote: string }
  /** `known`: the shop has that face, but it is not made for numbers. */
  'ask-face': { readonly quote: string; readonly known: boolean }
  /** A name that stood in two cells, in its first line's words. */
  'ask-name-order': { readonly quote: string }
  'ask-drop': { readonly quote: string }
  'raise-duplicate-number': { readonly number: string; readonly rows: readonly RowFacts[] }
  'raise-same-surname': { readonly name: string; readonly rows: readonly RowFacts[] }
  'raise-count': { readonly said: number; readonly rows: number }
  'working-it-out': { readonly revision: number }
  proof: Tidy & {
    readonly revision: number
    readonly price: Quote['price']
    readonly promise: Quote['promise']
    readonly late: readonly LateChange[]
    /** What is different from the proof before it. */
    readonly since?: Since | null
  }
  'cannot-be-made': { readonly revision: number }
  'proof-outdated': Record<never, never>
  signed: { readonly revision: number }
  'not-signed-change': Record<never, never>
  'not-signed-unclear': { readonly revision: number }
  'not-signed-nothing-shown': Record<never, never>
  'already-signed': { readonly revision: number }
  'off-topic': Record<never, never>
  rude: Record<never, never>
  'not-understood': Record<never, never>
  thanks: Record<never, never>
  'file-kept': { readonly file: string; readonly kind: 'photo' | 'voice' | 'artwork' | 'other' }
  'file-unread': { readonly file: string; readonly why: 'too-large' | 'broken' | 'not-a-table' }
  'not-read-photo': Record<never, never>
  'artwork-said': Record<never, never>
  'rulebook-unknown': { readonly name: string }
  'not-pressed-here': { readonly words: readonly string[] }
  'roster-read': {
    readonly rows: number
    readonly withoutName: number
    readonly withoutNumber: number
    readonly withoutSize: number
  }
  'not-decided': { readonly words: readonly string[] }
  'words-unheard': { readonly words: readonly string[] }
  'layers-alike': { readonly words: readonly string[] }
  'which-of-them': { readonly words: readonly string[] }
  'lines-unread': { readonly lines: readonly string[] }
  'text-cut': { readonly characters: number }
  'complaint-noted': { readonly complaint: Complaint }
  'earlier-order-noted': { readonly team: string | null }
  /** Asked for in the talk of an order that is signed. */
  'earlier-order-elsewhere': Record<never, never>
  'earlier-order-taken': { readonly team: string; readonly lines: number; readonly single: boolean }
  'ask-leaving': { readonly lines: number; readonly seniors: boolean }
  'ask-sizes-again': Record<never, never>
  'ask-whose': Record<never, never>
  'status-asked': Record<never, never>
  'cancel-asked': { readonly signed: boolean }
  cancelled: Record<never, never>
  'person-called': { readonly ask: string }
  'started-over': Record<never, never>
  'language-chosen': { readonly language: Language }
  'price-with-proof': Record<never, never>
  'price-now': { readonly total: number | null }
  'variant-asked': Record<never, never>
  'variant-price': {
    readonly quote: string
    readonly total: number
    readonly present: number | null
    readonly promised: string | null
  }
  'variant-refused': { readonly quote: string }
  'kept-as-is': Record<never, never>
  /** A button of a question that is answered or no longer asked. */
  'already-answered': Record<never, never>
  /** What was said is what the order says already. */
  'already-so': Record<never, never>
  /** Who wants to look or ask first. */
  'no-hurry': Record<never, never>
  'earlier-mentioned': Record<never, never>
  care: Record<never, never>
}
export type ReplyCode = keyof Replies

/** What stands on a button or in a choice, by code. */
export type Label =
  | { readonly code: 'button'; readonly action: Button; readonly revision: number | null }
  | {
      readonly code: 'moment' | 'day' | 'colour' | 'fit' | 'class' | 'place' | 'face' | 'garment' | 'count' | 'answer' | 'text'
      readonly value: string
    }
  | { readonly code: 'row'; readonly row: RowFacts }

export type Action = { readonly action: Button; readonly label: Label; readonly revision?: number; readonly hash?: string }
export type Choice = { readonly value: string; readonly label: Label }
export type FormField = { readonly field: string; readonly kind: 'line' | 'lines' | 'day' | 'hour' }

/** One message to the customer, without its sentence. */
export type Reply = {
  [Code in ReplyCode]: {
    readonly code: Code
    readonly facts: Replies[Code]
    readonly problems?: readonly Problem[]
    readonly picture?: string
    readonly actions?: readonly Action[]
    readonly choices?: readonly Choice[]
    readonly form?: readonly FormField[]
  }
}[ReplyCode]
