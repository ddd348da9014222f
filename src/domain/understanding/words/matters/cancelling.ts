import type { Phrases } from './phrases.ts'

/**
 * How a whole order is given up: `anywhere` in a message, or `alone`, as a clause of its own behind words that open it (`opens`) and before what may
 * follow (`ends`). Behind `not` nothing is given up; `keeps` answers the question whether the order shall be cancelled with no.
 */
export type CancellingPhrases = Phrases<'anywhere' | 'alone' | 'opens' | 'ends' | 'not' | 'keeps'>
