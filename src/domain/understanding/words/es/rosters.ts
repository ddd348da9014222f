import type { RosterPhrases, RowMarkPhrases } from '../matters/rosters.ts'

/** How lists of players are written in Spanish. */
export const esRosters: RosterPhrases = {
  number: ['numero', 'dorsal', 'nro\\.?'],
  first: ['nombre de pila'],
  name: ['apellido', 'apellidos', 'nombre', 'nombres', 'jugador', 'jugadora', 'jugadores'],
  size: ['talla', 'tallas'],
  fit: ['corte'],
  quantity: ['cantidad', 'piezas'],
  age: ['edad'],
  skip: ['posicion', 'grado', 'linea'],
  labelName: ['nombre', 'jugador', 'jugadora'],
  labelNumber: ['numero', 'dorsal'],
  labelSize: ['talla'],
  later: ['luego', 'despues', 'pendiente', 'por confirmar'],
  sizeLater: [
    '(?:talla )?(?:pendiente|por confirmar|luego(?: te (?:digo|la paso))?|despues|falta(?: la)?(?: talla)?)',
    'no se(?: su)? talla',
    '(?:te|le|les) (?:digo|aviso|paso)(?: luego| despues)?',
  ],
  letterSized: [],
  skipped: ['talla', 'numero', 'no.', 'num', 'num.', 'nombre', 'jersey', 'jugador', 'jugadora', 'dorsal'],
  besides: ['capit[aá]n', 'capitana', 'portero', 'portera', 'libero', 'l[ií]bero', 'mangas? largas?', 'entrenador(?:a)?'],
  besidesMore: ['mangas? largas?', 'capit[aá]na?'],
  please: ['por favor'],
  noNumber: ['sin n[uú]mero'],
  sentence: (
    'necesito necesitamos ocupo quiero queremos para por favor con que los las son es una nuestros nuestras gracias lista equipo ' +
    'jugadores vinil playeras camisetas espalda frente atras adelante pulgadas pedreria brillo contorno hola buenas paso todos todas ' +
    'tallas color quita agrega cambia son somos serian capitana capitan club beisbol futbol voleibol basquetbol piedra piedras'
  ).split(' '),
  given: ['una', 'do', 'abril', 'julio'],
  and: ['y'],
  labels: ['equipo', 'contacto', 'cliente', 'escuela', 'club', 'telefono', 'correo', 'pedido', 'entrenador'],
  neverNames: ['tallas?', 'nombres?', 'numeros?', 'lista', 'equipo'],
  joins: ['y', 'e'],
  aroundSize: ['talla', 'tallas', 'talle', 'talles'],
  inOrder: ['en (?:ese|este|el mismo) orden', 'respectivamente'],
  people: ['jugadores', 'jugadoras', 'ninos', 'ninas', 'personas', 'piezas', 'total', 'muchachos', 'muchachas'],
  ofThem: [],
  weAre: ['son', 'somos'],
  staff: ['staff'],
  fan: [],
}

/** What only some players wear, in Spanish. */
export const esRowMarks: RowMarkPhrases = {
  numberLead: ['n[uú]mero ', 'no\\. ?'],
  role: ['capit[aá]na?', 'porter[oa]'],
  roleIs: ['es', 'lleva', 'trae'],
  article: ['el', 'la'],
  years: ['a[nñ]os'],
  letterLead: ['una?', 'su', '(?:la )?letra', 'la', 'llevan?'],
  letterOn: ['en'],
  letterArticle: ['el '],
  letterPlace: ['pecho'],
  letterFor: ['para', 'a la', 'al'],
  letter: ['una?', 'la', 'su'],
  captain: ['(?:sub)?capitan(?:as?|es)?'],
  captainBegins: ['capit'],
  alternate: ['subcapitan(?:as?|es)?', 'altern[oa]s?', 'asistentes?'],
  givesUp: ['dejo', 'deja', 'entrego', 'ya no lleva', 'ya no trae', 'ya no usa', 'perdio'],
  patch: ['gafete'],
  rightSide: ['pecho derecho', 'lado derecho'],
  longSleeve: ['mangas? largas?'],
  rest: ['los dem[aá]s', 'las dem[aá]s', 'el resto'],
  keeper: ['libero', 'portero', 'portera', 'guardameta', 'arquero'],
  wears: ['viste', 'lleva', 'va de', 'usa', 'de', 'en', 'trae'],
  wearsToo: ['va', 'viste', 'lleva', 'usa'],
  numberNear: ['numero ', 'el ', 'la ', 'no\\. ?'],
  with: ['con'],
}
