import type { Moment } from '../../src/domain/ticket/moment.ts'
import type { GarmentWords, HeadWords, PlaceWords, TicketWords } from '../../src/domain/ticket/words.ts'
import { sportNames } from '../sport-names.ts'
import { care, firstPiece, gates, last, pick, roster } from './es/bench.ts'
import { press, signs, steps } from './es/press.ts'
import { slip, template } from './es/slips.ts'

const time = ({ hour, minute }: Moment): string => {
  if (minute === 0 && hour === 12) return '12 del mediodía'
  const half = hour < 12 ? 'a. m.' : 'p. m.'
  return `${hour % 12 === 0 ? 12 : hour % 12}:${String(minute).padStart(2, '0')} ${half}`
}

const list = (items: readonly string[]): string => {
  const [only] = items
  if (items.length < 2) return only ?? ''
  return `${items.slice(0, -1).join(', ')} y ${items.at(-1) ?? ''}`
}

const head: HeadWords = {
  jobTicket: 'Orden de trabajo',
  title: (ticket, team) => `Orden de trabajo ${ticket}: ${team}`,
  revision: (revision) => `revisión ${revision}`,
  replaces: (revision) => `SUSTITUYE la revisión ${revision}: tirar aquella`,
  page: 'página {page} de {pages}',
  made: (when) => `Hecha: ${when.replace(/\.$/, '')}.`,
  needed: 'Se pide para',
  promised: 'Prometido',
  needFor: (what) => `para: ${what}`,
  gameDay: (when) => `día de partido: ${when}`,
  handOver: { collect: 'se recoge', field: 'lo llevamos al campo', post: 'va por correo' },
  team: 'Trabajo',
  order: 'Pedido',
  use: 'Uso',
  pieces: (count) => `${count} ${count === 1 ? 'prenda' : 'prendas'}`,
  people: { orders: 'Pidió', signsOff: 'Aprobó', collects: 'Recoge', ask: 'Preguntas a' },
  notes: 'Notas',
  code: (content) => `Código QR: ${content}`,
  changed: 'CAMBIOS',
  change: {
    added: (line, row) => `Línea ${line} es nueva: ${row}`,
    dropped: (line, row) => `Línea ${line} se quita: ${row}`,
    row: (line, field, change) => `Línea ${line}, ${field}: ${change}`,
    fromTo: (was, now) => `era ${was}, ahora ${now}`,
    nothing: 'nada',
    fields: {
      needBy: 'fecha',
      handOver: 'entrega',
      garments: 'prendas',
      decorations: 'decoración',
      rulebook: 'reglamento',
      notes: 'notas',
      number: 'número',
      name: 'nombre',
      size: 'talla',
      garment: 'prenda',
      quantity: 'cantidad',
      extras: 'extras',
      note: 'nota',
    },
  },
  throwAway: 'Tirar',
  thrown: { line: 'Línea', place: 'Lugar', piece: 'Pieza', state: 'Estado', cut: 'cortada', pressed: 'prensada', done: 'Tirada' },
  lacking: 'U+… es un signo que este papel no puede imprimir: mírelo en el pedido.',
}

