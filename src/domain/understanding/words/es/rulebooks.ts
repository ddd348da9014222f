import type { RulebookPhrases } from '../matters/rulebooks.ts'

/** How a rule book is named in Spanish. */
export const esRulebooks: RulebookPhrases = {
  rules: ['reglas?', 'reglamentos?'],
  before: ['(?:las? )?(?:reglas?|normas?)', '(?:el )?(?:reglamento|libro de reglas)'],
  of: ['de', 'del', 'la', 'el', 'por', 'es', 'son'],
  playing: ['(?:jugamos|juegan|se juega)(?: con| bajo| en)?(?: la| las| el)?'],
}
