import type { Phrases } from './phrases.ts'

/**
 * A list that is spoken into the phone: `figures` by their word; `nought` where it stands before a figure ("oh seven"), `twice` before a
 * figure that is said once, what joins tens and ones; words that lead to a jersey number and articles that may; `being` what leads on to a
 * player's name or size, `between` small words in a player's stretch, `owner` before `kin`; `sizeHolds` what stands between a size and its numbers; people are counted by `some` and `further`, and are told with their size behind `wearing`, `people` whose name is a cut, a man under other names, `fellow`, the first of which is a cut; `behind` what joins two players; words that take somebody
 * off. `stop` and `comma` are patterns of signs that are spoken, `spelling` of what leads to single letters.
 * `writing` are words behind which what is to be printed stands as it is said, `manyOf` articles of several; `doubled` and `tripled` sizes, `lettered` a size told by its letters.
 */
export type DictationPhrases = Phrases<
  | 'nought'
  | 'twice'
  | 'tensJoin'
  | 'lead'
  | 'article'
  | 'being'
  | 'between'
  | 'owner'
  | 'kin'
  | 'behind'
  | 'off'
  | 'stop'
  | 'comma'
  | 'spelling'
  | 'some'
  | 'further'
  | 'wearing'
  | 'fellow'
  | 'people'
  | 'sizeHolds'
  | 'writing'
  | 'manyOf'
  | 'doubled'
  | 'tripled'
  | 'lettered'
>
