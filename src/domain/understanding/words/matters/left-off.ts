import type { Phrases } from './phrases.ts'

/**
 * What is not to be pressed, and where: words that refuse (`refusing`) and small ones between them and what they refuse (`between`), words
 * between that and its place (`at`), `off` behind what is named ("leave the names off"), a place that is to stay `blank`, and what else
 * may stand in such a clause (`beside`). Words for bringing it back (`bringing`). Words for none of the garments (`nowhere`), of which some say so only behind a "no" (`open`). Of some players: words before their number (`whose`) and behind it (`theirs`), words for a
 * part of a name (`ofName`), which is another matter, and words that put something back (`restoring`). Of an outline, a shadow or stones: phrases that take
 * them off by themselves (`lifting`) or say plainly that there are none (`bareOf`), verbs (`lifts`) that do so with a word behind
 * (`lifted`), what follows that which is to `goes`, small words around what is named (`amid`), words for what stands in its stead
 * (`inStead`), words that keep it: in front of such a verb (`keeps`), by
 * themselves (`keeping`), behind it (`stays`); words for it said again (`pronouns`), and words behind which something else is said (`turns`).
 */
export type LeftOffPhrases = Phrases<
  | 'refusing'
  | 'between'
  | 'nowhere'
  | 'bringing'
  | 'open'
  | 'at'
  | 'leaving'
  | 'off'
  | 'blank'
  | 'none'
  | 'beside'
  | 'whose'
  | 'theirs'
  | 'ofName'
  | 'restoring'
  | 'lifting'
  | 'bareOf'
  | 'lifts'
  | 'lifted'
  | 'goes'
  | 'amid'
  | 'inStead'
  | 'keeps'
  | 'turns'
  | 'keeping'
  | 'stays'
  | 'pronouns'
>
