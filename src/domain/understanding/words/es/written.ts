import type { WrittenPhrases } from '../matters/written.ts'

export const esWritten: WrittenPhrases = {
  notText: [
    'no',
    'solo',
    'nada',
    'todos',
    'todas',
    'grande',
    'grandes',
    'chico',
    'chicos',
    'muy',
    'bien',
    'igual',
    'favor',
    'urgente',
  ],
  placing: ['en'],
  writing: ['diga', 'digan', 'pon', 'ponle', 'ponga', 'pongan'],
  isIn: ['es', 'en'],
  telling: ['diga', 'digan', 'dice', 'palabra', 'palabras', 'leyenda'],
  leading: ['nomas', 'solo', 'asi'],
  reported: ['que', 'el', 'nombre', 'dice', 'dicen'],
  small: ['de', 'del', 'la', 'las', 'los', 'el', '&', 'y', 'e'],
}
