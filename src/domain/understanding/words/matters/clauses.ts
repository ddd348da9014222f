import type { Phrases } from './phrases.ts'

/**
 * What a clause tells of somebody on the list, in words nobody foresaw. `old` words stand right before a value that is no more, with
 * `small` words between; `unsure` words make it a question, `polite` ones do not; `he` is one who was spoken of, `they` are several;
 * `closing` words may stand behind a value that ends its phrase; `noNumber` words before a figure that is no player's number; a
 * `letter` of a spelling; `spelling`, which no size is told with; `print` words before a name that shall stand on a piece. `more` and
 * `fewer` of a counted size, `single` one of it; `ofCut` words behind a cut for what was counted of it; `newcomer` words where somebody is put on the list, `missing` where somebody was left out of it.
 */
export type ClausePhrases = Phrases<
  | 'old'
  | 'small'
  | 'unsure'
  | 'polite'
  | 'he'
  | 'they'
  | 'closing'
  | 'noNumber'
  | 'letter'
  | 'spelling'
  | 'print'
  | 'more'
  | 'fewer'
  | 'single'
  | 'plural'
  | 'ofCut'
  | 'newcomer'
  | 'missing'
>
