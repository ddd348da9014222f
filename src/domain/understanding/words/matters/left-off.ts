import type { Phrases } from './phrases.ts'

/**
 * What is not to be pressed, and where: words that refuse (`refusing`) and small ones between them and what they refuse (`between`), words
 * between that and its place (`at`), `off` behind what is named ("leave the names off"), a place that is to stay `blank`, and what else
 * may stand in such a clause (`beside`). Of some players: words before their number (`whose`) and behind it (`theirs`), words for a
 * part of a name (`ofName`), which is another matter, and words that put something back (`restoring`).
 */
export type LeftOffPhrases = Phrases<
  'refusing' | 'between' | 'at' | 'leaving' | 'off' | 'blank' | 'beside' | 'whose' | 'theirs' | 'ofName' | 'restoring'
>
