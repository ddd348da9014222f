import type { Phrases } from './phrases.ts'

/**
 * A player told by another: a size that is the `sameAs` another's (or `alike`, where sizes are spoken of), or `whatever` another `wears`; words that lead `into` it, the `sizeOf`
 * another, which is that one's own where `isTold` follows. Who comes `insteadOf` somebody or is put there by `replacing` one `by` another; `leavesFor`
 * says it in words that are known. `none` of the `pieces` is nothing for somebody. The newcomer's name stands behind `before` or in front of `behind`, over `entering` words, with the `sameSize` or `sameNumber`.
 * Where players are told in turn, `inTurn` links what is told of one, `relatives` say who it is, `oneself` is who orders.
 */
export type LikeOtherPhrases = Phrases<
  | 'sameAs'
  | 'alike'
  | 'whatever'
  | 'wears'
  | 'into'
  | 'sizeOf'
  | 'isTold'
  | 'insteadOf'
  | 'replacing'
  | 'by'
  | 'leavesFor'
  | 'none'
  | 'pieces'
  | 'before'
  | 'behind'
  | 'entering'
  | 'inTurn'
  | 'relatives'
  | 'oneself'
  | 'sameSize'
  | 'sameNumber'
>
