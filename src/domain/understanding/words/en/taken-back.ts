import type { TakenBackPhrases } from '../matters/taken-back.ts'

/** How a change is taken back in English. */
export const enTakenBack: TakenBackPhrases = {
  returning: [
    ...[
      'back',
      'keep',
      'stick',
      'stay',
      'stays',
      'staying',
      'better',
      'fine',
      'was',
      'were',
      'again',
      'original',
      'prefer',
      'nvm',
    ],
    ...['prefers', 'liked', 'likes', 'nicer', 'after', 'forget', 'scratch', 'undo', 'return', 'leave', 'nevermind', 'before'],
  ],
  ofWhom: ['for', 'on', 'of', 'with'],
  undo: [
    ...['undo', 'take (?:that|it)(?: last (?:one|bit|change))? back', 'revert'],
    ...['(?:i )?take that back'],
    ...[
      '(?:go|(?:change|put|switch|set) (?:it|that|him|her|them|those|everything)) back',
      'cancel that(?: change| last)?',
      'reverse that',
    ],
  ],
  dismiss: [
    ...['scratch that', 'forget (?:that|it|what i (?:just )?said)', 'never ?mind(?: that)?', 'nvm', 'ignore (?:that|my last)'],
    'disregard (?:that|the last (?:one|message|change))',
  ],
  asWas: [
    '(?:those|these) (?:two|three|ones) (?:can |should |just )?(?:stay|remain|go back to|keep) (?:as|the way|how|like|what) (?:they|it) (?:was|were|had|are)\\b',
    "(?:leave|keep|put) (?:it|that|him|her|them|[\\w#']+)(?: \\d+)? (?:back )?(?:as|the way|how|like|to what|in what) (?:it|that|he|she|they|things?|is|was|had|before)\\b",
    "(?:leave|keep) (?:it|that|him|her|them|[\\w#']+)(?: \\d+)? (?:alone|the same|where (?:it|he|she|they) (?:was|were))",
    '(?:stays?|remains?) (?:as|the way|how|like) (?:it|he|she|they|was|before)\\b',
    '(?:(?:(?:can|could|should) (?:we|you|u) )?(?:please )?(?:go|put (?:it|them)|change (?:it|them)) )?back to (?:what|how|the way) (?:it|he|she|they) (?:was|were|had)',
  ],
}
