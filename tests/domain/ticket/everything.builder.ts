import type { GarmentFacts, RosterFacts, TicketFacts } from '../../../src/domain/ticket/facts.ts'
import { seconds, tenthsC } from '../../../src/domain/units/units.ts'
import { blockArt, crystal, footballFacts, homeGarment, press1, rosterRow, sideSteps, sizesOf, white } from './facts.builder.ts'

const gold = { id: 'gold', name: 'gold', hex: '#c9a227' }
const grey = { id: 'heather-grey', name: 'heather grey', hex: '#b7babd' }

const hoodieRow = (line: number, more: Partial<RosterFacts> = {}): RosterFacts =>
  rosterRow(line, {
    garment: 'hoodie',
    fit: 'youth',
    size: 'M',
    age: '3-12',
    number: null,
    marks: [{ decoration: 'crest', place: 'left-chest', text: 'HERONS' }],
    ...more,
  })

const rows: readonly RosterFacts[] = [
  rosterRow(1, { name: 'FITZWILLIAM-MONTGOMERY DE LA VEGA Y SANTOS III', size: '4XL' }),
  rosterRow(2, { name: '中村', note: 'call before pressing' }),
  rosterRow(3, {
    extras: ['captain'],
    marks: [
      ...rosterRow(3).marks,
      { decoration: 'captain', place: 'left-chest', text: 'C' },
      { decoration: 'sleeves', place: 'left-sleeve', text: '3' },
    ],
  }),
  rosterRow(4, { without: ['name'], marks: rosterRow(4).marks.slice(0, 2), name: null }),
  rosterRow(5, { size: 'later' }),
  ...Array.from({ length: 20 }, (_row, at) => rosterRow(6 + at, { fit: at % 3 === 0 ? 'women' : 'men' })),
  hoodieRow(26, { name: null, quantity: 12, note: 'fan wear, no names' }),
  hoodieRow(27, { fit: 'toddler', size: '2T', age: 'under-3', name: 'BABY' }),
  hoodieRow(28, { size: 'L' }),
]

const hoodie: GarmentFacts = {
  ...homeGarment([]),
  id: 'hoodie',
  name: 'full-zip fleece hoodie with a long name that has to wrap',
  kind: 'hoodie',
  colour: grey,
  fibres: [
    { fibre: 'cotton', percent: 52 },
    { fibre: 'polyester', percent: 45 },
    { fibre: 'elastane', percent: 3 },
  ],
  knit: 'fleece',
  finish: 'plain',
  dye: 'unknown',
  features: ['hood', 'full-zip', 'pocket', 'strings'],
  from: 'shop',
  sizes: sizesOf(rows, 'hoodie'),
}

const homeSizes = ['S', 'M', 'L', 'XL', '4XL', 'later'] as const

const linesOf = (garment: string): readonly number[] => rows.filter((row) => row.garment === garment).map((row) => row.line)

const sleevePart = (from: number): TicketFacts['press'] => [
  {
    no: from,
    side: 'left-sleeve',
    place: 'left-sleeve',
    action: 'press',
    layers: ['sleeves-1'],
    tenthsC: tenthsC(1500),
    seconds: seconds(12),
    pressure: { word: 'firm', gauge: null },
    peel: 'cold',
    inside: 'sheet',
    cover: 'carrier',
    lookFor: ['centred-and-height', 'edges-down'],
    why: ['places-kept-apart'],
    cautions: ['keep-25-mm-off', 'hot-platen'],
    machine: 'press-2',
    lines: [3],
  },
]

const hoodiePart = (from: number): TicketFacts['press'] =>
  sideSteps('front', linesOf('hoodie'), from).map((step) => ({
    ...step,
    place: 'left-chest',
    layers: step.layers.length > 0 ? ['crest-1'] : [],
    machine: step.machine === null ? null : 'press-2',
    pressure: step.pressure === null ? null : { ...step.pressure, gauge: null },
    tenthsC: step.tenthsC === null ? null : tenthsC(1450),
    cautions: [...step.cautions, 'zip-in-two-halves', 'hood-and-strings-clear', 'ventilate'],
  }))

const press = (): TicketFacts['press'] => {
  const back = sideSteps('back', linesOf('home'), 1)
  const front = sideSteps('front', linesOf('home'), back.length + 1)
  const sleeve = sleevePart(back.length + front.length + 1)
  return [...back, ...front, ...sleeve, ...hoodiePart(back.length + front.length + sleeve.length + 1)]
}

