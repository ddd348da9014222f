import type { Phrases } from './phrases.ts'

/**
 * Things that are no garment of a press for shirts, in patterns without accents: the `things` themselves (plural alone where one of them may be
 * drawn on a shirt), words that `want` them, amounts of them (`some`), small words that may stand between (`between`) and those that speak of them in passing
 * (`passing`); what is `drawn` of them; garments `ofCloth` that no press here takes.
 */
export type ElsewherePhrases = Phrases<'things' | 'wants' | 'some' | 'between' | 'passing' | 'drawn' | 'ofCloth'>
