import type { Phrases } from './phrases.ts'

/**
 * A size said of somebody named before: words that turn to it (`turning`, the pattern `clitic`), `small` words, what refuses it, who is
 * spoken of and what joins them; a letter that a name has twice, or at its end; a number of somebody who is put on the list.
 * A piece more for one player, in patterns without accents: what they do (`wearing`), what is given (`giving`, with `givenTo` before whom),
 * how many (`pieces`, with figures `figuredPieces`, `furtherPiece` where nothing is said of it), what they are called (`garment`) and what is none (`noPiece`), whom it is `forWhom`; `sizesBeside` are small words between their sizes.
 */
export type AgainPhrases = Phrases<
  | 'turning'
  | 'small'
  | 'refusing'
  | 'pronouns'
  | 'clitic'
  | 'of'
  | 'to'
  | 'joins'
  | 'twice'
  | 'end'
  | 'addedNumber'
  | 'and'
  | 'wearing'
  | 'giving'
  | 'givenTo'
  | 'pieces'
  | 'figuredPieces'
  | 'furtherPiece'
  | 'garment'
  | 'noPiece'
  | 'forWhom'
  | 'sizesBeside'
>
