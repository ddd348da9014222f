import type { Show } from '../../src/domain/shop/show.ts'
import type { LateChange } from '../../src/domain/understanding/conversation.ts'
import type { Changed, Since, Tidy } from '../../src/domain/understanding/replies.ts'
import { priceWords } from '../desk/price.ts'
import { plural } from '../plural.ts'
import { sportNames } from '../sport-names.ts'
import type { Catalogue } from './catalogue.ts'
import { priceParts } from './price-parts.ts'
import { garmentText, newHeads, sizeText, type TidyWords, tidyList } from './tidy.ts'

const fits = { toddler: 'bebé', youth: 'juvenil', women: 'de dama', men: 'adulto' }

const classes = {
  standard: 'liso',
  glitter: 'con brillo',
  'low-temperature': 'de baja temperatura',
  stretch: 'elástico',
  flock: 'aterciopelado',
  puff: 'inflado',
  foil: 'metálico',
  reflective: 'reflejante',
  printed: 'impreso',
  blocker: 'bloqueador',
}

const places = {
  'front-number': 'frente',
  'back-number': 'espalda',
  name: 'espalda, arriba del número',
  nape: 'nuca',
  yoke: 'parte alta de la espalda',
  'left-chest': 'pecho izquierdo (de quien lo usa)',
  'right-chest': 'pecho derecho (de quien lo usa)',
  'full-front': 'a lo ancho del frente',
  'below-number': 'espalda, debajo del número',
  'left-sleeve': 'manga izquierda (de quien la usa)',
  'right-sleeve': 'manga derecha (de quien la usa)',
  'left-shoulder': 'hombro izquierdo (de quien la usa)',
  'right-shoulder': 'hombro derecho (de quien la usa)',
  'left-leg': 'pierna izquierda (de quien la usa)',
  'right-leg': 'pierna derecha (de quien la usa)',
  hood: 'capucha',
  other: 'otro lugar',
}

const garments = {
  jersey: 'jersey',
  tee: 'playera',
  hoodie: 'sudadera',
  polo: 'polo',
  shorts: 'shorts',
  jacket: 'chamarra',
  bodysuit: 'body',
  home: 'jersey de local',
  away: 'jersey de visitante',
}

/** Sizes as they are written in Spanish; the paper of the shop floor keeps one notation. */
const sizes: Readonly<Record<string, string>> = {
  XS: 'XCH',
  S: 'CH',
  L: 'G',
  XL: 'XG',
  '2XL': '2XG',
  '3XL': '3XG',
  '4XL': '4XG',
}

const words: TidyWords = {
  names: {
    team: 'Equipo',
    sport: 'Deporte',
    use: 'Para',
    needBy: 'Se necesita',
    needFor: 'Ocasión',
    gameDay: 'Día del partido',
    handOver: 'Entrega',
    garment: 'Prenda:',
    people: 'Personas',
    money: 'Pago',
    notes: 'Notas',
  },
  head: ['Línea', 'Núm.', 'Nombre', 'Talla', 'Prenda', 'Además'],
  garments,
  sports: sportNames.es,
  uses: {
    game: 'partidos',
    fan: 'aficionados',
    practice: 'entrenamiento',
    cheer: 'porras',
    staff: 'personal',
    keepsake: 'recuerdo',
  },
  handOver: { collect: 'usted pasa por ello', field: 'lo llevamos a la cancha', post: 'lo enviamos por correo' },
  knits: {
    mesh: 'malla',
    interlock: 'interlock',
    jersey: 'punto jersey',
    tricot: 'tricot',
    woven: 'tejido plano',
    fleece: 'felpa',
  },
  fibres: {
    acetate: 'acetato',
    acrylic: 'acrílico',
    cotton: 'algodón',
    elastane: 'elastano',
    linen: 'lino',
    nylon: 'nailon',
    polyester: 'poliéster',
    polypropylene: 'polipropileno',
    silk: 'seda',
    viscose: 'viscosa',
    wool: 'lana',
  },
  dyes: { sublimated: 'sublimada' },
  finishes: { repellent: 'repelente al agua' },
  features: {},
  fits,
  classes,
  places,
  sizes,
  contents: { number: 'número', name: 'nombre', artwork: 'dibujo' },
  money: { deposit: 'anticipo', paid: 'pagado', 'order-number': 'orden de compra', 'on-account': 'a cuenta' },
  people: { orders: 'pide', signsOff: 'aprueba', pays: 'paga', collects: 'recoge' },
  own: 'prendas de ustedes',
  without: 'sin',
  hourOpen: 'falta la hora',
  noColour: 'falta el color',
  asBefore: 'como la vez pasada',
  sizeAsBefore: 'talla de la vez pasada',
  bySize: 'altura según la talla',
  face: (name) => `letra ${name}`,
  vinyl: (colour, vinylClass) => `vinilo ${vinylClass} ${colour}`,
  outline: (colour, width) => `contorno ${colour} hasta ${width}`,
  shadow: (colour) => `sombra ${colour}`,
  stones: ({ size, colour, style, rows, contours }) => {
    const stones = `piedras ${size} color ${colour}`
    if (style === 'solid') return `${stones}, relleno completo`
    if (style === 'single-line') return `una sola línea de ${stones}`
    if (style === 'rows') return `${plural(rows, 'hilera', 'hileras')} de ${stones}`
    return `${plural(rows, 'hilera', 'hileras')} de ${stones} ${contours === 'outer' ? 'solo por la orilla de afuera' : 'por las orillas, por dentro y por fuera'}`
  },
  with: (parts) => parts.join(' + '),
  later: { sizes: 'después', names: 'nombres después', numbers: 'números después' },
  assumedAges: { 'under-3': 'menor de 3', '3-12': 'de 3 a 12 años' },
  plural: () => 'Piezas',
}

const row: Catalogue['row'] = ({ number, name, fit, size }) => {
  const who = [number === null ? '' : `#${number}`, name ?? ''].filter((part) => part !== '').join(' ')
  return size === null ? who || 'una línea sin nombre' : `${who === '' ? '' : `${who}, `}${sizeText(words, fit, size)}`
}

const fields: Readonly<Record<string, string>> = {
  size: 'talla',
  fit: 'corte',
  number: 'número',
  name: 'nombre',
  colour: 'color',
  class: 'vinilo',
  quantity: 'piezas',
  needBy: 'se necesita',
  gameDay: 'día del partido',
  team: 'equipo',
  sport: 'deporte',
  use: 'uso',
  handOver: 'entrega',
  height: 'altura',
  rows: 'hileras de piedras',
  micrometres: 'altura',
  garment: 'prenda',
  note: 'nota',
  text: 'texto',
  age: 'edad',
  orders: 'pide',
  signsOff: 'aprueba',
  pays: 'paga',
  collects: 'recoge',
  percent: 'por ciento',
  fibre: 'fibra',
  place: 'lugar',
  contours: 'orillas',
  style: 'piedras',
}

const oneOf = (rows: readonly Parameters<Catalogue['row']>[0][]): string => rows.map(row).join(' · ')

