import type { Phrases } from './phrases.ts'

/**
 * Who orders, signs, pays and collects, in the text as it is written: a name has `particles` inside it, `shortened` words that keep
 * their full stop, and ends before `endsName`; `titles` and what is `ours` may stand before it, `fromPlace` (a room or a body) and `whoDoes` behind it. Where one is `notPaying` another `isIt`. What a person does stands behind the
 * name (`orders`, `signs`, `pays`, `collects`) or before it (`signer` with `theirs` between, `signedBy`, `paidBy`, `collectedBy`).
 * Somebody introduced (`isOurs`, `isPerson`) is who `heOrShe` speaks of; `iSign`, `iPay` and `iCollect` speak of who writes, `myself` leads to their name at the end, `atService` stands behind it.
 * `opens` and `closes` a message with its writer; `itIs … itIsFrom` holds a name in small letters. `bodyPays`: whole patterns with one group, of a body that pays; `body`: nouns of a club, a school or
 * kin that pays, signs or collects, with `bodyLead` (articles) before, `bodyMore` behind, `bodyObject` before a verb; `endsBody` is none of it. `post`, `toField` and `collect` are looked for without accents.
 */
export type PeoplePhrases = Phrases<
  | 'particles'
  | 'shortened'
  | 'endsName'
  | 'titles'
  | 'ours'
  | 'notSigning'
  | 'notPaying'
  | 'notCollecting'
  | 'isIt'
  | 'fromPlace'
  | 'whoDoes'
  | 'nameIs'
  | 'iAm'
  | 'orders'
  | 'greets'
  | 'speaks'
  | 'comesFrom'
  | 'opens'
  | 'itIs'
  | 'itIsFrom'
  | 'closes'
  | 'heOrShe'
  | 'isOurs'
  | 'isPerson'
  | 'iSign'
  | 'iPay'
  | 'iCollect'
  | 'myself'
  | 'atService'
  | 'signs'
  | 'signer'
  | 'theirs'
  | 'signedBy'
  | 'pays'
  | 'paidBy'
  | 'collects'
  | 'collectedBy'
  | 'notNames'
  | 'bodyPays'
  | 'body'
  | 'bodyLead'
  | 'bodyMore'
  | 'bodyObject'
  | 'endsBody'
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
