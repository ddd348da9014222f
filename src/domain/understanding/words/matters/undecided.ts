import type { Phrases } from './phrases.ts'

/**
 * What is not decided yet, in patterns without accents: words that `doubt`, that open a `condition`, that say something is `open`, that keep
 * it from the list (`held`); words for pieces and players besides those that are there (`further`); `joins` begin a clause.
 */
export type UndecidedPhrases = Phrases<'doubt' | 'condition' | 'open' | 'held' | 'further' | 'joins'>
