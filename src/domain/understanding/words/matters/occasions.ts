import type { Phrases } from './phrases.ts'

/** What of the list comes later: the parts of it, words for another time, and words that want it now (`needs`, but not `theList`). */
export type LaterPhrases = Phrases<
  'sizes' | 'names' | 'numbers' | 'list' | 'soon' | 'sends' | 'needs' | 'theList' | 'notYet' | 'gives' | 'others'
>

/** What the garments are needed for: what leads to an event, and events. */
export type OccasionPhrases = Phrases<'leads' | 'leadsMore' | 'article' | 'events'>
