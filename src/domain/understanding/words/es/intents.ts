import type { IntentPhrases } from '../matters/intents.ts'

const lastTime = 'el ano pasado|la temporada pasada|la vez pasada'
const again = '(?:lo mismo|igual(?:es)?|otra vez|de nuevo|repetir|repetimos|los mismos|las mismas)'
const lost = 'perd(?:io|i|imos|ieron|ido) (?:su|el|la|mi|nuestra|nuestro|una|un) (?:jersey|playera|camiseta|sudadera|polo)'

/** What a Spanish message wants besides the order. */
export const esIntents: IntentPhrases = {
  hesitates: ['no', 'espera', 'perdon', 'ay', 'este', 'bueno', 'puedes?', 'por favor'],
  undo: ['deshacer', 'deshaz(?:lo)?', 'deshaga(?:lo|n|nlo)?', 'regresa(?:lo)?', 'mejor no', 'cancela eso'],
  undoWhat: ['eso', 'por favor', '(?:eso )?(?:lo )?ultimo', 'lo ultimo', 'el ultimo cambio'],
  was: ['estaba', 'era'],
  right: ['bien', 'correct[oa]'],
  before: ['antes'],
  afterAll: ['siempre si', 'despues de todo', 'de todos modos'],
  stays: ['(?:se )?quedan?', 'siguen?', 'dejal[aeo]s?'],
  asBefore: ['como (?:esta|estaba|estaban|antes|iba|iban)', 'igual', 'asi'],
  because: ['si', 'porque'],
  startOver: ['empezar de nuevo', 'empecemos de nuevo', 'borra todo'],
  cancel: ['cancela(?:r)? (?:el|mi|todo el|este) pedido', 'ya no quiero el pedido'],
  person: ['hablar con (?:una persona|alguien|un humano)', 'una persona de verdad'],
  status: [
    ...[
      'como van?(?=\\W*$)',
      '(?<!si )ya esta(?:n)? list[oa]s?(?! l[oa]s)',
      '(?<!si )ya quedo(?=\\W*$)',
      'en que (?:quedo|estamos)(?=\\W*$)',
    ],
    'como va (?:mi|el|nuestro) pedido',
    '(?<!si )ya (?:mero )?estan(?! list[oa]s l[oa]s)',
    '(?<!si )ya quedaron',
    'cuando estan',
    'en que va',
  ],
  price: ['cuanto (?:cuesta|cuestan|sale|seria|es|por|me sale|costaria|costarian)', 'que precio', 'a como'],
  asksPrice: ['cuanto (?:cuesta|cuestan|sale|seria|es|me sale|costaria|costarian)', 'cuanto', 'que precio', 'a como'],
  ofPrice: ['me', 'saldria', 'seria', 'sale', 'costaria'],
  opensWhatIf: ['y', 'oye', 'bueno'],
  whatIf: ['y si', 'que tal si', 'que pasa si'],
  care: [
    'como (?:se |las |los |lo |la )?(?:lavo|lavamos|lavan|lava|seco|secamos|cuido|cuidamos|plancho)',
    'instrucciones de lavado',
    'se puede(?:n)? (?:meter|poner) (?:en|a) la secadora',
  ],
  photo: ['nota de voz', 'foto de la (?:lista|libreta|hoja)', 'le mande (?:la|una) (?:foto|lista por)', 'mando (?:la|una) foto'],
  thanks: ['gracias', 'muchas gracias', 'mil gracias', 'muy amable'],
  greets: ['hola', 'buenas', 'buenos dias', 'buenas tardes', 'buenas noches', 'que tal', 'ola'],
  greetsMore: ['buenas', 'hola'],
  rude: [
    ...['porqueria', 'basura', 'estupid[oa]', 'idiota', 'inutil', 'no sirves?', 'imbecil', 'pendej[oa]', 'mierda'],
    ...['chinga\\w*', 'put[oa]'],
  ],
  earlier: [
    'lo mismo para (?:el proximo ano|la proxima temporada)',
    'igual que (?:el ano pasado|la (?:vez|temporada) pasada|antes)',
    'lo mismo (?:que|del) (?:el )?ano pasado',
    lost,
    'otra vez lo mismo',
    `${again}\\b[^.\\n]{0,60}\\b(?:${lastTime}|anterior|el torneo pasado)`,
    `(?:${lastTime}|el torneo pasado|anterior)\\b[^\\n]{0,80}\\b${again}`,
  ],
  single: [`${lost}\\b`],
  withoutSeniors: ['sin los de ultimo ano', 'sin los que (?:ya )?se (?:graduan|graduaron|van|fueron)', 'sin los graduados'],
  yes: ['si', 'claro', 'correcto', 'asi es', 'esta bien', 'de acuerdo'],
  yesMore: ['por favor', 'gracias'],
  no: ['nadie', 'ninguno', 'ninguna', 'no,? (?:nadie|ninguno|todos son (?:adultos|grandes|mayores))'],
  noMore: ['gracias'],
  language: [
    'espanol(?: por favor)?',
    'en espanol(?: por favor| please)?',
    'spanish(?: please)?',
    'in spanish(?: please)?',
    'hablas? espanol',
    'se habla espanol',
  ],
}
