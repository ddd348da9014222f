import type { ComplaintPhrases, WashCounts } from '../matters/complaints.ts'

const stones = '(?:piedras?|piedritas|pedreria|cristales)'

/** What a Spanish-speaking customer says of what went wrong. */
export const esComplaints: ComplaintPhrases = {
  wrongName: [
    "(?:nombre|numero) (?:[\\w']+ ){0,3}?(?:es|esta|salio|quedo|vino) (?:mal|equivocado)",
    'pusieron mal',
    'nombre mal',
    'mal el nombre',
    'mal escrito',
    '(?:salio|salieron|quedo|quedaron|vino|vinieron) mal (?:un |el |los |unos )?(?:nombre|apellido|numero)s?',
    'numero equivocado',
    'nombre equivocado',
  ],
  stonesLost: [
    `se (?:les? )?(?:cayeron|caen|cayo|estan cayendo)(?: \\w+){0,3} ${stones}`,
    `${stones}(?: \\w+){0,3} (?:se (?:les? )?(?:cayeron|caen|cayo)|cayendo)`,
  ],
  lift: [
    'se (?:les? )?(?:esta |estan )?(?:pel(?:ando|o|aron|an)|desprend\\w+)',
    'se (?:les? )?(?:cayeron|caen|cayo|estan cayendo)(?: \\w+){0,2} (?:numeros?|letras?|nombres?)',
    'se (?:les? |me )?cay(?:o|eron) (?:el|la) \\d{1,3} (?:al?|de|del|de la)',
    'despeg(?:a|o|ue|aron|an|ando|ad[oa]s?)',
    'se (?:esta |estan )?(?:despegando|levantando|cayendo)',
    'se despego',
    'se levanta',
  ],
  crack: [
    'se (?:agrieto|agrietaron|cuartearon|estan cuarteando|cuarteo|esta cuarteando|agrieta)',
    'agrietad[oa]s?',
    'cuartead[oa]s?',
  ],
  bleed: ['se destino', 'se desti[nñ]o', 'se mancho', 'se puso rosa'],
  shine: ['marca de plancha', 'quemad[oa]'],
  shrink: ['se encogio', 'encogid[oa]'],
  otherTrouble: [
    '(?:quiero|quisiera|vengo a) (?:quejarme|poner una queja)',
    'tengo una queja',
    '(?:llego|llegaron|vino|vinieron|salio|salieron|quedo|quedaron|esta|estan)(?: \\w+){0,4} (?:torcid|chuec|rot|danad)[oa]s?',
  ],
  feared: ['la vez pasada'],
  unwashed: ['sin lavar', 'nunca (?:se |la |lo )?lav\\w+', 'no (?:se |la |lo )?(?:ha|he|hemos) lavado'],
  washes: ['lavadas?', 'veces', 'vez'],
  washed: [],
  washedWhat: [],
  air: ['colgad[oa]s?', 'colg(?:o|ue|amos|aron)', 'tendi(?:mos)?', 'tendid[oa]s?', 'al aire'],
  dryer: ['secadora'],
  beforeOwner: [...['se llama', 'la de', 'el de', '(?:playera|camiseta|jersey|sudadera) de'], 'de mi (?:hij[oa]|niñ[oa])'],
  behindOwner: [],
  numberSaid: [
    '(?:sobre todo|en especial|principalmente) (?:el|la|los|las|al|a la) ',
    '(?:peor(?:es)?|mas (?:fe[oa]s?|danad[oa]s?|maltratad[oa]s?)) (?:(?:es|son|esta|estan) )?(?:el|la|los|las) ',
    '(?:el|la|los|las) (?=\\d{1,3}(?:(?:,| y)(?: el| la)? ?\\d{1,3})* (?:(?:es|son) (?:el|la|los|las) (?:peor(?:es)?|mas)|esta|estan|salio|salieron|quedo|quedaron|ya no)\\b)',
    'cay(?:o|eron) (?:el|la) (?=\\d{1,3} (?:al?|de|del|de la)\\b)',
    'numeros?(?: en| de| del)? ',
    '(?:al|a (?:la|el|las|los)) (?=\\d{1,3}\\b(?! ?(?:de |am|pm|a\\.|p\\.|:)))',
  ],
  garment: ['playera', 'camiseta', 'jersey', 'sudadera'],
  of: ['de '],
  theNumber: ['el ', 'la ', 'del ', 'al ', 'a la '],
  onThe: ['del', 'de la'],
  number: ['numero '],
  pointing: ['son', 'es', 'fue', 'fueron', 'eran', 'los?', 'las?', 'el', 'del'],
  notNumber: ['de ', 'lavad', 'dia', 'mes'],
  pair: ['par', 'ambas', 'ambos'],
  counted: ['lavad', 'veces', 'dias', 'semanas'],
  and: ['y'],
  teamIs: ['(?:[Ss]omos|[Ss]oy|[Ee]scribo) del? (?:la |los |las )?\\p{Ll}+(?: de \\p{Ll}+)?', '[Ee]quipo(?: es| de)?', '[Cc]lub'],
  teamArticle: ['los ', 'las ', 'de '],
  teamBeside: ['nuestr[oa]s', 'de l[ao]s'],
  links: ['de la', 'de los', 'de', 'del'],
  orders: ['necesit\\w+', 'ocup(?:o|amos)', 'quier(?:o|emos)(?! que)'],
}

export const esWashCounts: WashCounts = {
  before: { una: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, primera: 1 },
  behind: {},
}
