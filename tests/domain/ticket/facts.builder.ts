import type { Machine } from '../../../src/domain/press/machine.ts'
import type { Gate, PressStep } from '../../../src/domain/press/press-plan.ts'
import type { Art, ColourShown } from '../../../src/domain/ticket/art.ts'
import type {
  CutGroup,
  GarmentFacts,
  PlacementFacts,
  RosterFacts,
  SizeCount,
  StoneFacts,
  TemplateFacts,
  TicketFacts,
  VinylFacts,
} from '../../../src/domain/ticket/facts.ts'
import { seconds, tenthsC } from '../../../src/domain/units/units.ts'

export const navy: ColourShown = { id: 'navy', name: 'navy', hex: '#1b2a4a' }
export const white: ColourShown = { id: 'white', name: 'white', hex: '#ffffff' }
export const crystal: ColourShown = { id: 'crystal', name: 'crystal', hex: '#dfe7ee' }

/** A block figure of our own: a frame with a bar, and stones along its outside. */
export const blockArt = (characters: number, height: number): Art => {
  const width = Math.round(height * 0.55)
  const step = Math.round(height * 0.7)
  const inks: Art['inks'][number][] = []
  for (let at = 0; at < characters; at += 1) {
    const x = at * step
    const stroke = Math.round(height / 6)
    const outer = `M${x} ${-height}L${x + width} ${-height}L${x + width} 0L${x} 0Z`
    const inner = `M${x + stroke} ${-height + stroke}L${x + stroke} ${-stroke}L${x + width - stroke} ${-stroke}L${x + width - stroke} ${-height + stroke}Z`
    inks.push({ kind: 'vinyl', colour: white, path: outer + inner })
    const stones: [number, number][] = []
    for (let y = -height - 3000; y <= 3000; y += 3800) stones.push([x - 3000, y], [x + width + 3000, y])
    inks.push({ kind: 'stones', colour: crystal, diameterMicrometres: 2800, at: stones })
  }
  return { box: { left: -4400, top: -height - 4400, right: (characters - 1) * step + width + 4400, bottom: 4400 }, inks }
}

export const press1: Machine = {
  id: 'press-1',
  platenWidthMicrometres: 406400,
  platenDepthMicrometres: 508000,
  swingTenthsC: 50,
  correctionTenthsC: 0,
  step: { unit: 'F', degrees: 5 },
  gauge: { light: '2', medium: '5', firm: '8' },
  maxTenthsC: 2200,
  threads: true,
}

const bare: Omit<PressStep, 'no' | 'action'> = {
  side: 'back',
  place: 'name+back-number',
  layers: [],
  tenthsC: null,
  seconds: null,
  pressure: null,
  peel: null,
  inside: 'none',
  cover: 'none',
  lookFor: [],
  why: [],
  cautions: [],
  machine: null,
  lines: [],
}

