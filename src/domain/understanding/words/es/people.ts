import type { MoneyPhrases, PeoplePhrases } from '../matters/people.ts'

/** What can pay: a body of people, by its noun. */
const noun = [
  ...[
    'escuela',
    'liga',
    'club',
    'colegio',
    'municipio',
    'ayuntamiento',
    'alcaldía',
    'iglesia',
    'parroquia',
    'papás',
    'mamás',
    'padres',
  ],
  ...[
    'primaria',
    'secundaria',
    'preparatoria',
    'prepa',
    'kínder',
    'universidad',
    'facultad',
    'academia',
    'instituto',
    'delegación',
  ],
  ...['sociedad', 'asociación', 'patronato', 'cooperativa', 'mesa', 'comité', 'consejo', 'federación', 'fundación', 'sindicato'],
  ...[
    'empresa',
    'compañía',
    'oficina',
    'negocio',
    'patrocinador',
    'patrocinadores',
    'gimnasio',
    'comunidad',
    'colonia',
    'dirección',
  ],
].join('|')
const kinds =
  'directiva|técnica|estatal|municipal|vecinal|escolar|deportiv[oa]|social|regional|privad[oa]|públic[oa]|infantil|juvenil'
/** With what it is of, and its name: "sociedad de padres", "secundaria técnica 12", "primaria Benito Juárez". */
const body = `((?:${noun})(?: (?:de (?:la |los |las )?|del )[\\p{L}]{3,}| (?:${kinds})(?!\\p{L})| \\p{Lu}[\\p{L}]+| \\d{1,3}(?!\\d)){0,4})(?!\\p{L})`
const ofThe = '(?:de |del |a |al )?(?:la |el |los |las |nuestr[oa]s? |mi )?'

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
  speaks: ['soy', 'tengo', 'somos', 'necesito', 'quiero', 'le escribo'],
  comesFrom: ['de', 'del'],
  opens: ['[Pp]rofe'],
  itIs: [],
  itIsFrom: [],
  closes: ['[Gg]racias,? ', '[Aa]tte\\.? '],
  heOrShe: ['ella', 'él', 'el', 'ellos'],
  isOurs: ['es (?:nuestr[oa]|mi|el|la)'],
  isPerson: ['es'],
  iSign: [
    'quien (?:firma|aprueba|autoriza) soy yo',
    'yo (?:apruebo|autorizo|firmo)',
    '(?:apruebo|autorizo|firmo) yo',
    '(?:yo )?soy (?:quien|el que|la que) (?:firma|aprueba|autoriza)',
  ],
  iPay: ['yo (?:lo |los |las )?pago', 'pago yo', 'yo (?:voy a pagar|pagaré)'],
  iCollect: ['yo (?:los |las )?(?:recojo|paso|voy)', 'paso yo', 'recojo yo'],
  signs: ['(?:es (?:la|el|quien) (?:que )?)?(?:aprueba|autoriza|firma|da el visto bueno)'],
  signer: ['[Ff]irma', '[Aa]prueba', '[Aa]utoriza'],
  theirs: ['nuestr[oa]', 'mi', 'el', 'la'],
  signedBy: [
    '(?:[Ff]irma|[Aa]prueba|[Aa]utoriza|da el visto bueno)(?: es|:)?',
    '(?:[Vv]isto bueno|[Oo][Kk]|[Aa]probación|[Aa]utorización) (?:lo |la )?(?:da|dará|firma|es|por|de)(?: de)?',
  ],
  pays: ['(?:es (?:la|el|quien) (?:que )?)?(?:paga|va a pagar|pagará)'],
  paidBy: ['(?:[Pp]aga|va a pagar|pagará):?'],
  collects: ['(?:es (?:la|el|quien) (?:que )?)?(?:los |las )?(?:recoge|recogerá|va a recoger|pasa por|pasa a recoger)'],
  collectedBy: [
    '[Rr]ecoge(?:rá|n)?(?: es|:)?',
    '[Pp]asa(?:rá)? (?:a recoger|por)(?:l[ao]s)?',
    ...[
      '[Vv]a a recoger(?:l[oa]s)?',
      '[Vv](?:a|iene) por (?:ellos|ellas)',
      '[Vv]iene a recoger(?:l[oa]s)?',
      '[Pp]asa por (?:ellos|ellas)',
      'los recoge',
      'las recoge',
    ],
  ],
  notNames: [
    'El',
    'La',
    'Los',
    'Las',
    'Yo',
    'Para',
    'No',
    'Quien',
    'Quién',
    'Ella',
    'Él',
    'Ellos',
    'Ellas',
    'Que',
    'Y',
    'Ya',
    'Aquí',
  ],
  body: [
    `(?:[Pp]agan?|[Pp]agar[áa]n?|[Vv]an? a pagar|[Cc]ubren?|[Pp]atrocinan?|[Ff]actura(?:r|n)? a(?: nombre)?|[Pp]or cuenta|[Cc]ár?guen(?:lo|los)|[Pp]ago (?:lo |los )?(?:hace|cubre|da)):? (?:es |son )?${ofThe}${body}`,
    `(?<!(?:de|del) )(?<!\\p{L})(?:[Ll]a|[Ee]l|[Ll]os|[Ll]as|[Nn]uestr[oa]s?|[Mm]i) ${body} (?:(?:es|son) (?:quien|quienes|(?:el|la|los|las) que) )?(?:l[oa]s? )?(?:pagan?|van? a pagar|pagar[áa]n?|cubren?|hace el pago)(?!\\p{L})`,
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
