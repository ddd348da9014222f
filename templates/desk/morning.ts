import { plural } from '../plural.ts'

/** The owner's morning sheet in words; every line ends in a thing to do. */
type MorningWords = {
  readonly titles: { readonly [section: string]: string }
  readonly todo: {
    readonly [todo in
      | 'bag'
      | 'countIn'
      | 'signOff'
      | 'take'
      | 'order'
      | 'call'
      | 'callAndMoney'
      | 'lookUp'
      | 'remake'
      | 'cover'
      | 'sizes'
      | 'decide'
      | 'learn']: string
  }
  readonly leaves: (name: string, pieces: number, day: string) => string
  readonly game: (name: string, day: string) => string
  readonly waits: (name: string) => string
  /** A test stopped it at the bench. */
  readonly stopped: (name: string, gates: string) => string
  readonly press: (name: string, temperature: string, machine: string) => string
  /** To do where somebody has the ticket in hand. */
  readonly held: (name: string) => string
  readonly short: (item: string, missing: number) => string
  readonly bagged: (name: string) => string
  readonly sizesLater: (name: string, rows: number) => string
  readonly unpaid: (name: string) => string
  readonly orderBy: (what: string, when: string) => string
  readonly orderNow: (what: string) => string
  readonly remake: (what: string, reason: string, cost: string) => string
  readonly remakeCost: (count: number, cost: string) => string
  readonly off: (who: string) => string
  /** A Sunday, a holiday. */
  readonly allOff: string
  readonly kept: (kept: number, of: number) => string
  readonly broken: (name: string, promised: string, done: string) => string
}

export const morningWords = {
  en: {
    titles: {
      leaving: 'Leaves today or tomorrow, not bagged',
      'game-soon': 'Game within three days, garments not counted in',
      waiting: 'Waiting for the customer',
      'press-list': 'Press list by temperature',
      shorts: 'Short on the shelf',
      remakes: 'Remakes and their cost',
      off: 'Who is off',
      collectable: 'Bagged, not collected, unpaid',
      kept: 'Done against promised',
      records: 'Records that look wrong',
    },
    todo: {
      bag: 'finish and bag it',
      countIn: 'count the garments in, call the supplier if they are late',
      signOff: 'ask for the sign-off',
      take: 'take it at the press',
      order: 'order it',
      call: 'call for collection',
      callAndMoney: 'call for collection and settle the money',
      remake: 'make it again first',
      cover: 'look at the plan of today',
      sizes: 'ask for the sizes',
      decide: 'decide it, then call the customer',
      learn: 'talk about what went wrong',
      lookUp: 'look it up on the maker’s sheet and correct the record',
    },
    leaves: (name, pieces, day) => `${name}: ${plural(pieces, 'garment', 'garments')}, promised ${day}`,
    game: (name, day) => `${name}: game on ${day}`,
    waits: (name) => `${name}: proof shown`,
    stopped: (name, gates) => `${name}: stopped at the bench (${gates})`,
    press: (name, temperature, machine) => `${temperature} on ${machine.replaceAll('-', ' ')}: ${name}`,
    held: (name) => `${name} has it; ask how far it is`,
    short: (item, missing) => `${item}: ${missing} short of what is reserved`,
    bagged: (name) => `${name}: bagged`,
    sizesLater: (name, rows) => `${name}: ${plural(rows, 'line', 'lines')} without a size`,
    unpaid: (name) => `${name}: bagged, not paid`,
    orderBy: (what, when) => `${what}; order by ${when}`,
    orderNow: (what) => `${what}; order now, work waits for it`,
    remake: (what, reason, cost) => `${what}: ${reason}, worth ${cost}`,
    remakeCost: (count, cost) => `${plural(count, 'remake', 'remakes')} in seven days, together ${cost}`,
    off: (who) => `${who} is off today`,
    allOff: 'nobody works today',
    kept: (kept, of) => `Promises kept in the last seven days: ${kept} of ${of}`,
    broken: (name, promised, done) => `${name}: promised ${promised}, bagged ${done}`,
  },
  es: {
    titles: {
      leaving: 'Sale hoy o mañana, sin embolsar',
      'game-soon': 'Partido en tres días, prendas sin contar',
      waiting: 'Esperando al cliente',
      'press-list': 'Lista de prensa por temperatura',
      shorts: 'Falta en el estante',
      remakes: 'Repeticiones y su costo',
      off: 'Quién no viene',
      collectable: 'Embolsado, sin recoger, sin pagar',
      kept: 'Hecho contra prometido',
      records: 'Registros que parecen equivocados',
    },
    todo: {
      bag: 'terminar y embolsar',
      countIn: 'contar las prendas, llamar al proveedor si tardan',
      signOff: 'pedir la firma',
      take: 'tomarla en la prensa',
      order: 'pedirlo',
      call: 'llamar para que recojan',
      callAndMoney: 'llamar para que recojan y arreglar el pago',
      remake: 'repetirla primero',
      cover: 'mirar el plan de hoy',
      sizes: 'pedir las tallas',
      decide: 'decidirlo y llamar al cliente',
      learn: 'hablar de lo que falló',
      lookUp: 'verlo en la hoja del fabricante y corregir el registro',
    },
    leaves: (name, pieces, day) => `${name}: ${plural(pieces, 'prenda', 'prendas')}, prometido ${day}`,
    game: (name, day) => `${name}: partido el ${day}`,
    waits: (name) => `${name}: prueba mostrada`,
    stopped: (name, gates) => `${name}: detenido en la mesa (${gates})`,
    press: (name, temperature, machine) => `${temperature} en ${machine.replaceAll('-', ' ')}: ${name}`,
    held: (name) => `la tiene ${name}; preguntar cómo va`,
    short: (item, missing) => `${item}: faltan ${missing} para lo reservado`,
    bagged: (name) => `${name}: embolsado`,
    sizesLater: (name, rows) => `${name}: ${plural(rows, 'línea', 'líneas')} sin talla`,
    unpaid: (name) => `${name}: embolsado, sin pagar`,
    orderBy: (what, when) => `${what}; pedir antes de ${when}`,
    orderNow: (what) => `${what}; pedir ya, el trabajo lo espera`,
    remake: (what, reason, cost) => `${what}: ${reason}, vale ${cost}`,
    remakeCost: (count, cost) => `${plural(count, 'repetición', 'repeticiones')} en siete días, en total ${cost}`,
    off: (who) => `${who} no viene hoy`,
    allOff: 'hoy no trabaja nadie',
    kept: (kept, of) => `Promesas cumplidas en los últimos siete días: ${kept} de ${of}`,
    broken: (name, promised, done) => `${name}: prometido ${promised}, embolsado ${done}`,
  },
} as const satisfies { readonly [language: string]: MorningWords }