/** The sequence of one side with vinyl tacked and stones finished over it, in the order of common practice. */
export const sideSteps = (side: 'front' | 'back', lines: readonly number[], from: number): readonly PressStep[] => {
  const place = side === 'front' ? 'front-number' : 'name+back-number'
  const base = { ...bare, side, place, lines }
  const hot = {
    tenthsC: tenthsC(1628),
    pressure: { word: 'medium', gauge: '5' },
    machine: 'press-1',
    inside: 'pillow',
  } as const
  const vinyl = side === 'front' ? ['front-1'] : ['names-1', 'back-1']
  const stones = side === 'front' ? ['front-2'] : ['back-2']
  const steps: readonly Omit<PressStep, 'no'>[] = [
    {
      ...base,
      action: 'protect',
      inside: 'pillow',
      lookFor: ['lies-flat', 'nothing-under-load', 'pressure-with-pad-in'],
      why: ['glue-passes-through'],
      cautions: ['gloves-for-pillow-and-stones'],
    },
    {
      ...base,
      ...hot,
      action: 'pre-press',
      seconds: seconds(4),
      lookFor: ['no-steam'],
      why: ['drives-moisture-out'],
      cautions: ['hot-platen', 'hands-out-before-closing'],
    },
    { ...base, action: 'place', layers: vinyl, lookFor: ['centred-and-height'] },
    {
      ...base,
      ...hot,
      action: 'tack',
      layers: vinyl,
      seconds: seconds(2),
      cover: 'carrier',
      why: ['tack-only-holds'],
      lookFor: ['edges-down'],
    },
    { ...base, action: 'peel', layers: vinyl, peel: 'warm', lookFor: ['carrier-comes-clean'] },
    {
      ...base,
      action: 'place',
      layers: stones,
      cover: 'tape',
      lookFor: ['row-clear-of-vinyl', 'stones-right-way-up'],
      cautions: ['do-not-move-tape'],
    },
    {
      ...base,
      ...hot,
      action: 'press',
      layers: [...vinyl, ...stones],
      seconds: seconds(15),
      cover: 'sheet',
      why: ['joint-heat', 'below-hard-cap', 'least-asking-layer'],
      lookFor: ['tape-stays-put'],
      cautions: ['hands-out-before-closing', 'never-leave-closed'],
    },
    {
      ...base,
      action: 'lift',
      why: ['bond-breaks-while-warm'],
      lookFor: ['inside-free-of-glue'],
      cautions: ['do-not-bend-stones', 'hot-platen'],
    },
    { ...base, action: 'cool', seconds: seconds(120), why: ['glue-sets-when-cool'], lookFor: ['no-heat-felt'] },
    { ...base, action: 'peel', layers: stones, peel: 'cold', lookFor: ['stone-that-lifts'] },
    {
      ...base,
      action: 'inspect',
      lookFor: ['empty-holes', 'stones-between-stones', 'lifted-edges', 'press-marks', 'other-side-clean'],
    },
  ]
  return steps.map((step, at) => ({ ...step, no: from + at }))
}

const names = [
  'ALVAREZ',
  'O’BRIEN',
  'NUÑEZ',
  'McKAY',
  'SMITH-JONES',
  'DE LA CRUZ',
  'KOVÁCS',
  'ŁUKASIK',
  'LEE',
  'WILLIAMS III',
  'ĐORĐEVIĆ',
  'BAKER',
]
const cuts = ['S', 'M', 'L', 'XL'] as const

export const rosterRow = (line: number, more: Partial<RosterFacts> = {}): RosterFacts => {
  const number = String(line % 100)
  const name = names[(line - 1) % names.length] ?? 'NAME'
  return {
    line,
    garment: 'home',
    fit: 'men',
    size: cuts[line % cuts.length] ?? 'M',
    number,
    name,
    quantity: 1,
    age: '13-up',
    marks: [
      { decoration: 'front', place: 'front-number', text: number },
      { decoration: 'back', place: 'back-number', text: number },
      { decoration: 'names', place: 'name', text: name },
    ],
    extras: [],
    without: [],
    note: null,
    ...more,
  }
}

export const sizesOf = (rows: readonly RosterFacts[], garment: string): readonly SizeCount[] => {
  const found = new Map<string, SizeCount>()
  for (const { garment: of, fit, size, quantity } of rows) {
    if (of !== garment) continue
    const key = `${fit} ${size}`
    found.set(key, { fit, size, quantity: (found.get(key)?.quantity ?? 0) + quantity })
  }
  return [...found.values()]
}

export const homeGarment = (rows: readonly RosterFacts[]): GarmentFacts => ({
  id: 'home',
  name: 'mesh football jersey',
  kind: 'jersey',
  colour: navy,
  fibres: [{ fibre: 'polyester', percent: 100 }],
  knit: 'mesh',
  finish: 'unknown',
  dye: 'plain',
  features: [],
  from: 'customer',
  sizes: sizesOf(rows, 'home'),
})

