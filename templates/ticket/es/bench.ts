import type {
  CareWords,
  GateWords,
  LastWords,
  PickWords,
  PieceWords,
  RosterWords,
  TicketWords,
} from '../../../src/domain/ticket/words.ts'
import { plural } from '../../plural.ts'

const signed = ['por', 'cuándo']

const gate = (title: string, ask: string, answers: readonly string[]): GateWords => ({ title, ask, answers, writes: signed })

export const gates: TicketWords['gates'] = {
  'count-in': gate(
    'Conteo de entrada',
    'Contar por talla y color según la lista; leer la etiqueta de fibras; anotar defectos y el riel o la caja.',
    ['está todo', 'falta: escribir qué', 'etiqueta leída'],
  ),
  strings: gate(
    'Cordones de prenda infantil',
    'La llevan o pueden llevarla niños. El dueño mira capucha y cuello antes de prensar nada de ella.',
    ['sin cordones: adelante', 'quitados del todo: adelante', 'cordones: ALTO, preguntar al cliente'],
  ),
  'water-drops': gate(
    'Gotas de agua',
    'Dentro del paño que se prensa, sin lavar, cinco gotas a 25 mm. Secar y prensar hasta que no salga vapor.',
    ['absorbida en 5 s: adelante', '5–60 s: primero una prueba de prensa', 'sigue en perla a los 60 s: ALTO, no prensar'],
  ),
  'test-press': gate(
    'Prueba de prensa',
    'En un retal o dentro del dobladillo, con el ajuste de la prensa. En frío: estirar, uña en tres bordes.',
    ['agarra: adelante', 'se levanta: ALTO'],
  ),
  'bleed-test': {
    title: 'Prueba de sangrado',
    ask: 'Prensar una pieza, mirar enseguida y otra vez al día siguiente. El tinte puede salir hasta 72 horas después.',
    answers: ['enseguida: limpio', 'a las 24 h: limpio', 'salió color: ALTO', 'omitida, firmó el cliente'],
    writes: ['prensada a las', 'por', 'mirada a las'],
  },
  certificate: gate(
    'Certificado por lote',
    'Comparar el certificado de plomo del fabricante con la bolsa de este lote antes de usar piedras.',
    ['el certificado es de este lote', 'no hay: ALTO'],
  ),
  coupon: gate(
    'Muestra de agujeros',
    'Lote o lámina nuevos: 5 × 5 agujeros en tres medidas. Vale la menor en la que caen 24 de 25.',
    ['agujero como está cortado', 'otro agujero: escribirlo'],
  ),
  'first-piece': gate('Primera pieza', 'Una pieza, firmada por una segunda persona antes de la tanda.', ['bien']),
}

export const firstPiece: PieceWords = {
  title: 'Primera pieza antes de la tanda',
  again: 'Otro lote u otra prensa = otra primera pieza.',
  look: 'nombre, número, lado, altura, recto',
  proof: 'color y escritura según la prueba',
  cold: 'en frío: estirar, uña en tres bordes',
  coldStones: 'en frío: estirar, uña en tres bordes, probar diez piedras',
  pressed: 'prensó',
  second: 'segunda persona',
  when: 'cuándo',
}

/** Colours of one word that follow the gender of what they stand beside: "vinilo negro", "sudadera negra". */
const turning = ['blanco', 'negro', 'rojo', 'dorado', 'amarillo', 'morado', 'plateado', 'rosado', 'anaranjado']

const agreeing = (colour: string, thing: string): string => {
  const [head = ''] = thing.split(' ')
  return head.endsWith('a') && turning.includes(colour) ? `${colour.slice(0, -1)}a` : colour
}

export const pick: PickWords = {
  titles: { vinyl: 'Cortar, depilar', stones: 'Cortar plantillas, cepillar', both: 'Cortar, depilar, cepillar' },
  vinyl: 'Vinilo',
  vinylHeads: {
    material: 'Vinilo',
    places: 'Para',
    amount: 'Largo × ancho',
    lotBin: 'Lote · caja',
    reads: 'Corte',
    peel: 'Despegar',
    done: 'Listo',
  },
  reads: { mirrored: 'SE LEE AL REVÉS', 'as-read': 'SE LEE AL DERECHO' },
  sheets: 'Lista de corte',
  sheetHeads: { file: 'Archivo', size: 'Ancho × largo', pieces: 'Piezas', cut: 'Cortado', weeded: 'Depilado' },
  classes: {
    standard: 'vinilo estándar',
    glitter: 'vinilo con brillo',
    'low-temperature': 'vinilo de baja temperatura',
    stretch: 'vinilo elástico',
    flock: 'vinilo aterciopelado',
    puff: 'vinilo inflado',
    foil: 'vinilo metálico',
    reflective: 'vinilo reflectante',
    printed: 'vinilo impreso',
    blocker: 'vinilo bloqueador',
  },
  vinylName: (colour, kind) => `${kind} ${agreeing(colour, kind)}`,
  bin: (bin) => (bin === null ? 'sin caja' : `caja ${bin}`),
  lot: (lot) => `lote ${lot}`,
  tally: 'Cifras por cortar, según altura',
  tallyHeads: { place: 'Lugar', height: 'Altura', face: 'Letra', digits: 'Cifra × cuántas' },
  templates: 'Plantillas de piedras (se cepillan para cada prenda)',
  allOn: 'todos',
  templateHeads: {
    box: 'Caja',
    no: 'N.º',
    character: 'Dice',
    on: 'Para',
    height: 'Altura',
    stone: 'Piedra',
    holes: 'Agujeros',
    brushed: 'Cepillar',
    done: 'Hecho',
  },
  cutNew: 'por cortar',
  times: (count) => `${count} ×`,
  stones: 'Piedras que se traen',
  stoneHeads: {
    stone: 'Piedra',
    lotBin: 'Lote · caja',
    pieces: 'Piezas',
    spare: 'Repuesto',
    gross: 'Gruesas',
    weight: 'Pesar',
    done: 'Listo',
  },
  coupon:
    '1 gruesa = 144. Gruesas y peso incluyen el repuesto. Un lote por equipo; una sola piedra en la mesa; pesar lo que sobra.',
}

