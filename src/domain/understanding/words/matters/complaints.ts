import type { Phrases } from './phrases.ts'

/**
 * What went wrong, and with what, or that something did (`otherTrouble`). `feared` makes it something that has not happened; `washes` are counted, and stand behind `washed`
 * and its object where a word like "twice" does; an owner's name has a word before or behind it; `numberSaid`, a `garment` or `onThe`
 * lead to a number of a jersey, which what is `counted` behind it is not; a list of numbers stands behind `onPieces`; a `pair` says two; `pointing` words lead to it where a complaint was made right before. A number was `mistaken`, is put right by `meaning` another, is not
 * meant (`denying`), or nothing happened to it (`unharmed`). Owners and teams are looked for in the text as it is written.
 */
export type ComplaintPhrases = Phrases<
  | 'wrongName'
  | 'stonesLost'
  | 'lift'
  | 'crack'
  | 'bleed'
  | 'shine'
  | 'shrink'
  | 'otherTrouble'
  | 'feared'
  | 'unwashed'
  | 'washes'
  | 'washed'
  | 'washedWhat'
  | 'air'
  | 'dryer'
  | 'beforeOwner'
  | 'behindOwner'
  | 'numberSaid'
  | 'garment'
  | 'of'
  | 'theNumber'
  | 'onThe'
  | 'onPieces'
  | 'number'
  | 'pointing'
  | 'notNumber'
  | 'counted'
  | 'pair'
  | 'and'
  | 'teamIs'
  | 'teamArticle'
  | 'teamBeside'
  | 'links'
  | 'madeBefore'
  | 'wantsAgain'
  | 'orders'
  | 'mistaken'
  | 'meaning'
  | 'denying'
  | 'unharmed'
>

/** How often something was washed: words before "washes", and words that say it alone. */
export type WashCounts = {
  readonly before: Readonly<Record<string, number>>
  readonly behind: Readonly<Record<string, number>>
}