/** Everything a ticket can carry at once: four decorations, two garments, a new revision, awkward names, both dials. */
export const everythingFacts = (more: Partial<TicketFacts> = {}): TicketFacts => {
  const base = footballFacts(1)
  return {
    ...base,
    ticket: 'T-2077',
    revision: 3,
    replaces: 2,
    link: 'https://bench.example.org/t/2077?r=3&k=Zx81mPq',
    team: 'Club Deportivo San Ignacio de la Ribera y Santa María del Río, categoría juvenil femenina',
    notes: 'Two boxes on the rail by the door.\nHandle the zip hoodies last.',
    handOver: 'field',
    garments: [{ ...homeGarment(rows), sizes: sizesOf(rows, 'home') }, hoodie],
    layers: [
      ...base.layers,
      {
        id: 'sleeves-1',
        decoration: 'sleeves',
        kind: 'vinyl',
        class: 'reflective',
        colour: gold,
        material: 'vinyl-reflective-gold',
        shape: 'face',
      },
      {
        id: 'crest-1',
        decoration: 'crest',
        kind: 'vinyl',
        class: 'low-temperature',
        colour: white,
        material: 'vinyl-low-temperature-white',
        shape: 'face',
      },
    ],
    placements: [
      ...base.placements.map((placement) => ({
        ...placement,
        groups: [
          ...placement.groups.map((group) => ({ ...group, sizes: [...homeSizes] })).slice(0, 1),
          ...placement.groups.slice(0, 1).map((group) => ({ ...group, fit: 'women' as const, heightMicrometres: 203_200 })),
        ],
      })),
      {
        decoration: 'captain',
        garment: 'home',
        place: 'left-chest',
        side: 'front',
        content: 'text',
        face: 'anton',
        measuredFrom: 'collar',
        groups: [
          {
            fit: 'men',
            sizes: [...homeSizes],
            heightMicrometres: 50_800,
            offsetMicrometres: 60_000,
            sample: 'C',
            art: blockArt(1, 50_800),
          },
        ],
      },
      {
        decoration: 'sleeves',
        garment: 'home',
        place: 'left-sleeve',
        side: 'left-sleeve',
        content: 'number',
        face: 'anton',
        measuredFrom: 'hem',
        groups: [
          {
            fit: 'men',
            sizes: [...homeSizes],
            heightMicrometres: 76_200,
            offsetMicrometres: 50_800,
            sample: '3',
            art: blockArt(1, 76_200),
          },
        ],
      },
      {
        decoration: 'crest',
        garment: 'hoodie',
        place: 'left-chest',
        side: 'front',
        content: 'artwork',
        face: 'anton',
        measuredFrom: 'collar',
        groups: [
          { fit: 'youth', sizes: ['M', 'L'], heightMicrometres: 76_200, offsetMicrometres: 114_300, sample: '', art: null },
          { fit: 'toddler', sizes: ['2T'], heightMicrometres: 50_800, offsetMicrometres: 70_000, sample: '', art: null },
        ],
      },
    ],
    machines: [press1, { ...press1, id: 'press-2', correctionTenthsC: 28, step: { unit: 'C', degrees: 1 }, gauge: null }],
    press: press(),
    gates: [
      ...base.gates,
      { code: 'test-press', garment: 'hoodie', subject: '', blocks: 'pressing', waitMinutes: 0 },
      { code: 'certificate', garment: null, subject: 'lot C-881', blocks: 'pressing', waitMinutes: 0 },
      { code: 'first-piece', garment: 'hoodie', subject: '', blocks: 'run', waitMinutes: 0 },
    ],
    vinyl: [
      ...base.vinyl,
      {
        class: 'low-temperature',
        colour: white,
        material: 'vinyl-low-temperature-white',
        lot: 'L-1',
        bin: null,
        places: ['left-chest'],
        lengthMicrometres: 900_000,
        widthMicrometres: 508_000,
        cut: 'as-read',
        peel: 'cold',
        sheets: [],
      },
    ],
    stones: [
      ...base.stones,
      {
        size: 'SS16',
        colour: crystal,
        material: 'stone-ss16-crystal',
        bin: null,
        lot: 'D-12',
        pieces: 144,
        spare: 12,
        gross: 2,
        milligrams: 4_312,
      },
    ],
    roster: rows,
    changes: [
      { kind: 'row-changed', line: 7, field: 'name', was: 'KOVACS', now: 'KOVÁCS' },
      { kind: 'row-added', line: 28, row: 'hoodie, youth L' },
      { kind: 'row-dropped', line: 29, row: '#29 OLD, men L' },
      { kind: 'order-changed', field: 'needBy', was: 'Friday noon', now: 'Thursday 5:00 pm' },
    ],
    throwAway: [
      { line: 7, place: 'name', text: 'KOVACS', state: 'cut' },
      { line: 29, place: 'back-number', text: '29', state: 'pressed' },
    ],
    ...more,
  }
}
