import type { Patch } from '../patch.ts'

/** A name begins where no word goes on, and each of its words has an end: every pattern stays linear in the text. */
const NAME =
  "(?<![\\p{L}\\p{M}'’.-])(?:\\p{Lu}[\\p{L}\\p{M}'’-]{0,40}(?:(?<=(?<!\\p{L})(?:\\p{Lu}|St|Dr|Jr|Sr|Ma))\\.)?)(?: (?:(?:de la|de|del|van|von|da|y) )?(?!Los |Las |Treasurer|Coach|President|Secretary|Manager|Director|My |Our |The |We |It |Please)\\p{Lu}[\\p{L}\\p{M}'’-]{0,40}){0,3}"
const TITLE =
  '(?:(?<![\\p{L}\\p{M}])(?:[Cc]oach|[Mm]rs?\\.?|[Mm]s\\.?|[Dd]ra?\\.?|[Pp]rof(?:e(?:sora?)?)?\\.?|[Ss]ra?\\.?|[Ss]rta\\.?|[Ll]ic\\.?|la maestra|el profe|la profe|el entrenador|la entrenadora|la señora|el señor|mi (?:hermana|hermano|esposo|esposa|mamá|papá)|[Mm]y (?:husband|wife|sister|brother|son|daughter)|[Oo]ur (?:office )?(?:manager|secretary|treasurer)|[Aa]thletic director|[Tt]eam manager|[Pp]rincipal|[Cc]ap(?:t\\.?|tain|\\.)?|[Cc]hief|[Ss]gt\\.?|[Ll]t\\.?|[Dd]oña|[Dd]on|(?:[Mm]i|[Mm]y|[Oo]ur|[Nn]uestr[oa]|[Ee]l|[Ll]a) (?:\\p{Ll}{1,20} )?\\p{Ll}{1,20}) ){0,3}'

const pattern = (source: string): RegExp => new RegExp(source.replaceAll('NAME', `(${NAME})`).replaceAll('TITLE', TITLE), 'u')

type Role = 'orders' | 'signsOff' | 'pays' | 'collects'