const obstacleNames: Readonly<Record<string, string>> = {
  hood: 'la capucha',
  'full-zip': 'el cierre',
  'half-zip': 'el medio cierre',
  pocket: 'la bolsa',
  collar: 'el cuello',
  snaps: 'los broches',
  piping: 'el vivo',
  'centre-seam': 'la costura del centro',
  strings: 'los cordones',
}
const obstaclesOf = (ids: readonly string[]): string => ids.map((id) => obstacleNames[id] ?? id).join(', ')

const placesOf = (ids: readonly string[]): string => ids.map((id) => places[id as keyof typeof places] ?? id).join(', ')

const figure = (field: string, value: number, show: { temperature: (tenthsC: number) => string }): string =>
  field.includes('tenthsC') ? show.temperature(value) : `${value} s`

const aka = (word: string, subject: string): string => `${word}${subject === '' ? '' : ` (${subject})`}`

/** Spanish, with the words used on the border: playera, talla CH M G, vinilo, pedrería. */
const rosterCount = ({ order: { roster } }: Tidy): string => {
  const nameless = roster.filter((row) => row.name === undefined).length
  const without = nameless === 0 || nameless === roster.length ? '' : `, ${nameless} sin nombre`
  return `${roster.length} ${roster.length === 1 ? 'línea' : 'líneas'}${without}`
}

const lateText = ({ row, needs, amount }: LateChange, show: Show): string => {
  const who =
    [row.number === null ? null : `El ${row.number}`, row.name].filter((part) => part !== null).join(' ') ||
    `La línea ${row.line}`
  if (needs === 'made') return `${who} ya está hecho y se queda en la cuenta.`
  const why = needs === 'piece' ? 'ya está cortado: una pieza nueva de vinilo' : 'ya está prensado: una prenda nueva'
  return `${who} ${why} suma ${show.money(amount)}.`
}

type Part = Pick<Changed, 'was' | 'now'> & { readonly at: string }

/** Parts of an order that came or went, by the path of their change. */
const cameOrWent: Readonly<Record<string, (part: Part, show: Show) => string>> = {
  '/garments/gone': ({ was }) => `quitado: ${garmentText(garments, String(was))}`,
  '/decorations/gone': ({ was, at }) => `quitado: ${words.contents[String(was)] ?? 'texto'}${at}`,
  '/decorations/stones': ({ now, at }) => `${now === null ? 'sin piedras' : 'con piedras'}${at}`,
  '/decorations/shadow': ({ now, at }, show) => `${now === null ? 'sin sombra' : `con sombra: ${show.colour(String(now))}`}${at}`,
  '/decorations/surround': ({ now, at }, show) =>
    `${now === null ? 'sin contorno' : `con contorno: ${show.colour(String(now))}`}${at}`,
}
const wornText = (was: unknown, now: unknown): string =>
  now === null ? `${words.contents[String(was)] ?? ''} otra vez` : `sin ${words.contents[String(now)] ?? ''}`

/** "#9 Ana S": the size at the end of a line as it is called here. */
const withSize = (line: string): string => line.replace(/(?<=^|\s)\S+$/u, (size) => sizes[size] ?? size)

const changeText = ({ path, was, now, row: whose, place }: Changed, show: Show): string => {
  const field = path.split('/').at(-1) ?? path
  const say = (value: unknown) => {
    if (value === null) return 'nada'
    if (field === 'size' || field === 'row') return withSize(String(value))
    return field === 'colour' ? show.colour(String(value)) : field === 'micrometres' ? show.given(Number(value)) : String(value)
  }
  const gone = cameOrWent[path]
  if (gone !== undefined)
    return gone({ was, now, at: place === undefined || place === null ? '' : ` (${placesOf([place])})` }, show)
  if (field === 'row') return was === null ? `agregado ${say(now)}` : `quitado ${say(was)}`
  const who = whose === null ? '' : `${row({ ...whose, size: null })}: `
  if (path === '/roster/without') return `${who}${wornText(was, now)}`
  return `${who}${fields[field] ?? field} ${say(was)} → ${say(now)}`
}

const changesListed = (changes: readonly Changed[], show: Show): string => {
  const told = changes.slice(0, 12).map((change) => changeText(change, show))
  return `${told.join('; ')}${changes.length > 12 ? '; y más, vea la lista' : ''}`
}

/** What a proof has that the one before had not, said before its list. */
const changesText = (since: Since | null | undefined, show: Show): string =>
  since === null || since === undefined
    ? ''
    : `. Cambió desde la revisión ${since.revision}: ${changesListed(since.changes, show)}. La lista completa`

