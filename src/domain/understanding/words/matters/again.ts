import type { Phrases } from './phrases.ts'

/**
 * A size said of somebody named before: words that turn to it (`turning`, the pattern `clitic`), `small` words, what refuses it, who is
 * spoken of and what joins them; a letter that a name has twice, or at its end; a number of somebody who is put on the list.
 */
export type AgainPhrases = Phrases<
  'turning' | 'small' | 'refusing' | 'pronouns' | 'clitic' | 'of' | 'to' | 'joins' | 'twice' | 'end' | 'addedNumber' | 'and'
>
