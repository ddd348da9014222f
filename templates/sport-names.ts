import type { Language } from '../src/domain/units/language.ts'

/** Sports by their id in the order; one that is not here is called what its id says. */
export const sportNames: Readonly<Record<Language, { readonly [sport: string]: string }>> = {
  en: { 'ice-hockey': 'ice hockey' },
  es: {
    football: 'fútbol americano',
    soccer: 'fútbol',
    basketball: 'básquetbol',
    volleyball: 'voleibol',
    baseball: 'béisbol',
    softball: 'softbol',
    'ice-hockey': 'hockey sobre hielo',
    handball: 'balonmano',
    cheer: 'porras',
    running: 'atletismo',
    rugby: 'rugby',
    lacrosse: 'lacrosse',
    other: 'otro',
  },
}
