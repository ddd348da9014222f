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

const signed = ['by', 'when']

const gate = (title: string, ask: string, answers: readonly string[]): GateWords => ({ title, ask, answers, writes: signed })

export const gates: TicketWords['gates'] = {
  'count-in': gate(
    'Count-in',
    'Count by size and colour against the roster; read the fibre label; note faults and the rail or bin.',
    ['all here', 'short: write what', 'label read'],
  ),
  strings: gate(
    'Strings of a child’s garment',
    'Children wear this, or may. The owner looks at hood and neck before anything of it is pressed.',
    ['no strings: go', 'taken out for good: go', 'strings: STOP, ask the customer'],
  ),
  'water-drops': gate(
    'Water drops',
    'Inside the panel to be pressed, unwashed, five drops 25 mm apart. Blot, dry, pre-press until no steam.',
    ['sunk within 5 s: go', '5–60 s: test press first', 'still beaded at 60 s: STOP, no pressing'],
  ),
  'test-press': gate(
    'Test press',
    'On a scrap or inside the hem, at the press box setting. When cold: stretch, thumbnail at three edges.',
    ['holds: go', 'lifts: STOP'],
  ),
  'bleed-test': {
    title: 'Bleed test',
    ask: 'Press one piece, look at once and again after a day. Dye may show up to 72 hours later.',
    answers: ['at once: clean', 'after 24 h: clean', 'colour came through: STOP', 'skipped, customer signed'],
    writes: ['pressed at', 'by', 'looked at'],
  },
  certificate: gate(
    'Certificate by lot',
    "Hold the maker's lead certificate of this lot against the bag before any stone is used.",
    ['certificate is for this lot', 'none: STOP'],
  ),
  coupon: gate(
    'Hole coupon',
    'New stone lot or flock sheet: 5 × 5 holes at three sizes. The smallest in which 24 of 25 drop is the hole.',
    ['hole as cut', 'other hole: write it'],
  ),
  'first-piece': gate('First piece', 'One piece, signed by a second person before the run.', ['right']),
}

export const firstPiece: PieceWords = {
  title: 'First piece before the run',
  again: 'A new lot or another press = a new first piece.',
  look: 'name, number, side, height, straight',
  proof: 'colour and spelling against the proof',
  cold: 'when cold: stretch, thumbnail at three edges',
  coldStones: 'when cold: stretch, thumbnail at three edges, try ten stones',
  pressed: 'pressed by',
  second: 'second person',
  when: 'when',
}

export const pick: PickWords = {
  titles: { vinyl: 'Cut, weed', stones: 'Cut templates, brush', both: 'Cut, weed, brush' },
  vinyl: 'Vinyl',
  vinylHeads: {
    material: 'Vinyl',
    places: 'For',
    amount: 'Length × width',
    lotBin: 'Lot · bin',
    reads: 'Cut',
    peel: 'Peel',
    done: 'Got',
  },
  reads: { mirrored: 'READS BACKWARDS', 'as-read': 'READS RIGHT' },
  sheets: 'Cut list',
  sheetHeads: { file: 'File', size: 'Width × length', pieces: 'Pieces', cut: 'Cut', weeded: 'Weeded' },
  classes: {
    standard: 'standard vinyl',
    glitter: 'glitter vinyl',
    'low-temperature': 'low-temperature vinyl',
    stretch: 'stretch vinyl',
    flock: 'flock vinyl',
    puff: 'puff vinyl',
    foil: 'foil vinyl',
    reflective: 'reflective vinyl',
    printed: 'printed vinyl',
    blocker: 'blocker vinyl',
  },
  vinylName: (colour, kind) => `${colour} ${kind}`,
  bin: (bin) => (bin === null ? 'no bin' : `bin ${bin}`),
  lot: (lot) => `lot ${lot}`,
  tally: 'Digits to cut, by height',
  tallyHeads: { place: 'Place', height: 'Height', face: 'Face', digits: 'Digit × how many' },
  templates: 'Stone templates (brushed again for every garment)',
  allOn: 'all',
  templateHeads: {
    box: 'Box',
    no: 'No.',
    character: 'Says',
    on: 'For',
    height: 'Height',
    stone: 'Stone',
    holes: 'Holes',
    brushed: 'Brush',
    done: 'Done',
  },
  cutNew: 'to be cut',
  times: (count) => `${count} ×`,
  stones: 'Stones to fetch',
  stoneHeads: {
    stone: 'Stone',
    lotBin: 'Lot · bin',
    pieces: 'Pieces',
    spare: 'Spare',
    gross: 'Gross',
    weight: 'Weigh out',
    done: 'Got',
  },
  coupon:
    '1 gross = 144. Gross and weight include the spare. One lot per team; one stone at a time on the table; weigh the rest back in.',
}

