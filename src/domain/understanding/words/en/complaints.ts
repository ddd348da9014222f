import type { ComplaintPhrases, WashCounts } from '../matters/complaints.ts'

/** What an English-speaking customer says of what went wrong. */
export const enComplaints: ComplaintPhrases = {
  wrongName: [
    'wrong name',
    'wrong number',
    'misspelled',
    'spelled wrong',
    "(?:spelled|spelt|printed|put) (?:[\\w']+ ){1,5}?(?:name|number) wrong",
    "(?:name|number) (?:[\\w']+ ){0,3}?(?:is|was) (?:wrong|misspelled)",
    'spelled it wrong',
  ],
  stonesLost: [
    '(?:stones?|rhinestones?|crystals|bling|gems)(?: \\w+){0,4} (?:fell|fall|falling|came|come|coming|missing|lost|dropped)',
    '(?:fell off|fall off|falling off|came off)(?: \\w+){0,4} (?:stones?|rhinestones?)',
  ],
  lift: ['peel(?:ing|ed|s)?(?: off)?', 'lifting', 'coming off', 'came off', 'falling off', 'fell off'],
  crack: ['crack(?:ing|ed|s)?'],
  bleed: ['bled', 'bleeding', 'turned pink', 'color came through', 'colour came through'],
  shine: ['shiny (?:mark|box|spot)', 'press marks?', 'burn marks?', 'scorched'],
  shrink: ['shrank', 'shrunk'],
  feared: ['will it', 'does it', 'do they', 'would it', "won't", 'worried', 'afraid (?:of|it|they|that it|that they|the \\w+ (?:will|might|would|could))', 'last time'],
  unwashed: ['never(?: been)? washed', 'not washed', "hasn't been washed"],
  washes: ['wash(?:es)?', 'times'],
  washed: ['wash\\w*'],
  washedWhat: ['it', 'them', 'these', 'those'],
  air: ['air[- ]?dr(?:y|ied)', 'hung', 'hang(?:ing)?', 'line dr(?:y|ied)'],
  dryer: ['dryer', 'tumble'],
  beforeOwner: ['name is', 'named', 'called', 'my (?:son|daughter|kid)'],
  behindOwner: ["'s"],
  numberSaid: ['numbers?(?: on| of)? ', 'no\\. ?', 'the (?=\\d{1,3} (?:on|of) )'],
  garment: ['jersey', 'shirt', 'tee', 'hoodie'],
  of: ['of '],
  theNumber: ['the ', 'number ', 'no\\. ?'],
  onThe: ['on the', 'of the'],
  number: ['number '],
  notNumber: ['th', 'nd', 'rd', 'st', 'wash', 'day', 'week'],
  counted: ['wash', 'times', 'days', 'weeks'],
  and: ['and'],
  teamIs: ['[Tt]eam is', "[Tt]eam'?s", '[Cc]lub'],
  teamArticle: ['the '],
  teamBeside: ['(?:on|of|for|from|with) the', '[Oo]ur'],
  links: ['of the', 'of'],
  orders: ['we need', 'i need', 'want to order', "i'd like", 'order (?:more|another|new)'],
}

export const enWashCounts: WashCounts = {
  before: { one: 1, two: 2, three: 3, four: 4, five: 5, a: 1, first: 1 },
  behind: { once: 1, twice: 2 },
}
