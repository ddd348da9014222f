import type { Phrases } from './phrases.ts'

/**
 * Words to be pressed: capitals that are none (`notText`), words behind a shouted vinyl that say where it goes (`placing`), words that
 * tell what to write (`writing`, `telling`; `leading` between such a word and what it tells; `reported` only where a text or a place stands with them) and small words inside such a name; behind `yearly` words stands a year. Behind a figure, what makes an ordinal of it (`ordinals`) or is counted by it (`counted`); a `year` that is to be pressed.
 */
export type WrittenPhrases = Phrases<
  | 'notText'
  | 'placing'
  | 'writing'
  | 'isIn'
  | 'telling'
  | 'leading'
  | 'reported'
  | 'small'
  | 'yearly'
  | 'ordinals'
  | 'counted'
  | 'year'
>
