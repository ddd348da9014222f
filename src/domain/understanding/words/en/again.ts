import type { AgainPhrases } from '../matters/again.ts'

export const enAgain: AgainPhrases = {
  turning: [
    ...['him', 'her', 'them', 'he', 'she', 'they', "he's", "she's", "they're", 'make', 'needs', 'need', 'wants'],
    ...['want', 'are', 'is', "it's", 'but', 'instead', 'should', 'be', 'both', 'actually', 'goes', 'move', 'bump'],
    ...['switch', 'change', 'now', 'size', 'in', 'from', 'to'],
  ],
  small: ['a', 'an', 'size', 'the', 'of', 'is'],
  refusing: ['no', 'not', "isn't", "aren't", 'of', 'than', "doesn't", 'was'],
  pronouns: [...['he', 'she', 'they', 'make', 'him', 'her', 'needs', 'so', 'please', 'can', 'could', 'i']],
  clitic: [],
  of: ['of'],
  to: ['to'],
  joins: ['and', 'a', 'the'],
  twice: ['double', 'two'],
  end: ['end'],
  addedNumber: ['number', 'a', 'the'],
  and: ['and'],
}
