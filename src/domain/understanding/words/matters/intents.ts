import type { Phrases } from './phrases.ts'

/**
 * What a message wants besides the order. `hesitates`, `undo` and `undoWhat` are the parts of a whole message that takes the last change back;
 * `language` asks the shop to speak this one; `asksPrice` and `ofPrice` are what a question of the price has beside the wish itself;
 * `single` is one lost piece of an earlier order, `withoutSeniors` leaves those out who have left; a plain answer may go on with
 * `yesMore` and `noMore`; `waits` is a whole message of somebody who wants to look or ask first; `business` are words of an order, so that what has one is not off the subject.
 */
export type IntentPhrases = Phrases<
  | 'hesitates'
  | 'undo'
  | 'undoWhat'
  | 'undoBoth'
  | 'startOver'
  | 'person'
  | 'status'
  | 'price'
  | 'asksPrice'
  | 'ofPrice'
  | 'opensWhatIf'
  | 'whatIf'
  | 'care'
  | 'photo'
  | 'thanks'
  | 'greets'
  | 'greetsMore'
  | 'rude'
  | 'earlier'
  | 'single'
  | 'withoutSeniors'
  | 'waits'
  | 'business'
  | 'yes'
  | 'yesMore'
  | 'no'
  | 'noMore'
  | 'language'
>
