import type { BroughtPhrases } from '../matters/brought.ts'

/** How English says that garments are the customer's and come in. */
export const enBrought: BroughtPhrases = {
  brings: [
    "(?:i|we|i'll|we'll|ill|i'd|we'd|(?:i|we) (?:will|can|could|would)|(?:i'm|we're|i am|we are)(?: going to)?|(?:can|could|may|shall) (?:i|we)) (?:bring(?:ing)?|drop(?:ping)?(?: off| by with)?|supply(?:ing)?|provid(?:e|ing))(?: you)?",
  ],
  bringsThem: [],
  has: ["(?:i|we)(?:'ve| have)?(?: already)? (?:got|have|own|bought|ordered)(?: already)?"],
  sure: [
    'already',
    'at home',
    'at our place',
    'at the (?:club|school|gym)',
    'in (?:a|the) box',
    '(?:left )?from last (?:year|season)',
    'lying around',
  ],
  them: ['them(?: all)?(?: off| in| over| by)?', 'the (?:shirts|garments)(?: off| in| over| by)?'],
  besides: [
    'list',
    'print(?:ed|ing)?',
    'roster',
    'sizes?',
    'names?',
    'numbers?',
    'logo',
    'file',
    'deposit',
    'money',
    'check',
    'cash',
    'payment',
    'order',
  ],
  next: ['and', 'but', 'then', 'need', 'needs', 'for', 'to', 'so'],
  that: ['that', 'which'],
  before: ['on', 'this', 'next', 'by', 'in'],
  elsewhere: ["(?:i|we)(?:'?ll| will| can|'d)? (?:bring|take|carry) (?:them|these)(?: all)?(?= to (?!you|the shop|the store))"],
  own: ['our own'],
}
