import type { UndecidedPhrases } from '../matters/undecided.ts'

/** How Spanish says that somebody may yet come. */
export const esUndecided: UndecidedPhrases = {
  doubt: ['quizas?', 'tal vez', 'a lo mejor', 'puede (?:ser )?que', 'capaz que', 'posiblemente', 'chance y', 'podria(?:n|mos)?'],
  condition: ['si', 'en caso de que', 'por si', 'a menos que', 'depende de si'],
  open: [
    '(?:todavia|aun) no (?:\\w+ )?(?:confirm\\w+|decid\\w+|seguro|segura|sabemos|se sabe|dice|avis\\w+|definitivo|es seguro|esta segur[oa])',
    'no (?:es|esta) (?:segur[oa]|confirmad[oa]|decidid[oa]|definid[oa])|sin confirmar|por confirmar|no ha (?:confirmado|decidido|avisado)',
    'no (?:confirma|confirmo|se ha decidido|sabemos si|se si)',
  ],
  held: [
    'no (?:lo|la|los|las|le|me lo|me la) (?:anot|pong|agreg|cuent|inclu|apunt|sum|hag|pid|met|escrib)\\w+',
    '(?:dejen?lo|dejen?la|dejal[oa]) (?:fuera|pendiente)|todavia no|aun no|(?:te|les|le) (?:aviso|avisamos|confirmo|confirmamos|digo)',
  ],
  further: [
    'un[oa]? mas',
    'otr[oa]s?',
    'dos mas',
    'un[oa]? extra',
    'agreg\\w+',
    'entr[ae]n?',
    'se (?:una|sume|apunte|apunta)',
    'numero',
    'mas',
  ],
  joins: ['(?:y|pero|ademas|tambien)'],
}
