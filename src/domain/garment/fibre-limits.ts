import type { Fibre } from './garment.ts'

/**
 * What heat does to a fibre. `never`: no transfer temperature leaves it whole. `mark` 'memory' is never a stop: the setting
 * keeps below it where it can, otherwise a test press is asked for.
 */
export type FibreLimit = {
  readonly fibre: Fibre
  readonly capTenthsC: number
  readonly what: 'stiffens' | 'degrades' | 'harmed' | 'melts' | 'scorches' | 'shrinks'
  readonly never: boolean
  readonly mark: 'quoted' | 'memory'
  readonly source: string
}

const limit = (fibre: Fibre, capTenthsC: number, rest: Omit<FibreLimit, 'fibre' | 'capTenthsC' | 'never'>): FibreLimit => ({
  fibre,
  capTenthsC,
  never: false,
  ...rest,
})

/** One line a fibre that heat at the press can harm; fibres without a line scorch only far above any transfer. */
export const fibreLimits: readonly FibreLimit[] = [
  {
    fibre: 'polypropylene',
    capTenthsC: 1200,
    what: 'stiffens',
    never: true,
    mark: 'quoted',
    source: 'polypropylene turns stiff and shiny for good at 120-140 °C and melts at about 160 °C (quoted)',
  },
  limit('elastane', 1800, { what: 'harmed', mark: 'quoted', source: 'elastane is harmed above 180 °C (quoted)' }),
  limit('acrylic', 1500, { what: 'degrades', mark: 'quoted', source: 'acrylic degrades above 150 °C (quoted)' }),
  limit('polyester', 2500, { what: 'melts', mark: 'quoted', source: 'PET melts at about 250 °C (quoted)' }),
  limit('cotton', 2000, { what: 'scorches', mark: 'quoted', source: 'three dots: 200 °C, ISO 3758, 2012 edition (quoted)' }),
  limit('linen', 2000, { what: 'scorches', mark: 'quoted', source: 'three dots: 200 °C, ISO 3758, 2012 edition (quoted)' }),
  limit('nylon', 2130, { what: 'melts', mark: 'memory', source: 'nylon 6 melts at 213-225 °C (from memory)' }),
  limit('wool', 1500, { what: 'scorches', mark: 'memory', source: 'wool is ironed at two dots, 150 °C (from memory)' }),
  limit('silk', 1500, {
    what: 'scorches',
    mark: 'memory',
    source: 'silk is ironed at no more than two dots, 150 °C (from memory)',
  }),
  limit('acetate', 1400, {
    what: 'melts',
    mark: 'memory',
    source: 'acetate softens and shines when ironed above one dot (from memory)',
  }),
  limit('triacetate', 1500, {
    what: 'melts',
    mark: 'memory',
    source: 'triacetate is ironed at no more than two dots (from memory)',
  }),
  limit('modacrylic', 1200, {
    what: 'shrinks',
    mark: 'memory',
    source: 'modacrylic shrinks and stiffens from about 120 °C (from memory)',
  }),
  limit('vinyon', 650, { what: 'shrinks', mark: 'memory', source: 'vinyon softens from about 65 °C (from memory)' }),
]

/** Iron temperatures of the care label in tenths of °C by dots (ISO 3758, 2012 edition, quoted); no dots: do not iron. */
export const ironTenthsC = { 0: 0, 1: 1100, 2: 1500, 3: 2000 } as const
export type CareDots = keyof typeof ironTenthsC
