/** The owner's morning sheet in words; every line ends in a thing to do. */
type MorningWords = {
  readonly titles: { readonly [section: string]: string }
  readonly todo: {
    readonly [todo in 'bag' | 'countIn' | 'signOff' | 'take' | 'order' | 'call' | 'callAndMoney' | 'lookUp']: string
  }
  readonly leaves: (name: string, pieces: number, day: string) => string
  readonly game: (name: string, day: string) => string
  readonly waits: (name: string) => string
  readonly press: (name: string, temperature: string, machine: string) => string
  readonly short: (item: string, missing: number) => string
  readonly bagged: (name: string) => string
}

export const morningWords = {
  en: {
    titles: {
      leaving: 'Leaves today or tomorrow, not bagged',
      'game-soon': 'Game within three days, garments not counted in',
      waiting: 'Waiting for the customer',
      'press-list': 'Press list by temperature',
      shorts: 'Short on the shelf',
      collectable: 'Bagged, not collected',
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
      lookUp: 'look it up on the maker’s sheet and correct the record',
    },
    leaves: (name, pieces, day) => `${name}: ${pieces} garments, promised ${day}`,
    game: (name, day) => `${name}: game on ${day}`,
    waits: (name) => `${name}: proof shown`,
    press: (name, temperature, machine) => `${temperature} on ${machine.replaceAll('-', ' ')}: ${name}`,
    short: (item, missing) => `${item}: ${missing} short of what is reserved`,
    bagged: (name) => `${name}: bagged`,
  },
  es: {
    titles: {
      leaving: 'Sale hoy o mañana, sin embolsar',
      'game-soon': 'Partido en tres días, prendas sin contar',
      waiting: 'Esperando al cliente',
      'press-list': 'Lista de plancha por temperatura',
      shorts: 'Falta en el estante',
      collectable: 'Embolsado, sin recoger',
      records: 'Registros que parecen equivocados',
    },
    todo: {
      bag: 'terminar y embolsar',
      countIn: 'contar las prendas, llamar al proveedor si tardan',
      signOff: 'pedir la firma',
      take: 'tomarla en la plancha',
      order: 'pedirlo',
      call: 'llamar para que recojan',
      callAndMoney: 'llamar para que recojan y arreglar el pago',
      lookUp: 'verlo en la hoja del fabricante y corregir el registro',
    },
    leaves: (name, pieces, day) => `${name}: ${pieces} prendas, prometido ${day}`,
    game: (name, day) => `${name}: partido el ${day}`,
    waits: (name) => `${name}: prueba mostrada`,
    press: (name, temperature, machine) => `${temperature} en ${machine.replaceAll('-', ' ')}: ${name}`,
    short: (item, missing) => `${item}: faltan ${missing} para lo reservado`,
    bagged: (name) => `${name}: embolsado`,
  },
} as const satisfies { readonly [language: string]: MorningWords }