export const roster: RosterWords = {
  bySize: 'Roster by size, for the press',
  byName: 'Roster by name, for the bags',
  heads: {
    line: 'Line',
    number: 'No.',
    name: 'Name',
    size: 'Size',
    quantity: 'Qty',
    inspected: 'Inspected',
    bagged: 'Bagged',
    special: 'Special',
    garment: 'Garment',
  },
  letters: { front: 'F', back: 'B', name: 'N', sleeve: 'S', other: 'O' },
  legend: 'Tick what is pressed: F front · B back · N name · S sleeve or shoulder · O other place.',
  group: (garment, cut, pieces) => `${garment} · ${cut} · ${pieces} ${pieces === 1 ? 'piece' : 'pieces'}`,
  nameless: 'no name',
  numberless: 'no number',
  special: 'Special rows',
  extra: (text) => `plus ${text}`,
  without: (place) => `WITHOUT ${place}`,
  setLower: (place, height) => `${place} ${height} high`,
  setNarrower: (place, percent) => `${place} set narrower, ${percent} %`,
  ages: { 'under-3': 'child under 3', '3-12': 'child 3 to 12', '13-up': '', unknown: '' },
  row: (line) => `line ${line}`,
  strip: (of, all) => `${of} of ${all}`,
  strips: 'Strips: one for each garment',
  stripHint: 'Cut apart. Tuck under the hem or clip at the label; off before pressing.',
}

export const care: CareWords = {
  inspection: 'Inspection',
  inspect: [
    'cold',
    'name, number, size against the roster',
    'edges down',
    'straight, right height',
    'no shine or marks',
    'other side clean',
  ],
  inspectStones: ['no empty place', 'no stray stone', 'ten stones tried with the nail'],
  pack: 'Pack and first wash',
  packing: [
    'by player: number, name, size',
    'garments counted',
    'spares and leftovers counted back',
    'one photo of the first garment kept',
    'care card in the bag',
  ],
  rest: (hours) => `First wash: not before ${plural(hours, 'hour', 'hours')} after the last press.`,
  goOut: 'Garments may go out cold and inspected.',
  firstWash: ['last pressed: day, hour', 'first wash not before'],
  wash: [
    'Wash inside out, cold or warm, no softener, no bleach, no dry-cleaning; hang up or dry low. A hot laundry dryer kills the glue: ask who washes.',
  ],
}

export const last: LastWords = {
  title: 'Check, pack, background',
  plan: 'Plan',
  promised: (when) => `Promised: ${when}.`,
  unpromised: 'No hour is promised.',
  slack: (span) => `Room before the promise breaks: ${span}.`,
  span: (days, hours, minutes) => {
    const parts = [days > 0 ? `${days} d` : '', hours > 0 ? `${hours} h` : '', minutes > 0 ? `${minutes} min` : ''].filter(
      (part) => part !== '',
    )
    return parts.length > 0 ? parts.join(' ') : '0 min'
  },
  freezes: (when) => `The roster can be changed until ${when}.`,
  hangsOn: 'Hangs on',
  slotHeads: { work: 'Work', stations: 'Where, who', start: 'From', end: 'To', setUp: 'Set-up' },
  problems: 'What was found',
  heed: 'Heed on this order',
  severities: { stop: 'STOP', 'needs-test': 'Test first', caution: 'Caution', note: 'Note' },
  rulebook: 'Rulebook',
  rule: (body, clause, edition) => `Numbers checked against ${body}, ${clause}, edition ${edition}`,
  marks: { read: "read on the body's own page", quoted: 'quoted by a second page', memory: 'from memory' },
  askLeague: 'Rules change every season: check with your league.',
  why: 'Why the sequence is so',
  whyStep: (numbers, reason) => `${numbers}: ${reason}`,
  sources: 'Sources, and who decides',
  source: (of, sheet, date) => `${of}: ${sheet}, ${date}.`,
  defer: [
    "Above this ticket stand the maker's sheet of every material, the manual of the press and the local rules for work. Where they differ, they are right: stop and ask.",
    'Nothing here says that a garment complies with a law on products or is safe for a child.',
  ],
}
