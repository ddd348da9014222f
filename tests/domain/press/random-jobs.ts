import * as fc from 'fast-check'
import type { Fibres } from '../../../src/domain/garment/garment.ts'
import type { Auxiliary, HeatWindow, Stone, Vinyl } from '../../../src/domain/material/material.ts'
import { vinylClasses } from '../../../src/domain/material/material.ts'
import {
  type Bench,
  type ClothFacts,
  type JobGarment,
  type JobLayer,
  type JobPlace,
  type PressJob,
  usualBenchSettings,
} from '../../../src/domain/press/job.ts'
import type { Machine } from '../../../src/domain/press/machine.ts'

/** A least, a most above it and a usual point between them. */
const between = (least: fc.Arbitrary<number>, width: fc.Arbitrary<number>) =>
  fc.tuple(least, width, fc.integer({ min: 0, max: 100 })).map(([low, wide, share]) => ({
    least: low,
    most: low + wide,
    usual: low + Math.round((wide * share) / 100),
  }))

const pressures = fc.constantFrom('light', 'medium', 'firm')
const source = { sheet: 'made up for a test', date: '2026-01-01' }

const windowOf = (tenthsC: fc.Arbitrary<HeatWindow['tenthsC']>, seconds: fc.Arbitrary<HeatWindow['seconds']>) =>
  fc.record({ tenthsC, seconds, pressure: pressures })

const rePress = fc.oneof(
  { weight: 3, arbitrary: fc.record({ times: fc.integer({ min: 2, max: 8 }), seconds: fc.integer({ min: 12, max: 25 }) }) },
  { weight: 1, arbitrary: fc.record({ times: fc.integer({ min: 0, max: 3 }), seconds: fc.integer({ min: 0, max: 15 }) }) },
)

const common = { lot: 'T-1', takesFibres: ['cotton' as const], takesFinishes: ['plain' as const], source }

const vinyl: fc.Arbitrary<Vinyl> = fc
  .record({
    class: fc.constantFrom(...vinylClasses),
    window: windowOf(
      between(fc.integer({ min: 1290, max: 1540 }), fc.integer({ min: 60, max: 300 })),
      between(fc.integer({ min: 5, max: 12 }), fc.integer({ min: 0, max: 16 })),
    ),
    rePress,
    peel: fc.constantFrom('hot' as const, 'warm' as const, 'cold' as const),
    tackPeel: fc.boolean(),
    tackSeconds: fc.option(fc.constantFrom({ least: 2, most: 3 }, { least: 4, most: 5 }, { least: 6, most: 8 }), {
      freq: 5,
      nil: undefined,
    }),
  })
  .map(({ tackSeconds, ...rest }) => ({
    ...common,
    ...rest,
    ...(tackSeconds === undefined ? {} : { tackSeconds }),
    kind: 'vinyl',
    id: `vinyl-${rest.class}-white`,
    colour: 'white',
    cut: 'mirrored',
    grain: false,
    takesOnTop: [],
    rollWidthMicrometres: 508_000,
    rollLengthMicrometres: 4_572_000,
  }))

const stone: fc.Arbitrary<Stone> = fc
  .record({
    window: windowOf(
      between(fc.integer({ min: 1200, max: 1450 }), fc.integer({ min: 200, max: 350 })),
      between(fc.integer({ min: 5, max: 11 }), fc.integer({ min: 4, max: 18 })),
    ),
    rePress,
    insideSeconds: fc.constantFrom({ least: 10, most: 15 }, { least: 0, most: 0 }, { least: 8, most: 12 }),
  })
  .map((rest) => ({
    ...common,
    ...rest,
    kind: 'stone',
    id: 'stone-ss10-crystal',
    colour: 'crystal',
    size: 'SS10',
    peel: 'cold',
    leadFreeCertificate: null,
    glass: 'lead-free',
    grossMilligrams: 3300,
  }))

const usualFibres: fc.Arbitrary<Fibres> = fc.constantFrom<Fibres[]>(
  [{ fibre: 'polyester', percent: 100 }],
  [{ fibre: 'cotton', percent: 100 }],
  [
    { fibre: 'cotton', percent: 60 },
    { fibre: 'polyester', percent: 40 },
  ],
  [
    { fibre: 'polyester', percent: 82 },
    { fibre: 'elastane', percent: 18 },
  ],
  'unknown',
)

const hardFibres: fc.Arbitrary<Fibres> = fc.constantFrom<Fibres[]>(
  [{ fibre: 'nylon', percent: 100 }],
  [
    { fibre: 'acrylic', percent: 50 },
    { fibre: 'wool', percent: 50 },
  ],
  [
    { fibre: 'polyester', percent: 95 },
    { fibre: 'polypropylene', percent: 5 },
  ],
)

const fibres = fc.oneof({ weight: 8, arbitrary: usualFibres }, { weight: 1, arbitrary: hardFibres })

const cloth: fc.Arbitrary<ClothFacts> = fc.record({
  fibres,
  knit: fc.constantFrom('mesh', 'jersey', 'fleece', 'woven'),
  finish: fc.constantFrom('plain', 'unknown', 'repellent'),
  dye: fc.constantFrom('plain', 'sublimated', 'unknown'),
  perforated: fc.boolean(),
  thin: fc.boolean(),
  marks: fc.boolean(),
  capTenthsC: fc.oneof(
    { weight: 6, arbitrary: fc.constant(null) },
    { weight: 1, arbitrary: fc.integer({ min: 1500, max: 1900 }) },
  ),
  careDots: fc.constantFrom(null, 1, 2, 3),
  families: fc.constantFrom<string[][]>(['dark'], ['light'], ['red'], []),
  colour: fc.constant('navy'),
})

