import type { TeamPhrases } from '../matters/team.ts'

export const esTeam: TeamPhrases = {
  cues: ['equipo', 'club', 'somos', 'llama', 'llaman'],
  leads: ['los', 'las', 'de', 'para', 'con', 'del'],
  groups: ['club'],
  bodies: [
    ...['club', 'primaria', 'secundaria', 'preparatoria', 'escuela', 'colegio', 'liga', 'academia', 'deportivo', 'atletico'],
  ],
  joiners: ['de', 'del', 'la', 'los', 'las', '&'],
  personal: [
    ...[
      ...['soy', 'papa', 'mama', 'hermana', 'hermano', 'tesorera', 'tesorero', 'hijo', 'hija', 'atentamente'],
      'nombre',
      'profe',
      'maestra',
      'entrenador',
      'recoge',
      'firma',
      'hermana',
      'hermano',
      'esposo',
      'agrega',
      'quita',
      'llamo',
    ],
  ],
  openings: [
    ...['hola', 'buenas', 'buenos', 'tardes', 'dias', 'noches', 'necesito', 'quiero', 'ocupo', 'somos', 'para', 'equipo', 'le'],
    ...['va', 'la', 'el', 'los', 'las', 'un', 'una', 'son', 'lista', 'es', 'se', 'por', 'con'],
    ...['sin', 'todo', 'todos', 'traemos', 'gracias', 'ya', 'yo', 'urge', 'fútbol', 'futbol'],
  ],
  kin: [...['hijo', 'hija', 'nino', 'nina', 'jugador', 'jugadora', 'sobrino', 'sobrina', 'nieto', 'nieta', 'ella']],
  of: ['de'],
  the: ['los', 'las'],
  called: ['llama'],
  is: ['es'],
  isA: [],
  needs: ['necesita', 'necesitan', 'quieren', 'ocupan'],
  ordinals: [],
  articles: ['los', 'las'],
}
