import type { Phrases } from './phrases.ts'

/**
 * Things that are no garment of a press for shirts, in patterns without accents: the `things` themselves (plural alone where one of them may be
 * drawn on a shirt), words that `want` them and amounts of them (`some`), words that speak of them in `passing` where they stand before them; how
 * one is `drawn`; garments `ofCloth` that no press here takes.
 */
export type ElsewherePhrases = Phrases<'things' | 'wants' | 'some' | 'passing' | 'drawn' | 'ofCloth'>
