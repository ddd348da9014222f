import type { ElsewherePhrases } from '../matters/elsewhere.ts'

/** How English asks for what is no garment of this trade. */
export const enElsewhere: ElsewherePhrases = {
  things: [
    '(?:baseball |trucker )?caps',
    'hats',
    'beanies',
    'visors',
    '(?:tote|gym|drawstring|sports?|shopping) ?bags?',
    'totes',
    'duffels?',
    'duffel bags?',
    'bags',
    'backpacks?',
    '(?:pairs? of )?socks',
    'towels',
    'blankets',
    'mugs',
    'water bottles',
    'tumblers',
    'banners',
    'umbrellas',
  ],
  wants: ['need', 'needs', 'want', 'wants', 'order', 'get', 'do', 'make', 'press', 'print', 'decorate', 'have', 'like'],
  some: ['\\d{1,3}', 'a few', 'some', 'a dozen', 'a couple of', 'two', 'three', 'four', 'five', 'six', 'eight', 'ten', 'twelve'],
  passing: ['match', 'matches', 'matching', 'like', 'as', 'in', 'with', 'for', 'all', 'our', 'their', 'his', 'her', 'and', 'on'],
  drawn: ['on (?:the|our|each|it|them|every)\\b'],
  ofCloth: [
    '(?:leather|suede|fur|silk) (?:\\w+ )?(?:jackets?|vests?|coats?|shirts?)',
    '(?:jackets?|vests?|coats?) (?:made )?(?:of|in) (?:leather|suede|fur)',
  ],
}
