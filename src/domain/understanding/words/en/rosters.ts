import type { RosterPhrases, RowMarkPhrases } from '../matters/rosters.ts'

/** How lists of players are written in English. */
export const enRosters: RosterPhrases = {
  number: [...['no\\.', 'nr', 'num', 'num\\.', 'number', 'jersey', 'jersey (?:no|number|#)\\.?', 'uniform (?:no|number)\\.?']],
  first: ['first', 'first name', 'given name'],
  name: [
    ...[
      'name',
      'names',
      'player',
      'players',
      'player name',
      'last',
      'last name',
      'surname',
      'name on (?:back|jersey)',
      'athlete',
    ],
  ],
  size: ['size', 'sizes', 'jersey size', 'shirt size', 'sz'],
  fit: ['fit', 'cut', 'gender', 'youth\\/adult'],
  quantity: ['qty', 'quantity', 'count', 'pieces', 'pcs'],
  age: ['age'],
  skip: ['grade', 'position', 'pos', 'pos\\.', 'year', 'phone', 'email', 'notes?', 'height', 'weight', 'parent', 'line'],
  labelName: ['(?:player |full |last )?name', 'player'],
  labelNumber: ['(?:jersey |shirt )?(?:number|no\\.?|num\\.?|#)'],
  labelSize: ['(?:jersey |shirt )?size'],
  later: ['later', 'tbd', 'soon', 'will tell'],
  sizeLater: [
    '(?:size |sizing )?(?:is )?(?:tbd|tba|later|pending|unknown|not sure(?: yet)?|to follow|to come)',
    "(?:i'?ll |we'?ll |will )(?:tell|send|text|let)(?: you)?(?: know)?(?: later| soon)?",
    '(?:still )?(?:need|waiting on|missing)(?: (?:her|his|their))? size',
  ],
  letterSized: ['small', 'medium', 'large'],
  skipped: ['size', 'number', 'no.', 'num', 'num.', 'name', 'jersey', 'sz', 'player', 'athlete'],
  besides: [
    ...['(?:team )?captain', 'goalie', 'goalkeeper', 'keeper', 'gk', 'long sleeves?', 'alternate(?: captain)?'],
    ...['assistant captain', 'coach'],
  ],
  besidesMore: ['long sleeves?', 'captain'],
  please: ['please', 'pls', 'plz'],
  noNumber: ['no number', 'without a number'],
  sentence: (
    'need needs want wants please thanks thank for the on in with and or by at is are was were we our us you your have has it ' +
    'this that them they there vinyl jersey jerseys tee tees shirt shirts hoodie hoodies polo polos number numbers names roster ' +
    'front back sleeve sleeves chest inch stones glitter outline hello hi hey pick pickup game games match bus will i im everybody ' +
    'everyone all each sizes colour color players going here drop add make change remove swap put get gets same quit his her total ' +
    'also just only now then instead am pm captain club squad baseball softball soccer football basketball volleyball hockey lacrosse rugby handball ' +
    'border trim price cost how much when what who where which does do can could would should'
  ).split(' '),
  given: ['will', 'kit', 'april', 'may', 'june'],
  and: ['and'],
  labels: ['team', 'contact', 'customer', 'school', 'club', 'phone', 'email', 'order', 'coach'],
  neverNames: ['total', 'totals?', 'sizes?', 'names?', 'numbers?', 'roster', 'team'],
  joins: ['and'],
  aroundSize: ['size', 'sizes'],
  inOrder: ['in (?:that|this|the same) order', 'respectively'],
  people: [...['players', 'player', 'kids', 'girls', 'boys', 'people', 'pieces', 'athletes', 'total', 'coaches', 'guys']],
  weAre: [],
  ofThem: ['them', 'those', 'us'],
  staff: ['staff'],
  fan: ['fan'],
}

/** What only some players wear, in English. */
export const enRowMarks: RowMarkPhrases = {
  numberLead: ['number ', 'no\\. ?'],
  role: ['captain', 'goalie', 'keeper'],
  roleIs: ['is', 'wears'],
  article: ['the'],
  years: ['years'],
  letterLead: ['an?', 'letter', 'the', 'wears?', 'gets?'],
  letterOn: ['on'],
  letterArticle: ['the '],
  letterPlace: ['left', 'right', 'chest'],
  letterFor: ['for', 'to', 'goes'],
  letter: ['the', 'an?'],
  captain: ['captains?', 'capt'],
  captainBegins: ['capt'],
  alternate: ['alternates?(?: captains?)?', 'assistant captains?'],
  takesOff: ['no', 'not', 'without', 'off', 'remove', 'drop', 'lose', "doesn't", 'no longer'],
  moves: ['instead', 'goes (?:over )?to', 'moves? to', 'passes to', 'should (?:go|be) (?:to|on)', 'belongs to'],
  changesHands: [
    'sorry',
    'my bad',
    'oops',
    'changed',
    'new',
    'now',
    'switch(?:ed)?',
    'mov(?:e|es|ed)',
    'g[ai]ve',
    'swap(?:ped)?',
  ],
  handsIt: ['(?:put|give|take|move|hand|pass|remove|lose|drop)(?: \\w+)? (?:it|that|them)', '(?:it|that|they) goe?s?'],
  keeps: ['keeps?', 'stays?', 'still'],
  alsoWears: ['also', 'too', 'as well', 'both'],
  givesUp: ['gave up', 'gives up', 'giving up', 'handed over', 'lost', 'no longer wears', 'no longer has'],
  patch: ['patch', 'letter', 'mark'],
  rightSide: ['right chest'],
  longSleeve: ['long[- ]sleeves?', 'long sleeved'],
  rest: ['everyone else', 'everybody else', 'the rest'],
  keeper: ['libero', 'goalkeeper', 'goalie', 'keeper'],
  wears: ['wears?', 'in', 'gets?', 'has', 'needs?', 'is'],
  wearsToo: ['wears', 'in', 'and wears', 'gets'],
  numberNear: ['number ', 'no\\. ?'],
  with: ['with'],
}
