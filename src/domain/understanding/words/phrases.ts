/**
 * What people say of a matter in one language, by what it does there. Sources of regular expressions over folded text (lower case,
 * no accents) where the matter is read by pattern, and single words of it where it is read token by token. What a language has no
 * phrase for is an empty list.
 */
export type Phrases<Key extends string> = Readonly<Record<Key, readonly string[]>>

/**
 * What a message wants besides the order. `hesitates … because` are the parts of a whole message that takes the last change back;
 * `language` asks the shop to speak this one; `asksPrice` and `ofPrice` are what a question of the price has beside the wish itself;
 * `single` is one lost piece of an earlier order, `withoutSeniors` leaves those out who have left; a plain answer may go on with
 * `yesMore` and `noMore`.
 */
export type IntentPhrases = Phrases<
  | 'hesitates'
  | 'undo'
  | 'undoWhat'
  | 'was'
  | 'right'
  | 'before'
  | 'because'
  | 'startOver'
  | 'cancel'
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
  | 'yes'
  | 'yesMore'
  | 'no'
  | 'noMore'
  | 'language'
>

/**
 * What went wrong, and with what. `feared` makes it something that has not happened; `washes` are counted, and stand behind `washed`
 * and its object where a word like "twice" does; an owner's name has a word before or behind it; `numberSaid`, a `garment` or `onThe`
 * lead to a number of a jersey, which what is `counted` behind it is not. Owners and teams are looked for in the text as it is written.
 */
export type ComplaintPhrases = Phrases<
  | 'wrongName'
  | 'stonesLost'
  | 'lift'
  | 'crack'
  | 'bleed'
  | 'shine'
  | 'shrink'
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
  | 'number'
  | 'notNumber'
  | 'counted'
  | 'and'
  | 'teamIs'
  | 'teamArticle'
  | 'teamBeside'
  | 'links'
  | 'orders'
>

/** How often something was washed: words before "washes", and words that say it alone. */
export type WashCounts = {
  readonly before: Readonly<Record<string, number>>
  readonly behind: Readonly<Record<string, number>>
}

/**
 * Who orders, signs, pays and collects, in the text as it is written: a name has `particles` inside it, `shortened` words that keep
 * their full stop, and ends before `endsName`; `titles` and what is `ours` may stand before it. What a person does stands behind the
 * name (`orders`, `signs`, `pays`, `collects`) or before it (`signer` with `theirs` between, `signedBy`, `paidBy`, `collectedBy`).
 * `opens` and `closes` a message with its writer; `itIs … itIsFrom` holds a name in small letters. `body`: whole patterns, each with
 * one group, of a club or school that pays. `post`, `toField` and `collect` are looked for without accents.
 */
export type PeoplePhrases = Phrases<
  | 'particles'
  | 'shortened'
  | 'endsName'
  | 'titles'
  | 'ours'
  | 'nameIs'
  | 'iAm'
  | 'orders'
  | 'greets'
  | 'comesFrom'
  | 'opens'
  | 'itIs'
  | 'itIsFrom'
  | 'closes'
  | 'signs'
  | 'signer'
  | 'theirs'
  | 'signedBy'
  | 'pays'
  | 'paidBy'
  | 'collects'
  | 'collectedBy'
  | 'notNames'
  | 'body'
  | 'post'
  | 'toField'
  | 'collect'
>

/** Paying, without accents: an order number and what stands before it, a deposit with its amount, what was given, an account. */
export type MoneyPhrases = Phrases<
  | 'orderNumber'
  | 'orderNumberIs'
  | 'taxExempt'
  | 'deposit'
  | 'down'
  | 'asDeposit'
  | 'of'
  | 'currency'
  | 'gives'
  | 'paid'
  | 'onAccount'
>