export const roster: RosterWords = {
  bySize: 'Lista por talla, para la prensa',
  byName: 'Lista por nombre, para las bolsas',
  heads: {
    line: 'Línea',
    number: 'N.º',
    name: 'Nombre',
    size: 'Talla',
    quantity: 'Cant.',
    inspected: 'Revisada',
    bagged: 'En bolsa',
    special: 'Especial',
    garment: 'Prenda',
  },
  letters: { front: 'F', back: 'E', name: 'N', sleeve: 'M', other: 'O' },
  legend: 'Marcar lo prensado: F frente · E espalda · N nombre · M manga u hombro · O otro lugar.',
  group: (garment, cut, pieces) => `${garment} · ${cut} · ${pieces} ${pieces === 1 ? 'pieza' : 'piezas'}`,
  nameless: 'sin nombre',
  numberless: 'sin número',
  special: 'Filas especiales',
  extra: (text) => `más ${text}`,
  without: (place) => `SIN ${place}`,
  setLower: (place, height) => `${place} de ${height} de alto`,
  setNarrower: (place, percent) => `${place} más angosto, ${percent} %`,
  ages: { 'under-3': 'menor de 3 años', '3-12': 'de 3 a 12 años', '13-up': '', unknown: '' },
  row: (line) => `línea ${line}`,
  strip: (of, all) => `${of} de ${all}`,
  strips: 'Tiras: una por prenda',
  stripHint: 'Recortar. Meter bajo el dobladillo o sujetar en la etiqueta; quitar antes de prensar.',
}

export const care: CareWords = {
  inspection: 'Revisión',
  inspect: [
    'fría',
    'nombre, número y talla según la lista',
    'bordes pegados',
    'recto, a su altura',
    'sin brillo ni marcas',
    'el otro lado limpio',
  ],
  inspectStones: ['ningún lugar vacío', 'ninguna piedra suelta', 'diez piedras probadas con la uña'],
  pack: 'Embolsado y primer lavado',
  packing: [
    'por jugador: número, nombre, talla',
    'prendas contadas',
    'repuestos y sobras contados',
    'una foto de la primera prenda guardada',
    'tarjeta de cuidado en la bolsa',
  ],
  rest: (hours) => `Primer lavado: no antes de ${plural(hours, 'hora', 'horas')} después del último prensado.`,
  goOut: 'Las prendas pueden salir frías y revisadas.',
  firstWash: ['último prensado: día, hora', 'primer lavado no antes de'],
  wash: [
    'Lavar al revés, en frío o tibio, sin suavizante ni lejía, sin limpieza en seco; colgar o secar a baja temperatura. Una secadora industrial mata el pegamento: preguntar quién lava.',
  ],
}

/** The point of "p. m." ends the sentence too. */
const ended = (text: string): string => (text.endsWith('.') ? text : `${text}.`)

export const last: LastWords = {
  title: 'Revisar, embolsar, trasfondo',
  plan: 'Plan',
  promised: (when) => `Prometido: ${ended(when)}`,
  unpromised: 'No hay hora prometida.',
  slack: (span) => `Holgura antes de romper la promesa: ${span}.`,
  span: (days, hours, minutes) => {
    const parts = [days > 0 ? `${days} d` : '', hours > 0 ? `${hours} h` : '', minutes > 0 ? `${minutes} min` : ''].filter(
      (part) => part !== '',
    )
    return parts.length > 0 ? parts.join(' ') : '0 min'
  },
  freezes: (when) => `La lista se puede cambiar hasta ${ended(when)}`,
  hangsOn: 'Depende de',
  slotHeads: { work: 'Trabajo', stations: 'Dónde, quién', start: 'Desde', end: 'Hasta', setUp: 'Preparar' },
  problems: 'Lo que se encontró',
  heed: 'Cuidado con este pedido',
  severities: { stop: 'ALTO', 'needs-test': 'Probar antes', caution: 'Cuidado', note: 'Nota' },
  rulebook: 'Reglamento',
  rule: (body, clause, edition) => `Números comprobados con ${body}, ${clause}, edición ${edition}`,
  marks: { read: 'leído en su propia página', quoted: 'citado por otra página', memory: 'de memoria' },
  askLeague: 'Las reglas cambian cada temporada: consulte a su liga.',
  why: 'Por qué este orden',
  whyStep: (numbers, reason) => `${numbers}: ${reason}`,
  sources: 'Fuentes, y quién decide',
  source: (of, sheet, date) => `${of}: ${sheet}, ${date}.`,
  defer: [
    'Por encima de esta orden están la hoja del fabricante de cada material, el manual de la prensa y las normas locales de trabajo. Si difieren, mandan ellas: parar y preguntar.',
    'Nada aquí dice que una prenda cumpla una ley de productos ni que sea segura para un niño.',
  ],
}
