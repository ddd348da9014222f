import type { Phrases } from './phrases.ts'

/**
 * How people give something that is there already another colour: small words that may stand beside it (`beside`), words that part one
 * thing from the next (`parting`), words for all of it that say that it stays (`staying`), words before the colour that gives way
 * ("than", "que": `than`), words of one that says why it gives way ("hard to read", `why`), and words that praise instead (`praising`). What a
 * change does not touch: words in front of it or behind ("not the front ones", `sparing`), with words for the ones (`ones`). A side
 * that is one only beside a height ("20 cm behind", `behind`).
 * A refusal at the end (`refusedBehind`; `refusedIdly` before more words) of a clause that names a place behind `refusedLead`, and how it is
 * said in front: of a side, inside, on a place (`nothingThere`; `sideWords`, `placeArticle`).
 * Words by which some players have a word of their own (`wearing`). Words before a place that is only compared with ("silver like the front", `likewise`).
 * What somebody else asked for and was refused: who opens such a sentence (`somebody`), how it was asked (`asking`), and words for
 * those who order (`weMean`).
 */
export type PartPhrases = Phrases<
  | 'beside'
  | 'parting'
  | 'staying'
  | 'than'
  | 'why'
  | 'praising'
  | 'sparing'
  | 'ones'
  | 'wearing'
  | 'likewise'
  | 'behind'
  | 'refusedBehind'
  | 'refusedIdly'
  | 'refusedLead'
  | 'nothingThere'
  | 'noNumberThere'
  | 'sideWords'
  | 'placeArticle'
  | 'somebody'
  | 'asking'
  | 'weMean'
>
