import type { PlaceId } from '../garment/place.ts'

/** What became different since the revision that this one replaces. */
export type Change =
  | { readonly kind: 'row-added' | 'row-dropped'; readonly line: number; readonly row: string }
  | {
      readonly kind: 'row-changed'
      readonly line: number
      readonly field: 'number' | 'name' | 'size' | 'garment' | 'quantity' | 'extras' | 'note'
      readonly was: string
      readonly now: string
    }
  | { readonly kind: 'order-changed'; readonly field: ChangedField; readonly was: string; readonly now: string }

export type ChangedField = 'needBy' | 'handOver' | 'garments' | 'decorations' | 'rulebook' | 'notes'

/** A piece already made that must not be used: the line it was for and what it says. */
export type ThrowAway = {
  readonly line: number
  readonly place: PlaceId
  readonly text: string
  readonly state: 'cut' | 'pressed'
}