const garment: GarmentWords = {
  title: 'Prenda',
  roles: { home: 'local', away: 'visitante' },
  from: { shop: 'prenda del taller', customer: 'prenda DEL CLIENTE' },
  cloth: 'Tela',
  unknown: 'fibras NO CONOCIDAS: leer la etiqueta',
  fibre: (percent, fibre) => `${percent} % ${fibre}`,
  total: 'Piezas',
  sum: (quantity) => `${quantity} ${quantity === 1 ? 'prenda' : 'prendas'} en total`,
  finish: { plain: '', repellent: 'acabado repelente al agua', unknown: 'acabado no conocido' },
  dye: { plain: '', sublimated: 'SUBLIMADA', unknown: 'tinte no conocido' },
  knits: {
    mesh: 'malla',
    interlock: 'interlock',
    jersey: 'punto jersey',
    tricot: 'tricot',
    woven: 'tejido plano',
    fleece: 'felpa',
    unknown: 'tejido no conocido',
  },
  fibres: {
    acetate: 'acetato',
    acrylic: 'acrílico',
    cotton: 'algodón',
    elastane: 'elastano',
    linen: 'lino',
    lyocell: 'lyocell',
    modacrylic: 'modacrílico',
    modal: 'modal',
    nylon: 'nailon',
    polyester: 'poliéster',
    polypropylene: 'polipropileno',
    silk: 'seda',
    triacetate: 'triacetato',
    vinyon: 'vinyon',
    viscose: 'viscosa',
    wool: 'lana',
  },
  features: {
    hood: 'capucha',
    'full-zip': 'cierre completo',
    'half-zip': 'medio cierre',
    pocket: 'bolsillo',
    collar: 'cuello',
    snaps: 'broches',
    piping: 'ribete',
    'centre-seam': 'costura central',
    strings: 'cordones',
  },
  fits: { toddler: '', youth: 'juvenil', women: 'mujer', men: 'adulto' },
  sizes: {
    '2T': '2T',
    '3T': '3T',
    '4T': '4T',
    '5T': '5T',
    XS: 'XS',
    S: 'S',
    M: 'M',
    L: 'L',
    XL: 'XL',
    '2XL': '2XL',
    '3XL': '3XL',
    '4XL': '4XL',
    later: 'TALLA PENDIENTE',
  },
}

const place: PlaceWords = {
  title: 'Dónde va cada cosa',
  hint: 'Izquierda y derecha son las DE QUIEN LLEVA la prenda. Dibujo a escala; mandan las cifras. Las alturas son las de las cifras planas.',
  ids: {
    'front-number': 'número del frente',
    'back-number': 'número de la espalda',
    name: 'nombre',
    nape: 'nuca',
    yoke: 'parte alta de la espalda (canesú)',
    'left-chest': 'pecho izquierdo',
    'right-chest': 'pecho derecho',
    'full-front': 'frente entero',
    'below-number': 'bajo el número',
    'left-sleeve': 'manga izquierda',
    'right-sleeve': 'manga derecha',
    'left-shoulder': 'hombro izquierdo',
    'right-shoulder': 'hombro derecho',
    'left-leg': 'pierna izquierda',
    'right-leg': 'pierna derecha',
    hood: 'capucha',
    other: 'otro lugar',
  },
  left: 'SU IZQUIERDA',
  right: 'SU DERECHA',
  high: (height) => `${height} de alto`,
  highFrom: (lowest, highest) => `de ${lowest} a ${highest} de alto, según la lista`,
  below: {
    collar: (offset) => `${offset} bajo el cuello`,
    hem: (offset) => `${offset} sobre el dobladillo`,
    'other-place': (offset, above) => `${offset} bajo: ${above}`,
  },
  group: (name, sizes) => `${name} · ${sizes}`,
  artwork: 'arte: ver el archivo',
}

/** The words of the ticket in Spanish. */
export const ticketWordsEs = {
  language: 'es',
  date: (moment) => `${moment.dayName} ${moment.day} de ${moment.monthName} de ${moment.year}`,
  shortDate: (moment) => `${moment.dayName.slice(0, 3)} ${moment.day} ${moment.monthName.slice(0, 3)}`,
  time,
  at: (date, hour) => `${date}, ${hour}`,
  list,
  sports: sportNames.es,
  uses: {
    game: 'para jugar',
    fan: 'para la afición',
    practice: 'para entrenar',
    cheer: 'animación',
    staff: 'personal',
    keepsake: 'recuerdo',
  },
  head,
  garment,
  place,
  press,
  pick,
  roster,
  gateTitle: 'Controles: tras uno cerrado no se prensa nada',
  gateBlocks: { cutting: 'Cerrado: no cortar.', pressing: 'Cerrado: no prensar.', run: 'Cerrado: no hacer la tanda.' },
  gateWait: (span) => `Esperar ${span}.`,
  gates,
  steps,
  signs,
  firstPiece,
  care,
  last,
  slip,
  template,
} satisfies TicketWords