const group = (sizes: CutGroup['sizes'], height: number, offset: number): CutGroup => ({
  fit: 'men',
  sizes,
  heightMicrometres: height,
  offsetMicrometres: offset,
  sample: '12',
  art: blockArt(2, height),
})

const placements: readonly PlacementFacts[] = [
  {
    decoration: 'front',
    garment: 'home',
    place: 'front-number',
    side: 'front',
    content: 'number',
    face: 'saira-condensed-800',
    measuredFrom: 'collar',
    groups: [group(['S', 'M', 'L', 'XL'], 203_200, 139_700)],
  },
  {
    decoration: 'names',
    garment: 'home',
    place: 'name',
    side: 'back',
    content: 'name',
    face: 'saira-condensed-800',
    measuredFrom: 'collar',
    groups: [{ ...group(['S', 'M', 'L', 'XL'], 76_200, 101_600), sample: 'ALVAREZ', art: blockArt(5, 76_200) }],
  },
  {
    decoration: 'back',
    garment: 'home',
    place: 'back-number',
    side: 'back',
    content: 'number',
    face: 'saira-condensed-800',
    measuredFrom: 'other-place',
    groups: [group(['S', 'M', 'L'], 254_000, 25_400), group(['XL'], 279_400, 25_400)],
  },
]

const gates: readonly Gate[] = [
  { code: 'count-in', garment: 'home', subject: '', blocks: 'cutting', waitMinutes: 0 },
  { code: 'water-drops', garment: 'home', subject: '', blocks: 'pressing', waitMinutes: 0 },
  { code: 'bleed-test', garment: 'home', subject: '', blocks: 'run', waitMinutes: 1440 },
  { code: 'coupon', garment: null, subject: 'stone-ss10-crystal', blocks: 'cutting', waitMinutes: 0 },
  { code: 'first-piece', garment: 'home', subject: '', blocks: 'run', waitMinutes: 0 },
]

const vinyl: readonly VinylFacts[] = [
  {
    class: 'glitter',
    colour: white,
    material: 'vinyl-glitter-white',
    lot: 'G-2231',
    bin: 'V4',
    places: ['front-number', 'back-number', 'name'],
    lengthMicrometres: 5_200_000,
    widthMicrometres: 508_000,
    cut: 'mirrored',
    peel: 'warm',
    sheets: [
      { file: 'cut/vinyl-glitter-white-1.svg', widthMicrometres: 508_000, lengthMicrometres: 2_600_000, pieces: 18 },
      { file: 'cut/vinyl-glitter-white-2.svg', widthMicrometres: 508_000, lengthMicrometres: 2_600_000, pieces: 18 },
    ],
  },
]

const stones: readonly StoneFacts[] = [
  {
    size: 'SS10',
    colour: crystal,
    material: 'stone-ss10-crystal',
    bin: 'S10-3',
    lot: 'C-881',
    pieces: 18_432,
    spare: 1_475,
    gross: 139,
    milligrams: 221_190,
  },
]

export const templatesOf = (count: number): readonly TemplateFacts[] =>
  Array.from({ length: count }, (_template, at) => ({
    key: `key-${at}`,
    text: String(at % 10),
    no: at + 1,
    places: [at < 10 ? ('back-number' as const) : ('front-number' as const)],
    on: at % 4 === 1 ? [{ place: 'back-number' as const, texts: [`${at % 10}0`, `${at % 10}4`] }] : [],
    face: 'saira-condensed-800',
    heightMicrometres: at < 10 ? 254_000 : 203_200,
    size: 'SS10' as const,
    colour: crystal,
    holes: 380 + at,
    brushed: 1 + (at % 4),
    box: at % 3 === 0 ? `T${at}` : null,
  }))

const tally: TicketFacts['tally'] = [
  {
    place: 'back-number',
    face: 'saira-condensed-800',
    heightMicrometres: 254_000,
    digits: [...'0123456789'].map((digit, at) => ({ digit, count: at + 1 })),
  },
  {
    place: 'front-number',
    face: 'saira-condensed-800',
    heightMicrometres: 203_200,
    digits: [...'0123456789'].map((digit, at) => ({ digit, count: at + 1 })),
  },
]

