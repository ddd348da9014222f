import type { Phrases } from './phrases.ts'

/**
 * How people give something that is there already another colour: small words that may stand beside it (`beside`), words that part one
 * thing from the next (`parting`), words for all of it that say that it stays (`staying`), words before the colour that gives way
 * ("than", "que": `than`), words of one that says why it gives way ("hard to read", `why`), and words that praise instead (`praising`).
 */
export type PartPhrases = Phrases<'beside' | 'parting' | 'staying' | 'than' | 'why' | 'praising'>
