import { casual } from 'chrono-node/es'
import type { Clock, DayPhrases, HourPhrases } from '../matters/calendar.ts'

/** Words of Spanish that are hours, parts of a day and days ahead. */
export const esClock: Clock = {
  hours: {
    ...{ una: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, seis: 6 },
    ...{ siete: 7, ocho: 8, nueve: 9, diez: 10, once: 11, doce: 12 },
  },
  parts: { manana: 'morning', tarde: 'afternoon', noche: 'evening' },
  ahead: { 'pasado manana': 2, manana: 1, hoy: 0 },
  counted: casual,
}

/** How an hour is said in Spanish. */
export const esHours: HourPhrases = {
  partLead: ['de', 'por', 'en'],
  partArticle: ['la'],
  noon: ['mediodia', 'medio dia'],
  opens: [],
  lead: ['a', 'para', 'de', 'hasta', 'sobre', 'antes', 'desde'],
  article: ['las', 'la'],
  half: [],
  quarter: ['cuarto'],
  past: [],
  to: ['para', 'pa'],
  andHalf: ['y media'],
  andQuarter: ['y cuarto'],
  sharp: ['en punto', 'horas', 'hrs', 'h'],
  notHours: ['cm', 'x', 'dias', 'anos', 'de'],
}

/** How a day is said in Spanish. */
export const esDays: DayPhrases = {
  dateArticle: ['el'],
  monthArticle: [],
  weekdayArticle: ['el', 'dia'],
  bareArticle: ['el', 'dia'],
  numberArticle: ['el'],
  ofMonth: ['de'],
  ofYear: ['de', 'del'],
  ordinals: ['ro', 'o'],
  first: ['primero'],
  notSlash: ['algodon', 'cm'],
  next: ['proximo'],
  beforeWeekday: ['este', 'proximo'],
  nextBehind: ['que viene'],
  weekFrom: [],
  notDays: ['grado', 'ano', 'lugar', 'edicion', 'division', 'tiempo', 'aniversario'],
  giving: [
    ...['ponle', 'ponles', 'pongale', 'pongan', 'pon', 'dale', 'denle', 'usa', 'lleva', 'trae', 'quiere', 'tiene', 'cambia'],
    ...['cambien', 'cambie', 'cambiar', 'cambio', 'quita', 'quitale', 'quiten', 'borra', 'borren', 'agarra', 'escogio', 'eligio'],
  ],
  givesBy: ['a', 'con', 'por'],
  alsoGives: ['y', 'con'],
  becomes: ['ser', 'es', 'sea', 'ahora'],
  happening: [
    ...['torneo', 'juego', 'partido', 'evento', 'fiesta', 'boda', 'carrera', 'final', 'entrega', 'fecha', 'competencia'],
    ...['inauguracion', 'desfile', 'dia', 'jugamos', 'todo', 'eso', 'esto', 'que', 'primero', 'inicio', 'viaje', 'cita'],
  ],
  with: ['con'],
  one: ['un', 'una'],
  goesOn: ['por la', 'a', 'en', 'al', 'antes'],
  partBefore: ['la', 'de', 'por'],
  monthEnd: ['fin', 'fines', 'finales', 'final'],
  monthEndOf: ['de', 'del', 'este'],
  month: ['mes'],
  or: ['o', 'u'],
  before: ['antes', 'anterior', 'previo'],
  eves: ['un dia antes', 'el dia antes', 'el dia anterior'],
  inMorning: ['por la manana', 'en la manana'],
  onThe: ['el'],
  not: ['no'],
  insteadOf: ['de', 'del'],
  instead: ['vez', 'lugar'],
  game: [
    ...['jugamos', 'juego', 'partido', 'partidos', 'torneo', 'fiesta', 'competencia', 'final', 'boda', 'carrera', 'quinceanera'],
  ],
  need: [
    ...['necesito', 'necesitamos', 'ocupo', 'ocupamos', 'para', 'pa', 'recoger', 'recojo', 'paso', 'listas', 'listos', 'quiero'],
    'antes',
  ],
  joins: ['y', 'pero', 'asi', 'porque', 'xq', 'pq', 'pues'],
  needs: ['necesito', 'necesitamos', 'ocupo'],
  byThen: [
    ...['esa hora', 'ese dia', 'entonces', 'ese entrenamiento', 'ese momento'].flatMap((when) => [`para ${when}`, `pa ${when}`]),
    ...['antes de eso', 'antes de esa hora', 'antes de ese dia', 'a esa hora'],
  ],
  wants: ['necesito', 'necesitamos', 'ocupo', 'ocupamos', 'quiero', 'queremos', 'quisiera', 'urgen'],
  aside: ['practicamos', 'entrenamos', 'camion', 'ayer', 'lavamos', 'cumple'],
  doing: [
    ...[
      'confirmo',
      'confirmamos',
      'aviso',
      'avisamos',
      'checo',
      'reviso',
      'digo',
      'deposito',
      'depositamos',
      'pago',
      'pagamos',
      'llamo',
    ],
    ...['mando', 'mandamos', 'traigo', 'traemos', 'platico', 'escribo', 'firmo'],
  ],
  smallTalk: [
    'a quien(?:es)? (?:le|les) (?:vas?|van)',
    'quien (?:crees? que |creen que )?(?:va a )?gan\\w+',
    '(?:vas|van|va usted|ustedes van) a (?:ver|ir)',
    '(?:viste|vieron|veras|veran) (?:el|la|los)',
    '(?:le|les) (?:vas|van) a',
  ],
  within: ['en', 'dentro de'],
  about: ['unas?', 'unos'],
  span: ['dias?', 'semanas?', 'mes(?:es)?'],
  counted: ['proxim[oa] (?:semana|mes)'],
}