const layers: TicketFacts['layers'] = [
  {
    id: 'front-1',
    decoration: 'front',
    kind: 'vinyl',
    class: 'glitter',
    colour: white,
    material: 'vinyl-glitter-white',
    shape: 'face',
  },
  {
    id: 'front-2',
    decoration: 'front',
    kind: 'stones',
    size: 'SS10',
    colour: crystal,
    material: 'stone-ss10-crystal',
    style: { style: 'outline', rows: 2, contours: 'both' },
  },
  {
    id: 'back-1',
    decoration: 'back',
    kind: 'vinyl',
    class: 'glitter',
    colour: white,
    material: 'vinyl-glitter-white',
    shape: 'face',
  },
  {
    id: 'back-2',
    decoration: 'back',
    kind: 'stones',
    size: 'SS10',
    colour: crystal,
    material: 'stone-ss10-crystal',
    style: { style: 'outline', rows: 2, contours: 'both' },
  },
  {
    id: 'names-1',
    decoration: 'names',
    kind: 'vinyl',
    class: 'glitter',
    colour: white,
    material: 'vinyl-glitter-white',
    shape: 'face',
  },
]

const background: Pick<TicketFacts, 'problems' | 'plan' | 'rulebook' | 'sources' | 'restBeforeWashHours'> = {
  problems: [
    { code: 'bleed-likely', severity: 'caution', text: 'Navy polyester under white may bleed: the bleed test is a gate.' },
  ],
  plan: {
    promised: '2026-11-12T16:00',
    slackMinutes: 1_530,
    hangsOn: ['your jerseys are here by Wednesday 4 November 2026, 10:00 am'],
    slots: [
      { work: 'cut vinyl', stations: ['cutter-1'], start: '2026-11-05T09:00', end: '2026-11-05T10:30' },
      { work: 'press back', stations: ['press-1', 'person-2'], start: '2026-11-09T08:00', end: '2026-11-09T12:15' },
    ],
  },
  rulebook: {
    body: 'NFHS football',
    clause: '1-5-1c',
    edition: '2024',
    mark: 'quoted',
    notes: ['Glitter bodies and stones on game wear: ask your league in writing.'],
  },
  sources: [{ of: 'vinyl-glitter-white', sheet: "the maker's public sheet", date: '2026-02-01' }],
  restBeforeWashHours: 24,
}

/** A football order: `count` jerseys, glitter numbers with stones outside, names above; partial overrides win. */
export const footballFacts = (count: number, more: Partial<TicketFacts> = {}): TicketFacts => {
  const roster = Array.from({ length: count }, (_row, at) => rosterRow(at + 1))
  const lines = roster.map((row) => row.line)
  const back = sideSteps('back', lines, 1)
  return {
    now: '2026-11-02T08:30',
    language: 'en',
    show: { temperature: 'F', length: 'in', pressure: 'gauge', paper: 'letter', dateOrder: 'month-first' },
    shop: { name: 'Our Own Shop', ask: 'the shop lead at the front desk' },
    ticket: 'T-1042',
    revision: 1,
    replaces: null,
    order: 'O-311',
    link: null,
    team: 'Lakeside Herons',
    sport: 'football',
    use: 'game',
    needBy: '2026-11-12T17:00',
    needFor: 'the bus to the district final',
    gameDay: '2026-11-13',
    handOver: 'collect',
    people: { orders: 'Coach Rivera', signsOff: 'A. Rivera', collects: null },
    notes: null,
    garments: [homeGarment(roster)],
    layers,
    placements,
    machines: [press1],
    press: [...back, ...sideSteps('front', lines, back.length + 1)],
    gates,
    vinyl,
    tally,
    templates: templatesOf(20),
    stones,
    roster,
    changes: [],
    throwAway: [],
    ...background,
    ...more,
  }
}
