import type { Phrases } from './phrases.ts'

/**
 * A list of players: headings of its columns by what stands in them (a column to `skip` is named too, and one that is named after a garment, `wornHeading`), labels of single lines, a size
 * that comes later (in a cell, or with `sizeLater` at the end of a line), cuts' letters before `letterSized` words. On a line `skipped` words are no part of a name, `besides` with
 * `besidesMore` and `please` say what somebody is, `noNumber` says there is none; `sentence` words stand in sentences and hardly in a
 * name, unless they are `given` names. `labels` head a line that tells of the order, `inOrder` puts names on rows in turn. `neverNames` are no
 * players even in capitals, players of one size are joined by `joins`, and `aroundSize` stands beside a size that heads a list. A `remark` on a player opens so behind their line, or tells an age (`remarkAge` before a bare figure, `remarkUnder` before the years that are not reached).
 */
export type RosterPhrases = Phrases<
  | 'ofEach'
  | 'sizesLead'
  | 'number'
  | 'first'
  | 'name'
  | 'size'
  | 'fit'
  | 'quantity'
  | 'age'
  | 'skip'
  | 'wornHeading'
  | 'labelName'
  | 'labelNumber'
  | 'labelSize'
  | 'later'
  | 'sizeLater'
  | 'letterSized'
  | 'skipped'
  | 'besides'
  | 'besidesMore'
  | 'please'
  | 'noNumber'
  | 'sentence'
  | 'given'
  | 'and'
  | 'labels'
  | 'neverNames'
  | 'joins'
  | 'aroundSize'
  | 'inOrder'
  | 'people'
  | 'weAre'
  | 'ofThem'
  | 'staff'
  | 'fan'
  | 'remark'
  | 'remarkAge'
  | 'remarkUnder'
>

/**
 * What only some players wear: a captain's letter with what leads to it, where it goes and whose it is, who is an `alternate` and who `givesUp` theirs, what `takesOff` one, what `moves` one to somebody else or says that it `changesHands`, "it" that is put on or taken off (`handsIt`), who `keeps` theirs or has one as well (`alsoWears`); long sleeves for some, up to
 * the `rest`; a jersey of another colour for the one who keeps the goal (`keeper`), who `wears` it;
 * words after which a name on a piece or its player may be meant to go (`unsureOff`);
 * somebody who was `listedTwice` and is meant once (`listedOnce`, `listedByMistake`), not twice (`twiceMeant`);
 * a part of a name that stands alone behind `partOnly` or is left out behind `partOff`; all names without the given ones (`lastOnly`), or
 * whole (`fullNames`).
 */
export type RowMarkPhrases = Phrases<
  | 'numberLead'
  | 'role'
  | 'roleIs'
  | 'article'
  | 'years'
  | 'letterLead'
  | 'letterOn'
  | 'letterArticle'
  | 'letterPlace'
  | 'letterFor'
  | 'letter'
  | 'captain'
  | 'captainBegins'
  | 'alternate'
  | 'givesUp'
  | 'takesOff'
  | 'moves'
  | 'changesHands'
  | 'handsIt'
  | 'keeps'
  | 'alsoWears'
  | 'patch'
  | 'rightSide'
  | 'longSleeve'
  | 'rest'
  | 'keeper'
  | 'sleevesJoin'
  | 'keeperLeads'
  | 'forKeeper'
  | 'wears'
  | 'wearsToo'
  | 'onlyNicknames'
  | 'notNames'
  | 'partOnly'
  | 'unsureOff'
  | 'listedTwice'
  | 'listedOnce'
  | 'listedByMistake'
  | 'twiceMeant'
  | 'partOff'
  | 'lastOnly'
  | 'fullNames'
  | 'numberNear'
  | 'with'
>