/** The first pattern that fits gives the person; a name is taken as it is written. */
const patterns: readonly (readonly [Role, readonly RegExp[]])[] = [
  [
    'orders',
    [
      pattern('(?:[Mm]y name is|[Nn]ame is|[Mm]e llamo|[Mm]i nombre es) TITLENAME'),
      pattern("(?:^|[\\s,.!])(?:[Ii]'m|[Ii]m|[Ii] am|[Tt]his is|[Ii]t'?s|soy|Soy|aquí|habla|le habla|Habla) TITLENAME"),
      pattern('TITLENAME here(?=[\\s,.!]|$)'),
      pattern('TITLENAME orders'),
      pattern(
        '(?:^|[.!\\n] ?)(?:[Hh]i|[Hh]ello|[Hh]ey|[Hh]ola|[Gg]ood (?:morning|afternoon|evening|day)|[Mm]orning|[Bb]uen[ao]s (?:tardes|días|noches)|[Bb]uen día)[,!.]? TITLENAME,? (?:for|from|with|here|de|del|at) ',
      ),
      pattern(
        '^(?:[Cc]ap(?:t\\.?|tain|\\.)|[Cc]oach|[Mm]rs?\\.?|[Mm]s\\.?|[Dd]r\\.?|[Cc]hief|[Ss]gt\\.?|[Ll]t\\.?|[Pp]rofe) NAME,',
      ),
      /\b(?:[Ii]t'?s|[Tt]his is) (\p{Ll}{3,}) (?:from|with|w|at)\b/u,
      pattern('(?:^|[.!?\\n] ?)(?:- ?|-- ?|[Tt]hanks,? |[Gg]racias,? |[Aa]tte\\.? )NAME(?:, \\p{Ll}+)?\\s*$'),
      pattern("[.!?] (\\p{Lu}[\\p{L}'-]+ \\p{Lu}[\\p{L}'-]+)\\.?\\s*$"),
    ],
  ],
  [
    'signsOff',
    [
      pattern('TITLENAME (?:signs|approves|will sign|will approve|orders and signs|has to approve|needs to approve)'),
      pattern('(?:[Ff]irma|[Aa]prueba|[Aa]utoriza) (?:nuestr[oa]|mi|el|la) \\p{Ll}{1,20}(?: \\p{Ll}{1,20})?,? NAME'),
      pattern('(?:[Ff]irma|[Aa]prueba|[Aa]utoriza|da el visto bueno)(?: es|:)? TITLENAME'),
      pattern(
        '(?:[Aa]pproval(?: comes)? from|[Ss]ign-?off(?: is|:)|[Ss]igned off by|[Aa]pproved by|[Aa]pprover:|[Ss]igns:) (?:our |the )?(?:AD |athletic director )?TITLENAME',
      ),
    ],
  ],
  [
    'pays',
    [
      pattern('TITLENAME (?:pays|will pay|is paying)'),
      pattern('(?:[Pp]aga|va a pagar|pagará):? TITLENAME'),
      pattern('(?:[Pp]ays:|[Pp]aid by|[Pp]ayment (?:from|by)|[Bb]ill(?: to:?|ed to)?|[Ii]nvoice(?: to)?) TITLENAME'),
    ],
  ],
  [
    'collects',
    [
      pattern('TITLENAME (?:collects|will collect|picks (?:them )?up|will pick (?:them |it )?up|is picking (?:them |it )?up)'),
      pattern('(?:[Cc]ollected|[Pp]icked up|[Pp]ick-?up|[Pp]ick up)(?: by|:| will be) TITLENAME'),
      pattern(
        '(?:[Rr]ecoge(?:rá|n)?:?|[Pp]asa(?:rá)? (?:a recoger|por)(?:l[ao]s)?|[Vv]a a recoger|[Pp]asa por (?:ellos|ellas)|los recoge|las recoge) TITLENAME',
      ),
    ],
  ],
]

/** Words that begin like a name and are none. */
const notNames =
  /^(?:I|The|We|It|They|He|She|You|El|La|Los|Las|Yo|Para|Not|Just|Need|Coach|Hi|Hello|Hey|Thanks|Everybody|Number|Numbers|Home|Away|Black|White|Navy|Red|Royal|Our|My|Number|Mom|Dad|Team|OK|Okay|Yes|No)$/u

const bodies: readonly RegExp[] = [
  /(?:^|[.,;] ?|\band |\by )(?:[Tt]he |[Oo]ur |[Ll]a |[Ee]l )?((?:\p{L}+ )?(?:club|school|district|league|city|church|parents|pta|pto|boosters?|office|department|company|bank|union|store|foundation|treasurer|council))\s+(?:pays?|will pay|(?:is|are) paying)/u,
  /(?:[Bb]ill|[Ii]nvoice(?: to)?|[Pp]ayment from) (?:the |our )?((?:\p{L}+ )?(?:club|school|district|league|city|church|pta|pto|boosters?|company))\b/u,
  /(?:[Pp]aga|pagará|va a pagar|[Ff]actura a):? (?:la |el |los |las )?((?:escuela|liga|club|colegio|municipio|iglesia|papás|secundaria|preparatoria|delegación)(?: (?!(?:con|y|por|para|en|al|a|el|la|los|las|que|todo|con)\b)[\p{L}]+)?)/u,
]

const personPatches = (text: string): readonly Patch[] => {
  const found: Patch[] = []
  for (const [role, list] of patterns) {
    const name = list.map((one) => one.exec(text)?.[1]).find((one) => one !== undefined && !notNames.test(one))
    if (name !== undefined) found.push({ path: [role], value: name.replace(/[.,]+$/, '') })
  }
  const body = bodies.map((one) => one.exec(text)?.[1]).find((one) => one !== undefined)
  return body === undefined ? found : [...found, { path: ['pays'], value: body }]
}

const handOvers: readonly (readonly ['collect' | 'field' | 'post', RegExp])[] = [
  [
    'post',
    /\b(?:mail (?:them|it)|ship (?:them|it)|by mail|by post|send them by|shipping|por correo|envi(?:o|en|ar)|mand(?:en|ar)(?:los|las)? por|por paqueteria)\b/iu,
  ],
  [
    'field',
    /\b(?:(?:bring|deliver|drop)[\p{L} ]{0,25} (?:to|at) (?:the |our )?(?:field|gym|rink|court|practice|game)|(?:llev|entreg|traig|trai)[\p{L}]*[\p{L} ]{0,25} (?:a|en) (?:la |el )?(?:cancha|campo|gimnasio|partido|entrenamiento))\b/iu,
  ],
  [
    'collect',
    /\b(?:pick(?:ing|s)?(?: (?:it|them|that))? ?up|pickup|collects?|come get|swing by|stop by|come by|recoj\p{L}*|recog\p{L}*|paso(?: yo)? por|pas[oa] yo|yo paso|paso manana|pasamos por|voy por)\b/iu,
  ],
]

const moneyOf = (raw: string): readonly Patch[] => {
  const text = raw.normalize('NFD').replace(/\p{M}/gu, '')
  const patches: Patch[] = []
  const set = (key: string, value: Patch['value']) => patches.push({ path: ['money', key], value })
  const order =
    /\b(?:purchase order|p\.?o\.?(?: number| no\.?| #)?|order number|orden de compra)(?:\s*(?:is|es|number|numero|no\.?|#|:|,|la|el))*\s*((?:PO[- ]?)?[A-Z0-9][A-Z0-9-]*\d[A-Z0-9-]*)/iu.exec(
      text,
    )
  if (order !== null) {
    set('state', 'order-number')
    set('reference', order[1])
  }
  if (/\b(?:tax[- ]exempt|exent[oa]s? de impuestos?|libre de impuestos)\b/iu.test(text)) set('taxExempt', true)
  const deposit = /\b(?:deposit|down payment|anticipo|deposito|enganche)\b|\d down\b/iu.test(text)
  const advance =
    /(\d[\d,]*(?:\.\d{2})?)\s+(?:de|as a|for the)\s+(?:anticipo|deposito|enganche|deposit|down payment)|(?:anticipo|deposito|enganche|deposit|down payment)\s+(?:de|of)\s+\$?\s?(\d[\d,]*(?:\.\d{2})?)/iu.exec(
      text,
    )
  const amount = /\$\s?(\d+(?:,\d{3})*(?:\.\d{2})?)|(\d+(?:\.\d{2})?)\s*(?:dollars|bucks|dolares|usd|pesos)/iu.exec(text)
  if (
    deposit &&
    order === null &&
    /\b(?:paid|paying|payment|now|today|left|gave|put down|deje|dejo|di|doy|dimos|damos|pague|pago|pagamos|dejamos)\b/iu.test(
      text,
    )
  ) {
    set('state', 'deposit')
    const said = amount?.[1] ?? amount?.[2] ?? advance?.[1] ?? advance?.[2]
    if (said !== undefined) set('amount', Math.round(Number(said.replace(/,/g, '')) * 100))
  } else if (/\b(?:paid in full|already paid|it'?s all paid|ya esta pagado|ya pague|todo pagado)\b/iu.test(text))
    set('state', 'paid')
  if (
    /\b(?:on (?:our |the |my )?account|bill (?:us|the (?:school|league|club))|a (?:la )?cuenta de|a cuenta|a nuestra cuenta)\b/iu.test(
      text,
    ) &&
    order === null
  )
    set('state', 'on-account')
  return patches
}

/** Who orders, signs off, pays and collects, how it is handed over, and what was said of money. Names stand as they were written. */
export const readPeople = (text: string): readonly Patch[] => {
  const plain = text.normalize('NFD').replace(/\p{M}/gu, '')
  const handOver = handOvers.find(([, words]) => words.test(plain))?.[0]
  const people = personPatches(text)
  const collects = people.some((patch) => patch.path[0] === 'collects')
  const how = handOver ?? (collects ? 'collect' : undefined)
  return [...people, ...(how === undefined ? [] : [{ path: ['handOver'], value: how }]), ...moneyOf(text)]
}
