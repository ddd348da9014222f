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
