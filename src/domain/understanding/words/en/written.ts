import type { WrittenPhrases } from '../matters/written.ts'

export const enWritten: WrittenPhrases = {
  notText: [
    ...['fc', 'rfc', 'sc', 'cf', 'ss', 'po', 'ok', 'asap', 'usa', 'jv', 'hs', 'ms', 'pe', 'pta'],
    ...['pto', 'u', 'ab', 'htv', 'csv', 'pdf', 'his', 'her', 'both', 'all', 'exactly', 'not', 'please'],
    ...['and', 'xv', 'only', 'just', 'no', 'never', 'must', 'same', 'each', 'one'],
    ...['big', 'large', 'small', 'huge', 'bold', 'new', 'old', 'tall', 'really', 'very', 'please', 'also', 'back', 'front'],
  ],
  placing: ['on', 'across', 'over'],
  writing: ['put', 'says', 'say', 'saying', 'print', 'read', 'reads', 'letters'],
  isIn: ['is', 'in'],
  telling: ['say', 'says', 'saying', 'read', 'reads', 'word', 'words'],
  leading: ['just', 'simply'],
  reported: ['say', 'says', 'saying', 'read', 'reads', 'that', 'team', 'name', 'club', 'school', 'company', 'business'],
  small: ['of', 'the', '&', 'and', 'n'],
  yearly: [
    'class',
    'seniors',
    'senior',
    'juniors',
    'grads',
    'graduates',
    'graduation',
    'grad',
    'prom',
    'camp',
    'reunion',
    'champs',
    'champions',
  ],
}