const spots = [
  ['front-number', 'front'],
  ['left-chest', 'front'],
  ['full-front', 'front'],
  ['back-number', 'back'],
  ['name', 'back'],
  ['nape', 'back'],
  ['left-sleeve', 'left-sleeve'],
  ['right-sleeve', 'right-sleeve'],
  ['left-leg', 'front'],
  ['hood', 'back'],
] as const

type Stack = readonly (Vinyl | Stone)[]

/** Vinyl first as a rule, with stones on it; now and then the customer's order of layers is another. */
const stack: fc.Arbitrary<Stack> = fc
  .tuple(fc.array(vinyl, { maxLength: 3 }), fc.array(stone, { maxLength: 1 }), fc.integer({ min: 0, max: 9 }))
  .map(([flat, raised, turn]) => (turn === 0 ? [...raised, ...flat] : [...flat, ...raised]))
  .filter((layers) => layers.length > 0)

type Spot = {
  readonly at: number
  readonly layers: Stack
  readonly lines: readonly number[]
  readonly beside: boolean
  readonly size: number
}

type On = { readonly garment: string; readonly nth: number; readonly first: number; readonly count: number }

const placeOf = ({ garment, nth, first, count }: On, spot: Spot): JobPlace => {
  const [place, side] = spots[spot.at] ?? spots[0]
  const decoration = `${garment}-${place}-${nth}`
  const lines = spot.lines.map((line) => first + (line % count))
  return {
    decoration,
    at: `/decorations/${spot.at}`,
    place,
    side,
    near: ['full-zip', 'pocket'],
    lines: [...new Set(lines)].toSorted((a, b) => a - b),
    layers: spot.layers.map(
      (material, index): JobLayer => ({
        id: `${decoration}-${index + 1}`,
        at: `/decorations/${spot.at}/layers/${index}`,
        material,
        lies: index === 0 || spot.beside ? 'on-cloth' : 'on-layer-below',
        families: ['light'],
      }),
    ),
    topMicrometres: 60_000 * spot.at,
    aboveMicrometres: 0,
    belowMicrometres: Math.round(spot.size / 2),
    widthMicrometres: spot.size,
    heightMicrometres: Math.round(spot.size / 2),
    askedTenthsC: null,
  }
}

const spot: fc.Arbitrary<Spot> = fc.record({
  at: fc.integer({ min: 0, max: spots.length - 1 }),
  layers: stack,
  lines: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 1, maxLength: 4 }),
  beside: fc.boolean(),
  size: fc.integer({ min: 50_000, max: 300_000 }),
})

const garmentOf = (index: number): fc.Arbitrary<JobGarment> =>
  fc
    .record({
      cloth,
      features: fc.constantFrom<JobGarment['features'][]>([], ['full-zip', 'hood'], ['pocket']),
      lines: fc.integer({ min: 1, max: 4 }),
      spots: fc.array(spot, { minLength: 1, maxLength: 4 }),
    })
    .map((made) => ({
      id: `garment-${index}`,
      at: `/garments/${index}`,
      cloth: made.cloth,
      features: made.features,
      lines: Array.from({ length: made.lines }, (_, line) => ({
        line: 10 * index + line + 1,
        quantity: 1,
        age: '13-up' as const,
        fit: 'men' as const,
      })),
      places: made.spots.map((one, nth) =>
        placeOf({ garment: `garment-${index}`, nth, first: 10 * index + 1, count: made.lines }, one),
      ),
    }))

export const randomJob: fc.Arbitrary<PressJob> = fc
  .integer({ min: 1, max: 2 })
  .chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => garmentOf(index))))
  .map((garments) => ({ garments }))

const machineOf = (index: number): fc.Arbitrary<Machine> =>
  fc.record({
    id: fc.constant(`press-${index}`),
    platenWidthMicrometres: fc.constantFrom(381_000, 406_400),
    platenDepthMicrometres: fc.constantFrom(381_000, 406_400, 508_000),
    swingTenthsC: fc.constantFrom(0, 30, 50),
    correctionTenthsC: fc.integer({ min: -30, max: 30 }),
    step: fc.constantFrom(
      { unit: 'F' as const, degrees: 1 },
      { unit: 'F' as const, degrees: 5 },
      { unit: 'C' as const, degrees: 1 },
      { unit: 'C' as const, degrees: 5 },
    ),
    gauge: fc.constantFrom(null, { light: '2', medium: '5', firm: '8' }),
    maxTenthsC: fc.constantFrom(1700, 2000, 2200),
    threads: fc.boolean(),
  })

const auxiliary = (kind: Auxiliary['kind'], least: number): fc.Arbitrary<readonly Auxiliary[]> =>
  fc
    .option(fc.integer({ min: least, max: 2300 }), { freq: 40 })
    .map((cap) =>
      cap === null ? [] : [{ kind, id: kind, capTenthsC: cap, widthMicrometres: 400_000, heightMicrometres: 400_000, source }],
    )

export const randomBench: fc.Arbitrary<Bench> = fc
  .record({
    machines: fc
      .integer({ min: 1, max: 2 })
      .chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => machineOf(index)))),
    sheets: auxiliary('cover-sheet', 1700),
    tapes: auxiliary('tape', 1650),
    pads: auxiliary('pillow', 1600),
    shelf: fc.array(vinyl, { maxLength: 2 }),
  })
  .map(({ machines, sheets, tapes, pads, shelf }) => ({
    machines,
    auxiliaries: [...sheets, ...tapes, ...pads],
    shelf: { materials: shelf, stock: {} },
    settings: usualBenchSettings,
  }))
