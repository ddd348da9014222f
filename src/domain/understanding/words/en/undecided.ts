import type { UndecidedPhrases } from '../matters/undecided.ts'

/** How English says that somebody may yet come. */
export const enUndecided: UndecidedPhrases = {
  doubt: ['might', 'may (?:want|need|have|add|be|get)', 'maybe', 'perhaps', 'possibly', 'potentially', 'could be'],
  condition: ['if', 'in case', 'unless', 'depending on', 'should \\w+ (?:make|join)'],
  open: [
    "(?:isn'?t|is not|not|nothing is|nothing's)(?: been)?(?: yet)? (?:decided|confirmed|settled|certain|definite|final|sure|official)",
    'undecided|unconfirmed|up in the air|(?:still )?waiting (?:to hear|on (?:him|her|them|word))',
    "(?:hasn'?t|has not|haven'?t|have not)(?: yet)? (?:confirmed|decided|committed|said yes|signed up|told us)",
    "don'?t know(?: yet)? if",
  ],
  held: [
    "(?:do not|don'?t|dont) (?:put|add|count|include|order|make|print|write|list)(?: (?:it|him|her|them|that|one|this))?(?: down| in| on)?",
    '(?:leave|keep) (?:it|him|her|them|that)(?: one)? (?:off|out)',
    "hold (?:off|on)(?: on)?|not yet|i'?ll (?:let you know|confirm|tell you)|we'?ll (?:let you know|confirm|tell you)|will (?:let you know|confirm)",
  ],
  further: ['(?:one|two|a few|some|any) more', 'another', 'an? (?:extra|additional)', 'add', 'join(?:s|ing)?', 'number', 'extra'],
  joins: ['(?:and|but|plus|also)'],
}
