import type { Intent } from '../understood.ts'
import { complaintOf } from './complaint.ts'
import { anyOf, fold } from './tokens.ts'

const patterns = {
  undo: new RegExp(
    [
      '^(?:(?:no|wait|oops|sorry|hold on|h+m+|u+h+|u+m+|er|ok|okay|actually|well|can you|could you|espera|perdon|ay|este|bueno|puedes?|please|por favor)[,.! ]+)*',
      '(?:undo|take (?:that|it) back|go back|revert|deshacer|deshaz(?:lo)?|regresa(?:lo)?|mejor no|cancela eso)',
      '(?: (?:that|it|this|please|eso|por favor|(?:the |that |my )?last(?: one| change| thing)?|(?:eso )?(?:lo )?ultimo|lo ultimo|el ultimo cambio))*',
      "(?:[,;.] *[\\w# ]{1,30} (?:was|were|is|are|estaba|era) (?:right|fine|correct|ok|okay|bien|correct[oa])(?: before| antes)?|[,;.] *(?:si|yes|he|she|they|actually|porque|because)\\b[\\w' ]{0,40})?[.! ]*$",
    ].join(''),
  ),
  startOver: anyOf('start over', 'start again', 'empezar de nuevo', 'empecemos de nuevo', 'borra todo', 'reset the order'),
  cancel: anyOf(
    'cancel (?:the|my|our|this|whole)(?: whole)? order',
    'cancel everything',
    'cancela(?:r)? (?:el|mi|todo el|este) pedido',
    'ya no quiero el pedido',
    'cancel it all',
  ),
  person: anyOf(
    'talk to (?:a |some)?(?:person|human|someone)',
    'real person',
    'speak to (?:a |some)?(?:person|human|someone)',
    'hablar con (?:una persona|alguien|un humano)',
    'una persona de verdad',
    'call me',
  ),
  status: anyOf(
    '(?:is|are) (?:my|our|the|it|they|everything)(?: \\w+){0,3} (?:ready|done|finished)',
    'order status',
    'status of',
    'when will (?:it|they|my order|our order) be ready',
    'how is (?:my|our|the) order',
    'any (?:news|update)',
    'where (?:is|are) (?:my|our) (?:order|jerseys|shirts)',
    'como va (?:mi|el|nuestro) pedido',
    '(?<!si )ya (?:mero )?estan',
    '(?<!si )ya quedaron',
    'cuando estan',
    'en que va',
  ),
  price: anyOf(
    'how much (?:would|is|are|for|does|do|without|with|if)',
    'what would it (?:cost|be)',
    "what's the price",
    'what is the price',
    'how much',
    'price (?:for|of|without|with)',
    'cuanto (?:cuesta|cuestan|sale|seria|es|por|me sale|costaria|costarian)',
    'que precio',
    'a como',
  ),
  whatIf: /^[¿\s]*(?:(?:and|ok|so|hm+|y|oye|bueno)[, ]+)*(?:what if|what about|how about|y si|que tal si|que pasa si)\b/,
  care: anyOf(
    'how (?:do|should|to|can) (?:we |i |you )?(?:wash|dry|iron|care for|clean)',
    'wash(?:ing)? (?:instructions|them|it)\\?',
    'care (?:card|instructions)',
    '(?:can|do|should) (?:we|i|they) (?:go in|put (?:them|it) in|use) the dryer',
    'como (?:se |las |los |lo |la )?(?:lavo|lavamos|lavan|lava|seco|secamos|cuido|cuidamos|plancho)',
    'instrucciones de lavado',
    'se puede(?:n)? (?:meter|poner) (?:en|a) la secadora',
  ),
  photo: anyOf(
    '(?:sending|sent|send|attached|attaching|here is|took) (?:you )?(?:a |the )?(?:photo|picture|pic|screenshot|voice note|voice memo)',
    'photo of the (?:roster|list)',
    'screenshot',
    'voice note',
    'nota de voz',
    'foto de la (?:lista|libreta|hoja)',
    'le mande (?:la|una) (?:foto|lista por)',
    'mando (?:la|una) foto',
  ),
  thanks: /^(?:thanks?(?: you)?(?: so much| a lot)?|thx|ty|gracias|muchas gracias|mil gracias|muy amable|great,? thanks)[.! ]*$/,
  greeting:
    /^(?:hi|hello|hey|good (?:morning|afternoon|evening)|morning|afternoon|yo|howdy|hola|buenas|buenos dias|buenas tardes|buenas noches|que tal|ola)(?: (?:there|buenas|hola|all|everyone))*[.!, ]*$/,
  rude: anyOf(
    'stupid',
    'useless',
    'idiot',
    'dumb',
    'moron',
    'shut up',
    'screw you',
    'f+u+c+k\\w*',
    'shit',
    'crap',
    'sucks?',
    'bastard',
    'asshole',
    'porqueria',
    'basura',
    'estupid[oa]',
    'idiota',
    'inutil',
    'no sirves?',
    'imbecil',
    'pendej[oa]',
    'mierda',
    'chinga\\w*',
    'put[oa]',
    'hate you',
  ),
  earlier: anyOf(
    'same as last (?:year|season|time)',
    'like last (?:year|season|time)',
    'same (?:order )?as (?:before|last)',
    'reorder',
    're-order',
    'just that one again',
    "(?:lost|misplaced|replace) (?:[\\w#']+ ){1,5}?(?:jersey|shirt|hoodie|tee|polo|uniform)",
    'lost (?:his|hers|theirs|mine)\\b(?! (?:stones?|color))',
    'one more like',
    'order again',
    'same (?:again )?(?:for )?next (?:year|season)',
    '(?:same|repeat) (?:thing|jerseys|shirts|order) (?:as|from) last (?:year|season)',
    'lo mismo para (?:el proximo ano|la proxima temporada)',
    'c/[\\w-]{16,200}',
    'igual que (?:el ano pasado|la (?:vez|temporada) pasada|antes)',
    'lo mismo (?:que|del) (?:el )?ano pasado',
    'perd(?:io|i|imos|ieron|ido) (?:su|el|la|mi|nuestra|nuestro|una|un) (?:jersey|playera|camiseta|sudadera|polo)',
    'otra vez lo mismo',
    '(?:same|again|repeat|redo)\\b[^.\\n]{0,60}\\b(?:last|previous) (?:year|season|time|spring|fall|summer|winter|order)',
    '(?:last|previous) (?:year|season|time|spring|fall|summer|winter|order)\\b[^\\n]{0,80}\\b(?:same|again|repeat|identical)',
    '(?:lo mismo|igual(?:es)?|otra vez|de nuevo|repetir|repetimos|los mismos|las mismas)\\b[^.\\n]{0,60}\\b(?:el ano pasado|la temporada pasada|la vez pasada|anterior|el torneo pasado)',
    '(?:el ano pasado|la temporada pasada|la vez pasada|el torneo pasado|anterior)\\b[^\\n]{0,80}\\b(?:lo mismo|igual(?:es)?|otra vez|de nuevo|repetir|repetimos|los mismos|las mismas)',
  ),
  single: anyOf(
    "(?:lost|misplaced|replace) (?:[\\w#']+ ){1,5}?(?:jersey|shirt|hoodie|tee|polo|uniform)\\b",
    'lost (?:his|hers|theirs|mine)\\b',
    'just that one again',
    'one more like',
    'perd(?:io|i|imos|ieron|ido) (?:su|el|la|mi|nuestra|nuestro|una|un) (?:jersey|playera|camiseta|sudadera|polo)\\b',
  ),
  yes: /^(?:yes|yep|yeah|yup|sure|correct|right|ok|okay|that's right|si|claro|correcto|asi es|esta bien|de acuerdo|ok\.?)(?: (?:please|sir|ma'am|thanks|por favor|gracias|it is|they are))*[.! ]*$/,
  no: /^(?:no|nope|nobody|none|no one|neither|nadie|ninguno|ninguna|no,? (?:nobody|none|nadie|ninguno|all (?:are )?(?:adults|older)|todos son (?:adultos|grandes|mayores)))(?: (?:thanks|gracias|one|is|are|of them))*[.! ]*$/,
  english: /^(?:english(?: please)?|in english(?: please)?|can we (?:speak|do) english|en ingles(?: por favor)?)[.!? ]*$/,
  spanish:
    /^(?:espanol(?: por favor)?|en espanol(?: por favor| please)?|spanish(?: please)?|in spanish(?: please)?|hablas? espanol|se habla espanol)[.!? ]*$/,
} as const

