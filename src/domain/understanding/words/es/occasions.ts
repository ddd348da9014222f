import type { LaterPhrases, OccasionPhrases } from '../matters/occasions.ts'

/** How a Spanish-speaking customer puts a part of the list off. */
export const esLater: LaterPhrases = {
  sizes: ['tallas'],
  names: ['nombres', 'apellidos'],
  numbers: ['numeros', 'dorsales'],
  list: ['lista', 'logo'],
  soon: [...['despues', 'luego', 'al rato', 'todavia no', 'aun no', 'pendientes?', 'faltan', 'manana', 'la proxima semana']],
  sends: ['(?:se )?(?:l[eo]s?|las) (?:mando|paso|envio|doy|mandamos|pasamos|tengo)', ...['mando', 'te paso', 'les paso']],
  needs: ['necesit\\w+', 'ocup\\w+', 'listos?', 'listas?'],
  theList: ['(?:la|una|mi) lista'],
  notYet: [
    'no (?:l[oa]s? )?(?:tengo|tenemos|se|sabemos|he|hemos|estan?)\\b.*(?: todavia| aun)',
    '(?:todavia|aun) no (?:l[oa]s? )?(?:tengo|tenemos|se|sabemos|estan?|me|nos)',
    'no (?:tengo|tenemos|se|sabemos) (?:los|las|la) (?:nombres|numeros|dorsales|tallas|apellidos|lista)',
    '(?:todavia|aun) no (?:l[oa]s? )?(?:tengo|tenemos)',
  ],
  gives: [
    '(?:te|se|les?|os) (?:l[oa]s? )?(?:mando|paso|envio|doy|digo|aviso|mandamos|pasamos|enviamos|mandare|pasare)',
    '(?:l[oa]s? )(?:mando|paso|envio|mandamos|pasamos) (?:luego|despues|al rato|manana|el \\w+)',
  ],
  others: ['l[oa]s (?:otr[oa]s|demas|que faltan|restantes)(?: \\d+)?', 'el resto'],
}

/** What garments are needed for, in Spanish. */
export const esOccasions: OccasionPhrases = {
  leads: ['para', 'es', 'antes de'],
  leadsMore: [],
  article: ['el', 'la', 'los', 'las', 'un', 'una', 'nuestr[oa]', 'mi'],
  events: [
    ...['juego', 'partido', 'torneo', 'final', 'carrera', 'fiesta', 'boda', 'desfile', 'competencia', 'festival', 'clausura'],
    ...['kermes', 'convivio', 'graduacion', 'campeonato', 'copa', 'liguilla', 'inauguracion', 'posada', 'regata', 'feria'],
    ...['viaje', 'recital', 'funcion', 'presentacion', 'concierto', 'festividad', 'quinceanera', 'bautizo'],
  ],
}
