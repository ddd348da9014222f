import type { LaterPhrases, OccasionPhrases } from '../matters/occasions.ts'

/** How an English-speaking customer puts a part of the list off. */
export const enLater: LaterPhrases = {
  sizes: ['sizes'],
  names: ['names'],
  numbers: ['numbers'],
  list: ['roster', 'list', 'logo', 'deposit'],
  soon: [
    ...['later', 'to follow', 'follows?', 'soon', 'next week', 'this week', 'tomorrow', 'tonight', 'tbd', 'pending'],
    ...['not (?:final|ready)', 'still (?:need|waiting|getting)', "don'?t have"],
  ],
  sends: [
    "i'?ll (?:send|have|get|give|text|email)",
    "we'?ll (?:send|have|get|give)",
    'will (?:send|follow|have|get|come)',
    '(?:are )?coming',
    'can (?:send|get)',
  ],
  needs: ['need', 'ready'],
  theList: [],
  notYet: [
    "(?:don'?t|do not|haven'?t|have not|ain'?t|didn'?t|won'?t)(?: \\w+)? (?:have|get|got|gotten|know|chosen|picked|decided)\\b.* (?:yet|so far|right now|at the moment)",
    "(?:don'?t|do not) (?:have|know) (?:the|their|all|any of the|everyone's) (?:names|numbers|sizes|roster|list)",
    'no (?:names|numbers|sizes|roster|list) yet',
    "(?:are|is)(?:n'?t| not)(?: quite| all)? (?:final|ready|in|decided|known|here|done)(?: yet)?",
    'still (?:need|waiting|getting|collecting|working)',
  ],
  gives: [
    "(?:i|we)(?:'?ll| will| can|'?m gonna|'?re gonna) (?:send|text|get|give|email|pass|have|bring|forward)",
    '(?:will|gonna|going to) (?:send|text|get|give|email|pass|forward|follow)',
  ],
  others: [
    '(?:the )?(?:rest|others|remaining \\d+|other \\d+|missing ones)(?: of (?:the|my|our) (?:list|names|roster|kids|players))?',
    'roster',
  ],
}

/** What garments are needed for, in English. */
export const enOccasions: OccasionPhrases = {
  leads: ['for', "it'?s", 'before'],
  leadsMore: ['for'],
  article: ['the', 'our', 'my', 'his', 'her', 'a', 'an'],
  events: [
    ...['games?', 'match', 'tournament', 'tourney', 'meet', 'regatta', 'bonspiel', 'finals?', 'playoffs?', 'championships?'],
    ...['opener', 'showcase', 'recital', 'parade', 'picnic', 'reunion', 'open house', 'party', 'wedding', 'race', 'fundraiser'],
    ...['festival', 'camp', 'competition', 'bout', 'scrimmage', 'banquet', 'graduation', 'homecoming', 'rally', 'fair', 'trip'],
    ...['concert', 'performance', 'retreat'],
  ],
}
