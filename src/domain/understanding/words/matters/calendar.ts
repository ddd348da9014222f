import type { Phrases } from './phrases.ts'

/** Reads days counted from a moment ("in two weeks"), in the text of one language. */
export type DayParser = {
  parse(
    text: string,
    from: { readonly instant: Date; readonly timezone: number },
    how: { readonly forwardDate: boolean },
  ): readonly { readonly start: { get(part: 'year' | 'month' | 'day'): number | null } }[]
}

/** Words with a value of their own: hours 1 to 12, parts of a day, phrases for days ahead of today; null: days are not counted. */
export type Clock = {
  readonly hours: Readonly<Record<string, number>>
  readonly parts: Readonly<Record<string, 'morning' | 'afternoon' | 'evening'>>
  readonly ahead: Readonly<Record<string, number>>
  /** "First", "third" before a weekday of a month; 0 is the last. */
  readonly nthOfMonth: Readonly<Record<string, number>>
  readonly counted: DayParser | null
}

/**
 * How an hour is said, word by word: a part of the day behind `partLead` and `partArticle`; a figure is an hour behind what `opens`
 * it, or behind `lead` and `article` ("a las"), unless one of `notHours` follows; "half past", "quarter to", "y media".
 */
export type HourPhrases = Phrases<
  | 'partLead'
  | 'partArticle'
  | 'noon'
  | 'opens'
  | 'lead'
  | 'article'
  | 'half'
  | 'quarter'
  | 'past'
  | 'to'
  | 'andHalf'
  | 'andQuarter'
  | 'lessQuarter'
  | 'sharp'
  | 'articleOfOne'
  | 'notHours'
>

/**
 * How a day is said, word by word: the articles before a date, before one behind a month or a weekday, before a bare figure that may
 * be a day, and before one that may be a player's number instead; a figure is a number where it is given (`giving`, `givesBy`,
 * `alsoGives`, `becomes` unless something is `happening`) and a day where its sentence `goesOn` so; `partBefore` makes "tomorrow" a
 * morning. What stands in a day's clause says whether it is the `game`'s, the day of `need`, or `aside`; `not` and `instead` take a
 * day back. `back` counts from the day named last (`backThan`), whose week is `thatWeek`; `isA` says its weekday. `lately` is aside but before what `endsTheDay`. What one `wants` `byThen` is wanted at the day and hour said before. `within`, `about`, `span` and `counted` are patterns of days counted from today.
 */
export type DayPhrases = Phrases<
  | 'dateArticle'
  | 'countedFrom'
  | 'countLead'
  | 'countIn'
  | 'now'
  | 'nearest'
  | 'dayUnit'
  | 'weekUnit'
  | 'fortnight'
  | 'monthUnit'
  | 'dayLead'
  | 'behindDay'
  | 'monthArticle'
  | 'weekdayArticle'
  | 'bareArticle'
  | 'numberArticle'
  | 'ofMonth'
  | 'inMonth'
  | 'ofYear'
  | 'ordinals'
  | 'first'
  | 'notSlash'
  | 'next'
  | 'beforeWeekday'
  | 'nextBehind'
  | 'weekFrom'
  | 'notDays'
  | 'giving'
  | 'givesBy'
  | 'alsoGives'
  | 'becomes'
  | 'happening'
  | 'with'
  | 'one'
  | 'goesOn'
  | 'partBefore'
  | 'monthEnd'
  | 'monthEndOf'
  | 'month'
  | 'or'
  | 'before'
  | 'eves'
  | 'back'
  | 'backThan'
  | 'thatWeek'
  | 'isA'
  | 'inMorning'
  | 'onThe'
  | 'not'
  | 'joins'
  | 'hence'
  | 'insteadOf'
  | 'instead'
  | 'game'
  | 'need'
  | 'needs'
  | 'byThen'
  | 'wants'
  | 'aside'
  | 'lately'
  | 'endsTheDay'
  | 'doing'
  | 'smallTalk'
  | 'within'
  | 'about'
  | 'span'
  | 'counted'
>
