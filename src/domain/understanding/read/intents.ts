import type { Complaint } from '../conversation.ts'
import type { Intent } from '../understood.ts'
import { fold } from './tokens.ts'

const any = (...sources: readonly string[]): RegExp => new RegExp(`\\b(?:${sources.join('|')})\\b`)

const patterns = {
  undo: /^(?:please )?(?:undo|take (?:that|it) back|go back|revert|deshacer|deshaz(?:lo)?|regresa(?:lo)?|mejor no|cancela eso)(?: (?:that|it|please|eso|por favor|the last(?: one| change)?|el ultimo cambio))*[.! ]*$/,
  startOver: any('start over', 'start again', 'empezar de nuevo', 'empecemos de nuevo', 'borra todo', 'reset the order'),
  cancel: any(
    'cancel (?:the|my|our|this|whole)(?: whole)? order',
    'cancel everything',
    'cancela(?:r)? (?:el|mi|todo el|este) pedido',
    'ya no quiero el pedido',
    'cancel it all',
  ),
  person: any(
    'talk to (?:a |some)?(?:person|human|someone)',
    'real person',
    'speak to (?:a |some)?(?:person|human|someone)',
    'hablar con (?:una persona|alguien|un humano)',
    'una persona de verdad',
    'call me',
  ),
  status: any(
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
  price: any(
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
  photo: any(
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
  rude: any(
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
  earlier: any(
    'same as last (?:year|season|time)',
    'like last (?:year|season|time)',
    'same (?:order )?as (?:before|last)',
    'reorder',
    're-order',
    'just that one again',
    'lost (?:his|her|their|my|a|the) (?:jersey|shirt|hoodie)',
    'one more like',
    'order again',
    'igual que (?:el ano pasado|la (?:vez|temporada) pasada|antes)',
    'lo mismo (?:que|del) (?:el )?ano pasado',
    'perdio su (?:jersey|playera|camiseta)',
    'otra vez lo mismo',
  ),
  yes: /^(?:yes|yep|yeah|yup|sure|correct|right|ok|okay|that's right|si|claro|correcto|asi es|esta bien|de acuerdo|ok\.?)(?: (?:please|sir|ma'am|thanks|por favor|gracias|it is|they are))*[.! ]*$/,
  no: /^(?:no|nope|nobody|none|no one|neither|nadie|ninguno|ninguna|no,? (?:nobody|none|nadie|ninguno|all (?:are )?(?:adults|older)|todos son (?:adultos|grandes|mayores)))(?: (?:thanks|gracias|one|is|are|of them))*[.! ]*$/,
  english: /^(?:english(?: please)?|in english(?: please)?|can we (?:speak|do) english|en ingles(?: por favor)?)[.!? ]*$/,
  spanish:
    /^(?:espanol(?: por favor)?|en espanol(?: por favor| please)?|spanish(?: please)?|in spanish(?: please)?|hablas? espanol|se habla espanol)[.!? ]*$/,
} as const

const trouble: readonly (readonly [Complaint['kind'], RegExp])[] = [
  [
    'wrong-name',
    any(
      'wrong name',
      'wrong number',
      'misspelled',
      'spelled wrong',
      'pusieron mal',
      'nombre mal',
      'mal el nombre',
      'mal escrito',
      'numero equivocado',
      'nombre equivocado',
      'spelled it wrong',
    ),
  ],
  [
    'stones-lost',
    any(
      '(?:stones?|rhinestones?|crystals|bling|gems)(?: \\w+){0,4} (?:fell|fall|falling|came|come|coming|missing|lost|dropped)',
      '(?:fell off|fall off|falling off|came off)(?: \\w+){0,4} (?:stones?|rhinestones?)',
      'se (?:le )?(?:cayeron|caen|cayo|estan cayendo)(?: \\w+){0,3} (?:piedras?|piedritas|pedreria|cristales)',
      '(?:piedras?|pedreria|cristales|piedritas)(?: \\w+){0,3} (?:se (?:le )?(?:cayeron|caen|cayo)|cayendo)',
    ),
  ],
  [
    'lift',
    any(
      'peel(?:ing|ed|s)?(?: off)?',
      'lifting',
      'coming off',
      'came off',
      'falling off',
      'fell off',
      'despega(?:ndo|n|ron|do)?',
      'se (?:esta |estan )?(?:despegando|levantando|cayendo)',
      'se despego',
      'se levanta',
    ),
  ],
  ['crack', any('crack(?:ing|ed|s)?', 'se (?:agrieto|cuarteo|esta cuarteando|agrieta)', 'agrietad[oa]s?', 'cuartead[oa]s?')],
  [
    'bleed',
    any(
      'bled',
      'bleeding',
      'turned pink',
      'color came through',
      'colour came through',
      'se destino',
      'se desti[nñ]o',
      'se mancho',
      'se puso rosa',
    ),
  ],
  ['shine', any('shiny (?:mark|box|spot)', 'press marks?', 'burn marks?', 'scorched', 'marca de plancha', 'quemad[oa]')],
  ['shrink', any('shrank', 'shrunk', 'se encogio', 'encogid[oa]')],
]

const future = any('will it', 'does it', 'do they', 'would it', "won't", 'worried', 'afraid', 'last time', 'la vez pasada')

const washCount: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  once: 1,
  twice: 2,
  una: 1,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  a: 1,
  first: 1,
  primera: 1,
}

const washesOf = (folded: string): number | undefined => {
  const found =
    /\b(\d{1,2}|one|two|three|four|five|a|first|una|dos|tres|cuatro|cinco|primera)\s+(?:wash(?:es)?|lavadas?|veces)\b/.exec(
      folded,
    )?.[1] ?? /\b(once|twice)\b/.exec(folded)?.[1]
  if (found === undefined) return undefined
  return washCount[found] ?? Number(found)
}

const dryingOf = (folded: string): string | undefined => {
  if (any('air[- ]?dr(?:y|ied)', 'hung', 'hang', 'line dr(?:y|ied)', 'colgad[oa]s?', 'tendid[oa]s?', 'al aire').test(folded))
    return 'air'
  return any('dryer', 'tumble', 'secadora').test(folded) ? 'dryer' : undefined
}

const namesIn = (text: string): readonly string[] =>
  [...text.matchAll(/(\p{Lu}[\p{Ll}\p{M}]+)'s\b/gu)].map((match) => match[1] ?? '')

/** A complaint with what was said of it; null when nothing went wrong yet. */
export const complaintOf = (text: string, team: string | null): Complaint | null => {
  const folded = fold(text)
  const kind = trouble.find(([, pattern]) => pattern.test(folded))?.[0]
  if (kind === undefined || future.test(folded)) return null
  const numbers = [...folded.matchAll(/(?:#|number |numero |no\. ?)\s?(\d{1,3})\b/g)].map((match) => match[1] ?? '')
  const washes = washesOf(folded)
  const drying = dryingOf(folded)
  const names = namesIn(text)
  return {
    kind,
    text: text.slice(0, 1_000),
    ...(team === null ? {} : { team }),
    ...(numbers.length === 0 ? {} : { numbers }),
    ...(names.length === 0 ? {} : { names }),
    ...(washes === undefined ? {} : { washes }),
    ...(drying === undefined ? {} : { drying }),
  }
}

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
  ['photo', patterns.photo],
  ['price', patterns.price],
  ['rude', patterns.rude],
]

/** Who is to be left out of an earlier order: "without the seniors", "sin los de último año". */
const without = (folded: string): readonly string[] =>
  any(
    'without the seniors',
    'drop the seniors',
    'no seniors',
    'minus the seniors',
    'sin los de ultimo ano',
    'sin los que se graduan',
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
  if (patterns.earlier.test(folded)) return { kind: 'earlier-order', team, without: without(folded) }
  const kind = simple.find(([, pattern]) => pattern.test(folded))?.[0]
  return kind === undefined ? { kind: 'order' } : { kind }
}

/** A question to the shop, as against a wish put as a question ("can you have them by Friday?"). */
export const asksSomething = (text: string): boolean => text.includes('?') || patterns.price.test(fold(text))
