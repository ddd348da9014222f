import type { Phrases } from './phrases.ts'

/**
 * Players and sizes in sentences, word by word: `opening` words are no names, `fillers` stand between a name, its number and its size,
 * `numbered` words before a number of one player, of which the `loose` may be articles; `ofMany` stands before a team's name, not a player's; ranges go `through`, leave out behind `leftOut`,
 * are new behind `intro` or `introColon` or from `rangeFrom` to `rangeTo` (no `lengthUnits` behind; figures before `isLength` are heights), and `areSized`. Counted sizes: `one` of a
 * size, `notAmount` before a figure, `tallyFillers` between, `all` of a cut. Everybody's size: `every`, `between`, `except`, words that make a
 * cut everybody's (`sizing`, `sizes`); so many of the `rest` or apart. `extra` large, `sizeLead` before a size and `cutLead` before a cut. `openers` begin a sentence, `cutWords` stand before a size, and
 * `shortened` words keep their full stop: patterns, like `forEach` with `forEachDoes` and `numbersSaid`.
 */
export type PlayerPhrases = Phrases<
  | 'opening'
  | 'fillers'
  | 'takenBack'
  | 'added'
  | 'loose'
  | 'sure'
  | 'ofMany'
  | 'numbered'
  | 'upTo'
  | 'years'
  | 'through'
  | 'and'
  | 'leftOut'
  | 'butNot'
  | 'leftOutLead'
  | 'from'
  | 'intro'
  | 'introColon'
  | 'rangeFrom'
  | 'rangeTo'
  | 'lengthUnits'
  | 'isLength'
  | 'areSized'
  | 'one'
  | 'notAmount'
  | 'tallyFillers'
  | 'all'
  | 'except'
  | 'apart'
  | 'rest'
  | 'every'
  | 'exceptAlso'
  | 'between'
  | 'strangerLead'
  | 'sizing'
  | 'sizeNoun'
  | 'sizeOf'
  | 'sizes'
  | 'forEach'
  | 'forEachDoes'
  | 'extra'
  | 'cutLead'
  | 'sizeLead'
  | 'openers'
  | 'shortened'
  | 'cutWords'
  | 'numbersSaid'
>