const simple: readonly (readonly [Exclude<Intent['kind'], 'order' | 'complaint' | 'earlier-order' | 'language'>, RegExp])[] = [
  ['undo', patterns.undo],
  ['start-over', patterns.startOver],
  ['cancel', patterns.cancel],
  ['person', patterns.person],
  ['thanks', patterns.thanks],
  ['greeting', patterns.greeting],
  ['yes', patterns.yes],
  ['no', patterns.no],
  ['status', patterns.status],
  ['care', patterns.care],
  ['what-if', patterns.whatIf],
  ['photo', patterns.photo],
  ['price', patterns.price],
  ['rude', patterns.rude],
]

/** Who is to be left out of an earlier order: "without the seniors", "sin los de último año". */
const without = (folded: string): readonly string[] =>
  anyOf(
    'without the seniors',
    'drop the seniors',
    'no seniors',
    'minus the seniors',
    'sin los de ultimo ano',
    'sin los que (?:ya )?se (?:graduan|graduaron|van|fueron)',
    'without the graduates',
    'sin los graduados',
  ).test(folded)
    ? ['seniors']
    : []

/** What a message is about besides the order itself. */
export const readIntent = (text: string, team: string | null): Intent => {
  const folded = fold(text).trim()
  if (patterns.english.test(folded)) return { kind: 'language', language: 'en' }
  if (patterns.spanish.test(folded)) return { kind: 'language', language: 'es' }
  const complaint = complaintOf(text, team)
  if (complaint !== null) return { kind: 'complaint', complaint }
  if (patterns.earlier.test(folded))
    return {
      kind: 'earlier-order',
      asks: { team, without: without(folded), text: text.slice(0, 300), single: patterns.single.test(folded) },
    }
  const kind = simple.find(([, pattern]) => pattern.test(folded))?.[0]
  return kind === undefined ? { kind: 'order' } : { kind }
}

const asking =
  /\b(?:how much|what would it (?:cost|be)|what'?s the price|what is the price|(?:the )?price|cuanto (?:cuesta|cuestan|sale|seria|es|me sale|costaria|costarian)|cuanto|que precio|a como)\b/

/** The words of a price question without the asking: "how much without the bling?" leaves "without the bling?". */
export const withoutAsking = (text: string): string => {
  const folded = fold(text)
  const found = asking.exec(folded) ?? patterns.whatIf.exec(folded)
  if (found === null) return text
  return `${text.slice(0, found.index)} ${text.slice(found.index + found[0].length)}`.replace(
    /^[\s,]*(?:would|will|it|be|is|me|saldria|seria|sale|costaria)\b/i,
    ' ',
  )
}

/** A question to the shop, as against a wish put as a question ("can you have them by Friday?"). */
export const asksSomething = (text: string): boolean => text.includes('?') || patterns.price.test(fold(text))
