import type { RulebookPhrases } from '../matters/rulebooks.ts'

/** How a rule book is named in English. */
export const enRulebooks: RulebookPhrases = {
  rules: ['rule ?books?', 'rules?', 'regulations?', 'standards?', 'legal', 'approved', 'compliant'],
  before: ['(?:the |use )?rules?', 'rule ?book', 'regulations?', 'legal'],
  of: ['of', 'for', 'by', 'in', 'the', 'is', 'are', 'from'],
  playing: ['(?:we|they|we will) play(?: under| by| in)?(?: the)?', 'play(?:ing)? (?:under|by)(?: the)?'],
  loosely: [
    '(?:goes?|go(?:es)? strictly|runs?|is run|governed|sanctioned) by(?: the)?',
    '(?:follows?|uses?|under|abides? by|belongs? to)(?: the)?',
  ],
}
