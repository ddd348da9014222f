import type { Phrases } from './phrases.ts'

/**
 * Garments that the customer has, in patterns without accents: who `brings` them (`bringsThem` with those
 * that were named before) or only `has` them, what makes sure that they are there
 * (`sure`), `them` for garments that were named before; what is no garment though it is brought with one (`besides`); words that begin
 * another thing (`next`); words `that` join a garment to who brings it; words `before` a day; what is carried from the shop `elsewhere`; how it is said that garments are the customer's own (`own`).
 */
export type BroughtPhrases = Phrases<
  'brings' | 'bringsThem' | 'has' | 'sure' | 'them' | 'besides' | 'next' | 'that' | 'before' | 'elsewhere' | 'own'
>
