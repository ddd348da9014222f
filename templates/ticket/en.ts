import type { Moment } from '../../src/domain/ticket/moment.ts'
import type { GarmentWords, HeadWords, PlaceWords, TicketWords } from '../../src/domain/ticket/words.ts'
import { sportNames } from '../sport-names.ts'
import { care, firstPiece, gates, last, pick, roster } from './en/bench.ts'
import { press, signs, steps } from './en/press.ts'
import { slip, template } from './en/slips.ts'

const time = ({ hour, minute }: Moment): string => {
  if (minute === 0 && hour === 12) return '12 noon'
  const half = hour < 12 ? 'am' : 'pm'
  return `${hour % 12 === 0 ? 12 : hour % 12}:${String(minute).padStart(2, '0')} ${half}`
}

const list = (items: readonly string[]): string => {
  const [only] = items
  if (items.length < 2) return only ?? ''
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1) ?? ''}`
}

const head: HeadWords = {
  jobTicket: 'Job ticket',
  title: (ticket, team) => `Job ticket ${ticket}: ${team}`,
  revision: (revision) => `revision ${revision}`,
  replaces: (revision) => `REPLACES revision ${revision}: throw that one away`,
  page: 'page {page} of {pages}',
  made: (when) => `Made ${when}.`,
  needed: 'Wanted',
  promised: 'Promised',
  needFor: (what) => `for: ${what}`,
  gameDay: (when) => `game day ${when}`,
  handOver: { collect: 'is collected', field: 'we bring it to the field', post: 'goes by post' },
  team: 'Work',
  order: 'Order',
  use: 'Use',
  pieces: (count) => `${count} ${count === 1 ? 'garment' : 'garments'}`,
  people: { orders: 'Ordered by', signsOff: 'Signed off by', collects: 'Collected by', ask: 'Questions to' },
  notes: 'Notes',
  code: (content) => `QR code: ${content}`,
  changed: 'CHANGED',
  change: {
    added: (line, row) => `Line ${line} is new: ${row}`,
    dropped: (line, row) => `Line ${line} is dropped: ${row}`,
    row: (line, field, change) => `Line ${line}, ${field}: ${change}`,
    fromTo: (was, now) => `was ${was}, is now ${now}`,
    nothing: 'nothing',
    fields: {
      needBy: 'needed',
      handOver: 'hand-over',
      garments: 'garments',
      decorations: 'decorations',
      rulebook: 'rulebook',
      notes: 'notes',
      number: 'number',
      name: 'name',
      size: 'size',
      garment: 'garment',
      quantity: 'quantity',
      extras: 'extras',
      note: 'note',
    },
  },
  throwAway: 'Throw away',
  thrown: { line: 'Line', place: 'Place', piece: 'Piece', state: 'State', cut: 'cut', pressed: 'pressed', done: 'Gone' },
  lacking: 'U+… stands for a sign that this paper cannot print: look it up in the order.',
}

const garment: GarmentWords = {
  title: 'Garment',
  roles: { home: 'home', away: 'away' },
  from: { shop: "shop's garment", customer: "CUSTOMER'S OWN garment" },
  cloth: 'Cloth',
  unknown: 'fibres NOT KNOWN: read the label',
  fibre: (percent, fibre) => `${percent} % ${fibre}`,
  total: 'Pieces',
  sum: (quantity) => `${quantity} ${quantity === 1 ? 'garment' : 'garments'} in all`,
  finish: { plain: '', repellent: 'water-repellent finish', unknown: 'finish not known' },
  dye: { plain: '', sublimated: 'SUBLIMATED', unknown: 'dye not known' },
  knits: {
    mesh: 'mesh',
    interlock: 'interlock',
    jersey: 'jersey knit',
    tricot: 'tricot',
    woven: 'woven',
    fleece: 'fleece',
    unknown: 'knit not known',
  },
  fibres: {
    acetate: 'acetate',
    acrylic: 'acrylic',
    cotton: 'cotton',
    elastane: 'elastane',
    linen: 'linen',
    lyocell: 'lyocell',
    modacrylic: 'modacrylic',
    modal: 'modal',
    nylon: 'nylon',
    polyester: 'polyester',
    polypropylene: 'polypropylene',
    silk: 'silk',
    triacetate: 'triacetate',
    vinyon: 'vinyon',
    viscose: 'viscose',
    wool: 'wool',
  },
  features: {
    hood: 'hood',
    'full-zip': 'full zip',
    'half-zip': 'half zip',
    pocket: 'pocket',
    collar: 'collar',
    snaps: 'snaps',
    piping: 'piping',
    'centre-seam': 'centre seam',
    strings: 'strings',
  },
  fits: { toddler: '', youth: 'youth', women: "women's", men: 'adult' },
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
    later: 'SIZE COMES LATER',
  },
}

const place: PlaceWords = {
  title: 'Where everything goes',
  hint: "Left and right are the WEARER'S. Drawn to scale; the figures count. Heights are those of the flat figures.",
  ids: {
    'front-number': 'front number',
    'back-number': 'back number',
    name: 'name',
    nape: 'nape',
    yoke: 'upper back (yoke)',
    'left-chest': 'left chest',
    'right-chest': 'right chest',
    'full-front': 'full front',
    'below-number': 'below the number',
    'left-sleeve': 'left sleeve',
    'right-sleeve': 'right sleeve',
    'left-shoulder': 'left shoulder',
    'right-shoulder': 'right shoulder',
    'left-leg': 'left leg',
    'right-leg': 'right leg',
    hood: 'hood',
    other: 'other place',
  },
  left: "WEARER'S LEFT",
  right: "WEARER'S RIGHT",
  high: (height) => `${height} high`,
  highFrom: (lowest, highest) => `${lowest} to ${highest} high, by the roster`,
  below: {
    collar: (offset) => `${offset} below the collar`,
    hem: (offset) => `${offset} above the hem`,
    'other-place': (offset, above) => `${offset} below the ${above}`,
  },
  group: (name, sizes) => `${name} · ${sizes}`,
  artwork: 'artwork: see the file',
}

/** The words of the ticket in English. */
export const ticketWordsEn = {
  language: 'en',
  date: (moment, order) =>
    order === 'month-first'
      ? `${moment.dayName}, ${moment.monthName} ${moment.day}, ${moment.year}`
      : `${moment.dayName} ${moment.day} ${moment.monthName} ${moment.year}`,
  shortDate: (moment, order) => {
    const short = [moment.monthName.slice(0, 3), String(moment.day)]
    return `${moment.dayName.slice(0, 3)} ${(order === 'month-first' ? short : short.reverse()).join(' ')}`
  },
  time,
  at: (date, hour) => `${date}, ${hour}`,
  list,
  sports: sportNames.en,
  uses: {
    game: 'game wear',
    fan: 'fan wear',
    practice: 'practice wear',
    cheer: 'cheer wear',
    staff: 'staff wear',
    keepsake: 'keepsake',
  },
  head,
  garment,
  place,
  press,
  pick,
  roster,
  gateTitle: 'Gates: nothing is pressed behind a closed one',
  gateBlocks: { cutting: 'Closed: no cutting.', pressing: 'Closed: no pressing.', run: 'Closed: no run.' },
  gateWait: (span) => `Wait ${span}.`,
  gates,
  steps,
  signs,
  firstPiece,
  care,
  last,
  slip,
  template,
} satisfies TicketWords
