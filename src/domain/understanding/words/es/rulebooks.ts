import type { RulebookPhrases } from '../matters/rulebooks.ts'

/** How a rule book is named in Spanish. */
export const esRulebooks: RulebookPhrases = {
  rules: ['reglas?', 'reglamentos?'],
  before: ['(?:las? )?(?:reglas?|normas?)', '(?:el )?(?:reglamento|libro de reglas)'],
  of: ['de', 'del', 'la', 'el', 'por', 'es', 'son'],
  loosely: [
    '(?:se rige|nos regimos|nos rigen|regid[oa]s?|avalad[oa]s?) (?:por|con)(?: la| el)?',
    '(?:seguimos|sigue|siguen|usamos|usa)(?: la| el| las de la)?',
  ],
  playing: ['(?:jugamos|juegan|se juega)(?: con| bajo| en)?(?: la| las| el)?'],
}
