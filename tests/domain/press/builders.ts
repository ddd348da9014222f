import type { HeatWindow, Stone, Vinyl } from '../../../src/domain/material/material.ts'
import type { ClothFacts, JobGarment, JobLayer, JobPlace, Material, PressJob } from '../../../src/domain/press/job.ts'
import { fromFahrenheit } from '../../../src/domain/units/units.ts'

export const f = (degrees: number): number => fromFahrenheit(degrees)

type Heat = { readonly least: number; readonly most: number; readonly usual: number }

export const windowOf = (tenthsC: Heat, seconds: Heat, pressure: HeatWindow['pressure'] = 'medium'): HeatWindow => ({
  tenthsC,
  seconds,
  pressure,
})

const source = { sheet: 'a sheet made up for a test', date: '2026-01-01' }

/** Glitter vinyl as common practice has it: 305-340 °F, usual 320 °F and 15 s, tack and peel allowed. */
export const glitter = (parts: Partial<Vinyl> = {}): Vinyl => ({
  kind: 'vinyl',
  id: 'vinyl-glitter-white',
  colour: 'white',
  lot: 'G-1',
  window: windowOf({ least: 1517, most: 1711, usual: f(320) }, { least: 10, most: 20, usual: 15 }, 'firm'),
  rePress: { times: 1, seconds: 15 },
  takesFibres: ['cotton', 'polyester'],
  takesFinishes: ['plain'],
  source,
  class: 'glitter',
  peel: 'warm',
  tackPeel: true,
  cut: 'mirrored',
  grain: false,
  takesOnTop: [],
  rollWidthMicrometres: 495_300,
  rollLengthMicrometres: 22_860_000,
  ...parts,
})

/** Hot-fix stones as common practice has them: usual about 335 °F, cap 170 °C, 15 s. */
export const stones = (parts: Partial<Stone> = {}): Stone => ({
  kind: 'stone',
  id: 'stone-ss10-crystal',
  colour: 'crystal',
  lot: 'S-1',
  window: windowOf({ least: 1200, most: 1700, usual: f(335) }, { least: 10, most: 25, usual: 15 }),
  rePress: { times: 1, seconds: 15 },
  takesFibres: ['cotton', 'polyester'],
  takesFinishes: ['plain'],
  source,
  size: 'SS10',
  peel: 'cold',
  leadFreeCertificate: 'a certificate made up for a test',
  glass: 'lead-free',
  grossMilligrams: 3300,
  insideSeconds: { least: 10, most: 15 },
  coupon: { date: '2026-01-02', holeMicrometres: 3300 },
  ...parts,
})

export const cloth = (parts: Partial<ClothFacts> = {}): ClothFacts => ({
  fibres: [{ fibre: 'cotton', percent: 100 }],
  knit: 'jersey',
  finish: 'plain',
  dye: 'plain',
  perforated: false,
  thin: false,
  marks: false,
  capTenthsC: null,
  careDots: null,
  families: [],
  colour: 'grey',
  ...parts,
})

/** Navy polyester mesh. */
export const mesh = (parts: Partial<ClothFacts> = {}): ClothFacts =>
  cloth({
    fibres: [{ fibre: 'polyester', percent: 100 }],
    knit: 'mesh',
    perforated: true,
    families: ['dark'],
    colour: 'navy',
    ...parts,
  })

/** Materials bottom first; stones lie beside the vinyl, vinyl on what is below. */
export const place = (materials: readonly Material[], parts: Partial<JobPlace> = {}): JobPlace => {
  const decoration = parts.decoration ?? parts.place ?? 'front-number'
  return {
    decoration,
    at: '/decorations/0',
    place: 'front-number',
    side: 'front',
    near: [],
    lines: [1],
    layers: materials.map(
      (material, index): JobLayer => ({
        id: `${decoration}-${index + 1}`,
        at: `/decorations/0/layers/${index}`,
        material,
        lies: index === 0 || material.kind === 'stone' ? 'on-cloth' : 'on-layer-below',
        families: material.kind === 'vinyl' ? ['light'] : [],
      }),
    ),
    topMicrometres: null,
    aboveMicrometres: null,
    belowMicrometres: null,
    widthMicrometres: null,
    heightMicrometres: null,
    askedTenthsC: null,
    ...parts,
  }
}

export const garment = (places: readonly JobPlace[], parts: Partial<JobGarment> = {}): JobGarment => ({
  id: 'home',
  at: '/garments/0',
  cloth: cloth(),
  features: [],
  lines: [...new Set(places.flatMap((one) => one.lines))].map((line) => ({
    line,
    quantity: 1,
    age: '13-up' as const,
    fit: 'men' as const,
  })),
  places,
  ...parts,
})

export const job = (...garments: readonly JobGarment[]): PressJob => ({ garments })
