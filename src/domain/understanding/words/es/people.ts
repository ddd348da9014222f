import type { MoneyPhrases, PeoplePhrases } from '../matters/people.ts'

const body = 'escuela|liga|club|colegio|municipio|iglesia|papás|secundaria|preparatoria|delegación'

/** How a Spanish-speaking customer says who orders, signs, pays and collects, and how it is handed over. */
export const esPeople: PeoplePhrases = {
  particles: ['de la', 'de', 'del', 'y'],
  shortened: ['Dr', 'Sr', 'Ma'],
  endsName: ['Los ', 'Las '],
  titles: [
    ...['[Dd]ra?\\.?', '[Pp]rof(?:e(?:sora?)?)?\\.?', '[Ss]ra?\\.?', '[Ss]rta\\.?', '[Ll]ic\\.?', 'la maestra', 'el profe'],
    ...['la profe', 'el entrenador', 'la entrenadora', 'la señora', 'el señor'],
    '[Ll]a hermana',
    '[Ee]l hermano',
    'mi (?:hermana|hermano|esposo|esposa|mamá|papá)',
    ...['[Cc]ap(?:t\\.?|\\.)?', '[Dd]oña', '[Dd]on'],
  ],
  ours: ['[Mm]i', '[Nn]uestr[oa]', '[Ee]l', '[Ll]a'],
  nameIs: ['[Mm]e llamo', '[Mm]i nombre es'],
  iAm: ['soy', 'Soy', 'aquí', 'habla', 'le habla', 'Habla'],
  orders: [],
  greets: ['[Hh]ola', '[Bb]uen[ao]s (?:tardes|días|noches)', '[Bb]uen día'],
  comesFrom: ['de', 'del'],
  opens: ['[Pp]rofe'],
  itIs: [],
  itIsFrom: [],
  closes: ['[Gg]racias,? ', '[Aa]tte\\.? '],
  heOrShe: ['ella', 'él', 'el', 'ellos'],
  isOurs: ['es (?:nuestr[oa]|mi|el|la)'],
  isPerson: ['es'],
  iSign: ['(?:yo )?soy (?:quien|el que|la que) (?:firma|aprueba|autoriza)'],
  iPay: ['yo (?:lo |los |las )?pago', 'pago yo', 'yo (?:voy a pagar|pagaré)'],
  iCollect: ['yo (?:los |las )?(?:recojo|paso|voy)', 'paso yo', 'recojo yo'],
  signs: ['(?:es (?:la|el|quien) (?:que )?)?(?:aprueba|autoriza|firma|da el visto bueno)'],
  signer: ['[Ff]irma', '[Aa]prueba', '[Aa]utoriza'],
  theirs: ['nuestr[oa]', 'mi', 'el', 'la'],
  signedBy: ['(?:[Ff]irma|[Aa]prueba|[Aa]utoriza|da el visto bueno)(?: es|:)?'],
  pays: ['(?:es (?:la|el|quien) (?:que )?)?(?:paga|va a pagar|pagará)'],
  paidBy: ['(?:[Pp]aga|va a pagar|pagará):?'],
  collects: ['(?:es (?:la|el|quien) (?:que )?)?(?:los |las )?(?:recoge|recogerá|va a recoger|pasa por|pasa a recoger)'],
  collectedBy: [
    '[Rr]ecoge(?:rá|n)?:?',
    '[Pp]asa(?:rá)? (?:a recoger|por)(?:l[ao]s)?',
    ...['[Vv]a a recoger', '[Pp]asa por (?:ellos|ellas)', 'los recoge', 'las recoge'],
  ],
  notNames: ['El', 'La', 'Los', 'Las', 'Yo', 'Para', 'No'],
  body: [
    `(?:[Pp]aga|pagará|va a pagar|[Ff]actura a):? (?:la |el |los |las )?((?:${body})(?: (?!(?:con|y|por|para|en|al|a|el|la|los|las|que|todo|con)\\b)[\\p{L}]+)?)`,
  ],
  post: ['por correo', 'envi(?:o|en|ar)', 'mand(?:en|ar)(?:los|las)? por', 'por paqueteria'],
  toField: [
    '(?:llev|entreg|traig|trai)[\\p{L}]*[\\p{L} ]{0,25} (?:a|en) (?:la |el )?(?:cancha|campo|gimnasio|partido|entrenamiento)',
  ],
  collect: [
    ...['recoj\\p{L}*', 'recog\\p{L}*', 'paso(?: yo)? por', 'pas[oa] yo', 'yo paso', 'paso manana', 'pasamos por', 'voy por'],
  ],
}

/** How a Spanish-speaking customer speaks of paying. */
export const esMoney: MoneyPhrases = {
  orderNumber: ['orden de compra'],
  orderNumberIs: ['es', 'numero', 'no\\.?', 'la', 'el'],
  taxExempt: ['exent[oa]s? de impuestos?', 'libre de impuestos'],
  deposit: ['anticipo', 'deposito', 'enganche'],
  down: [],
  asDeposit: ['de'],
  of: ['de'],
  currency: ['dolares', 'usd', 'pesos'],
  gives: ['deje', 'dejo', 'di', 'doy', 'dimos', 'damos', 'pague', 'pago', 'pagamos', 'dejamos'],
  paid: ['ya esta pagado', 'ya pague', 'todo pagado'],
  onAccount: ['a (?:la )?cuenta de', 'a cuenta', 'a nuestra cuenta'],
}