export const es = {
  garments,
  replies: {
    greeting: (_, show) =>
      `Hola, aquí ${show.shop}. Dígame qué necesita el equipo: qué prendas y de qué color, qué llevan, la lista de jugadores y para cuándo. Puede pegar la lista tal como la tiene.`,
    understood: (facts, show) => ({
      before: 'Esto es lo que tengo hasta ahora:',
      ...tidyList(words, show, facts),
      ...(facts.assumed.length > 0 ? { after: 'Lo marcado (supuesto) nadie lo ha dicho: avíseme si no es así.' } : {}),
    }),
    changed: ({ changes }, show) => {
      return `Cambiado: ${changesListed(changes, show)}.`
    },
    noted: (facts, show) => {
      const heads = newHeads(words, show, facts)
      return ['Anotado.', ...heads].join(' ')
    },
    undone: () => 'Deshecho. El pedido está como antes de su último cambio.',
    'nothing-to-undo': () => 'No hay nada que deshacer.',
    'ask-garment': () => '¿Qué prendas vamos a decorar: jerseys, playeras, sudaderas, polos? ¿Nuestras o las traen ustedes?',
    'ask-decoration': () => '¿Qué llevan y dónde: número adelante y atrás, nombres, una palabra? ¿De qué color?',
    'ask-text': ({ place }) => `¿Qué debe decir exactamente (${placesOf([place])})?`,
    'ask-day': () => '¿Para cuándo los necesita, día y hora? ¿Y cuándo es el partido?',
    'ask-hour': ({ day }, show) => `¿A qué hora del ${show.day(day)} los necesita en sus manos? Si sale un camión, ¿a qué hora?`,
    'ask-roster': () =>
      'Pegue por favor la lista, un jugador por línea: número, nombre, talla. También sirven tallas contadas («3 chicas, 4 medianas») si no llevan nombre.',
    'ask-garment-colour': ({ garment, colours }, show) =>
      `¿De qué color es la prenda (${garment})?${colours.length > 0 ? ` Conseguimos ${show.list(colours.map(show.colour))}.` : ''}`,
    'ask-vinyl-colour': ({ content, colours }, show) =>
      `¿De qué color van ${content === 'name' ? 'los nombres' : content === 'number' ? 'los números' : 'las letras'}?${colours.length > 0 ? ` Hay ${show.list(colours.map(show.colour))}.` : ''}`,
    'ask-numbers': ({ rows }) =>
      `Estos todavía no tienen número: ${oneOf(rows)}. ¿Qué números, o van sin número, o los manda después?`,
    'ask-names': ({ rows }) =>
      `Estos todavía no tienen nombre: ${oneOf(rows)}. ¿Qué nombres, o van sin nombre, o los manda después?`,
    'ask-garment-sizes': ({ garment }) =>
      `¿Quién lleva la prenda ${garment} y en qué tallas? Todos los de la lista, o cuente las tallas («3 M, 2 G»).`,
    'ask-sizes': ({ rows }) => `¿Qué talla para ${oneOf(rows)}? «Todos M de adulto» o «después» también es una respuesta.`,
    'ask-fit': ({ rows }) => `¿Son tallas juveniles o de adulto: ${oneOf(rows)}?`,
    'ask-cloth': ({ garment }) =>
      `¿Qué dice la etiqueta de sus prendas (${garment}), por ejemplo «100% poliéster»? «No sé» está bien; entonces la leemos cuando lleguen.`,
    'ask-team': () => '¿Cómo se llama el equipo?',
    'ask-sport': () => '¿Para qué deporte es?',
    'ask-ages': () =>
      '¿Hay alguien en la lista de 12 años o menos? ¿Y alguien menor de 3? De eso depende qué puede llevar la prenda.',
    'ask-ages-rows': ({ rows }) => `¿Quiénes tienen 12 años o menos y quiénes menos de 3? ${oneOf(rows)}`,
    'ask-who': () => '¿Y su nombre, por favor? ¿Quién hace el pedido?',
    'ask-reading': ({ quote }) => `«${quote}» se puede entender de más de una manera. ¿Cuál es?`,
    'ask-face': ({ quote, known }) =>
      known
        ? `«${quote}» es una letra manuscrita y no es para números. ¿Cuál de estas será?`
        : `No tenemos una letra que se llame «${quote}». ¿Cuál de las nuestras será?`,
    'ask-name-order': ({ quote }) =>
      `«${quote}»: ¿cómo debe ir ese nombre en la lista? Escribo igual todas las líneas de este tipo.`,
    'ask-drop': ({ quote }) => `«${quote}»: ¿cuál de ellos?`,
    'raise-duplicate-number': ({ number, rows }) =>
      `El número ${number} está ${rows.length} veces en la lista: ${oneOf(rows)}. ¿Es correcto?`,
    'raise-same-surname': ({ name, rows }) =>
      `Hay dos ${name}: ${oneOf(rows)}. ¿Ponemos iniciales? Escríbalos como deben verse, o los dejamos así.`,
    'raise-count': ({ said, rows }) => `Dijo ${said} y la lista tiene ${plural(rows, 'línea', 'líneas')}. ¿Cuál es correcto?`,
    'working-it-out': () => 'Ya tengo todo. Estoy haciendo el dibujo, el precio y la fecha.',
    proof: ({ revision, price, promise, late: changed, since, ...tidy }, show) => {
      const hangs = promise?.hangsOn.map(({ code, by }) => {
        const what = { 'sign-off': 'usted aprueba', garments: 'sus prendas están aquí', materials: 'el material está aquí' }[code]
        return `${what} a más tardar el ${show.moment(by)}`
      })
      const promised = promise?.promised ?? null
      const ready =
        promised === null
          ? 'No puedo prometer la fecha que necesita; una persona le llamará.'
          : `${promise?.feasible === false ? 'Es después de lo que necesita. Lo más pronto es el' : 'Listo el'} ${show.moment(promised)}${hangs !== undefined && hangs.length > 0 ? ` si ${show.list(hangs)}` : ''}.${promise?.feasible === false ? ' ¿Todavía le sirve?' : ''}`
      const freeze =
        promise?.freezesAt == null ? '' : ` Los cambios en la lista no cuestan hasta el ${show.moment(promise.freezesAt)}.`
      return {
        before: `Revisión ${revision}${changesText(since, show)}: ${rosterCount(tidy)}. Léala por favor línea por línea: nombres, números y tallas se hacen tal como los aprueba.`,
        ...tidyList(words, show, tidy),
        ...priceParts({ parts: priceWords.es, classes, total: 'Total' }, show, price),
        after: `${changed.map((one) => `${lateText(one, show)} `).join('')}${promise === null ? '' : ready}${freeze} Los colores de pantalla no son los del vinilo. Para pedir exactamente esto, apriete el botón o escriba «Apruebo la revisión ${revision}». Si algo es distinto, solo dígalo.`,
      }
    },
    'cannot-be-made': () => 'Así como está no se puede hacer. Aquí está por qué y qué se podría; dígame qué cambiamos:',
    'proof-outdated': () => 'El pedido cambió desde entonces. Estoy calculando el nuevo.',
    signed: ({ revision }) =>
      `Gracias. La revisión ${revision} está aprobada y pasa al taller. Le aviso cuando esté lista; puede preguntarme cuando quiera.`,
    'not-signed-change': () => 'Hice ese cambio, así que todavía no hay nada aprobado. Le mando la nueva prueba para aprobar.',
    'not-signed-unclear': ({ revision }) =>
      `Para estar seguros: ¿todo en la revisión ${revision} está bien, cada nombre, número y talla? Apriete el botón o escriba «Apruebo la revisión ${revision}».`,
    'not-signed-nothing-shown': () => 'Todavía no hay una prueba que aprobar. Primero necesito unas cosas:',
    'already-signed': ({ revision }) => `La revisión ${revision} ya está aprobada.`,
    'off-topic': () => 'De eso no sé: yo solo conozco jerseys, vinilo y piedras. ¿Seguimos con el pedido?',
    rude: () => 'Lamento la molestia. Haré lo posible, o puedo llamar a una persona. No cambié nada del pedido.',
    'not-understood': () => 'No entendí. No cambié nada. ¿Me lo dice de otra forma, o lo ve una persona?',
    thanks: () => 'Con mucho gusto.',
    'file-kept': ({ file }) =>
      `Guardo ${file} con el pedido para que lo vean en el taller, pero no puedo leer nombres ni números de ahí. Pegue la lista como texto, por favor.`,
    'file-unread': ({ file, why }) =>
      `${file} ${{ 'too-large': 'es más grande de lo que puedo leer (1 MB, 500 líneas)', broken: 'no se pudo abrir', 'not-a-table': 'no es una tabla que pueda leer' }[why]}. Pegue la lista como texto, por favor.`,
    'not-read-photo': () =>
      'No puedo leer nombres ni números de fotos o notas de voz. Pegue la lista como texto, o en el taller la escriben y usted la aprueba.',
    'artwork-said': () =>
      'Un logo o dibujo lo ve una persona antes de prometerlo. Anoté sus palabras para el taller; mande aquí el archivo (mejor un PDF) y díganos que puede usarlo.',
    'roster-read': ({ rows, withoutName, withoutNumber, withoutSize }) => {
      const lacks = [
        withoutName > 0 ? `${withoutName} sin nombre` : '',
        withoutNumber > 0 ? `${withoutNumber} sin número` : '',
        withoutSize > 0 ? `${withoutSize} sin talla` : '',
      ].filter((part) => part !== '')
      return `Leí ${plural(rows, 'línea', 'líneas')}${lacks.length > 0 ? `, ${lacks.join(', ')}` : ''}.`
    },
    'not-decided': ({ words }) =>
      `No está en la lista, porque aún no se decide: ${words.map((one) => `«${one}»`).join(', ')}. Escríbalo de nuevo cuando sea seguro.`,
    'words-unheard': ({ words }) =>
      `Esta parte no la entendí y no se cambió nada de ella: ${words.map((one) => `«${one}»`).join(', ')}. Dígamela otra vez con otras palabras, por favor.`,
    'layers-alike': ({ words }) =>
      `Las piedras, los contornos y las sombras son iguales en todas las prendas, así que aquí no puedo ponerlos ni quitarlos solo a algunos jugadores. No cambié nada: ${words.map((one) => `«${one}»`).join(', ')}. Dígame si es para todos, o pida una persona y el taller ve esas prendas.`,
    'which-of-them': ({ words }) =>
      `¿Cuáles? ${words.map((one) => `«${one}»`).join(', ')} es solo de algunos y no dice de quién, así que todavía no cambié nada. Diga los jugadores por número o nombre, por ejemplo «el 4 y el 12 en blanco».`,
    'lines-unread': ({ lines }) =>
      `Estas líneas no las pude leer y nada de ellas está en la lista: ${lines.map((line) => `«${line}»`).join(', ')}. Mándelas como número, nombre, talla.`,
    'text-cut': ({ characters }) =>
      `Era largo: leí los primeros ${characters} caracteres. Mande el resto en otro mensaje, por favor.`,
    'complaint-noted': () =>
      'Lo siento mucho. Anoté todo lo que dijo y el dueño ya está enterado. Guarde la prenda y, si puede, mande una foto. El dueño le dirá qué se puede hacer.',
    'earlier-order-noted': ({ team }) =>
      `Quieren otra vez ${team === null ? 'el último pedido' : `lo de ${team}`}: busco un pedido suyo. Mientras, dígame qué necesitan y qué cambia.`,
    'earlier-order-elsewhere': () =>
      'Esta conversación es de un pedido ya aprobado. Para repetirlo, o una sola pieza, empiece un pedido nuevo en nuestra primera página, diga ahí qué quiere repetir y pegue la dirección de esta página. El taller también queda avisado.',
    'earlier-order-taken': ({ team, lines, single }) =>
      single
        ? `Esto es lo que llevaba ${team}, para una pieza. El precio, el lote de tela o de vinilo y las tallas pueden haber cambiado; se calcula de nuevo.`
        : `Este es el último pedido de ${team}: ${plural(lines, 'línea', 'líneas')}. Lo marcado «como la vez pasada» nadie lo ha dicho de nuevo: modelo, lote de tela o vinilo, reglas, precio y tallas pueden haber cambiado.`,
    'ask-leaving': ({ lines, seniors }) =>
      `${seniors ? '¿Quiénes son los de último año' : '¿Quién se va'} de estos ${lines}? Diga números o nombres («4, 9 y Lena»). Jugadores nuevos puede agregar cuando quiera.`,
    'ask-sizes-again': () =>
      '¿Las tallas de la vez pasada les quedan a todos? Si no, diga quién usa cuál ahora («Lena es M de adulto»).',
    'ask-whose': () => '¿De quién es la pieza que hacemos otra vez? Diga el número o el nombre.',
    'status-asked': () => 'Déjeme ver cómo va su pedido.',
    'cancel-asked': ({ signed }) =>
      signed
        ? '¿Quiere cancelar este pedido? Ya está aprobado: lo que ya se cortó o prensó y las prendas que se compraron se cobran; lo que no se ha empezado, no. La tienda le dice cuánto sería antes de pedirle nada.'
        : '¿Quiere cancelar este pedido? No hay nada aprobado, así que no le cuesta nada.',
    cancelled: () =>
      'Entiendo que quiere cancelar este pedido. Si el trabajo ya empezó, una persona del taller le responde. Puede empezar otro cuando quiera.',
    'person-called': ({ ask }) => `Pedí a ${ask} que lo vea y le escriba.`,
    'started-over': () => 'Empezamos de nuevo con un pedido vacío.',
    'language-chosen': () => 'Seguimos en español.',
    'price-now': ({ total }, show) =>
      total === null
        ? 'El precio viene con la prueba.'
        : `Como está son ${show.money(total)}, con las partes que muestra la prueba. Dígame otra versión y le pongo su precio al lado.`,
    'variant-asked': () => 'Calculo cuánto saldría así. Mientras tanto no cambia nada del pedido.',
    'variant-price': ({ quote, total, present, promised }, show) => {
      const beside = present === null ? '' : ` Como está ahora: ${show.money(present)}.`
      const when = promised === null ? '' : ` Estaría listo el ${show.moment(promised)}.`
      return `«${quote}»: ${show.money(total)}.${beside}${when} Nada cambia si usted no lo elige.`
    },
    'variant-refused': ({ quote }) => `«${quote}»: así no se puede hacer, y el pedido queda como está. La razón:`,
    'earlier-mentioned': () =>
      '¿Qué pasa con ellas? Si algo salió mal, dígame qué y se lo aviso al dueño. Si quiere otras iguales, dígame cuáles y cuántas.',
    'no-hurry': () => 'Sin prisa. No se hace nada antes de que usted apruebe, y lo que me ha dicho queda guardado.',
    'rulebook-unknown': ({ name }) =>
      `No tengo un reglamento ${name} para su deporte, hasta donde lo conozco, así que nada se revisa contra él: una persona de la tienda lo ve.`,
    'not-pressed-here': ({ words }) =>
      `${words.join(', ')}: de eso no puedo tomar pedido, porque antes hay que probar el calor, el agarre y la forma. Diga «una persona» y alguien del taller lo ve; playeras, jerseys, sudaderas y chamarras de la lista del taller sí las tomo aquí.`,
    'already-answered': () => 'Esa pregunta ya está contestada, así que este botón no cambió nada.',
    'already-so': () => 'El pedido ya dice eso: nada cambió en él.',
    'kept-as-is': () => 'Bien, el pedido queda como se lo mostré.',
    care: () =>
      'Voltéelas al revés, lave con agua fría o tibia sin suavizante ni cloro, y cuélguelas o séquelas a baja temperatura: la secadora caliente despega el vinilo y las piedras. No planche sobre el estampado. La tienda escribe en la tarjeta de cuidado, que va en la bolsa, cuándo se prensaron y desde cuándo se pueden lavar. La etiqueta de la prenda manda sobre todo esto.',
    'price-with-proof': () =>
      'El precio se lo muestro junto con el dibujo en cuanto tenga todo; si quiere comparar, dígame la otra versión y también la calculo.',
  },
  problems: {
    'shape-missing': ({ expected }) => `Falta un valor (${expected}).`,
    'shape-unknown-key': ({ key }) => `«${key}» no es una entrada conocida.`,
    'shape-kind': ({ expected, got }) => `Se esperaba ${expected}, hay ${got}.`,
    'shape-choice': ({ choices, got }) => `${got} no es uno de: ${choices.join(', ')}.`,
    'shape-range': ({ least, most, got }) => `${got} está fuera de rango (${least ?? '…'} a ${most ?? '…'}).`,
    'shape-form': ({ form, got }) => `${got} no tiene la forma ${form}.`,
    'shape-rule': ({ rule, got }) => `${got}: ${rule}.`,
    'id-twice': ({ id, kind }) => `El id «${id}» (${kind}) está dos veces.`,
    'garment-not-in-order': ({ id, known }) => `La prenda «${id}» no está en el pedido (tiene ${known.join(', ')}).`,
    'decoration-not-in-order': ({ id, known }) => `La decoración «${id}» no está en el pedido (tiene ${known.join(', ')}).`,
    'line-twice': ({ line }) => `La línea ${line} está dos veces en la lista.`,
    'row-without-number': ({ line }) => `La línea ${line} no tiene número: ese lugar queda vacío.`,
    'row-without-name': ({ line }) => `La línea ${line} no tiene nombre: ese lugar queda vacío.`,
    'decoration-on-nobody': ({ decoration }) => `«${decoration}» no va en ninguna prenda.`,
    'garment-not-sold': ({ id, sold }, show) => `No vendemos «${id}»; tenemos ${show.list(sold.map(show.garment))}.`,
    'colour-unknown': ({ id }) => `«${id}» no es un color que conozcamos.`,
    'colour-not-sold': ({ garment, colour, sold }, show) =>
      `${show.garment(garment)} no viene en ${show.colour(colour)}; viene en ${show.list(sold.map(show.colour))}.`,
    'cut-not-sold': ({ garment, fit, size, line }, show) =>
      `${show.garment(garment)} no viene en ${sizeText(words, fit, size)} (línea ${line}).`,
    'material-unknown': ({ id }) => `«${id}» no es un material nuestro.`,
    'material-not-stocked': ({ kind, what, colour, colours }, show) =>
      `No tenemos ${kind === 'vinyl' ? `vinilo ${classes[what as keyof typeof classes] ?? what}` : `piedras ${what}`} en ${show.colour(colour)}${colours.length > 0 ? `; hay ${show.list(colours.map(show.colour))}` : ''}.`,
    'material-kind': ({ id, wanted }) => `«${id}» no es ${wanted}.`,
    'place-without-figures': ({ place, fit, size }) =>
      `No tenemos medidas para ${placesOf([place])} en ${sizeText(words, fit, size)}.`,
    'face-not-offered': ({ face, offered }) => `La letra «${face}» no se ofrece; hay ${offered.join(', ')}.`,
    'artwork-needs-a-person': ({ file }) => `El dibujo ${file} lo debe ver una persona antes de prometerlo.`,
    'size-later': ({ line }) => `Línea ${line}: la talla llega después.`,
    'face-unknown': ({ face, offered }) => `La letra «${face}» no se conoce; hay ${offered.join(', ')}.`,
    'face-unreadable': ({ face, reason }) => `La letra «${face}» no se puede leer: ${reason}.`,
    'face-lacks': ({ face, characters, faces }) =>
      `La letra «${face}» no tiene ${characters.join(' ')}${faces.length > 0 ? `; ${faces.join(', ')} sí` : ', tampoco nuestras otras letras'}.`,
    'face-without-digits': ({ face, missing }) => `A la letra «${face}» le faltan los dígitos ${missing.join(' ')}.`,
    'face-contour-open': ({ face, character }) => `«${character}» de «${face}» tiene un contorno abierto.`,
    'face-changed': ({ face, file }) => `El archivo ${file} de «${face}» no es el que se revisó.`,
    'face-listed-twice': ({ face }) => `Dos tipos de letra de la lista de la tienda se llaman «${face}»; dele otro id a uno.`,
    'face-file-missing': ({ face, file }) => `Falta el archivo ${file} de «${face}».`,
    'text-empty': () => 'No hay texto que poner.',
    'text-too-long': ({ characters, most }) => `El texto tiene ${characters} caracteres; el máximo es ${most}.`,
    'text-right-to-left': ({ text }) => `«${text}» se escribe de derecha a izquierda, y eso no lo podemos poner.`,
    'height-impossible': ({ heightMicrometres, leastMicrometres, mostMicrometres }, show) =>
      `${show.length(heightMicrometres)} de alto no se puede; debe ser de ${show.length(leastMicrometres, 'up')} a ${show.length(mostMicrometres)}.`,
    'text-too-wide': ({ text, widthMicrometres, mostMicrometres }, show) =>
      `«${text}» mediría ${show.length(widthMicrometres, 'up')} de ancho; caben ${show.length(mostMicrometres)}.`,
    'line-too-bent': ({ text }) => `«${text}» no se puede curvar tanto.`,
    'too-many-rows': ({ rows, most }) => `No caben ${rows} hileras de piedras; el máximo es ${most}.`,
    'stone-setting-impossible': ({ size }) => `La plantilla para piedras ${size} no se puede cortar.`,
    'no-room-for-stones': ({ text, size, remedies }) => `No hay lugar para piedras ${size} en «${text}». ${remedyText(remedies)}`,
    'stones-too-many': ({ text, about, most, remedies }) =>
      `«${text}» llevaría unas ${about} piedras; ${most} en un texto es lo máximo. ${remedyText(remedies)}`,
    'letters-condensed': ({ text, percent }) => `«${text}» va más angosto (${percent} %) para que quepa.`,
    'letters-smaller': ({ text, heightMicrometres, askedMicrometres }, show) =>
      `«${text}» va de ${show.length(heightMicrometres)} de alto en vez de ${show.length(askedMicrometres)} para que quepa.`,
    'letters-joined': ({ text, remedies }) =>
      `Las letras de «${text}» están muy juntas para poner piedras entre ellas. ${remedyText(remedies)}`,
    'letters-melt': ({ text, size, heightMicrometres, neededMicrometres, remedies }, show) =>
      `«${text}» de ${show.length(heightMicrometres)} es pequeño para piedras ${size}: las piedras de sus letras se juntan y cuesta leerlo. Se separan desde unas ${show.length(neededMicrometres, 'up')} de alto. ${remedyText(remedies)}`,
    'row-dropped': ({ text, row: dropped, remedies }) =>
      `La hilera ${dropped} de piedras no cabe en «${text}» y se quita. ${remedyText(remedies)}`,
    'row-shared': ({ text }) => `Donde «${text}» es angosto, los dos lados comparten una línea de piedras.`,
    'row-gap': ({ text, remedies }) => `Una hilera de piedras de «${text}» tiene un hueco. ${remedyText(remedies)}`,
    'corner-bald': ({ text, remedies }) => `Una esquina de «${text}» queda sin piedra. ${remedyText(remedies)}`,
    'corner-blunt': ({ text }) => `Esquinas muy juntas de «${text}» comparten una piedra.`,
    'part-wider-than-roll': ({ tag, widthMicrometres, mostMicrometres }, show) =>
      `${tag} mide ${show.length(widthMicrometres, 'up')} de ancho; el rollo ${show.length(mostMicrometres)}.`,
    'template-larger-than-sheet': ({ text, widthMicrometres, heightMicrometres }, show) =>
      `La plantilla de «${text}» (${show.length(widthMicrometres, 'up')} × ${show.length(heightMicrometres, 'up')}) es más grande que una hoja.`,
    'fibre-melts': ({ garment, fibre, percent }) =>
      `La prenda ${garment} tiene ${percent} % de ${fibre}, que se derrite o endurece con cualquier prensa.`,
    'no-common-heat': ({ garment, places: where, leastTenthsC, leastBy, mostTenthsC, mostBy }, show) =>
      `${garment}, ${placesOf(where)}: ${leastBy} necesita al menos ${show.temperature(leastTenthsC)}, pero ${mostBy} permite a lo más ${show.temperature(mostTenthsC)}.`,
    'no-common-time': ({ garment, places: where, leastSeconds, leastBy, mostSeconds, mostBy }) =>
      `${garment}, ${placesOf(where)}: ${leastBy} necesita ${leastSeconds} s, ${mostBy} permite ${mostSeconds} s.`,
    're-press-not-allowed': ({ garment, material, times, allowedTimes }) =>
      `${garment}: ${material} pasaría ${times} veces más por la prensa; su hoja permite ${allowedTimes}.`,
    'no-setting': ({ machine, leastTenthsC, mostTenthsC }, show) =>
      `${machine} no tiene ajuste entre ${show.temperature(leastTenthsC)} y ${show.temperature(mostTenthsC)}.`,
    'platen-too-small': ({ garment, places: where, widthMicrometres, heightMicrometres }, show) =>
      `${garment}, ${placesOf(where)}: ${show.length(widthMicrometres, 'up')} × ${show.length(heightMicrometres, 'up')} no cabe en un solo prensado.`,
    'auxiliary-missing': ({ garment, kind }) => `${garment}: hace falta ${kind} que aguante el calor y no hay.`,
    'asked-over-cap': ({ askedTenthsC, capTenthsC, capBy }, show) =>
      `Se pidieron ${show.temperature(askedTenthsC)}; ${capBy} permite a lo más ${show.temperature(capTenthsC)}.`,
    'asked-over-margin': ({ askedTenthsC, capTenthsC, capBy, swingTenthsC }, show) =>
      `${show.temperature(askedTenthsC)} queda dentro de la variación de la prensa (${show.swing(swingTenthsC)}) del límite de ${capBy}, ${show.temperature(capTenthsC)}.`,
    'asked-too-cool': ({ askedTenthsC, setTenthsC, leastTenthsC, leastBy }, show) =>
      `Se pidieron ${show.temperature(askedTenthsC)}; ${leastBy} necesita al menos ${show.temperature(leastTenthsC)}, así que la prensa se pone a ${show.temperature(setTenthsC)}.`,
    'usual-over-margin': ({ material, usualTenthsC, setTenthsC, capTenthsC }, show) =>
      `${material}: los ${show.temperature(usualTenthsC)} de costumbre están muy cerca del límite de ${show.temperature(capTenthsC)}; se ajusta a ${show.temperature(setTenthsC)}.`,
    'fibre-may-suffer': ({ garment, fibre, percent, fromTenthsC }, show) =>
      `${garment}: ${percent} % de ${fibre} puede dañarse desde ${show.temperatureFrom(fromTenthsC)}; primero una prueba.`,
    'thin-low-margin': ({ setTenthsC, leastTenthsC, leastBy }, show) =>
      `A ${show.temperature(setTenthsC)} la prensa puede bajar de los ${show.temperature(leastTenthsC)} que necesita ${leastBy}.`,
    'separate-presses': ({ garment, places: where, presses }) =>
      `${garment}, ${placesOf(where)}: se termina en ${plural(presses, 'prensado', 'prensados')}.`,
    'pressure-differs': ({ words: pressures, taken }) =>
      `Las capas piden presión distinta (${pressures.join(', ')}); se toma ${taken}.`,
    'obstacle-near': ({ garment, places: where, obstacles }) =>
      `${garment}, ${placesOf(where)}: lejos de esto: ${obstaclesOf(obstacles)}.`,
    'zip-two-halves': ({ garment, places: where }) => `${garment}, ${placesOf(where)}: se prensa en dos mitades junto al cierre.`,
    'inside-press-left-out': ({ garment }) => `${garment}: se omite el prensado por dentro.`,
    'fibre-unknown': ({ garment }) =>
      `Todavía nadie sabe de qué es la prenda ${garment}: se lee la etiqueta cuando llegue, antes de prensar.`,
    'fibre-not-on-sheet': ({ garment, material, fibre, percent }) =>
      `La hoja de ${material} no menciona ${fibre} (${percent} % de ${garment}): primero una prueba.`,
    'fibre-refused': ({ garment, material, fibre, percent }) =>
      `La hoja de ${material} dice que no a ${fibre} (${percent} % de ${garment}).`,
    'care-label-unread': ({ garment }) => `La etiqueta de cuidado de ${garment} no se ha leído.`,
    'over-care-label': ({ garment, ironTenthsC, setTenthsC }, show) =>
      `La etiqueta de ${garment} permite plancha a ${show.temperature(ironTenthsC)}; se usará ${show.temperature(setTenthsC)}: primero una prueba.`,
    'finish-unknown': ({ garment }) => `No se sabe si ${garment} repele el agua: primero se prueban cinco gotas.`,
    'finish-repels': ({ garment, material }) => `${garment} repele el agua; ${material} no pega ahí.`,
    'finish-needs-test': ({ garment, material }) => `El acabado de ${garment} necesita una prueba con ${material}.`,
    'drops-beaded': ({ garment }) => `Las gotas se quedaron sobre ${garment}: ni vinilo ni piedras comunes pegan.`,
    'drops-doubtful': ({ garment, seconds }) => `Las gotas tardaron ${seconds} s en ${garment}: primero una prueba.`,
    'repellence-suspected': ({ garment }) => `Telas como la de ${garment} suelen repeler: primero se prueban gotas.`,
    'bleed-risk': ({ garment, colour, fromTenthsC, setTenthsC }, show) =>
      `El tinte de ${garment} (${show.colour(colour)}) puede pasarse a un color claro desde ${show.temperatureFrom(fromTenthsC)}; se usará ${show.temperature(setTenthsC)}. Prensamos una y la vemos a las 24 horas antes de las demás.`,
    'stretch-needs-stretch': ({ garment, material }) => `${garment} se estira; ${material} se puede agrietar.`,
    'solid-stones-on-stretch': ({ garment }) => `Los rellenos de piedra no duran en tela elástica (${garment}).`,
    'perforated-cloth': ({ garment, isKnown }) =>
      isKnown
        ? `${garment} tiene agujeros: el pegamento podría pasar, así que va una almohadilla por dentro.`
        : `Nadie ha dicho cómo es la tela de ${garment}: por si tiene agujeros va una almohadilla por dentro.`,
    'press-marks': ({ garment }) => `La prensa puede dejar marca en ${garment}.`,
    'not-on-top': ({ decoration, above, below }) => `${decoration}: ${above} no pega sobre ${below}.`,
    'stones-under-three': ({ line }) => `Línea ${line}: sin piedras ni brillo suelto para menores de tres años.`,
    'leaded-stones-child': ({ line, material }) => `Línea ${line}: ${material} contiene plomo y no puede ir en ropa de niños.`,
    'certificate-missing': ({ material, lot, lines }) =>
      `Para ropa de niños (líneas ${lines.join(', ')}) el taller pide el certificado de ${material}, lote ${lot}.`,
    'age-unknown': ({ lines }) => `No se sabe la edad de las líneas ${lines.join(', ')}.`,
    'childrens-wear': ({ lines }) => `Las líneas ${lines.join(', ')} son para niños: se piden certificados por lote.`,
    'strings-on-child': ({ garment, lines }) =>
      `${garment} tiene o puede tener cordones en capucha o cuello y es o puede ser de niños (líneas ${lines.join(', ')}): se pregunta al dueño antes de prensar.`,
    'stones-on-game-wear': () => 'Piedras en un jersey de juego: pregunte por escrito a su liga.',
    'reflective-banned': ({ body, clause }) => `${body} ${clause} no permite nada reflejante.`,
    'ornaments-clause': ({ body, clause, text }) => `${body} ${clause}: «${text}». Pregunte a su liga.`,
    'body-not-solid': ({ body, clause }) => `${body} ${clause} pide el número de un solo color.`,
    'own-colour-number': ({ decoration, colour }, show) =>
      `${decoration}: el número sería del mismo color que el jersey (${show.colour(colour)}).`,
    'failing-pair': ({ body, jersey, number }, show) =>
      `${body} dice que ${show.colour(number)} sobre ${show.colour(jersey)} se lee mal.`,
    'low-contrast': ({ decoration }) => `${decoration} se ve poco sobre ese color.`,
    'illegal-number': ({ body, clause, line, number, nearest }) =>
      `Línea ${line}: el ${number} no es un número permitido (${body} ${clause})${nearest.length > 0 ? `; los más cercanos son ${nearest.join(', ')}` : ''}.`,
    'number-twice': ({ body, number, lines, forbidden }) =>
      `El número ${number} está dos veces (líneas ${lines.join(', ')})${forbidden ? `; ${body} no lo permite.` : '. ¿Es correcto?'}`,
    'numbers-clash': ({ body, numbers, lines }) =>
      `${numbers.join(' y ')} no pueden estar en la misma lista (líneas ${lines.join(', ')}, ${body}).`,
    'number-too-small': ({ body, clause, place, hasMicrometres, leastMicrometres }, show) =>
      `El número (${placesOf([place])}) mide ${show.length(hasMicrometres)}; ${body} ${clause} pide al menos ${show.length(leastMicrometres, 'up')}.`,
    'number-too-large': ({ body, clause, place, hasMicrometres, mostMicrometres }, show) =>
      `El número (${placesOf([place])}) mide ${show.length(hasMicrometres, 'up')}; ${body} ${clause} permite ${show.length(mostMicrometres)}.`,
    'stroke-too-thin': ({ body, clause, hasMicrometres, leastMicrometres }, show) =>
      `El trazo mide ${show.length(hasMicrometres)}; ${body} ${clause} pide al menos ${show.length(leastMicrometres, 'up')}.`,
    'stroke-too-thick': ({ body, clause, hasMicrometres, mostMicrometres }, show) =>
      `El trazo mide ${show.length(hasMicrometres, 'up')}; ${body} ${clause} permite ${show.length(mostMicrometres)}.`,
    'border-too-wide': ({ body, clause, hasMicrometres, mostMicrometres }, show) =>
      `El contorno mide ${show.length(hasMicrometres, 'up')}; ${body} ${clause} permite ${show.length(mostMicrometres)}.`,
    'name-too-small': ({ body, clause, hasMicrometres, leastMicrometres }, show) =>
      `El nombre mide ${show.length(hasMicrometres)} de alto; ${body} ${clause} pide al menos ${show.length(leastMicrometres, 'up')}.`,
    'name-too-large': ({ body, clause, hasMicrometres, mostMicrometres }, show) =>
      `El nombre mide ${show.length(hasMicrometres, 'up')} de alto; ${body} ${clause} permite ${show.length(mostMicrometres)}.`,
    'name-near-number': ({ body, hasMicrometres, leastMicrometres }, show) =>
      `Nombre y número están a ${show.length(hasMicrometres)}; ${body} pide ${show.length(leastMicrometres, 'up')}.`,
    'place-missing': ({ body, clause, garment, place }) => `${body} ${clause} pide número en ${placesOf([place])} de ${garment}.`,
    'no-rulebook': ({ sport }) =>
      `No se indicó reglamento para este pedido de ${words.sports[sport] ?? sport}, así que los números no se revisan contra uno.`,
    'old-edition': ({ body, edition }) => `Nuestra copia de ${body} es una edición vieja (${edition}): pregunte a la liga.`,
    'ask-your-league': ({ body, clause }) => `Confirme ${body} ${clause} con su liga.`,
    'goalkeeper-number': ({ line, number }) => `Línea ${line}: el ${number} es solo del portero.`,
    'wider-than-free': ({ text, widthMicrometres, freeWidthMicrometres }, show) =>
      `«${text}» mide ${show.length(widthMicrometres, 'up')} de ancho; hay ${show.length(freeWidthMicrometres)} de tela libre.`,
    'places-collide': ({ first, second, overlapMicrometres }, show) =>
      `Se enciman ${show.length(overlapMicrometres, 'up')}: ${first} y ${second}.`,
    'implausible-record': ({ material, field, value, least, most }, show) =>
      `El registro de ${material} da ${figure(field, value, show)} (${field}); los fabricantes publican de ${figure(field, least, show)} a ${figure(field, most, show)}. Vuelva a ver la hoja.`,
    'short-of-material': ({ material, kind, missing, days }, show) =>
      `Hay que pedir ${kind === 'stones' ? plural(missing, 'piedra', 'piedras') : show.length(missing, 'up')} de ${material}; tarda ${plural(days, 'día', 'días')}.`,
    'book-malformed': ({ reason }) => `El libro de trabajo no se puede leer: ${reason}.`,
    'need-by-past': () => 'La hora en que lo necesita ya pasó: diga un día y una hora que vengan.',
    'time-in-lost-hour': ({ text, readAs }, show) =>
      `Ese día no existen las ${show.hour(text.slice(11))}: el reloj se adelanta. Lo leo como ${show.moment(readAs)}; si quería otra hora, diga cuál.`,
    'station-unknown': ({ station }) => `No hay estación «${station}».`,
    'station-twice': ({ station }) => `La estación «${station}» está dos veces.`,
    'station-never-open': ({ station }) =>
      `La estación «${station}» no tiene ni una hora abierta en todo lo que se planea: dele horario, o el trabajo a otra estación.`,
    'order-twice': ({ order }) => `El pedido «${order}» está dos veces en el libro.`,
    'operation-twice': ({ operation }) => `El paso «${operation}» está dos veces.`,
    'after-unknown': ({ operation, after }) => `El paso «${operation}» espera a «${after}», que no existe.`,
    'after-circle': ({ operation }) => `El paso «${operation}» se espera a sí mismo.`,
    'work-longer-than-open': ({ operation, minutes, longestMinutes }) =>
      `«${operation}» toma ${minutes} minutos seguidos; lo más que se abre son ${longestMinutes}: permita interrumpirlo, o abra más tiempo.`,
    'never-together': ({ operation }) =>
      `Lo que «${operation}» necesita nunca está abierto a la vez el tiempo suficiente: haga coincidir los horarios de sus estaciones y personas.`,
    'setup-shortcut': ({ station, from, to }) => `Los tiempos de ajuste de «${station}» de ${from} a ${to} se contradicen.`,
    'started-together': ({ station, first, second }) =>
      `«${first}» y «${second}» no pueden haber empezado juntos en «${station}».`,
    'started-in-future': ({ operation }) => `«${operation}» dice haber empezado en el futuro.`,
    'beyond-horizon': () => 'El trabajo no cabe en el tiempo que se planea: hágalo más chico, o dé más horas.',
    'closed-before-need-by': ({ needBy, collectBy, why }, show) =>
      `El ${show.moment(needBy)} está cerrado${why === null ? '' : ` (${why})`}; antes de eso, el ${show.moment(collectBy)} es la última hora para recoger.`,
    'cannot-plan-now': () =>
      'Con nuestros horarios como están no hay lugar para este trabajo. Eso nos toca arreglarlo a nosotros, no a usted; el taller ya lo sabe. Pida una persona y le escribimos.',
    'zone-unknown': ({ zone }) => `La zona horaria «${zone}» no se conoce.`,
    'time-malformed': ({ text }) => `«${text}» no es fecha y hora.`,
    'no-such-time': ({ text }) => `«${text}» no existe.`,
    'year-out-of-range': ({ text, firstYear, lastYear }) => `«${text}» no está entre ${firstYear} y ${lastYear}.`,
    'hours-malformed': ({ text }) => `«${text}» no es un horario.`,
    'shop-file-missing': ({ file, folder }) => `Falta ${file} en ${folder}.`,
    'shop-file-not-json': ({ file, reason }) => `${file} no es JSON válido: ${reason}.`,
    'shop-reference': ({ id, wanted, file }) => `${file} nombra ${wanted} «${id}», que no existe.`,
    'shop-zone-differs': ({ profile, hours }) => `La zona del taller es ${profile}, el horario dice ${hours}.`,
    'order-not-json': ({ reason }) => `El pedido no es JSON válido: ${reason}.`,
    'stone-size-not-set': ({ size }) => `El taller no tiene medida para piedras ${size}.`,
    'vinyl-over-stones': ({ garment, layer }) => `${garment}: el vinilo (${layer}) no puede ir sobre piedras.`,
    'too-many-colours': ({ body, clause, decoration, colours, most }) =>
      `${decoration} tiene ${colours.length} colores; ${body} ${clause} permite ${most}.`,
    'too-many-layers': ({ decoration, layers, most }) =>
      `${decoration} tiene ${plural(layers, 'capa', 'capas')} de vinilo; a lo más aguantan ${most}.`,
    'late-for-need-by': ({ needBy, earliest, ready, of }, show) =>
      `No puede estar listo para el ${show.moment(needBy)}; lo más pronto es el ${show.moment(earliest)}.${
        ready === 0
          ? ''
          : ` Unas ${ready} de las ${of} prendas podrían estar a tiempo: si quiere recoger en dos partes, pregunte a una persona del taller, que acuerda cuáles.`
      }`,
    'paper-lacks': ({ characters }) => `La impresión no tiene signo para ${characters.join(' ')}; van como códigos.`,
  },
  ways: {
    'another-class': (subject) => aka('otro vinilo', subject),
    'another-press': (subject) => aka('otra prensa', subject),
    'another-garment': (subject) => aka('otra prenda', subject),
    'another-place': (subject) => aka('otro lugar', subject),
    'another-stone': (subject) => aka('otra piedra', subject),
    'separate-places': () => 'ponerlos en lugares separados',
    'no-stones': () => 'sin piedras',
    'bleed-test': () => 'una prueba de sangrado de 24 horas',
    blocker: (subject) => aka('un bloqueador debajo', subject),
    'low-temperature-vinyl': (subject) => aka('vinilo de baja temperatura', subject),
    'stretch-vinyl': (subject) => aka('vinilo elástico', subject),
    'coated-cloth-vinyl': (subject) => aka('vinilo para tela recubierta', subject),
    'test-press': () => 'una prueba de prensa',
    'water-drops': () => 'probar con gotas de agua',
    'read-label': () => 'leer la etiqueta',
    'lead-free-stones': (subject) => aka('piedras sin plomo', subject),
    certificate: () => 'un certificado del lote',
    'ask-age': () => 'decirnos las edades',
    'ask-league': () => 'preguntar a su liga',
    'ask-owner': () => 'preguntar al dueño',
    'remove-strings': () => 'quitar los cordones',
    'two-halves': () => 'prensar en dos mitades',
    'pad-inside': () => 'una almohadilla por dentro',
    'swap-layers': () => 'cambiar el orden de las capas',
    'knock-out-below': () => 'recortar la capa de abajo',
    'outline-instead': () => 'un contorno en su lugar',
    'other-number': (subject) => aka('otro número', subject),
    'other-colour': (subject) => aka('otro color', subject),
    'other-face': (subject) => aka('otra letra', subject),
    larger: () => 'hacerlo más grande',
    smaller: () => 'hacerlo más chico',
    'usual-setting': () => 'el ajuste de siempre',
    'customer-signs': () => 'usted firma que se omite',
  },
  couldDo: (ways) => `Se podría: ${ways}.`,
  noWay: 'No conocemos otra salida: pregunte al taller.',
  severities: { stop: 'Alto', 'needs-test': 'Primero prueba', caution: 'Cuidado', note: 'Nota' },
  buttons: {
    'sign-off': (revision) => `Apruebo la revisión ${revision}`,
    undo: () => 'Deshacer',
    change: () => 'Cambiar algo',
    person: () => 'Hablar con una persona',
    'start-over': () => 'Empezar de nuevo',
    cancel: () => 'Cancelar el pedido',
    status: () => '¿Cómo va?',
  },
  answers: {
    'nobody-leaves': 'Nadie se va',
    'sizes-as-before': 'Tallas de la vez pasada',
    everyone: 'Todos los de la lista',
    garments: 'Las prendas',
    letters: 'Números, nombres o letras',
    numbers: 'Números de jugador',
    pieces: 'Cuántas de cada talla',
    yes: 'Sí',
    no: 'No',
    'as-is': 'Está bien así',
    'all-13-up': 'Nadie: todos tienen 13 o más',
    'all-3-12': 'Todos tienen de 3 a 12',
    mixed: 'Algunos tienen 12 o menos',
    'not-known': 'No sé',
    later: 'Lo mando después',
    none: 'Ninguno',
    'front-back': 'Adelante y atrás',
    cancel: 'Sí, cancelar',
    'take-variant': 'Me quedo con esta',
    'keep-order': 'Que quede como está',
    ...words.sports,
    other: 'otro deporte',
  },
  fits: { ...fits, youth: 'juvenil (niño)', men: 'adulto' },
  classes,
  places,
  row,
  fields,
  assumedMark: '(supuesto)',
} satisfies Catalogue

function remedyText(remedies: readonly string[]): string {
  const said: Readonly<Record<string, string>> = {
    'smaller-stone': 'piedra más chica',
    'larger-stone': 'piedra más grande',
    'fewer-rows': 'menos hileras',
    'wider-tracking': 'más espacio entre letras',
    'another-face': 'otra letra',
    'larger-letters': 'letras más grandes',
    'shorter-text': 'un texto más corto',
    vinyl: 'vinilo sin piedras',
  }
  return remedies.length === 0 ? '' : `Ayudaría: ${remedies.map((one) => said[one] ?? one).join(', ')}.`
}
