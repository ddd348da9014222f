import type { Phrases } from './phrases.ts'

/**
 * What is told of a player of the list in any words. What makes a sentence no statement: `conditional` clauses (`conditionalFirst` where the word opens them), `doubting` words, what would be (`unreal` before no `wished` word, and `bursting`), and
 * questions but for `requests`; `kin` of a player are not the player. A size that is written out is one where neither `feeling` stands before
 * it nor another word than `tails` behind it, and the one that is meant where it stands behind `into`. A figure is a number behind
 * `wearing`, or behind `choosing` where `article` or its size says that it counts nothing. `tells` says something of whoever is named before it; `carrying` words lead to whom something is for; `naming` speaks of a name, `beforeLetter` of how it is spelled; a range goes `through`, or from `rangeFrom` to `rangeTo`;
 * a name begins like a surname with `surnameLeads`; `spoken` are words for whoever was named in the sentence before; `either` joins two of whom one is meant;
 * a size said with `alone` words and nobody named is the only player's, but not of `anotherOne`.
 */
export type ToldPhrases = Phrases<
  | 'conditional'
  | 'conditionalFirst'
  | 'doubting'
  | 'settled'
  | 'unreal'
  | 'wished'
  | 'bursting'
  | 'surname'
  | 'surnameLeads'
  | 'requests'
  | 'kin'
  | 'of'
  | 'feeling'
  | 'tails'
  | 'into'
  | 'wearing'
  | 'choosing'
  | 'article'
  | 'naming'
  | 'tells'
  | 'carrying'
  | 'beforeLetter'
  | 'through'
  | 'rangeFrom'
  | 'rangeTo'
  | 'spoken'
  | 'either'
  | 'alone'
  | 'anotherOne'
>
