import type { MoneyPhrases, PeoplePhrases } from '../matters/people.ts'

const body =
  'club|school|district|league|city|church|parents|pta|pto|boosters?|office|department|company|bank|union|store|foundation|treasurer|council'

/** How an English-speaking customer says who orders, signs, pays and collects, and how it is handed over. */
export const enPeople: PeoplePhrases = {
  particles: ['van', 'von', 'da'],
  shortened: ['St', 'Dr', 'Jr', 'Sr'],
  endsName: [
    ...['Treasurer', 'Coach', 'President', 'Secretary', 'Manager', 'Director', 'My ', 'Our ', 'The ', 'We ', 'It ', 'Please'],
  ],
  titles: [
    ...['[Cc]oach', '[Mm]rs?\\.?', '[Mm]s\\.?', '[Dd]r\\.?', '[Pp]rof\\.?'],
    '[Mm]y (?:husband|wife|sister|brother|son|daughter)',
    '[Oo]ur (?:office )?(?:manager|secretary|treasurer)',
    ...['[Aa]thletic director', '[Tt]eam manager', '[Pp]rincipal', '[Cc]ap(?:t\\.?|tain|\\.)?', '[Cc]hief', '[Ss]gt\\.?'],
    '[Ll]t\\.?',
    '(?:[Tt]he )?[Pp]rincipal',
  ],
  ours: ['[Mm]y', '[Oo]ur'],
  nameIs: [
    '[Mm]y name is',
    '(?<!(?:[Ll]ast|[Ff]irst|[Hh]er|[Hh]is|[Tt]heir|[Tt]eam|[Cc]lub|[Ss]chool|[Gg]roup|[Ss]quad)(?:.s)? )[Nn]ame is',
  ],
  iAm: ["[Ii]'m", '[Ii]m', '[Ii] am', '[Tt]his is', "[Ii]t'?s(?![^.\\n]{0,40} not )"],
  orders: ['here(?=[\\s,.!]|$)', 'orders'],
  greets: ['[Hh]i', '[Hh]ello', '[Hh]ey', '[Gg]ood (?:morning|afternoon|evening|day)', '[Mm]orning'],
  speaks: ['I', "I'm", 'we', "we're"],
  comesFrom: ['for', 'from', 'with', 'here', 'at'],
  opens: ['[Cc]ap(?:t\\.?|tain|\\.)', '[Cc]oach', '[Mm]rs?\\.?', '[Mm]s\\.?', '[Dd]r\\.?', '[Cc]hief', '[Ss]gt\\.?', '[Ll]t\\.?'],
  itIs: ["[Ii]t'?s", '[Tt]his is'],
  itIsFrom: ['from', 'with', 'w', 'at'],
  closes: ['[Tt]hanks,? '],
  heOrShe: ['she', 'he', 'who', 'they'],
  isOurs: ['is (?:our|my|the)', "(?:she|he)'?s (?:our|my|the)"],
  isPerson: ['is', "'s"],
  iSign: ["i'?m the one who (?:signs|approves)", "i'm the one (?:signing|approving)"],
  iPay: ["i(?:'ll| will)? pay", "i'?m paying", 'i am paying', 'i can pay'],
  iCollect: [
    "i(?:'ll| will|'d)? (?:pick|come pick) (?:it|them|everything)? ?up",
    "i'?m picking (?:it|them) ?up",
    "i'll come get them",
  ],
  signs: [
    '(?:is the one who |who )?(?:signs|approves)',
    'will sign',
    'will approve',
    'orders and signs',
    'has to approve',
    'needs to approve',
  ],
  signer: [],
  theirs: [],
  signedBy: [
    '(?:[Aa]pproval(?: comes)? from|[Ss]ign-?off(?: is|:)|[Ss]igned off by|[Aa]pproved by|[Aa]pprover:|[Ss]igns:)(?: our| the)?(?: AD| athletic director)?',
  ],
  pays: ['(?:is the one who |who )?(?:pays|is paying)', 'will pay', 'is paying'],
  paidBy: ['[Pp]ays:', '[Pp]aid by', '[Pp]ayment (?:from|by)', '[Bb]ill(?: to:?|ed to)?', '[Ii]nvoice(?: to)?'],
  collects: [
    ...[
      'will come (?:by|in|over)? ?(?:and|to) pick (?:everything|them|it|those) up',
      'is coming (?:by|in)? ?to pick (?:them|it) up',
    ],
    ...['collects', 'will collect', 'picks (?:them )?up', 'will pick (?:them |it )?up', 'is picking (?:them |it )?up'],
  ],
  collectedBy: ['(?:[Cc]ollected|[Pp]icked up|[Pp]ick-?up|[Pp]ick up)(?: by|:| will be)'],
  notNames: [
    ...['I', 'The', 'We', 'It', 'They', 'He', 'She', 'You', 'Not', 'Just', 'Need', 'Coach', 'Hi', 'Hello', 'Hey', 'Thanks'],
    ...['Everybody', 'Number', 'Numbers', 'Home', 'Away', 'Black', 'White', 'Navy', 'Red', 'Royal', 'Our', 'My', 'Mom', 'Dad'],
    ...['Team', 'OK', 'Okay', 'Yes', 'No'],
  ],
  body: [
    `(?:^|[.,;] ?|\\band )(?:[Tt]he |[Oo]ur )?((?:\\p{L}+ )?(?:${body}))\\s+(?:pays?|will pay|(?:is|are) paying)`,
    '(?:[Bb]ill|[Ii]nvoice(?: to)?|[Pp]ayment from) (?:the |our )?((?:\\p{L}+ )?(?:club|school|district|league|city|church|pta|pto|boosters?|company))\\b',
  ],
  post: ['mail (?:them|it)', 'ship (?:them|it)', 'post (?:them|it) to', 'by mail', 'by post', 'send them by', 'shipping'],
  toField: ['(?:bring|deliver|drop)[\\p{L} ]{0,25} (?:to|at) (?:the |our )?(?:field|gym|rink|court|practice|game)'],
  collect: [...['pick(?:ing|s)?(?: (?:it|them|that))? ?up', 'pickup', 'collects?', 'come get', 'swing by', 'stop by', 'come by']],
}

/** How an English-speaking customer speaks of paying. */
export const enMoney: MoneyPhrases = {
  orderNumber: ['purchase order', 'p\\.?o\\.?(?: number| no\\.?| #)?', 'order number'],
  orderNumberIs: ['is', 'number', 'no\\.?'],
  taxExempt: ['tax[- ]exempt'],
  deposit: ['deposit', 'down payment'],
  down: ['down'],
  asDeposit: ['as a', 'for the'],
  of: ['of'],
  currency: ['dollars', 'bucks', 'usd'],
  gives: ['paid', 'paying', 'payment', 'now', 'today', 'left', 'gave', 'put down'],
  paid: ['paid in full', 'already paid', "it'?s all paid"],
  onAccount: ['on (?:our |the |my )?account', 'bill (?:us|the (?:school|league|club))'],
}
