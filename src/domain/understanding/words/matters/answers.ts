import type { Phrases } from './phrases.ts'

/**
 * Signing what was shown: words that approve, praise that does not, a whole message that agrees (`agrees`), an order to make them (`makeThem`) beside words that all of it is right (`allRight`), with what stands around and between; a reservation that withholds; an approval that goes ahead, as it is
 * written; how a revision is called.
 */
export type SigningPhrases = Phrases<
  | 'approves'
  | 'praises'
  | 'agrees'
  | 'affirms'
  | 'allRight'
  | 'joins'
  | 'makeThem'
  | 'politely'
  | 'withheld'
  | 'except'
  | 'goesAhead'
  | 'revision'
>

/**
 * Short answers to what was asked: it comes later, there is none, it is right as it is, an offer is taken, nobody knows, the first or
 * the second of two, one of the choices named. `no` and `yes` begin an answer; `leads` stand before a name that was asked for,
 * `refuses` is no name, `names` says that a name follows, and `sentence` are words that make a sentence of what would else be one.
 */
export type AnswerPhrases = Phrases<
  | 'later'
  | 'none'
  | 'asIs'
  | 'taken'
  | 'unknown'
  | 'first'
  | 'second'
  | 'pieces'
  | 'numbers'
  | 'garments'
  | 'letters'
  | 'leads'
  | 'called'
  | 'refuses'
  | 'names'
  | 'sentence'
  | 'everyone'
  | 'yes'
  | 'no'
  | 'nobodyLeaves'
  | 'sameSizes'
  | 'sameYes'
>

/**
 * The players' ages: grown up, children, years with a range between, months of babies; `spokenOf` says that years follow; `group` says that years are everybody's, `all … between` that
 * bare figures are; who is 12 or younger in answer to that question, none, all or some; `agreed` is a bare yes to it. Said in figures: from one `up` or `down`
 * (behind it), `over`, `under` or at `least` one (before it), a `division` by age (with a group for the figure before or behind its sign), a
 * `grade` of school, schools of both ages (`mixed`), whom an age is told of (`aged`), and those who are left (`others`). One `adult`. A year alone
 * (`oneYear`), `half` a year more, `almost` or `turning` an age, `babies`, `toddlers` who may be three, `kids` of any age. Whom it is not
 * told of: all `except` these, `only` these or the `soleOne`, nobody `else`, `not`, not `yet`; `younger` or older than the others; `they`
 * are those who were named; a short answer that names has nothing but `asides`. Whom pieces are for by their years (`wearers`, of which
 * `oneWearer` is one alone), and years behind a word for them (`agesAre`, with `ofAges` before it); from one to another, `upTo`.
 */
export type AgePhrases = Phrases<
  | 'grownUp'
  | 'adults'
  | 'children'
  | 'to'
  | 'years'
  | 'months'
  | 'spokenOf'
  | 'group'
  | 'everyone'
  | 'are'
  | 'all'
  | 'between'
  | 'nobody'
  | 'everybody'
  | 'older'
  | 'agreed'
  | 'some'
  | 'up'
  | 'down'
  | 'over'
  | 'under'
  | 'least'
  | 'division'
  | 'grade'
  | 'mixed'
  | 'aged'
  | 'others'
  | 'adult'
  | 'oneYear'
  | 'half'
  | 'almost'
  | 'turning'
  | 'babies'
  | 'toddlers'
  | 'kids'
  | 'except'
  | 'exceptOf'
  | 'only'
  | 'soleOne'
  | 'else'
  | 'not'
  | 'yet'
  | 'younger'
  | 'they'
  | 'asides'
  | 'wearers'
  | 'oneWearer'
  | 'elders'
  | 'ofAges'
  | 'agesAre'
  | 'upTo'
  | 'youngsters'
  | 'theOne'
  | 'few'
  | 'ofThem'
  | 'fewAre'
  | 'behindAge'
  | 'isOld'
  | 'turnsOne'
  | 'youngest'
  | 'oldest'
  | 'youngOnes'
>

/**
 * The wearer's left and right as an onlooker says them: `left` and `right` pair by pair, words for looking at somebody, the chest and
 * what leads to its side; `leftChest` and `rightChest` name those places; `shortLeft` and `shortRight` are the sides cut short, as patterns. `takenOff` are whole patterns with a group for what is put
 * after `without`.
 */
export type SidePhrases = Phrases<
  | 'left'
  | 'right'
  | 'looking'
  | 'chest'
  | 'chestLead'
  | 'leftChest'
  | 'rightChest'
  | 'shortLeft'
  | 'shortRight'
  | 'takenOff'
  | 'without'
>
