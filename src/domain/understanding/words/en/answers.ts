import type { AgePhrases, AnswerPhrases, SidePhrases, SigningPhrases } from '../matters/answers.ts'

export const enSigning: SigningPhrases = {
  approves: ['i (?:hereby )?(?:approve|sign off|sign|confirm|accept)', 'approved\\b(?! by)', '(?:sign|signed) (?:it )?off'],
  praises: [
    ...[
      'looks? (?:great|good|perfect|awesome|nice|right|fine)',
      'perfect',
      'love it',
      'awesome',
      'great',
      'go ahead',
      'go for it',
    ],
    ...['sounds good', 'all good', 'everything is (?:right|correct|good)', 'lgtm', 'yes', 'yep', 'ok', 'okay'],
  ],
  withheld: [
    ...['but', 'except', 'however', 'though', 'if', 'when', 'once', 'until', 'unless', 'not yet', "don't", 'do not', 'cannot'],
    ...["can't", 'later', 'almost'],
  ],
  goesAhead: ['go ahead(?: and \\p{L}+(?: it| them)?)?'],
  revision: ['revision', 'rev\\.?', 'version'],
}

export const enAnswers: AnswerPhrases = {
  later: [...['later', 'not yet', "don'?t have (?:them|it) yet", 'soon', 'tomorrow', 'will send', "i'?ll send", 'tbd']],
  none: ['none', 'no (?:number|name|numbers|names)', 'without', 'nobody', 'blank'],
  asIs: [
    ...[
      'as is',
      'as it is',
      'leave it',
      'leave them',
      'keep (?:it|them|both)',
      "that'?s right",
      "it'?s right",
      'correct',
      'fine',
    ],
    ...['on purpose', 'they share'],
  ],
  taken: [...['yes', 'yep', 'yeah', 'ok', 'okay', "let'?s", 'do (?:it|that)', 'take (?:it|that)', "we(?:'ll)? take", 'go with']],
  unknown: ["don'?t know", 'no idea', 'not sure', 'dunno'],
  first: ['first', '1st'],
  second: ['second', '2nd', 'latter'],
  pieces: ['pieces', 'quantit', 'how many', 'count'],
  numbers: ['numbers?'],
  garments: ['garments?', 'jerseys?', 'shirts?', 'tees?', 'hoodies?', 'polos?'],
  letters: ['letters?', 'numbers?', 'names?', 'vinyl'],
  leads: [
    ...['we are', "we're", "it's", 'its', 'it is', 'team (?:is|name is)', 'the team is', 'the name is', 'my name is', 'name is'],
    ...['i am', "i'm", 'im', 'this is'],
  ],
  called: ['called'],
  refuses: ['no', 'none', 'nobody', 'nope', 'yes', 'ok'],
  everyone: ['every(?:one|body)', 'all', 'each'],
  yes: ['yes', 'yep', 'yeah', 'ok', 'okay'],
  no: ['no'],
  nobodyLeaves: ['nobody', 'no one', 'none', 'everyone (?:stays|is back)', 'all (?:stay|are back)'],
  sameSizes: ['same', 'as (?:before|last time)', 'still fit', 'no change'],
  sameYes: ['yes', 'yep', 'ok'],
}

export const enAges: AgePhrases = {
  grownUp: [
    "(?:every(?:one|body)|all of them|they|we)(?: is|'re| are)? (?:all )?(?:1[3-9]|[2-9]\\d)(?: years?(?: old)?)? (?:or|and) (?:older|up|over|above)",
    "(?:nobody|no one|none of them)(?: is| are|'s)? (?:under|younger than) 1[3-9]",
    'all (?:are )?adults?',
    'adult (?:league|team|rec)',
    'adults only',
    'everyone is an adult',
    "(?:all|everyone|everybody|they are|they're)(?: is| are|'s)?(?: all)? (?:over|above|older than) (?:1[2-9]|[2-9]\\d)",
    'all (?:1[3-9]|[2-9]\\d) (?:or|and) (?:older|up)',
    ...['beer league', 'varsity', 'high school', 'college', 'old timers', "men's league", "women's league"],
  ],
  adults: ['adults?'],
  children: [
    'u-?(?:[6-9]|1[0-2])',
    '(?:[1-6]|1st|2nd|3rd|4th|5th|first|second|third|fourth|fifth)(?:st|nd|rd|th)? graders?',
    ...['kindergarten', 'kindergartners', '[1-6](?:st|nd|rd|th) grade', '(?:first|second|third|fourth|fifth|sixth) grade'],
    ...['elementary', 'peewee', 'pee wee', 't-?ball', 'kinder', 'all under 1[0-2]', '12 and under', '10 and under'],
  ],
  to: ['to', 'and', 'or'],
  years: ['years?(?: old)?', 'yrs?', 'yo'],
  group: [...['they', 'all', 'everyone', 'kids', 'girls', 'boys', 'players', 'team', 'ages?', 'aged', 'between', 'children']],
  everyone: ['all of them', 'they', 'everyone', 'everybody', 'the (?:kids|girls|boys)', 'all'],
  are: [' are', "'re", ' is', "'s"],
  all: ['all'],
  between: ['between'],
  nobody: [
    ...[
      'no one',
      'nobody',
      'none',
      'nope',
      'no kids',
      'no children',
      'all (?:are )?(?:older|over|teenagers|teens|13)',
      'adults?',
    ],
  ],
  everybody: ['all of them', 'everyone', 'everybody', 'yes,? all', 'all are', 'they all are'],
  older: ['older', 'adult'],
  some: ['yes', 'some', 'a few'],
  underThree: ['under 3', 'under three', 'baby', 'toddler'],
}

export const enSides: SidePhrases = {
  left: ['left'],
  right: ['right'],
  looking: [
    ...[
      'as you look',
      'when you look',
      'looking at',
      'if you look',
      'as you face',
      'facing (?:him|her|it|them|the)',
      "viewer'?s",
    ],
  ],
  chest: ['chest'],
  chestLead: ['on the chest,? the', 'chest,? the'],
  leftChest: ['left chest'],
  rightChest: ['right chest'],
  takenOff: ['[Tt]ake (the [a-z]{3,12}(?: [a-z]{3,12})?|those [a-z]{3,12}) off'],
  without: ['without'],
}
