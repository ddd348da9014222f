import type { Language } from '../units/language.ts'
import type { Complaint, EarlierAsked, Open } from './conversation.ts'
import type { Patch } from './patch.ts'

/** What a message is about when it is not (only) about the order. */
export type Intent =
  | { readonly kind: 'order' }
  | {
      readonly kind:
        | 'greeting'
        | 'thanks'
        | 'status'
        | 'off-topic'
        | 'rude'
        | 'price'
        | 'what-if'
        | 'care'
        | 'photo'
        | 'person'
        | 'waits'
        | 'earlier-mentioned'
        | 'cancel'
        | 'start-over'
        | 'yes'
        | 'no'
    }
  /** The last change is taken back; `both`, the last two. */
  | { readonly kind: 'undo'; readonly both?: true }
  | { readonly kind: 'complaint'; readonly complaint: Complaint }
  | { readonly kind: 'earlier-order'; readonly asks: EarlierAsked }
  | { readonly kind: 'language'; readonly language: Language }

/** `clear`: these words and nothing else sign; `unclear`: something like it (a thumbs-up, "looks great"). */
export type Signing = 'clear' | 'unclear' | null

export type Understood = {
  readonly patches: readonly Patch[]
  /** What can be read in more than one way. */
  readonly open: readonly Open[]
  readonly intent: Intent
  readonly signing: Signing
  /** The revision that the signing words name. */
  readonly revision: number | null
  /** A question to the shop stands in the message, so that it signs nothing. */
  readonly asks: boolean
  readonly language: Language | null
  /** The message was longer than is read. */
  readonly cut: boolean
  /** What a question of the price with another make would change; null where none was asked. */
  readonly variant: readonly Patch[] | null
  /** Lines beside the roster that look like players and could not be read. */
  readonly unread: readonly string[]
  /** Clauses of a correction that tell of the list and were used by nothing. */
  readonly unheard: readonly string[]
  /** What may yet come, in the customer's words: nothing of it is on the list. */
  readonly undecided: readonly string[]
  /** Clauses that ask of some players what all pieces have alike: their stones, an outline, a shadow. */
  readonly alike: readonly string[]
  /** Clauses that give another make to some pieces and do not say whose. */
  readonly which: readonly string[]
  /** What is wanted that is no garment of this trade, in the customer's words. */
  readonly elsewhere: readonly string[]
  /** A drawing was spoken of, which a person looks at. */
  readonly artwork: boolean
  /** Letters of a rule book that the shop has not for that sport. */
  readonly book: string | null
  /** Rows that were read from a pasted list. */
  readonly pasted: number
}

export const nothing: Understood = {
  patches: [],
  open: [],
  intent: { kind: 'order' },
  signing: null,
  revision: null,
  asks: false,
  language: null,
  cut: false,
  variant: null,
  unread: [],
  unheard: [],
  undecided: [],
  alike: [],
  which: [],
  elsewhere: [],
  artwork: false,
  book: null,
  pasted: 0,
}
