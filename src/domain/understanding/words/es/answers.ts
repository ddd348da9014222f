import type { AnswerPhrases, SidePhrases, SigningPhrases } from '../matters/answers.ts'

export const esSigning: SigningPhrases = {
  approves: [
    '(?:lo|la|las|los) (?:apruebo|autorizo|firmo|confirmo|acepto)',
    ...['apruebo', 'autorizo', 'firmo', 'aprobad[oa]', 'confirmo'],
  ],
  praises: [
    ...['perfecto', 'adelante', 'se ve (?:bien|padre|genial|chido)', 'esta (?:bien|perfecto|padre)'],
    ...['todo (?:bien|perfecto|correcto)', 'me gusta', 'excelente', 'dale', 'sale', 'va', 'si'],
  ],
  agrees: [
    ...[
      '(?:ya )?(?:imprima(?:n)?l[oa]s?|hag?(?:a|an)l[oa]s?|mande(?:n)?l[oa]s?)(?: por favor)?',
      'de acuerdo',
      'listo',
      'andale',
      'orale',
      'jalo',
    ],
    ...[
      '(?:muy|esta) bien(?: gracias)?',
      '(?:esta |es )?correcto',
      'ok',
      'sale y vale',
      'va que va',
      'asi (?:mero|esta bien)',
      'claro(?: que si)?',
    ],
  ],
  withheld: [
    ...['pero', 'excepto', 'menos', 'salvo', 'aunque', 'nomas que', 'solo que', 'si me', 'cuando', 'todavia no', 'aun no'],
    ...['no (?:lo |la )?(?:apruebo|firmo|autorizo)', 'casi', 'no yo', 'yo no'],
    ...['(?:tiene|tienen|debe|deben|hay|falta|necesita) que', 'aprobad[oa] por', 'para que'],
  ],
  affirms: ['si', 'sip', 'ok', 'perfecto', 'listo'],
  allRight: ['(?:asi )?(?:todo )?esta todo (?:bien|correcto)', 'todo (?:esta |es )?correcto', 'todo esta bien'],
  joins: ['y', 'ya'],
  makeThem: [
    '(?:adelante[, ]+(?:con )?)?(?:imprima(?:n)?l[oa]s?|hag?(?:a|an)l[oa]s?)',
    '(?:ya )?pueden (?:imprimirl[oa]s|hacerl[oa]s)',
  ],
  politely: ['por favor', 'gracias'],
  goesAhead: ['adelante(?: con (?:la |el |los |las )?\\p{L}+)?'],
  revision: ['revision', 'version'],
}

export const esAnswers: AnswerPhrases = {
  later: ['despues', 'luego', 'todavia no', 'al rato', 'manana', 'mas tarde', 'pendiente'],
  none: ['sin (?:numero|nombre|numeros|nombres)', 'ninguno', 'ninguna', 'no llevan?'],
  asIs: ['asi', 'esta bien', 'dejalo', 'dejalos', 'dejala', 'es correcto', 'correcto'],
  taken: ['si', 'sale', 'va', 'asi', 'esa', 'ese', 'hagalo', 'mejor asi', 'ok'],
  unknown: ['no se', 'ni idea', 'quien sabe', 'no sabemos', 'no tengo idea'],
  first: ['primero', 'primera'],
  second: ['segundo', 'segunda'],
  pieces: ['piezas', 'cantidad', 'cuantas'],
  numbers: ['numeros?'],
  garments: ['prendas?', 'playeras?', 'sudaderas?', 'camisetas?'],
  letters: ['letras?', 'numeros?', 'nombres?', 'vinil'],
  leads: ['somos', 'es', 'se llama', 'el equipo es', 'el equipo se llama', 'me llamo', 'soy', 'mi nombre es'],
  called: [],
  refuses: ['no', 'nadie', 'ninguno', 'todos', 'todas', 'si', 'luego', 'despues'],
  names: ['se llama', 'me llamo', 'mi nombre es', 'el equipo es'],
  sentence: [
    ...['yo', 'tu', 'usted', 'nosotros', 'ellos', 'es', 'son', 'esta', 'estan', 'que', 'como', 'cuando'],
    ...['donde', 'cuant[oa]s?', 'cuesta', 'digo', 'dices', 'luego', 'despues', 'nada', 'mas', 'todos?'],
    ...['todas?', 'bien', 'perfecto', 'gracias', 'si', 'no', 'quiero', 'queremos', 'necesito', 'tengo'],
    ...['tienen', 'puedo', 'puede', 'hay', 'ya', 'ahorita', 'manana', 'igual', 'mismo', 'adelante', 'listo'],
    ...['claro', 'sale', 'vale', 'tallas?', 'nombres?', 'mayores', 'menores'],
  ],
  everyone: ['todos', 'todas'],
  yes: ['si', 'ok'],
  no: ['no'],
  nobodyLeaves: ['nadie', 'ninguno', 'ninguna', 'todos siguen'],
  sameSizes: ['mism[ao]s?', 'igual(?:es)?', 'sin cambios?', 'les quedan'],
  sameYes: ['si', 'ok'],
}

export const esSides: SidePhrases = {
  left: ['izquierdo', 'izquierda'],
  right: ['derecho', 'derecha'],
  looking: ['(?:como|cuando|al) (?:lo|la|se) (?:ves?|ven|mira|miras)', 'viendolo', 'viendola', 'de quien lo ve', 'del que lo ve'],
  chest: ['pecho'],
  chestLead: ['en el pecho,? (?:d?el )?lado'],
  leftChest: ['pecho izquierdo'],
  shortLeft: ['izq(?:d[oa])?', 'del coraz[oó]n'],
  shortRight: ['der', 'dch[oa]'],
  rightChest: ['pecho derecho'],
  takenOff: [],
  without: ['sin'],
}
