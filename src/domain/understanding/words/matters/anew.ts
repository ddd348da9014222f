import type { Phrases } from './phrases.ts'

/**
 * Amounts of counted sizes said anew, word by word: what stands between (`being`, `fillers`), an amount taken back (`not`, `notOf`,
 * `insteadLead`, `notFirst`, `wasOf`, `butNow`), told so (`told`, `toldOf`), from one to another, `more` or `fewer`, `another` one, `raising`; words that make a
 * size counted again a change (`changing`) or one more (`adding`); `sentence` words of changes are no names. `inAll` and `besides` are
 * patterns of an answer.
 */
export type AnewPhrases = Phrases<
  | 'being'
  | 'fillers'
  | 'not'
  | 'notOf'
  | 'insteadLead'
  | 'told'
  | 'toldOf'
  | 'notFirst'
  | 'wasOf'
  | 'butNow'
  | 'from'
  | 'to'
  | 'ends'
  | 'more'
  | 'fewer'
  | 'moreOf'
  | 'another'
  | 'raising'
  | 'changing'
  | 'adding'
  | 'joining'
  | 'sentence'
  | 'inAll'
  | 'besides'
>
